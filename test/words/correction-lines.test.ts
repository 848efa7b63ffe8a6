import { describe, expect, test } from "vitest";
import { correctSetting } from "miterwright/closure";
import { correctFromGap, planFrame } from "miterwright/frame";
import { correctionLines, english } from "miterwright/words";
import { formatsWith } from "../formats.js";

describe("a correction in words", () => {
  const say = (options: Partial<Parameters<typeof correctSetting>[0]>): readonly string[] =>
    correctionLines(correctSetting({ sides: 8, width: 40, seenGap: 1, open: "outside", ...options }));

  test("says what was wrong, how far and which way", () => {
    expect(say({})).toEqual([
      "Open outside: the inside angles of the corners are too large, so the ring does not come round.",
      "Miter: 0.083° more, further from a square cut.",
      "Bevel: leave it.",
    ]);
    expect(say({ open: "inside" })).toEqual([
      "Open inside: the inside angles of the corners are too small, so the ring comes round too soon.",
      "Miter: 0.083° less, nearer to a square cut.",
      "Bevel: leave it.",
    ]);
    expect(say({ slope: 90 })).toEqual([
      "Open outside: the inside angles of the corners are too large, so the ring does not come round.",
      "Miter: leave it.",
      "Bevel: 0.083° more, the blade leaning further over.",
    ]);
    expect(say({ slope: 44, hold: 46, open: "inside" }).slice(1)).toEqual([
      "Miter: 0.604° less, nearer to a square cut.",
      "Bevel: 0.507° more, the blade leaning further over.",
    ]);
    expect(say({ slope: 2, hold: 0 }).at(-1)).toBe("Bevel: 0.763° less, the blade more upright.");
    expect(say({ slope: 2, hold: -2 }).at(-1)).toBe("Bevel: 1.528° in all, through 0 and to the other hand.");
    expect(say({ slope: 0, hold: -2 }).at(-1)).toBe("Bevel: 0.765° more, the blade leaning further over.");
  });

  test("is written with the angles and words of the caller", () => {
    const correction = correctSetting({ sides: 8, width: 40, seenGap: 1, open: "outside" });
    const words = {
      ...english,
      corrections: {
        ...english.corrections,
        miter: { ...english.corrections.miter, more: ({ by }: { by: string }): string => `add ${by}` },
      },
    };
    expect(
      correctionLines(correction, { formats: formatsWith({ angle: (degrees) => degrees.toFixed(1) }), words })[1],
    ).toBe("add 0.1");
  });

  test("is refused where it is none", () => {
    const correction = correctSetting({ sides: 8, width: 40, seenGap: 1, open: "outside" });
    expect(() => correctionLines(null as never)).toThrow("Expected `correction` to be an object, got null");
    expect(() => correctionLines({ ...correction, changes: { miter: "much", bevel: "leave" } } as never)).toThrow(
      'Expected `correction.changes.miter` to be one of "leave", "more", "less", "through-zero", got "much" (string)',
    );
    const plan = planFrame({ sides: 8, opening: { side: 200 }, measured: { levelWidth: 40 } });
    const onSaw = correctFromGap(plan, { seenGap: 1, open: "outside" });
    expect(() => correctionLines({ ...onSaw, shown: null } as never)).toThrow(
      "Expected `correction.shown` to be an object, got null",
    );
    expect(() => correctionLines(correction, { formats: formatsWith({ angle: 3 as never }) })).toThrow(
      "Expected `formats.angle` to be a function that writes an angle as text, got 3 (number)",
    );
  });
});
