import { expect, test } from "vitest";
import type { StackVerdict } from "miterwright/frame";
import { stackText, english, type Words } from "miterwright/words";

const SAID: readonly [StackVerdict, string][] = [
  ["roomy", "Behind the contents there is room for what holds them."],
  [
    "tight",
    "Behind the contents there is just room for what holds them, and not enough when the glass is as thick as its tolerance allows: measure it before the frame is cut.",
  ],
  [
    "short",
    "The contents leave less depth behind them than what holds them takes: use thinner layers, a deeper rabbet, or fasteners that need less.",
  ],
  [
    "proud",
    "The contents stand proud of the rabbet: hold them with offset clips, build the back up with strips, or use a deeper rabbet.",
  ],
];

test.each(SAID)("a %s stack has a sentence of its own", (verdict, sentence) => {
  expect(stackText(verdict)).toBe(sentence);
});

test("other words are taken", () => {
  const words: Words = { ...english, stacks: { ...english.stacks, proud: () => "it stands out" } };
  expect(stackText("proud", { words })).toBe("it stands out");
});

test("malformed input is refused", () => {
  expect(() => stackText("full" as never)).toThrow(
    'Expected `verdict` to be one of "roomy", "tight", "short", "proud", got "full" (string)',
  );
  expect(() => stackText("roomy", 7 as never)).toThrow("Expected `options` to be an object, got 7 (number)");
});
