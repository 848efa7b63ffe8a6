import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { preciseSection } from "miterwright/precise";
import { someDigits, spread } from "./arbitraries.js";
import { cosine, fix, sine, text, times } from "./oracle.js";

describe("preciseSection", () => {
  test("rotates: out = x cos s - y sin s, up = x sin s + y cos s", () => {
    const coordinate = spread(-1000, 1000);
    const slope = spread(-90, 90);
    fc.assert(
      fc.property(coordinate, coordinate, slope, someDigits, (x, y, s, digits) => {
        const [cos, sin] = [cosine(fix(s)), sine(fix(s))];
        const [a, b] = [fix(x), fix(y)];
        expect(preciseSection({ x, y }, { slope: s, digits })).toEqual({
          out: text(times(a, cos) - times(b, sin), digits),
          up: text(times(a, sin) + times(b, cos), digits),
        });
      }),
      { numRuns: 60 },
    );
  });

  // pi/180, OEIS A019685, value from memory. The sine of 1e-40 degrees has its digits, up to a part in 1e83.
  test("of a slope of 1e-40 degrees shows pi/180", () => {
    const { up } = preciseSection({ x: 1, y: 0 }, { slope: "1e-40", digits: 75 });
    expect(up).toBe(
      `0.${"0".repeat(41)}174532925199432957692369076848861271344287188854172545609719144017100911460`.replace(
        /0$/u,
        "",
      ),
    );
  });

  test.each([
    [0, "3", "4"],
    [90, "-4", "3"],
    [-90, "4", "-3"],
  ])("is exact at a slope of %s", (slope, out, up) => {
    expect(preciseSection({ x: 3, y: 4 }, { slope })).toEqual({ out, up });
  });

  test("is exact by half at 30 and 60", () => {
    expect(preciseSection({ x: 3, y: 0 }, { slope: 60 }).out).toBe("1.5");
    expect(preciseSection({ x: 3, y: 0 }, { slope: 30 }).up).toBe("1.5");
    expect(preciseSection({ x: 0, y: 3 }, { slope: -30 }).out).toBe("1.5");
  });

  test("keeps a small part beside a huge one", () => {
    const { out } = preciseSection({ x: "1e100", y: "1e-100" }, { slope: "0", digits: 1000 });
    expect(out).toBe(`1${"0".repeat(100)}`);
    const { up } = preciseSection({ x: "1e100", y: "1e-100" }, { slope: "30", digits: 250 });
    // 5e99 and 1e-100 times sqrt(3)/2.
    expect(up).toBe(`5${"0".repeat(99)}.${"0".repeat(100)}86602540378443864676372317075293618347140262690519`);
  });
});
