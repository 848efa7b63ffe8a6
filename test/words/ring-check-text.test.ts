import { describe, expect, test } from "vitest";
import { ringChecks } from "miterwright/closure";
import { ringCheckText, english } from "miterwright/words";

const said = (sides: number, slope: number): string[] =>
  ringChecks({ sides, slope, apothem: 100, width: 30, acceptedGap: 0.3, thickness: 15 }).map((check) =>
    ringCheckText(check),
  );

describe("what to measure on a ring", () => {
  test("is said for every check", () => {
    expect(said(8, 20)).toEqual([
      "length of every piece along the line that is measured at; one against the other, not by the rule",
      "inside angle of every tight corner, taken level",
      "gap of the last joint, one end touching",
      "from the middle of each side square to the opposite side",
      "between every two corners farthest apart",
      "gap under any corner on a flat bench",
      "from the middle of each side square to the opposite side",
      "between every two corners farthest apart",
      "gap under any corner on a flat bench",
      "slope of every side against the bench, the joints tight",
    ]);
    expect(said(7, 0)[3]).toBe("from each corner square to the opposite side");
  });

  test("is said in other words where such are given, and refused where it is none", () => {
    const [check] = ringChecks({ sides: 8, apothem: 100, width: 30, acceptedGap: 0.3 });
    const words = { ...english, ringChecks: { ...english.ringChecks, "piece-length": () => "how long" } };
    expect(ringCheckText(check!, { words })).toBe("how long");
    expect(() => ringCheckText({ ...check, code: "width" } as never)).toThrow("Expected `check.code` to be one of");
  });
});
