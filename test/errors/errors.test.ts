import { describe, expect, test } from "vitest";
import { InputError, isInputError, ParseError } from "miterwright/errors";

const facts = {
  code: "range",
  path: "sides",
  value: 2,
  message: "Expected `sides` to be an integer from 3 to 1000000, got 2 (number)",
} as const;

describe("InputError", () => {
  test("is a RangeError that says what, where and what was given", () => {
    const error = new InputError(facts);
    expect(error).toBeInstanceOf(RangeError);
    expect(error).toMatchObject({ name: "InputError", ...facts });
    expect(String(error)).toBe(`InputError: ${facts.message}`);
  });
});

describe("ParseError", () => {
  test("is an InputError with a position and a reason", () => {
    const error = new ParseError({ ...facts, code: "syntax", position: 4, reason: "why" });
    expect(error).toBeInstanceOf(InputError);
    expect(error).toMatchObject({ name: "ParseError", code: "syntax", position: 4, reason: "why" });
  });
});

describe("isInputError", () => {
  test("holds for both kinds", () => {
    expect(isInputError(new InputError(facts))).toBe(true);
    expect(isInputError(new ParseError({ ...facts, position: 0, reason: "why" }))).toBe(true);
  });

  test("holds for the class of another copy of the library, and for a copy that lost its class on the way", () => {
    class Other extends RangeError {
      override readonly name: string = "InputError";
      readonly code: string = "missing";
    }
    expect(isInputError(new Other("x"))).toBe(true);
    expect(isInputError({ name: "InputError", ...facts })).toBe(true);
  });

  test.each([
    [undefined],
    [null],
    ["InputError"],
    [new RangeError("x")],
    [{ name: "InputError" }],
    [{ name: "InputError", code: "ENOENT" }],
    [{ name: "Error", code: "range" }],
  ])("does not hold for %j", (value) => {
    expect(isInputError(value)).toBe(false);
  });
});
