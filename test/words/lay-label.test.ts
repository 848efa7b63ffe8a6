import { expect, test } from "vitest";
import { layLabel } from "miterwright/words";
import { formatsWith } from "../formats.js";

const tell = { formats: formatsWith({ angle: (degrees) => `${degrees}°` }) };

test("a lay's code is written as words, and a rotation by its angle", () => {
  const lays = ["propped", "flat", "face-down", "sight-edge-down", "outer-edge-down", -12.5, 360] as const;
  expect(lays.map((lay) => layLabel(lay, tell))).toEqual([
    "propped at its slope",
    "flat on its back",
    "face down",
    "on its sight edge",
    "on its outer edge",
    "rolled by -12.5°",
    "rolled by 360°",
  ]);
});

test("a lay that has a name needs no formatters", () => {
  expect(layLabel("flat")).toBe("flat on its back");
  // @ts-expect-error a rotation is written with an angle
  expect(() => layLabel(12)).toThrow("formats");
});

test("what is no lay, and what writes no angle, is refused", () => {
  expect(() => layLabel("face down" as never, tell)).toThrow(
    'Expected `lay` to be one of "propped", "flat", "face-down", "sight-edge-down", "outer-edge-down", got "face down" (string)',
  );
  expect(() => layLabel(361, tell)).toThrow("Expected `lay` to be degrees from -360 to 360, got 361 (number)");
  expect(() => layLabel(NaN, tell)).toThrow("Expected `lay` to be degrees from -360 to 360, got NaN (number)");
  expect(() => layLabel(12, {} as never)).toThrow("Expected `formats` to be an object, got undefined");
  expect(() => layLabel(12, undefined as never)).toThrow("Expected `formats` to be an object, got undefined");
  expect(() => layLabel("flat", 5 as never)).toThrow("Expected `options` to be an object, got 5 (number)");
});
