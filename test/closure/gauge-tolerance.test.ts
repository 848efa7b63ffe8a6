import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gaugeTolerance, ringClosure } from "miterwright/closure";
import { compoundMiter, type SawSetting } from "miterwright/miter";
import { frozen } from "../laws/closure.js";
import { sawnNormal, RADIAN } from "./assemble.js";

const RINGS = 100_000;

/** Random numbers from a seed (mulberry32), and normal ones from two of them (Box and Muller 1958). */
function normalNumbers(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return (((t ^ (t >>> 14)) >>> 0) + 0.5) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** What `sawnNormal` says, for the many: level by the cosine of the bevel, swung by the miter. */
function bladeNormal({ miter, bevel }: SawSetting, end: 1 | -1): [number, number, number] {
  const level = Math.cos(bevel * RADIAN);
  return [end * level * Math.cos(miter * RADIAN), level * Math.sin(miter * RADIAN), Math.sin(bevel * RADIAN)];
}

/**
 * The open angle of a ring, by turning a frame of axes through every joint: each cut's frame is the line in which it meets the back, its normal, and
 * the third; at a joint the two frames lie on each other, normal against normal.
 */
function openAngle(cuts: readonly SawSetting[], slope: number): number {
  const frame = (normal: readonly [number, number, number]): number[] => {
    const [a, y, z] = normal;
    const length = Math.hypot(a, y);
    // The back's line runs outward: square to the normal and without a part through the piece.
    const flip = a > 0 ? 1 : -1;
    const u = [(flip * y) / length, (-flip * a) / length, 0];
    const w = [u[1]! * z - u[2]! * y, u[2]! * a - u[0]! * z, u[0]! * y - u[1]! * a];
    return [...u, a, y, z, ...w];
  };
  let m = [1, 0, 0, 0, 1, 0, 0, 0, 1];
  for (let index = 0; index < cuts.length; index += 2) {
    const [u0, u1, u2, n0, n1, n2, w0, w1, w2] = frame(bladeNormal(cuts[index]!, 1)) as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const [p0, p1, p2, q0, q1, q2] = frame(bladeNormal(cuts[index + 1]!, -1)) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    // The third axis of the start, its normal turned about: -q.
    const [r0, r1, r2] = [p2 * q1 - p1 * q2, p0 * q2 - p2 * q0, p1 * q0 - p0 * q1];
    const joint = [
      u0 * p0 - n0 * q0 + w0 * r0,
      u0 * p1 - n0 * q1 + w0 * r1,
      u0 * p2 - n0 * q2 + w0 * r2,
      u1 * p0 - n1 * q0 + w1 * r0,
      u1 * p1 - n1 * q1 + w1 * r1,
      u1 * p2 - n1 * q2 + w1 * r2,
      u2 * p0 - n2 * q0 + w2 * r0,
      u2 * p1 - n2 * q1 + w2 * r1,
      u2 * p2 - n2 * q2 + w2 * r2,
    ];
    const next: number[] = [];
    for (let row = 0; row < 9; row += 3) {
      for (let column = 0; column < 3; column += 1) {
        next.push(m[row]! * joint[column]! + m[row + 1]! * joint[column + 3]! + m[row + 2]! * joint[column + 6]!);
      }
    }
    m = next;
  }
  // What is left of the full turn, about the upward direction of the first piece.
  const about = ((m[3]! - m[1]!) / 2) * Math.cos(slope * RADIAN) + ((m[2]! - m[6]!) / 2) * -Math.sin(slope * RADIAN);
  return -Math.asin(about) / RADIAN;
}

describe("100,000 rings cut at random", () => {
  test("are cut as the vector saw cuts", () => {
    for (const cut of [
      { miter: 20, bevel: 11 },
      { miter: -3, bevel: -40 },
    ]) {
      for (const [index, part] of sawnNormal(cut, "end").entries()) {
        expect(bladeNormal(cut, 1)[index]).toBeCloseTo(part, 14);
        expect(bladeNormal(cut, -1)[index]).toBeCloseTo(sawnNormal(cut, "start")[index]!, 14);
      }
    }
  });

  test.each([
    { sides: 8, slope: 0, width: 40, acceptedGap: 0.25, vary: "miter" },
    { sides: 6, slope: 35, width: 40, acceptedGap: 0.5, vary: "each" },
    { sides: 5, slope: 60, width: 25, acceptedGap: 0.3, vary: "bevel" },
  ] as const)("keep within the gap in 95 of 100 cases: %j", ({ sides, slope, width, acceptedGap, vary }) => {
    const { random } = gaugeTolerance({ sides, slope, width, acceptedGap });
    const exact = compoundMiter({ sides, slope });
    const normal = normalNumbers(sides * 1000 + slope);
    const deviation = random[vary]!;
    const perDegree = (width / Math.cos(Math.PI / sides)) * RADIAN;
    let [within, sum] = [0, 0];
    for (let ring = 0; ring < RINGS; ring += 1) {
      const cuts = Array.from({ length: 2 * sides }, () => ({
        miter: exact.miter + (vary === "bevel" ? 0 : deviation * normal()),
        bevel: exact.bevel + (vary === "miter" ? 0 : deviation * normal()),
      }));
      const seen = Math.abs(openAngle(cuts, slope)) * perDegree;
      if (seen <= acceptedGap) within += 1;
      sum += seen * seen;
    }
    // Four standard errors of a share, and of a mean square (whose own standard error is sqrt(2 / N) of it).
    expect(Math.abs(within / RINGS - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / RINGS));
    const meanSquare = (acceptedGap / 1.959963984540054) ** 2;
    expect(Math.abs(sum / RINGS / meanSquare - 1)).toBeLessThan(4 * Math.sqrt(2 / RINGS));
  });
});

describe("a tolerance is within a tenth of the true one, or not given", () => {
  /** The gap of a ring whose cuts are all off by the same. */
  const jointGapOff = (sides: number, width: number, slope: number, dm: number, db: number): number => {
    const { miter, bevel } = compoundMiter({ sides, slope });
    const half = Math.acos(Math.cos((miter + dm) * RADIAN) * Math.cos((bevel + db) * RADIAN));
    return (Math.abs(2 * Math.PI - 2 * sides * half) * width) / Math.cos(Math.PI / sides);
  };
  /** The smallest error that makes a gap, either way, by halving; no larger than makes the half turn go back. */
  const trueOf = (off: (error: number) => number, gap: number, most: number): number => {
    const oneWay = (sign: 1 | -1, end: number): number => {
      if (off(sign * end) < gap) return Infinity;
      let [low, high] = [0, end];
      for (let step = 0; step < 80; step += 1) {
        const middle = (low + high) / 2;
        if (off(sign * middle) < gap) low = middle;
        else high = middle;
      }
      return low;
    };
    return Math.min(oneWay(1, 60), oneWay(-1, most));
  };

  test("of 19 sides at a slope of 76, whose miter opens the gap when it is 0.553 off, not 0.615", () => {
    const given = { sides: 19, width: 20, acceptedGap: 2, slope: 76 };
    const truth = trueOf((dm) => jointGapOff(19, 20, 76, dm, 0), 2, compoundMiter(given).miter);
    expect(truth.toFixed(3)).toBe("0.553");
    const { miter } = gaugeTolerance(given).shared;
    expect(miter === null || Math.abs(miter / truth - 1) <= 0.1).toBe(true);
  });

  test("when all cuts are off alike, at every slope and gap; it is given wherever the law of first order is so good", () => {
    let [kept, dropped] = [0, 0];
    for (const sides of [3, 4, 6, 9, 19, 40]) {
      for (const slope of [0, 3, 12, 30, 45, 60, 76, 85, 88, 90, -50]) {
        for (const acceptedGap of [1e-3, 0.05, 0.5, 2, 8, 19]) {
          const { shared } = gaugeTolerance({ sides, width: 20, acceptedGap, slope });
          const { miter, bevel } = compoundMiter({ sides, slope: Math.abs(slope) });
          const share = ((acceptedGap / 20) * Math.cos(Math.PI / sides)) / RADIAN / (2 * sides);
          const effects = {
            miter: Math.cos(slope * RADIAN),
            bevel: Math.cos(miter * RADIAN) * Math.sin(Math.abs(slope) * RADIAN),
          };
          const v = (dm: number, db: number): number => jointGapOff(sides, 20, Math.abs(slope), dm, db);
          const truths = {
            miter: trueOf((dm) => v(dm, 0), acceptedGap, miter),
            bevel: trueOf((db) => v(0, db), acceptedGap, bevel),
          };
          for (const name of ["miter", "bevel"] as const) {
            const linear = share / effects[name];
            const off = Math.abs(linear / truths[name] - 1);
            if (Math.abs(off - 0.1) < 1e-4) continue;
            if (off > 0.1) {
              expect(shared[name]).toBeNull();
              dropped += 1;
            } else {
              expect(shared[name]! / linear).toBeCloseTo(1, 9);
              kept += 1;
            }
          }
          const both = trueOf((d) => v(d, d), acceptedGap, Math.min(miter, bevel));
          expect(Math.abs(shared.each / both - 1)).toBeLessThan(0.07);
          expect(shared.each / (share / (effects.miter + effects.bevel))).toBeCloseTo(1, 9);
        }
      }
    }
    expect([kept > 300, dropped > 100]).toEqual([true, true]);
  });

  /** The widest accepted gap, to the last digit, for which a tolerance is given; `undefined` if it is given for all. */
  const widest = (given: (acceptedGap: number) => number | null): number | undefined => {
    let [low, high] = [1e-6, 19.999];
    if (given(high) !== null) return undefined;
    for (let step = 0; step < 60; step += 1) {
      const middle = (low + high) / 2;
      if (given(middle) === null) high = middle;
      else low = middle;
    }
    return low;
  };

  test("when all cuts are off alike, it is given until it is a tenth off", () => {
    let met = 0;
    for (const [sides, slope] of [
      [3, 10],
      [3, 80],
      [4, 5],
      [4, 70],
      [6, 10],
      [6, 80],
      [9, 45],
      [12, -10],
      [19, 76],
      [40, 45],
      [40, 80],
    ] as const) {
      const { miter, bevel } = compoundMiter({ sides, slope: Math.abs(slope) });
      const v = (dm: number, db: number): number => jointGapOff(sides, 20, Math.abs(slope), dm, db);
      for (const name of ["miter", "bevel"] as const) {
        const given = (gap: number): number | null =>
          gaugeTolerance({ sides, width: 20, acceptedGap: gap, slope }).shared[name];
        const gap = widest(given);
        if (gap === undefined) continue;
        const off = name === "miter" ? (d: number) => v(d, 0) : (d: number) => v(0, d);
        const truth = trueOf(off, gap, name === "miter" ? miter : bevel);
        expect(Math.abs(given(gap)! / truth - 1)).toBeCloseTo(0.1, 6);
        met += 1;
      }
    }
    expect(met).toBeGreaterThan(8);
  });

  test("when each is off by its own, it is given until the second order makes it a tenth off", () => {
    /** The part of a normal distribution below x, by its series about 0 (value from memory; 0.975 at 1.959964 below). */
    const below = (x: number): number => {
      let [sum, term] = [x, x];
      for (let k = 1; k < 100; k += 1) {
        term *= (x * x) / (2 * k + 1);
        sum += term;
      }
      return 0.5 + (sum * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI);
    };
    expect(below(1.959963984540054)).toBeCloseTo(0.975, 14);
    let met = 0;
    for (const sides of [12, 30, 100]) {
      for (const slope of [10, 45, 80]) {
        const exact = compoundMiter({ sides, slope });
        const half = (dm: number, db: number): number =>
          Math.acos(Math.cos(exact.miter * RADIAN + dm) * Math.cos(exact.bevel * RADIAN + db));
        for (const name of ["miter", "bevel", "each"] as const) {
          // The slope of half the turn and the sum of its curvatures, by differences.
          const step = 1e-4;
          const ways = [...(name === "bevel" ? [] : [[step, 0]]), ...(name === "miter" ? [] : [[0, step]])] as [
            number,
            number,
          ][];
          const effect = Math.hypot(...ways.map(([m, b]) => (half(m, b) - half(-m, -b)) / (2 * step)));
          const curvature = ways.reduce(
            (sum, [m, b]) => sum + (half(m, b) - 2 * half(0, 0) + half(-m, -b)) / (step * step),
            0,
          );
          const given = (gap: number): number | null =>
            gaugeTolerance({ sides, width: 20, acceptedGap: gap, slope }).random[name];
          const gap = widest(given);
          // With fewer sides the law of one angle, the other right, may end first.
          if (gap === undefined || (sides < 100 && name !== "each")) continue;
          const deviation = given(gap)! * RADIAN;
          // A joint turns by the means of its two ends, which scatter by deviation / sqrt(2).
          const spread = Math.sqrt(2 * sides) * effect * deviation;
          const off = (sides * curvature * deviation * deviation) / 2 / spread;
          const own = Math.sqrt(1 + (2 * off * off) / sides);
          let [low, high] = [1.5, 3];
          for (let halving = 0; halving < 60; halving += 1) {
            const x = (low + high) / 2;
            if (below((x - off) / own) - below((-x - off) / own) < 0.95) low = x;
            else high = x;
          }
          expect((gap * Math.cos(Math.PI / sides)) / 20 / spread).toBeCloseTo(1.959963984540054, 4);
          expect(low / 1.959963984540054).toBeGreaterThan(1.1);
          expect(low / 1.959963984540054).toBeLessThan(1.1013);
          met += 1;
        }
      }
    }
    expect(met).toBeGreaterThan(12);
  });

  test("however narrow the gap is", () => {
    for (const gap of [1e-6, 1e-20, 1e-90]) {
      const { shared, random } = gaugeTolerance({ sides: 8, width: 40, acceptedGap: gap, slope: 30 });
      const wide = gaugeTolerance({ sides: 8, width: 40, acceptedGap: 1e-3, slope: 30 });
      for (const name of ["miter", "bevel", "each"] as const) {
        expect(shared[name]! / gap / (wide.shared[name]! / 1e-3)).toBeCloseTo(1, 9);
        expect(random[name]! / gap / (wide.random[name]! / 1e-3)).toBeCloseTo(1, 9);
      }
    }
  });

  test("when each is off by its own: what is not given would not hold in rings", () => {
    const RINGS_HERE = 1500;
    /** How many rings of a hundred keep within the gap by the sum of their turns, when the angles scatter so. */
    const within = (sides: number, slope: number, width: number, gap: number, dm: number, db: number): number => {
      const exact = compoundMiter({ sides, slope });
      const normal = normalNumbers(sides + slope);
      let good = 0;
      for (let ring = 0; ring < RINGS_HERE; ring += 1) {
        let turns = 0;
        for (let joint = 0; joint < sides; joint += 1) {
          // A joint turns by the means of its two ends.
          const m = exact.miter + (dm * (normal() + normal())) / 2;
          const b = exact.bevel + (db * (normal() + normal())) / 2;
          turns += 2 * Math.acos(Math.cos(m * RADIAN) * Math.cos(b * RADIAN));
        }
        if ((Math.abs(2 * Math.PI - turns) * width) / Math.cos(Math.PI / sides) <= gap) good += 1;
      }
      return good / RINGS_HERE;
    };
    // Four standard errors of a share.
    const error = 4 * Math.sqrt((0.95 * 0.05) / RINGS_HERE);
    const found = { given: 0, dropped: 0 };
    for (const sides of [4, 12, 30]) {
      for (const slope of [15, 75]) {
        for (const gap of [0.5, 2, 12]) {
          const { random } = gaugeTolerance({ sides, width: 20, acceptedGap: gap, slope });
          for (const name of ["miter", "bevel", "each"] as const) {
            const deviation = random[name];
            if (deviation === null) {
              found.dropped += 1;
              continue;
            }
            found.given += 1;
            const [dm, db] = [name === "bevel" ? 0 : deviation, name === "miter" ? 0 : deviation];
            // The true standard deviation lies between ten elevenths of the one given and ten ninths.
            expect(within(sides, slope, 20, gap, dm / 1.1, db / 1.1)).toBeGreaterThan(0.95 - error);
            expect(within(sides, slope, 20, gap, dm / 0.9, db / 0.9)).toBeLessThan(0.95 + error);
          }
        }
      }
    }
    expect([found.given > 15, found.dropped > 10]).toEqual([true, true]);
    // By the law of first order 0.39 degrees: the ring would open by more than the gap on average.
    expect(gaugeTolerance({ sides: 1000, width: 1, acceptedGap: 0.6, slope: 45 }).random.each).toBeNull();
    expect(within(1000, 45, 1, 0.6, 0.39, 0.39)).toBeLessThan(0.01);
  });
});

describe("laws", () => {
  const anySides = fc.integer({ min: 3, max: 40 });
  const anySlope = fc.oneof(fc.double({ min: -89, max: 89, noNaN: true }), fc.constantFrom(0, 90, -90));

  test("cuts that all have the tolerated error make the accepted gap, as well as the first order can say", () => {
    fc.assert(
      fc.property(anySides, anySlope, fc.constantFrom("miter", "bevel", "each"), (sides, slope, which) => {
        const [width, acceptedGap] = [40, 1e-4];
        const { shared } = gaugeTolerance({ sides, width, acceptedGap, slope });
        const error = shared[which as "miter"];
        if (error === null) return;
        const exact = compoundMiter({ sides, slope });
        const cut = {
          miter: exact.miter + (which === "bevel" ? 0 : error),
          bevel: exact.bevel + (which === "miter" ? 0 : slope < 0 ? -error : error),
        };
        const piece = { length: 100, start: cut, end: cut };
        const { jointGap, opens } = ringClosure({ pieces: Array.from({ length: sides }, () => piece), at: 0, width });
        expect(Math.abs(jointGap / acceptedGap - 1)).toBeLessThan(0.15);
        expect(opens).toBe("inside");
      }),
    );
  });

  test("random errors may be sqrt(2n) / 1.96 times as large as shared ones in a flat frame", () => {
    fc.assert(
      fc.property(anySides, (sides) => {
        const { shared, random } = gaugeTolerance({ sides, width: 40, acceptedGap: 0.2 });
        expect(random.miter! / shared.miter!).toBeCloseTo(Math.sqrt(2 * sides) / 1.959963984540054, 9);
      }),
    );
  });

  test("a flat frame is not opened by its bevels, nor an upright one by its miters", () => {
    expect(gaugeTolerance({ sides: 4, width: 40, acceptedGap: 0.2 }).random.bevel).toBeNull();
    const upright = gaugeTolerance({ sides: 4, width: 40, acceptedGap: 0.2, slope: 90 });
    expect([upright.shared.miter, upright.random.miter]).toEqual([null, null]);
    expect(upright.shared.each).toBe(upright.shared.bevel);
    expect(upright.random.bevel).not.toBeNull();
  });

  test("half the gap leaves half the tolerance; scaling both lengths leaves it all", () => {
    const one = gaugeTolerance({ sides: 7, width: 40, acceptedGap: 0.5, slope: 30 });
    expect(gaugeTolerance({ sides: 7, width: 40, acceptedGap: 0.25, slope: 30 }).shared.each).toBe(one.shared.each / 2);
    expect(gaugeTolerance({ sides: 7, width: 320, acceptedGap: 4, slope: 30 })).toEqual(one);
    expect(gaugeTolerance({ sides: 7, width: 40, acceptedGap: 0.5, slope: -30 })).toEqual(one);
    const flat = { sides: 7, width: 40, acceptedGap: 0.5 };
    expect(gaugeTolerance(flat)).toEqual(gaugeTolerance({ ...flat, slope: 0 }));
  });

  test("survives JSON and writes to nothing", () => {
    const result = gaugeTolerance(frozen({ sides: 7, width: 40, acceptedGap: 0.8 }));
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

const GIVEN = { sides: 8, width: 40, acceptedGap: 1 };

test.each([
  [7, "Expected `options` to be an object, got 7 (number)"],
  [{ ...GIVEN, sides: 3.5 }, "Expected `sides` to be an integer from 3 to 1000000, got 3.5 (number)"],
  [{ ...GIVEN, width: NaN }, "Expected `width` to be a positive length (1e-100 to 1e100), got NaN (number)"],
  [{ ...GIVEN, acceptedGap: 0 }, "Expected `acceptedGap` to be a positive length (1e-100 to 1e100), got 0 (number)"],
  [{ ...GIVEN, acceptedGap: 40 }, "Expected `acceptedGap` to be less than `width`, 40, got 40"],
  [{ ...GIVEN, acceptedGap: 41 }, "Expected `acceptedGap` to be less than `width`, 40, got 41"],
  [{ ...GIVEN, slope: 91 }, "Expected `slope` to be degrees from -90 to 90, got 91 (number)"],
])("gaugeTolerance refuses %j", (options, message) => {
  expect(() => gaugeTolerance(options as never)).toThrow(message);
});
