import { Decimal } from "decimal.js";
import { describe, expect, test } from "vitest";
import {
  preciseCompoundMiter,
  preciseCorner,
  precisePolygon,
  preciseSawSetting,
  preciseSection,
  precisePieceLength,
} from "miterwright/precise";

/** Rounds a plain decimal text half away from zero, by its digits alone. */
function roundText(plain: string, digits: number): string {
  const sign = plain.startsWith("-") ? "-" : "";
  const [whole = "", fraction = ""] = plain.replace("-", "").split(".");
  const all = whole + fraction;
  const lead = all.search(/[1-9]/u);
  const end = lead + digits;
  if (lead < 0 || end >= all.length) return plain;
  const carry = all[end]! >= "5" ? 1n : 0n;
  const kept = (BigInt(all.slice(0, end)) + carry).toString().padStart(end, "0") + "0".repeat(all.length - end);
  const point = kept.length - fraction.length;
  const places = kept.slice(point).replace(/0+$/u, "");
  return sign + (kept.slice(0, point).replace(/^0+(?=\d)/u, "") || "0") + (places === "" ? "" : `.${places}`);
}

const board = { slope: 37, thickness: 18 };
const other = { slope: 52, thickness: 12 };
/** One of each function's results that no short text can be. */
const asked: Readonly<Record<string, (digits?: number) => string>> = {
  area: (digits) => precisePolygon({ sides: 7, side: "2.5", digits }).area,
  interiorAngle: (digits) => precisePolygon({ sides: 7, side: 1, digits }).interiorAngle,
  miter: (digits) => preciseCompoundMiter({ sides: 9, slope: "22.5", digits }).miter,
  corner: (digits) => preciseCorner({ turn: 78, first: board, second: other, digits }).second.bevel,
  setting: (digits) =>
    preciseSawSetting({ along: 1, across: "-0.3", through: "0.1" }, { slope: 7, lay: 33, digits }).bevel,
  section: (digits) => preciseSection({ x: 40, y: -7 }, { slope: "-12.3", digits }).out,
  length: (digits) =>
    precisePieceLength({ sides: 7, apothem: 100, slope: 31, on: { x: 0, y: 0 }, at: { x: 40, y: 0 }, digits }),
};

describe("digits", () => {
  test.each(Object.keys(asked))("%s to fewer digits is the one to 1000, rounded", (name) => {
    const full = asked[name]!(1000);
    expect(full.replace(/^-?0?\.?0*|[.-]/gu, "")).toHaveLength(1000);
    for (const digits of [1, 2, 3, 5, 8, 15, 16, 17, 50, 100, 250]) {
      expect([digits, asked[name]!(digits)]).toEqual([digits, roundText(full, digits)]);
    }
  });

  test.each(Object.keys(asked))("%s has 50 of them unless told otherwise", (name) => {
    expect(asked[name]!()).toBe(asked[name]!(50));
    expect(asked[name]!().replace(/^-?0?\.?0*|[.-]/gu, "")).toHaveLength(50);
  });
});

describe("rounding", () => {
  const out = (x: string, digits: number): string => preciseSection({ x, y: 0 }, { slope: 0, digits }).out;

  test("takes an exact half away from zero", () => {
    expect([out("0.25", 1), out("-0.25", 1), out("0.35", 1), out("22.5", 2), out("9.5", 1)]).toEqual([
      "0.3",
      "-0.3",
      "0.4",
      "23",
      "10",
    ]);
  });

  test("tells a half from a hair beside it", () => {
    const nines = "9".repeat(900);
    expect([out(`0.24${nines}`, 1), out(`0.25${"0".repeat(900)}1`, 1)]).toEqual(["0.2", "0.3"]);
    expect([out(`-0.24${nines}`, 1), out(`0.${nines}`, 30)]).toEqual(["-0.2", "1"]);
  });

  test("takes for a half what no arithmetic can tell from it", () => {
    // 180/8 is 22.5, found as the direction of a vector whose parts are not rational.
    const { planMiter, turn } = precisePolygon({ sides: 8, side: 1, digits: 2 });
    expect([planMiter, turn]).toEqual(["23", "45"]);
    expect(preciseCompoundMiter({ turn: -45, slope: 0, digits: 2 }).miter).toBe("-23");
    expect(
      preciseCompoundMiter({ turn: "44.9999999999999999999999999999999999999999", slope: 0, digits: 2 }).miter,
    ).toBe("22");
  });

  test("writes no exponent, no trailing zero and no -0", () => {
    expect(out("1.500e-30", 9)).toBe(`0.${"0".repeat(29)}15`);
    expect(out("1.500e30", 9)).toBe(`15${"0".repeat(29)}`);
    expect(out("-0", 9)).toBe("0");
    expect(preciseSection({ x: -0, y: -0 }, { slope: -0 })).toEqual({ out: "0", up: "0" });
    expect(preciseCompoundMiter({ turn: -0, slope: -30 })).toMatchObject({ miter: "0", bevel: "0", planMiter: "0" });
  });
});

describe("results", () => {
  test("survive JSON", () => {
    for (const result of [
      precisePolygon({ sides: 7, side: 1 }),
      preciseCompoundMiter({ sides: 5, slope: 20 }),
      preciseCorner({ turn: 77, first: board, second: other }),
    ]) {
      expect(JSON.parse(JSON.stringify(result))).toEqual(result);
    }
  });

  test("can be handed in again", () => {
    const { apothem } = precisePolygon({ sides: 7, side: 12, digits: 1000 });
    expect(precisePolygon({ sides: 7, apothem }).side).toBe("12");
  });

  test("come of inputs that are left as they are", () => {
    const options = Object.freeze({
      turn: 77,
      first: Object.freeze({ ...board }),
      second: Object.freeze({ ...other }),
    });
    expect(preciseCorner(options)).toEqual(preciseCorner({ turn: 77, first: { ...board }, second: { ...other } }));
    expect(options).toEqual({ turn: 77, first: board, second: other });
  });
});

describe("the caller's own decimal.js", () => {
  test("neither changes the results nor is changed", () => {
    const settings = (): unknown[] => [
      Decimal.precision,
      Decimal.rounding,
      Decimal.toExpPos,
      Decimal.maxE,
      Decimal.minE,
    ];
    const results = (): string[] => Object.values(asked).map((ask) => ask(40));
    const before = results();
    Decimal.set({ precision: 3, rounding: 1, toExpNeg: 0, toExpPos: 0, minE: -2, maxE: 2 });
    try {
      const set = settings();
      expect(results()).toEqual(before);
      expect(() => precisePolygon({ sides: 4, side: "1e101" })).toThrow("1e100");
      expect(settings()).toEqual(set);
    } finally {
      Decimal.set({ defaults: true });
    }
  });
});
