import { describe, expect, test } from "vitest";
import { readLiteral, sameValue, writeLiteral } from "./literal.js";

describe("readLiteral", () => {
  test.each<[string, unknown]>([
    ["-1.5e3", -1500],
    ["12n", 12n],
    ['"a b"', "a b"],
    ["'it'", "it"],
    ["undefined", undefined],
    ["[1, [true, null]]", [1, [true, null]]],
    ['{ a: 1, "b c": { d: [] }, 3: "x" }', { a: 1, "b c": { d: [] }, 3: "x" }],
    ["{\n  a: 1,\n}", { a: 1 }],
  ])("reads %s", (text, value) => {
    expect(readLiteral(text)).toStrictEqual(value);
  });

  test.each(["f()", "x", "NaN", "1 + 1", "{ a }", "{ [a]: 1 }", "{ ...a }", "`${a}`", "", "1, 2", "1) + (2", "[1"])(
    "refuses %s",
    (text) => {
      expect(() => readLiteral(text)).toThrow(SyntaxError);
    },
  );
});

describe("writeLiteral", () => {
  test.each<[unknown, string]>([
    [0.1 + 0.2, "0.3"],
    [1e-7, "1e-7"],
    [1234567890123, "1234567890123"],
    [Math.PI * 1e100, "3.14159265359e+100"],
    [[], "[]"],
    [{ a: 1, "b c": ["x", undefined] }, '{ a: 1, "b c": ["x", undefined] }'],
    [-3n, "-3n"],
  ])("writes %s, which reads back", (value, text) => {
    expect(writeLiteral(value)).toBe(text);
    expect(sameValue(readLiteral(text), value)).toBe(true);
  });

  test("spreads the outermost members", () => {
    expect(writeLiteral({ a: [1, 2], b: {} }, true)).toBe("{\n  a: [1, 2],\n  b: {},\n}");
  });

  test.each([NaN, Infinity, -0, () => 0, Symbol("s"), new Map(), new Date(0), [NaN]])("refuses %s", (value) => {
    expect(() => writeLiteral(value)).toThrow(TypeError);
  });
});

describe("sameValue", () => {
  test.each<[unknown, unknown]>([
    [0.1 + 0.2, 0.3],
    [20.7048110546, 20.704811054635428],
    [1e-300, 1.0000000000001e-300],
    [
      { a: 1, b: 2 },
      { b: 2, a: 1 },
    ],
    [[undefined], [undefined]],
  ])("holds for %s and %s", (a, b) => {
    expect(sameValue(a, b)).toBe(true);
    expect(sameValue(b, a)).toBe(true);
  });

  test.each<[unknown, unknown]>([
    [20.704811054, 20.704811054635428],
    [22.5, 22.5000000001],
    [0, 1e-17],
    [0, -0],
    [1, -1],
    [1, "1"],
    [1, 1n],
    ["a", "a "],
    [[1], { 0: 1 }],
    [[1], [1, 2]],
    [{ a: 1 }, { a: 1, b: 2 }],
    [{ a: undefined }, {}],
    [{ a: undefined }, { b: undefined }],
    [null, {}],
    [null, undefined],
  ])("does not hold for %s and %s", (a, b) => {
    expect(sameValue(a, b)).toBe(false);
    expect(sameValue(b, a)).toBe(false);
  });
});
