import { type LengthUnit, type ParseOutcome, parseLength, tryParseLength } from "miterwright/units";
import { describe, expect, expectTypeOf, test } from "vitest";

/** Text, the unit it is read in, and the value; where it is no short decimal, as the division that rounds it once. */
type Row = readonly [text: string, unit: LengthUnit, value: number];

const check = ([text, unit, value]: Row): void => {
  expect(parseLength(text, unit)).toBe(value);
};

describe("parseLength reads what people type", () => {
  test.each<Row>([
    ["5 7/16", "in", 5.4375],
    ['5-7/16"', "in", 5.4375],
    ["3⅞ in", "in", 3.875],
    ["1' 2 1/2\"", "in", 14.5],
    ["2ft 3in", "in", 27],
    ["90.5mm", "mm", 90.5],
    ["1,5 mm", "mm", 1.5],
    ["7/16", "in", 0.4375],
    ["57/16", "in", 3.5625],
    ["12", "ft", 12],
    ["0", "mm", 0],
  ])("%s", (...row) => {
    check(row);
  });

  test.each<Row>([
    [".5", "in", 0.5],
    ["0.5", "in", 0.5],
    [",5", "mm", 0.5],
    ["0,125", "mm", 0.125],
    ["1234,567", "mm", 1234.567],
    ["1,25", "mm", 1.25],
    ["1,2345", "mm", 1.2345],
    ["007", "mm", 7],
    ["1e3 mm", "m", 1],
    ["1E3 mm", "m", 1],
    // A letter other than e before a digit begins a unit, no exponent.
    ["5m3cm", "cm", 503],
    ["2.5E-2m", "mm", 25],
    ["1e+2", "mm", 100],
    ["1e-7", "m", 1e-7],
    ["0e999", "mm", 0],
  ])("decimals: %s", (...row) => {
    check(row);
  });

  test.each<Row>([
    ["1/2m", "mm", 500],
    ["2 1/2 cm", "mm", 25],
    ["1/3 ft", "in", 4],
    ["5 7 / 16", "in", 5.4375],
    ["5 7⁄16", "in", 5.4375],
    ["5 7∕16", "in", 5.4375],
    ["5 ⁷⁄₁₆", "in", 5.4375],
    ["5⁷⁄₁₆", "in", 5.4375],
    ["5⁷/₁₆", "in", 5.4375],
    ["⁷⁄16", "in", 0.4375],
    ["5 ⅟16", "in", 5.0625],
    ["⅟₆₄", "in", 1 / 64],
    ["5-⅞", "in", 5.875],
    ["5 0/16", "in", 5],
    ["0 1/2", "in", 0.5],
    ["5‐7/16", "in", 5.4375],
    ["5‑7/16", "in", 5.4375],
    ["5–7/16", "in", 5.4375],
  ])("fractions: %s", (...row) => {
    check(row);
  });

  const vulgar =
    "¼ 1/4 ½ 1/2 ¾ 3/4 ⅐ 1/7 ⅑ 1/9 ⅒ 1/10 ⅓ 1/3 ⅔ 2/3 ⅕ 1/5 ⅖ 2/5 ⅗ 3/5 ⅘ 4/5 ⅙ 1/6 ⅚ 5/6 ⅛ 1/8 ⅜ 3/8 ⅝ 5/8 ⅞ 7/8 ↉ 0/3";
  test.each(vulgar.match(/\S+ \S+/g)!.map((pair) => pair.split(" ") as [string, string]))(
    "the character %s is %s",
    (character, fraction) => {
      const [top, bottom] = fraction.split("/").map(Number) as [number, number];
      expect(parseLength(character, "in")).toBe(top / bottom);
      expect(parseLength(`5${character}"`, "in")).toBe((5 * bottom + top) / bottom);
      expect(parseLength(`5 ${character}`, "in")).toBe((5 * bottom + top) / bottom);
    },
  );

  test.each<Row>([
    ["1'-2\"", "in", 14],
    ["1' - 2\"", "in", 14],
    ["1'- 2\"", "in", 14],
    ["1'–2\"", "in", 14],
    ["1'2", "in", 14],
    ["1' 2", "in", 14],
    ["1ft 2", "in", 14],
    ["1'-2-1/2\"", "in", 14.5],
    ["1' 1/2\"", "in", 12.5],
    ["1' 0 1/2\"", "in", 12.5],
    ["1'½", "in", 12.5],
    ["1' 2.5\"", "in", 14.5],
    ["1' 2,5\"", "in", 14.5],
    ["2 ft .5 in", "in", 24.5],
    ["2 ft, 3 in", "in", 27],
    ["2 ft. 3 in.", "in", 27],
    ["2 ft., 3 in.", "in", 27],
    ["2FT3IN", "in", 27],
    ["1' 11 63/64\"", "in", 23.984375],
    ["2' 6\"", "mm", 762],
    ["1 m 20 cm", "mm", 1200],
    ["1 m 20 cm 5 mm", "mm", 1205],
    ["1m 5mm", "mm", 1005],
    ["3 cm 2,5 mm", "mm", 32.5],
    ["2 1/2'", "in", 30],
    ["1.5 ft", "in", 18],
  ])("units that go down: %s", (...row) => {
    check(row);
  });

  const words = {
    mm: ["mm", "MM", "millimeter", "millimeters", "millimetre", "millimetres"],
    cm: ["cm", "Cm", "centimeter", "centimeters", "centimetre", "centimetres"],
    m: ["m", "M", "meter", "meters", "metre", "metres"],
    in: ["in", "in.", "IN", "inch", "Inches", '"', "”", "“", "″", "''", "’’", "′′"],
    ft: ["ft", "ft.", "FT", "foot", "feet", "'", "’", "‘", "′", "´"],
  };
  test.each(Object.entries(words) as [LengthUnit, string[]][])("the names of %s", (unit, names) => {
    for (const name of names) {
      expect(parseLength(`2${name}`, unit)).toBe(2);
      expect(parseLength(`2 ${name} `, unit)).toBe(2);
    }
  });

  test.each<Row>([
    ["-5", "in", -5],
    ["−5", "in", -5],
    ["–5", "in", -5],
    ["- 5 7/16", "in", -5.4375],
    ["-1' 2 1/2\"", "in", -14.5],
    ["-½", "in", -0.5],
    ["-.5", "in", -0.5],
    ["+5", "in", 5],
    ["-1e-3 m", "mm", -1],
  ])("signs: %s", (...row) => {
    check(row);
  });

  test("a zero with a minus sign is 0", () => {
    expect(parseLength("-0", "mm")).toBe(0);
    expect(parseLength("−0'0\"", "mm")).toBe(0);
  });

  test.each([" ", "\u00A0", "\u2009", "\u202F", "\u2007", "\u3000", "\t", "\n", "\u200B", "\u2060", "\uFEFF"])(
    "the space %j",
    (space) => {
      expect(parseLength(`${space}1'${space}2${space}1/2${space}"${space}`, "in")).toBe(14.5);
      expect(parseLength(`${space}-${space}90.5${space}${space}mm`, "mm")).toBe(-90.5);
    },
  );

  test("a bare number is in the unit asked for, others are converted with one rounding", () => {
    expect(parseLength("5 7/16", "mm")).toBe(5.4375);
    expect(parseLength("5 7/16 in", "mm")).toBe(138.1125);
    expect(parseLength("90.5 mm", "in")).toBe(905 / 254);
    expect(parseLength("0.1 mm", "ft")).toBe(1 / 3048);
    // 0.3 * 0.0254 in doubles is 0.007619999999999999.
    expect(parseLength("0.3 in", "m")).toBe(0.00762);
  });

  test("numbers too long for doubles are rounded once too", () => {
    // Halfway between 1 and the next double, and one digit to either side of it.
    expect(parseLength("1.00000000000000011102230246251565404236316680908203125", "mm")).toBe(1);
    expect(parseLength("1.000000000000000111022302462515654042363166809082031251", "mm")).toBe(1 + 2 ** -52);
    expect(parseLength("9007199254740993", "mm")).toBe(9007199254740992);
    expect(parseLength("9007199254740993/1", "mm")).toBe(9007199254740992);
    expect(parseLength("9007199254740993 1/9007199254740993", "mm")).toBe(9007199254740994);
    expect(parseLength(`0.${"3".repeat(1000)}`, "mm")).toBe(1 / 3);
    expect(parseLength(`${"3".repeat(1000)}/1${"0".repeat(999)}`, "mm")).toBe(10 / 3);
    expect(parseLength(`1' 11.${"9".repeat(999)}"`, "ft")).toBe(2);
  });

  test("the ends of the range can be reached", () => {
    expect(parseLength("1e100", "mm")).toBe(1e100);
    expect(parseLength(`1${"0".repeat(100)}`, "mm")).toBe(1e100);
    expect(parseLength("1e-100", "mm")).toBe(1e-100);
    expect(parseLength("-1e100", "mm")).toBe(-1e100);
    expect(parseLength("1e97 m", "mm")).toBe(1e100);
    expect(parseLength("1e103 mm", "m")).toBe(1e100);
  });
});

describe("tryParseLength", () => {
  test("gives the value", () => {
    expect(tryParseLength("5 7/16", "in")).toEqual({ ok: true, value: 5.4375 });
  });

  test("gives the error that parseLength throws", () => {
    const outcome = tryParseLength("5 7/", "in");
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(() => parseLength("5 7/", "in")).toThrow(outcome.error);
    expect(outcome.error).toMatchObject({
      name: "ParseError",
      code: "syntax",
      path: "text",
      value: "5 7/",
      position: 4,
    });
  });

  test("is narrowed by `ok`", () => {
    expectTypeOf<Extract<ParseOutcome, { ok: true }>["value"]>().toEqualTypeOf<number>();
    expectTypeOf<Extract<ParseOutcome, { ok: false }>["error"]["position"]>().toEqualTypeOf<number>();
    expectTypeOf(tryParseLength).returns.toEqualTypeOf<ParseOutcome>();
    // @ts-expect-error there is no value before `ok` has been looked at
    expect(tryParseLength("1", "in").value).toBe(1);
    // @ts-expect-error yards are no unit here
    expect(() => parseLength("1", "yd")).toThrow();
  });
});
