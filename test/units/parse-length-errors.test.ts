import { isInputError, ParseError } from "miterwright/errors";
import { type LengthUnit, parseLength, tryParseLength } from "miterwright/units";
import { describe, expect, test } from "vitest";

/** What is said of a text: the code, the position, and the reason. */
type Row = readonly [text: string, code: string, position: number, why: string];

const check = ([text, code, position, why]: Row): void => {
  const outcome = tryParseLength(text, "in");
  expect(outcome.ok).toBe(false);
  if (outcome.ok) return;
  const { error } = outcome;
  expect(error).toBeInstanceOf(ParseError);
  expect(isInputError(error)).toBe(true);
  const message = `Expected \`text\` to be a length, got ${JSON.stringify(text)} (string): at character ${position + 1}, ${why}`;
  expect(error).toMatchObject({ code, path: "text", value: text, position, message, reason: why });
};

const NUMBER = "a number is missing";
const UNIT = "the unit must be mm, cm, m, in or ft";
const DECIMALS = "digits are missing after the point or comma";
const SECOND = "there is a second point or comma; thousands are written without separators";
const SLASH = 'a fraction\'s "/" is missing';
const SIDE = 'two numbers stand side by side; a unit between them or a "/" is missing';
const OTHER = "another number follows; a unit between them is missing";
const WHOLE = "a fraction has two whole numbers, as in 7/16";
const HYPHEN = "the hyphen could be a minus sign; a fraction is joined as in 5-7/16";
const MINUS = "a minus sign can only stand in front";
const SYSTEM = "units must go down within one system";
const LAST = "only the last part can have a fraction or decimals";
const PROPER = "the fraction beside a whole number is not below 1";
const ZERO = "the denominator is zero";
const SIZE = "the value must be 0 or from 1e-100 to 1e100 in size";

describe("parseLength says where and why a text is no length", () => {
  test.each<Row>([
    ["", "missing", 0, NUMBER],
    ["  ", "missing", 2, NUMBER],
    ["-", "syntax", 1, NUMBER],
    ["--5", "syntax", 1, NUMBER],
    ["+-5", "syntax", 1, NUMBER],
    ["x", "syntax", 0, NUMBER],
    ["in", "syntax", 0, NUMBER],
    ["mm 5", "syntax", 0, NUMBER],
    ["(5)", "syntax", 0, NUMBER],
    ["/2", "syntax", 0, NUMBER],
    ["NaN", "syntax", 0, NUMBER],
    ["Infinity", "syntax", 0, NUMBER],
    ["5 in x", "syntax", 5, NUMBER],
    ["5'''", "syntax", 3, NUMBER],
    ["1' -", "syntax", 4, NUMBER],
    ["1',", "syntax", 3, NUMBER],
    ["1' −2\"", "syntax", 3, NUMBER],
    ["１", "syntax", 0, NUMBER],
  ])("a missing number: %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    ["5.", "syntax", 2, DECIMALS],
    ["5.in", "syntax", 2, DECIMALS],
    ["5,", "syntax", 2, DECIMALS],
    [".", "syntax", 1, DECIMALS],
    ["1.2.3", "syntax", 3, SECOND],
    ["1,234,567", "syntax", 5, SECOND],
    ["1,234.5", "syntax", 5, SECOND],
    ["1.234,5", "syntax", 5, SECOND],
  ])("decimals: %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    ["1,234", "syntax", 1, "the comma could mark decimals or thousands; write 1.234 or 1234"],
    ["12,345 mm", "syntax", 2, "the comma could mark decimals or thousands; write 12.345 or 12345"],
    ["-123,400in", "syntax", 4, "the comma could mark decimals or thousands; write 123.400 or 123400"],
    ["5 - 7/16", "syntax", 2, HYPHEN],
    ["5 -7/16", "syntax", 2, HYPHEN],
    ["5- 7/16", "syntax", 1, HYPHEN],
    ["5-", "syntax", 1, HYPHEN],
    ["1' -2\"", "syntax", 3, MINUS],
    ["2ft.3in", "syntax", 3, "the point could end a part or mark decimals; write a space"],
    ["2ft,3in", "syntax", 3, "the comma could end a part or mark decimals; write a space"],
    ["2ft ,3in", "syntax", 4, "the comma could end a part or mark decimals; write a space"],
    ["1 m 20", "syntax", 6, "the last number needs a unit"],
    ['5" 1/2', "syntax", 6, "the last number needs a unit"],
  ])("text that could mean two things: %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    ["5 7", "syntax", 3, SIDE],
    ["1 23 mm", "syntax", 5, SIDE],
    ["1234 567", "syntax", 8, SIDE],
    ["0 234", "syntax", 5, SIDE],
    ["5-7", "syntax", 1, HYPHEN],
    ["2-3 mm", "syntax", 1, HYPHEN],
    ["1-234", "syntax", 1, HYPHEN],
    ["1 234,5", "syntax", 1, "the space could part thousands; write 1234"],
    ["1 234 mm", "syntax", 1, "the space could part thousands; write 1234"],
    ["12\u202f345", "syntax", 2, "the space could part thousands; write 12345"],
    ["5²", "syntax", 2, SLASH],
    ["²", "syntax", 1, SLASH],
    ["5 7/", "syntax", 4, "a denominator is missing"],
    ["7/x", "syntax", 2, "a denominator is missing"],
    ["⅟", "syntax", 1, "a denominator is missing"],
    ["5/0", "range", 2, ZERO],
    ["5 7/ 00", "range", 5, ZERO],
    [`1/${"0".repeat(20)}`, "range", 2, ZERO],
    ["5 16/16", "range", 2, PROPER],
    ["5-17/16", "range", 2, PROPER],
    ["2.5 1/2", "syntax", 4, OTHER],
    ["3 1/2 1/4", "syntax", 6, OTHER],
    ["½½", "syntax", 1, OTHER],
    ["½ ²⁄₃", "syntax", 2, OTHER],
    ["1.5/2", "syntax", 3, WHOLE],
    ["½/2", "syntax", 1, WHOLE],
    ["1/2/3", "syntax", 3, WHOLE],
    ["7/16/2", "syntax", 4, WHOLE],
  ])("fractions: %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    ["5 furlongs", "syntax", 2, UNIT],
    ["5 yd", "syntax", 2, UNIT],
    ["5µm", "syntax", 1, UNIT],
    ["5°", "syntax", 1, UNIT],
    ["5 $", "syntax", 2, UNIT],
    ["5−7/16", "syntax", 1, MINUS],
    ["1 e3", "syntax", 2, UNIT],
    ["5e", "syntax", 1, UNIT],
    ["5 constructor", "syntax", 2, UNIT],
    ["1' 5e-1\"", "syntax", 4, UNIT],
    ["1 m 6 in", "syntax", 6, SYSTEM],
    ["1' 6 cm", "syntax", 5, SYSTEM],
    ["2 in 1 ft", "syntax", 7, SYSTEM],
    ["1' 2'", "syntax", 4, SYSTEM],
    ["5 in - 3 in", "syntax", 9, SYSTEM],
    ["1.5' 3\"", "syntax", 5, LAST],
    ["1.0' 3\"", "syntax", 5, LAST],
    ["1/2 ft 3 in", "syntax", 7, LAST],
    ["2/1 ft 3 in", "syntax", 7, LAST],
    ["1e1 ft 3 in", "syntax", 7, LAST],
    ["1' 12\"", "range", 3, "the number beside a larger unit is not below 12"],
    ["1' 61/2\"", "range", 3, "the number beside a larger unit is not below 12"],
    ["1'234", "range", 2, "the number beside a larger unit is not below 12"],
    ["1 m 100 cm", "range", 4, "the number beside a larger unit is not below 100"],
    ["1 m 1000 mm", "range", 4, "the number beside a larger unit is not below 1000"],
    [`1' ${"9".repeat(30)}`, "range", 3, "the number beside a larger unit is not below 12"],
  ])("units: %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    ["1e101", "range", 0, SIZE],
    ["- 1e101", "range", 2, SIZE],
    ["1e-101", "range", 0, SIZE],
    ["1e-999", "range", 0, SIZE],
    ["1e999", "range", 0, SIZE],
    ["1e100 ft", "range", 0, SIZE],
    ["1e1000", "range", 2, "an exponent is beyond 999"],
    ["1e-99999999999999999999", "range", 2, "an exponent is beyond 999"],
  ])("size: %j", (...row) => {
    check(row);
  });

  test.each([
    ["9".repeat(1001), 1000],
    [`5 ${"¹".repeat(1001)}⁄₂`, 1002],
    [`1/${"2".repeat(1001)}`, 1002],
    [`0.${"0".repeat(1001)}`, 1002],
  ])("a number of more than 1000 digits", (text, position) => {
    const shown = `${JSON.stringify(text).slice(0, 39)}…`;
    expect(() => parseLength(text, "in")).toThrow(
      `Expected \`text\` to be a length, got ${shown} (string): at character ${position + 1}, a number has more than 1000 digits`,
    );
  });
});

describe.each([
  ["parseLength", parseLength],
  ["tryParseLength", tryParseLength],
])("%s throws for what no person typed", (_, parse) => {
  test.each([
    [5, "type", "Expected `text` to be a string, got 5 (number)"],
    [undefined, "missing", "Expected `text` to be a string, got undefined"],
    [null, "type", "Expected `text` to be a string, got null"],
    [["5"], "type", "Expected `text` to be a string, got an array of 1"],
  ])("text %j", (text, code, message) => {
    expect(() => parse(text as unknown as string, "in")).toThrow(
      expect.objectContaining({ name: "InputError", code, path: "text", value: text, message }),
    );
  });

  test.each([
    ["yd", "unknown", 'Expected `unit` to be one of "mm", "cm", "m", "in", "ft", got "yd" (string)'],
    ["toString", "unknown", 'Expected `unit` to be one of "mm", "cm", "m", "in", "ft", got "toString" (string)'],
    [25.4, "type", 'Expected `unit` to be one of "mm", "cm", "m", "in", "ft", got 25.4 (number)'],
    [undefined, "missing", 'Expected `unit` to be one of "mm", "cm", "m", "in", "ft", got undefined'],
  ])("unit %j", (unit, code, message) => {
    expect(() => parse("5", unit as LengthUnit)).toThrow(
      expect.objectContaining({ name: "InputError", code, path: "unit", value: unit, message }),
    );
  });
});
