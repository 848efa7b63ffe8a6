import { describe, expect, test } from "vitest";
import * as check from "../../src/core/check.js";
import { assertSound } from "../../src/core/bug.js";
import { isInputError } from "miterwright/errors";

function refusal(run: () => unknown): { code: string; path: string; message: string } {
  try {
    run();
  } catch (error) {
    if (isInputError(error)) return { code: error.code, path: error.path, message: error.message };
    throw error;
  }
  throw new Error("nothing was refused");
}

describe("what is let through", () => {
  test("comes back as it was, but for -0", () => {
    expect(check.checkNumber(3.5, "x", 0, 4)).toBe(3.5);
    expect(check.checkNumber(-0, "x", -1, 1)).toBe(0);
    expect(check.checkDistance(-0, "x")).toBe(0);
    expect(check.checkInteger(-0, "x", -1, 1)).toBe(0);
    expect(check.checkInside(0.5, "x", 0, 1)).toBe(0.5);
    expect(check.checkWord("b", "x", ["a", "b"])).toBe("b");
    expect(check.checkOneOf({ b: 1 }, "", ["a", "b"])).toBe("b");
  });

  test("reaches to the bounds and not beyond", () => {
    for (const value of [1e-100, 1e100]) expect(check.checkLength(value, "x")).toBe(value);
    for (const value of [0.9e-100, 1.1e100]) expect(refusal(() => check.checkLength(value, "x")).code).toBe("range");
    for (const value of [3, 1e6]) expect(check.checkSides(value)).toBe(value);
    for (const value of [2, 1e6 + 1]) expect(refusal(() => check.checkSides(value)).code).toBe("range");
    for (const value of [0, 1]) expect(refusal(() => check.checkInside(value, "x", 0, 1)).code).toBe("range");
  });
});

describe("what is refused", () => {
  test.each<[() => unknown, string, string]>([
    [() => check.checkNumber("4", "x", 0, 9), "type", 'Expected `x` to be a number from 0 to 9, got "4" (string)'],
    [
      () => check.checkNumber(Number.NaN, "x", 0, 9),
      "range",
      "Expected `x` to be a number from 0 to 9, got NaN (number)",
    ],
    [
      () => check.checkNumber(undefined, "x", 0, 9),
      "missing",
      "Expected `x` to be a number from 0 to 9, got undefined",
    ],
    [
      () => check.checkInside(9, "x", 0, 9),
      "range",
      "Expected `x` to be a number between 0 and 9, bounds excluded, got 9 (number)",
    ],
    [
      () => check.checkInside(null, "x", 0, 9),
      "type",
      "Expected `x` to be a number between 0 and 9, bounds excluded, got null",
    ],
    [
      () => check.checkInteger(2.5, "x", 0, 9),
      "integer",
      "Expected `x` to be an integer from 0 to 9, got 2.5 (number)",
    ],
    [() => check.checkInteger(10n, "x", 0, 9), "type", "Expected `x` to be an integer from 0 to 9, got 10 (bigint)"],
    [() => check.checkWord("c", "x", ["a", "b"]), "unknown", 'Expected `x` to be one of "a", "b", got "c" (string)'],
    [
      () => check.checkWord(Symbol("c"), "x", ["a", "b"]),
      "type",
      'Expected `x` to be one of "a", "b", got Symbol(c) (symbol)',
    ],
    [() => check.checkObject([], "x"), "type", "Expected `x` to be an object, got an empty array"],
    [() => check.checkArray({}, "x"), "type", "Expected `x` to be an array, got an object"],
    [() => check.checkArray(() => 0, "x"), "type", "Expected `x` to be an array, got a function"],
    [() => check.checkText("", "x"), "range", 'Expected `x` to be a string that is not empty, got "" (string)'],
    [() => check.checkText(true, "x"), "type", "Expected `x` to be a string that is not empty, got true (boolean)"],
    [
      () => check.checkText("y".repeat(50), "x") && check.refuse("unknown", "x", "y".repeat(50), "short"),
      "unknown",
      `Expected \`x\` to be short, got "${"y".repeat(38)}… (string)`,
    ],
    [() => check.checkOneOf({}, "", ["a", "b"]), "missing", "Expected exactly one of `a`, `b`, got none"],
    [
      () => check.checkOneOf({ a: 1, b: 2 }, "o", ["a", "b"]),
      "conflict",
      "Expected exactly one of `a`, `b` in `o`, got `a` and `b`",
    ],
  ])("%#", (run, code, message) => {
    expect(refusal(run)).toMatchObject({ code, message });
  });

  test("holds holes in arrays, which loops pass over", () => {
    expect(refusal(() => check.checkArray(new Array(3), "x"))).toEqual({
      code: "missing",
      path: "x[0]",
      message: "Expected `x[0]` to be given, got a hole in an array of 3",
    });
    expect(refusal(() => check.checkArray([1, , 3], "x")).path).toBe("x[1]");
    expect(refusal(() => check.checkArray(new Array(2 ** 32 - 1), "x")).path).toBe("x[0]");
    expect(check.checkArray([undefined], "x")).toEqual([undefined]);
  });

  test("is described without being touched", () => {
    const { proxy, revoke } = Proxy.revocable<object>([], {});
    revoke();
    for (const read of [check.checkObject, check.checkArray, check.checkLength, check.checkText]) {
      const { code, message } = refusal(() => read(proxy, "x"));
      expect([code, message.endsWith("got a revoked proxy")]).toEqual(["type", true]);
    }
    expect(refusal(() => check.checkLength(Object.create(null), "x")).message).toMatch(/got an object$/);
    expect(refusal(() => check.checkWord(Symbol(), "x", ["a"])).message).toMatch(/got Symbol\(\) \(symbol\)$/);
    expect(check.isRecord(proxy)).toBe(false);
    expect(check.isRecord(Object.create(null))).toBe(true);
  });

  test("names the place of the second of two alternatives", () => {
    expect(refusal(() => check.checkOneOf({ a: 1, b: 2 }, "o", ["a", "b"])).path).toBe("o.b");
    expect(refusal(() => check.checkOneOf({ a: 1, b: 2 }, "", ["a", "b"])).path).toBe("b");
  });
});

test("a broken promise of the library itself says that it is a bug", () => {
  assertSound(true, "never");
  expect(() => {
    assertSound(false, "a bound above its plan");
  }).toThrow("bug: a bound above its plan");
});
