import { expect, test } from "vitest";
import { surfaceLabel } from "miterwright/words";

test("a surface's code is written as words, and another word is refused", () => {
  expect((["back", "face", "sight-edge", "outer-edge"] as const).map((surface) => surfaceLabel(surface))).toEqual([
    "back",
    "face",
    "sight edge",
    "outer edge",
  ]);
  expect(() => surfaceLabel("sight edge" as never)).toThrow(
    'Expected `surface` to be one of "back", "face", "sight-edge", "outer-edge", got "sight edge" (string)',
  );
});
