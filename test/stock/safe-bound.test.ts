import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { materialBound, totalSize } from "../../src/stock/bounds/material-bound.js";
import { costStep, type Kind, type Problem } from "../../src/stock/model/problem.js";
import { roundPrices, safeBound } from "../../src/stock/bounds/safe-bound.js";
import { wholeProblem } from "../../src/stock/model/subproblem.js";

// "optimal" and `bound` of fitStock rest on these functions alone; the examples are worked by hand.

type Given = Partial<Problem> & { readonly demand: Float64Array; readonly kinds: readonly Kind[] };

function problemWith(given: Given): Problem {
  const items = given.demand.length;
  return {
    sizes: new Float64Array(items).fill(10),
    keys: new Int32Array(items).fill(-1),
    setups: new Float64Array(0),
    costGrid: { times: 1, per: 1, exact: true },
    credit: 0,
    keep: 0,
    members: Array.from({ length: items }, (_, item) => [item]),
    ...given,
  };
}

function kind(room: number, cost: number, limit = Infinity, loss = 0): Kind {
  return { stick: 0, rooms: [room], losses: [loss], cost, limit };
}

const of = (...values: number[]): Float64Array => Float64Array.of(...values);

/** The bound for items at prices of whole steps of the cost grid. */
function boundOf(problem: Problem, prices: Float64Array, worths: Float64Array, least?: Float64Array) {
  const node = wholeProblem(problem);
  if (least !== undefined) node.least.set(least);
  return safeBound(problem, node, { items: prices, scale: 1 }, worths);
}

describe("a bound from prices", () => {
  test("is the worth of the demand where no stick earns", () => {
    // 5 of 7 and 2 of 4 are worth 43; a stick of 20 holds no more than 20.
    const problem = problemWith({ demand: of(5, 2), kinds: [kind(30, 20)] });
    expect(boundOf(problem, of(7, 4), of(20))).toEqual({ bound: 60, worth: 43, rests: of(0) });
  });

  test("rounds up to what sticks can cost", () => {
    const costs = (...given: number[]): Problem =>
      problemWith({ demand: of(5), kinds: given.map((cost) => kind(30, cost)) });
    expect(costStep(costs(6, 9))).toBe(3);
    expect(boundOf(costs(6, 9), of(5), of(6, 9)).bound).toBe(27);
    expect(boundOf(costs(6, 9), of(6), of(6, 9)).bound).toBe(30);
    expect(costStep(costs(0, 0))).toBe(1);
    expect(costStep({ ...costs(6, 9), credit: 2 })).toBe(1);
    expect(costStep({ ...costs(6, 12), credit: 4 })).toBe(2);
  });

  test("lowers all prices as far as no endless stick earns", () => {
    // Farley: at 12 a stick of 10 earns 2, so prices are cut to 10/12 of what they are.
    const problem = problemWith({ demand: of(9), kinds: [kind(30, 10)] });
    const { bound, worth, rests } = boundOf(problem, of(4), of(12));
    expect([bound, worth, rests]).toEqual([30, 30, of(0)]);
    // Of two the worse one decides; the other then has something left: 10/15 of 36 is 24, and 18 - 10 = 8.
    const two = problemWith({ demand: of(9), kinds: [kind(30, 10), kind(40, 18), kind(50, 99)] });
    expect(boundOf(two, of(4), of(15, 15, 15))).toEqual({ bound: 24, worth: 24, rests: of(0, 8, 89) });
    expect(boundOf({ ...two, kinds: [two.kinds[1]!, two.kinds[0]!, two.kinds[2]!] }, of(4), of(15, 15, 15)).worth).toBe(
      24,
    );
  });

  test("lowers prices by the worst of two that earn, in any order", () => {
    // At 15 a stick of 10 allows 10/15 of the prices, one of 12 allows 12/15: 36 fall to 24, and 12 - 10 = 2 are left.
    const [low, high] = [kind(30, 10), kind(40, 12)];
    expect(boundOf(problemWith({ demand: of(9), kinds: [low, high] }), of(4), of(15, 15))).toEqual({
      bound: 24,
      worth: 24,
      rests: of(0, 2),
    });
    expect(boundOf(problemWith({ demand: of(9), kinds: [high, low] }), of(4), of(15, 15)).rests).toEqual(of(2, 0));
  });

  test("keeps its prices beside an endless stick that costs nothing and holds nothing of worth", () => {
    for (const costs of [
      [0, 8],
      [8, 0],
    ]) {
      const problem = problemWith({ demand: of(9), kinds: costs.map((cost) => kind(30, cost)) });
      expect(boundOf(problem, of(4), of(...costs))).toEqual({ bound: 40, worth: 36, rests: of(0, 0) });
    }
  });

  test("charges the least that a limited stick can earn", () => {
    const problem = problemWith({ demand: of(5), kinds: [kind(30, 10, 3), kind(30, 1)] });
    expect(boundOf(problem, of(4), of(11, 1))).toEqual({ bound: 17, worth: 17, rests: of(-1, 0) });
  });

  test("claims nothing where a stick that costs nothing is endless", () => {
    const problem = problemWith({ demand: of(9), kinds: [kind(30, 0), kind(30, 8)] });
    expect(boundOf(problem, of(4), of(12, 8))).toEqual({ bound: 0, worth: 0, rests: of(0, 8) });
  });

  test("charges limited sticks for what they earn, and those that must be used for what they don't", () => {
    // 5 of 4 are worth 20; three sticks earn 2 each.
    const problem = problemWith({ demand: of(5), kinds: [kind(30, 10), kind(30, 1, 3)] });
    expect(boundOf(problem, of(4), of(8, 3))).toEqual({ bound: 14, worth: 14, rests: of(2, -2) });
    expect(boundOf(problem, of(4), of(8, 3), of(2, 0)).bound).toBe(18);
    expect(boundOf(problem, of(4), of(10, 1), of(2, 1)).bound).toBe(20);
  });

  test("counts the credit of empty sticks", () => {
    // At most 30 - 5 of the stick is left, at 2 each: it costs 10 at least. Prices fall to 10/30, where the worth of a stick
    // is at most its 50 of credit and a third of the 20 beyond.
    const problem = problemWith({ demand: of(6), kinds: [kind(30, 60, Infinity, 5)], credit: 2 });
    expect(boundOf(problem, of(9), of(80)).worth).toBe(18);
    expect(boundOf(problem, of(9), of(80)).bound).toBe(18);
  });

  test("is rounded up below nothing too", () => {
    // Two sticks earn 11 each: nine of worth less 22 is -13, and the next sum of threes is -12.
    const problem = problemWith({ demand: of(9), kinds: [kind(30, 3, 2)] });
    expect(boundOf(problem, of(1), of(14)).bound).toBe(-12);
  });
});

test("a bound from finer prices is the same", () => {
  const problem = problemWith({ demand: of(6), kinds: [kind(30, 60, Infinity, 5)], credit: 2 });
  const fine = safeBound(problem, wholeProblem(problem), { items: of(36), scale: 4 }, of(320));
  expect([fine.bound, fine.worth]).toEqual([18, 72]);
});

describe("integer prices", () => {
  const longest = 100;
  const given = fc.record({
    duals: fc.array(fc.integer({ min: -1000, max: 1_000_000 }), { minLength: 3, maxLength: 3 }),
    sizes: fc.array(fc.integer({ min: 0, max: longest }), { minLength: 3, maxLength: 3 }),
    demand: fc.array(fc.nat(1000), { minLength: 3, maxLength: 3 }),
    cost: fc.constantFrom(0, 1, 900, 2 ** 20, 2 ** 40),
    credit: fc.constantFrom(0, 0, 1, 2 ** 20, 2 ** 36),
    times: fc.constantFrom(1e-3, 1, 1e3, 1e9),
  });

  test("lie just below the prices, and no stick is worth more than doubles can add", () => {
    const seen = { finest: 0, coarser: 0, none: 0 };
    fc.assert(
      fc.property(given, ({ duals, sizes, demand, cost, credit, times }) => {
        const prices = Float64Array.from(duals, (dual) => (dual * times) / 7);
        const problem = problemWith({
          sizes: Float64Array.from(sizes),
          demand: Float64Array.from(demand),
          kinds: [kind(longest, cost), kind(20, 7)],
          credit,
        });
        const node = {
          ...wholeProblem(problem),
          demand: Float64Array.from(demand, (count) => Math.max(0, count - 100)),
        };
        const { items, scale } = roundPrices(problem, node, prices);
        expect(Number.isInteger(Math.log2(scale)) && scale >= 1 && scale <= 2 ** 30).toBe(true);
        // The fullest stick, every item alone in it, beside its cost or the credit for all its length.
        const most = (factor: number): number =>
          prices.reduce(
            (sum, price, item) =>
              sum +
              factor *
                Math.max(0, price) *
                (sizes[item]! > 0 ? Math.min(demand[item]!, longest / sizes[item]!) : demand[item]!),
            factor * Math.max(cost, credit * longest),
          );
        if (most(1) > 2 ** 51) {
          seen.none++;
          expect(items).toEqual(new Float64Array(3));
          return;
        }
        if (scale < 2 ** 30) seen.coarser++;
        else seen.finest++;
        expect(most(scale)).toBeLessThanOrEqual(2 ** 51);
        if (scale < 2 ** 30) expect(most(2 * scale)).toBeGreaterThan(2 ** 51);
        items.forEach((price, item) => {
          const exact = node.demand[item] === 0 ? 0 : Math.max(0, prices[item]!) * scale;
          expect(Number.isInteger(price)).toBe(true);
          expect(price).toBeLessThanOrEqual(exact);
          expect(price).toBeGreaterThan(exact - 1);
        });
      }),
      { numRuns: 1000 },
    );
    // Each of the three is met.
    expect(Math.min(seen.finest, seen.coarser, seen.none)).toBeGreaterThan(20);
  });
});

test("prices are given as long as their sums are exact, and not beyond", () => {
  const priced = (cost: number, dual = 1): readonly [Float64Array, number] => {
    const problem = problemWith({ demand: of(4), kinds: [kind(100, cost)] });
    const { items, scale } = roundPrices(problem, wholeProblem(problem), of(dual));
    return [items, scale];
  };
  expect(priced(2 ** 51 - 4)).toEqual([of(1), 1]);
  expect(priced(2 ** 51 - 3)).toEqual([of(0), 1]);
  expect(priced(2 ** 21 - 4)).toEqual([of(2 ** 30), 2 ** 30]);
  expect(priced(2 ** 21 - 3)).toEqual([of(2 ** 29), 2 ** 29]);
  // Prices below nothing take no part.
  expect(priced(2 ** 21, -5)).toEqual([of(0), 2 ** 30]);
  expect(priced(2 ** 21, -0)).toEqual([of(0), 2 ** 30]);
  expect(priced(2 ** 21 + 1, -5)).toEqual([of(0), 2 ** 29]);
});

describe("the material bound", () => {
  test("adds each share key's set-up once", () => {
    const problem = problemWith({
      sizes: of(7, 5, 3),
      demand: of(2, 3, 4),
      keys: Int32Array.of(0, 1, 0),
      setups: of(4, 6),
      kinds: [],
    });
    expect(totalSize(problem)).toBe(51n);
  });

  const kinds = fc.array(
    fc.record({ room: fc.integer({ min: 1, max: 30 }), cost: fc.integer({ min: 0, max: 40 }), limit: fc.nat(4) }),
    { minLength: 1, maxLength: 4 },
  );

  test("is the least cost of sticks that could be cut to any length", () => {
    let [short, exact] = [0, 0];
    fc.assert(
      fc.property(kinds, fc.nat(60), fc.nat(2), (given, total, credit) => {
        // A limit of 4 stands for none, but no endless stick earns.
        const limits = given.map(({ room, cost, limit }) => (limit === 4 && cost >= credit * room ? Infinity : limit));
        const problem = problemWith({
          sizes: of(1),
          demand: of(total),
          kinds: given.map(({ room, cost }, k) => kind(room, cost, limits[k])),
          credit,
        });
        // A linear program of one row: in a best solution all numbers but one are none or all.
        let least = total === 0 && given.length === 0 ? 0 : Infinity;
        const costs = given.map(({ room, cost }) => cost - credit * room);
        for (let set = 0; set < 1 << given.length; set++) {
          const all = given.map((_, k) => ((set >> k) & 1 ? limits[k]! : 0));
          if (all.includes(Infinity)) continue;
          const room = all.reduce((sum, count, k) => sum + count * given[k]!.room, 0);
          const cost = all.reduce((sum, count, k) => sum + count * costs[k]!, 0);
          if (room >= total) least = Math.min(least, cost);
          given.forEach(({ room: own }, k) => {
            const part = (total - room) / own;
            if (all[k] === 0 && part >= 0 && part <= limits[k]!) least = Math.min(least, cost + part * costs[k]!);
          });
        }
        const bound = materialBound(problem);
        if (least === Infinity) {
          short++;
          expect(bound).toBeUndefined();
          return;
        }
        expect(bound).toBe(Math.ceil(credit * total + least - 1e-9) + 0);
        if (bound! - credit * total === least) exact++;
      }),
      { numRuns: 2000 },
    );
    expect(short).toBeGreaterThan(20);
    expect(exact).toBeGreaterThan(20);
  });
});
