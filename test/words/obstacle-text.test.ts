import { describe, expect, test } from "vitest";
import type { Obstacle, ObstacleCode } from "miterwright/saw";
import { obstacleText, english } from "miterwright/words";
import { formatsWith } from "../formats.js";

/** Every obstacle, the scales with their numbers: the compiler asks for each code. */
const SENTENCES: Readonly<Record<ObstacleCode, string>> = {
  "miter-range-left": "The miter to the left is more than this saw has: it goes to 50°, and the cut needs 60.5°.",
  "miter-range-right": "The miter to the right is more than this saw has: it goes to 50°, and the cut needs 60.5°.",
  "bevel-range-left":
    "The bevel with the blade's top to the left is more than this saw has: it goes to 50°, and the cut needs 60.5°.",
  "bevel-range-right":
    "The bevel with the blade's top to the right is more than this saw has: it goes to 50°, and the cut needs 60.5°.",
  depth: "In this position the stick stands higher than the blade reaches at this bevel.",
  crosscut: "In this position the line of cut is longer than the saw crosscuts.",
  "no-flat-back": "The stick's back has no flat that a wedge could carry.",
  rocks: "The stick rocks in this position: what it rests on is narrower than a tenth of it.",
  "tips-over": "The stick tips over in this position: its center of gravity is not above what it rests on.",
  "needs-cradle": "In this position the stick stands on one edge; it would need a wedge made for it.",
};
const formats = formatsWith({ angle: (degrees) => `${degrees}°` });

function obstacleOf(code: string): Obstacle {
  const isRange = code.includes("range");
  return { code: code as ObstacleCode, ...(isRange ? { degrees: { reach: 50, needs: 60.5 } } : {}) };
}

describe("an obstacle", () => {
  test.each(Object.entries(SENTENCES))("%s is a sentence, with its numbers where angles are written", (code, said) => {
    expect(obstacleText(obstacleOf(code), { formats })).toBe(said);
    expect(obstacleText(obstacleOf(code))).toBe(said.replace(": it goes to 50°, and the cut needs 60.5°", ""));
  });

  test("is told in other words where such are given", () => {
    const words = { ...english, obstacles: { ...english.obstacles, depth: () => "too high" } };
    expect(obstacleText({ code: "depth" }, { words })).toBe("too high");
  });

  test("is refused where it is none", () => {
    expect(() => obstacleText({ code: "fire" } as never)).toThrow("Expected `obstacle.code` to be one of");
    expect(() => obstacleText({ code: "depth" }, { formats: { ...formats, angle: 3 as never } })).toThrow(
      "Expected `formats.angle` to be a function that writes an angle as text, got 3 (number)",
    );
  });
});
