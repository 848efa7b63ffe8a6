import { expect, test } from "vitest";
import { layLabel } from "miterwright/words";

const angle = (degrees: number): string => `${degrees}°`;

test("a lay's code is written as words, and a rotation by its angle", () => {
  const lays = ["propped", "flat", "face-down", "sight-edge-down", "outer-edge-down", -12.5, 360] as const;
  expect(lays.map((lay) => layLabel(lay, angle))).toEqual([
    "propped at its slope",
    "flat on its back",
    "face down",
    "standing on its sight edge",
    "standing on its outer edge",
    "rolled by -12.5°",
    "rolled by 360°",
  ]);
});

test("what is no lay, and what writes no angle, is refused", () => {
  expect(() => layLabel("face down" as never, angle)).toThrow(
    'Expected `lay` to be one of "propped", "flat", "face-down", "sight-edge-down", "outer-edge-down", got "face down" (string)',
  );
  expect(() => layLabel(361, angle)).toThrow("Expected `lay` to be degrees from -360 to 360, got 361 (number)");
  expect(() => layLabel(NaN, angle)).toThrow("Expected `lay` to be degrees from -360 to 360, got NaN (number)");
  expect(() => layLabel("flat", undefined as never)).toThrow(
    "Expected `angle` to be a function that writes an angle, got undefined",
  );
});
