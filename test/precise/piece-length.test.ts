import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { precisePieceLength } from "miterwright/precise";
import { someDigits, spread } from "./arbitraries.js";
import { cosine, fix, sine, tangent, text, times } from "./oracle.js";

describe("precisePieceLength", () => {
  test("is 2 (A + out(at) - out(on)) tan(180/n)", () => {
    const coordinate = spread(0, 40);
    const point = fc.record({ x: coordinate, y: coordinate });
    const sides = fc.oneof(fc.integer({ min: 3, max: 20 }), fc.integer({ min: 3, max: 1_000_000 }));
    const slope = spread(-90, 90);
    const apothem = spread(100, 1000);
    fc.assert(
      fc.property(sides, apothem, slope, point, point, someDigits, (n, a, s, on, at, digits) => {
        const [cos, sin] = [cosine(fix(s)), sine(fix(s))];
        const moved = times(fix(at.x) - fix(on.x), cos) - times(fix(at.y) - fix(on.y), sin);
        const length = 2n * times(fix(a) + moved, tangent(fix(180) / BigInt(n)));
        expect(precisePieceLength({ sides: n, apothem: a, slope: s, on, at, digits })).toBe(text(length, digits));
      }),
      { numRuns: 60 },
    );
  });

  test("is exact in a flat square", () => {
    const rabbet = { x: "7.25", y: 0 };
    const outer = { x: "40", y: "19" };
    expect(precisePieceLength({ sides: 4, apothem: "99.5", slope: 0, on: rabbet, at: outer })).toBe("264.5");
    expect(precisePieceLength({ sides: 4, apothem: "99.5", slope: 0, on: rabbet, at: rabbet })).toBe("199");
  });

  test("does not change when the section is drawn elsewhere", () => {
    const common = { sides: 7, apothem: 100, slope: "31.5" };
    const here = precisePieceLength({ ...common, on: { x: 3, y: 2 }, at: { x: "40.5", y: 20 } });
    expect(
      precisePieceLength({
        ...common,
        on: { x: "-1e20", y: "7e20" },
        at: { x: "-99999999999999999962.5", y: "700000000000000000018" },
      }),
    ).toBe(here);
  });

  test("refuses a frame that closes before the arris", () => {
    const point = { x: 0, y: 0 };
    expect(() => precisePieceLength({ sides: 4, apothem: 5, slope: 0, on: { x: 5, y: 0 }, at: point })).toThrow(
      expect.objectContaining({
        code: "impossible",
        path: "apothem",
        message: "Expected `apothem` to leave the piece a length at `at`, but the frame closes before",
      }),
    );
    expect(() => precisePieceLength({ sides: 4, apothem: 5, slope: 0, on: { x: 8, y: 0 }, at: point })).toThrow(
      "the frame closes before",
    );
    expect(precisePieceLength({ sides: 4, apothem: 5, slope: 0, on: { x: "4.5", y: 0 }, at: point })).toBe("1");
  });
});
