import { describe, expect, test } from "vitest";
import { InputError, isInputError, ParseError, type Expected } from "miterwright/errors";
import { compoundMiter } from "miterwright/miter";
import { POLYGON_MEASURES, regularPolygon } from "miterwright/polygon";
import { fitStock } from "miterwright/stock";
import { formatLength, formatters } from "miterwright/units";

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

describe("what was expected", () => {
  const expectedBy = (call: () => unknown): unknown => {
    try {
      call();
    } catch (error) {
      if (isInputError(error)) return error.expected;
      throw error;
    }
    return undefined;
  };

  test.each<[string, () => unknown, Expected]>([
    [
      "a count",
      () => regularPolygon({ sides: 2, side: 1 }),
      { clause: "an integer from 3 to 1000000", kind: "integer", min: 3, max: 1e6 },
    ],
    [
      "a length",
      () => regularPolygon({ sides: 3, side: -1 }),
      {
        clause: "a positive length (1e-100 to 1e100)",
        kind: "number",
        min: 1e-100,
        max: 1e100,
      },
    ],
    [
      "an angle",
      () => compoundMiter({ sides: 6, slope: 91 }),
      { clause: "degrees from -90 to 90", kind: "number", min: -90, max: 90 },
    ],
    [
      "a number whose bounds are excluded",
      () => compoundMiter({ turn: 180, slope: 0 }),
      {
        clause: "a number between -180 and 180, bounds excluded",
        kind: "between",
        min: -180,
        max: 180,
      },
    ],
    [
      "a word",
      () => formatLength(1, "yd" as never),
      { clause: 'one of "mm", "cm", "m", "in", "ft"', kind: "one-of", words: ["mm", "cm", "m", "in", "ft"] },
    ],
    ["an object", () => regularPolygon(null as never), { clause: "an object", kind: "object" }],
    [
      "one of several keys",
      () => regularPolygon({ sides: 3 } as never),
      {
        clause: `exactly one of ${POLYGON_MEASURES.map((name) => `\`${name}\``).join(", ")}`,
        kind: "exactly-one",
        keys: POLYGON_MEASURES,
      },
    ],
  ])("is data: %s", (_, call, expected) => {
    expect(expectedBy(call)).toEqual(expected);
  });

  test("names the nearest key of those that are known", () => {
    expect(expectedBy(() => fitStock({ pieces: [], stiks: [] } as never))).toEqual({
      clause: "no key but `pieces`, `sticks`, `kerf`, `trim`, `keep`, `credit`, `resolution`, `schemaVersion`",
      kind: "no-other-key",
      keys: ["pieces", "sticks", "kerf", "trim", "keep", "credit", "resolution", "schemaVersion"],
      nearest: "sticks",
    });
  });

  test("is the clause of the sentence where it is nothing of these, and nothing where an error was made by hand", () => {
    expect(expectedBy(() => formatters({ unit: "mm", money: 3 as never }))).toEqual({
      kind: "other",
      clause: "a function that writes an amount of money",
    });
    expect(new InputError(facts).expected).toEqual({ clause: null, kind: "other" });
  });
});

describe("ParseError", () => {
  test("is an InputError with a position and a reason", () => {
    const error = new ParseError({
      ...facts,
      code: "syntax",
      position: 4,
      reason: "why",
      fault: { code: "no-number" },
    });
    expect(error).toBeInstanceOf(InputError);
    expect(error).toMatchObject({
      name: "ParseError",
      code: "syntax",
      position: 4,
      reason: "why",
      fault: { code: "no-number" },
    });
  });
});

describe("isInputError", () => {
  test("holds for both kinds", () => {
    expect(isInputError(new InputError(facts))).toBe(true);
    expect(isInputError(new ParseError({ ...facts, position: 0, reason: "why", fault: { code: "no-number" } }))).toBe(
      true,
    );
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
