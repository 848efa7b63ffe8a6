import { expect, test } from "vitest";
import { tryParseLength } from "miterwright/units";
import { HARD_TEXTS } from "./hard-cases.js";

test.each(HARD_TEXTS)("$text: $why", ({ text, unit, value }) => {
  const parsed = tryParseLength(text, unit);
  expect(parsed.ok ? parsed.value : null).toBe(value);
});
