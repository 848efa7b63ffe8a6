import type { ParseFault } from "miterwright/errors";
import { tryParseAngle, tryParseLength, type ParseOutcome } from "miterwright/units";
import { describe, expect, test } from "vitest";

/** The fault of a text, and the reason that is written beside it. */
function faultOf(outcome: ParseOutcome): readonly [fault: ParseFault, reason: string] {
  if (outcome.ok) throw new Error("The text was read");
  return [outcome.error.fault, outcome.error.reason];
}

describe("a text that can't be read says why as data", () => {
  test.each<[text: string, code: ParseFault["code"]]>([
    ["", "no-number"],
    ["1',", "no-number"],
    ["5.", "no-decimals"],
    ["7/", "no-denominator"],
    ["7/0", "zero-denominator"],
    ["⁷", "no-slash"],
    ["1.5/2", "broken-fraction"],
    ["5 17/16", "improper-fraction"],
    ["5 7", "two-numbers"],
    ["1.2.3", "second-point"],
    ["1e1000", "large-exponent"],
    ["5 - 7/16", "unclear-hyphen"],
    ["5−2", "late-minus"],
    ["1.5' 2\"", "early-fraction"],
    ["5\" 1'", "unit-order"],
    ["5 mm 2", "no-unit"],
    ["5.5 2", "no-unit-between"],
    ["5 ells", "unknown-unit"],
    ["1e200", "out-of-range"],
  ])("%j: %s", (text, code) => {
    const [fault] = faultOf(tryParseLength(text, "in"));
    expect(fault).toEqual({ code });
  });

  test.each<[text: string, fault: ParseFault]>([
    ["1,234", { code: "unclear-comma", decimals: "1.234", thousands: "1234" }],
    ["1 234", { code: "unclear-space", thousands: "1234" }],
    ["1 ft.5", { code: "unclear-joint", sign: "point" }],
    ["1' 12\"", { code: "too-many-parts", limit: 12 }],
    ["1".repeat(1001), { code: "too-many-digits", limit: 1000 }],
  ])("%.10j, with what its words need", (text, fault) => {
    const [found, reason] = faultOf(tryParseLength(text, "in"));
    expect(found).toEqual(fault);
    for (const value of Object.values(found).slice(1)) expect(reason).toContain(String(value));
  });

  test("angles too", () => {
    expect(faultOf(tryParseAngle("22°60'"))[0]).toEqual({ code: "too-many-parts", limit: 60 });
    expect(faultOf(tryParseAngle("22 grad"))[0]).toEqual({ code: "unknown-unit" });
  });
});
