import { ParseError } from "miterwright/errors";
import { parseAngle, type ParseOutcome, tryParseAngle } from "miterwright/units";
import { describe, expect, expectTypeOf, test } from "vitest";

describe("parseAngle reads what people type", () => {
  test.each([
    ["22.5", 22.5],
    ["22,5°", 22.5],
    ["22½", 22.5],
    ["22 1/2°", 22.5],
    ["22-1/2 deg", 22.5],
    ["22°30'", 22.5],
    ["22°30", 22.5],
    ["22° 30", 22.5],
    ["22°-30'", 22.5],
    ["22º30′", 22.5],
    ["22˚30’", 22.5],
    ["22 deg 30 min", 22.5],
    ["22 Degrees, 30 Minutes", 22.5],
    ["22 deg. 30 min.", 22.5],
    ["1 degree", 1],
    ["22°30'15\"", 81_015 / 3600],
    ["22°30'15", 81_015 / 3600],
    ["22° 30′ 15″", 81_015 / 3600],
    ["22°30’15”", 81_015 / 3600],
    ["22°30'15''", 81_015 / 3600],
    ["22 degrees 30 minutes 15 seconds", 81_015 / 3600],
    ["22deg 30min 15sec", 81_015 / 3600],
    ["22°30'15.5\"", 162_031 / 7200],
    ["22°30'15,5\"", 162_031 / 7200],
    ["22°30'15 1/2\"", 162_031 / 7200],
    ['22°15"', 79_215 / 3600],
    ["36° 0.9'", 36.015],
    ["0°00'00\"", 0],
    ["30'", 0.5],
    ["1 minute", 1 / 60],
    ['36"', 0.01],
    ["1 second", 1 / 3600],
    ["90'", 1.5],
    ["720", 720],
    ["-22°30'", -22.5],
    ["−22.5°", -22.5],
    ["+22.5°", 22.5],
    ["22\u00A0°\u202F30\u2009'", 22.5],
    ["1e2", 100],
  ])("%s", (text, degrees) => {
    expect(parseAngle(text)).toBe(degrees);
  });

  test("a zero with a minus sign is 0", () => {
    expect(parseAngle("-0°00'")).toBe(0);
  });
});

describe("parseAngle says where and why a text is no angle", () => {
  const unit = "the unit must be ° (deg), ' (min) or \" (sec)";
  test.each([
    ["", "missing", 0, "a number is missing"],
    ["°", "syntax", 0, "a number is missing"],
    ["22 30", "syntax", 5, 'two numbers stand side by side; a unit between them or a "/" is missing'],
    ["22:30", "syntax", 2, unit],
    ["22 rad", "syntax", 3, unit],
    ["22 in", "syntax", 3, unit],
    ["22°30'15\" x", "syntax", 10, "a number is missing"],
    ["22°30'15\"7", "syntax", 10, "the last number needs a unit"],
    ["22.5°30'", "syntax", 5, "only the last part can have a fraction or decimals"],
    ["22°60'", "range", 3, "the number beside a larger unit is not below 60"],
    ["22°30'60", "range", 6, "the number beside a larger unit is not below 60"],
    ['22°3600"', "range", 3, "the number beside a larger unit is not below 3600"],
    ["22°30°", "syntax", 5, "units must go down within one system"],
    ["30'22°", "syntax", 5, "units must go down within one system"],
    ["22° -30'", "syntax", 4, "a minus sign can only stand in front"],
    ["1,234°", "syntax", 1, "the comma could mark decimals or thousands; write 1.234 or 1234"],
    ["1e101", "range", 0, "the value must be 0 or from 1e-100 to 1e100 in size"],
  ])("%j", (text, code, position, why) => {
    const outcome = tryParseAngle(text);
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    const message = `Expected \`text\` to be an angle, got ${JSON.stringify(text)} (string): at character ${position + 1}, ${why}`;
    expect(outcome.error).toBeInstanceOf(ParseError);
    expect(outcome.error).toMatchObject({ code, path: "text", value: text, position, message });
    expect(() => parseAngle(text)).toThrow(outcome.error);
  });

  test.each([[22.5], [undefined], [{}]])("%j is not even a text", (text) => {
    for (const parse of [parseAngle, tryParseAngle]) {
      expect(() => parse(text as unknown as string)).toThrow(
        expect.objectContaining({ name: "InputError", code: text === undefined ? "missing" : "type", path: "text" }),
      );
    }
    expect(() => parseAngle(22.5 as unknown as string)).toThrow("Expected `text` to be a string, got 22.5 (number)");
  });
});

test("tryParseAngle gives the value", () => {
  expect(tryParseAngle("22° 30'")).toEqual({ ok: true, value: 22.5 });
  expectTypeOf(tryParseAngle).returns.toEqualTypeOf<ParseOutcome>();
  expectTypeOf(parseAngle).parameters.toEqualTypeOf<[text: string]>();
});
