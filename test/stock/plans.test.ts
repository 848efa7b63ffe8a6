import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { diveForPlan } from "../../src/stock/search/dive.js";
import { type Fill, fillGreedily } from "../../src/stock/search/greedy.js";
import { offerPlan, type Search } from "../../src/stock/search/search.js";
import { searchPatterns } from "../../src/stock/search/pattern-tree.js";
import { patternSum, planCost, roomsLeft, type Use } from "../../src/stock/model/pattern.js";
import type { Problem } from "../../src/stock/model/problem.js";
import { searchShortage } from "../../src/stock/search/shortage.js";
import { type Subproblem, wholeProblem } from "../../src/stock/model/subproblem.js";
import { fillBySubsetSum } from "../../src/stock/patterns/subset-sum.js";
import { programmed, runSteps, searchOf, stateJob } from "../laws/stated-problem.js";
import { smallJob } from "../laws/stock.js";

/** A plan keeps to rooms and counts, and makes what it says it makes. */
function expectSound(problem: Problem, plan: readonly Use[], remaining: Float64Array): void {
  const made = problem.demand.map((count, item) => count - remaining[item]!);
  const used = problem.kinds.map(() => 0);
  for (const { pattern, times } of plan) {
    expect(Math.min(...roomsLeft(problem, pattern))).toBeGreaterThanOrEqual(0);
    used[pattern.kind]! += times;
    for (const [item, count] of pattern.entries) made[item]! -= count * times;
  }
  expect(made).toEqual(new Float64Array(made.length));
  problem.kinds.forEach(({ limit }, kind) => {
    expect(used[kind]).toBeLessThanOrEqual(limit);
  });
}

/** The search's parts work on what greedy filling has incumbent. */
function startGreedily(problem: Problem, stepLimit?: number): { search: Search; node: Subproblem } {
  const node = wholeProblem(problem);
  const search = searchOf(problem, stepLimit);
  offerPlan(search, node, runSteps(fillGreedily(search, node)));
  return { search, node };
}

/** The fullest filling of a room that holds a certain item, by trying all. */
function fullest(sizes: readonly number[], counts: readonly number[], room: number, own: number): number {
  const fill = (item: number, taken: number): number => {
    if (taken > room) return -Infinity;
    if (item === sizes.length) return taken;
    const free = counts[item]! - (item === own ? 1 : 0);
    let best = -Infinity;
    for (let count = 0; count <= free; count++) best = Math.max(best, fill(item + 1, taken + count * sizes[item]!));
    return best;
  };
  return fill(0, sizes[own]!);
}

describe("plans without a bound", () => {
  test.each<[string, Fill | undefined]>([
    ["longest first", undefined],
    ["as full as can be", fillBySubsetSum],
  ])("greedy filling, %s, goes on until nothing fits", (_name, fill) => {
    fc.assert(
      fc.property(smallJob, (job) => {
        const { problem } = stateJob(job) ?? {};
        if (problem === undefined) return;
        const node = wholeProblem(problem);
        const { plan, remaining } = runSteps(fillGreedily(searchOf(problem), node, fill));
        expectSound(problem, plan, remaining);
        remaining.forEach((count, item) => {
          if (count === 0) return;
          const setup = problem.keys[item]! < 0 ? 0 : problem.setups[problem.keys[item]!]!;
          problem.kinds.forEach(({ rooms, limit }, kind) => {
            const used = plan.reduce((sum, { pattern, times }) => sum + (pattern.kind === kind ? times : 0), 0);
            if (used < limit) expect(Math.max(...rooms)).toBeLessThan(problem.sizes[item]! + setup);
          });
        });
      }),
    );
  });

  test("a stick is filled as full as can be around the largest piece that fits", () => {
    const item = fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 3 }));
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 5 }), fc.integer({ min: 1, max: 60 }), (items, room) => {
        const order = [...items].sort(([a], [b]) => b - a);
        const sizes = order.map(([size]) => size);
        const counts = order.map(([, count]) => count);
        const problem: Problem = {
          sizes: Float64Array.from(sizes),
          demand: Float64Array.from(counts),
          keys: Int32Array.from(sizes, () => -1),
          setups: new Float64Array(0),
          kinds: [{ stick: 0, rooms: [room], losses: [0], cost: 1, limit: Infinity }],
          costGrid: { times: 1, per: 1, exact: true },
          credit: 0,
          keep: Infinity,
          members: sizes.map((_, k) => [k]),
        };
        const pattern = runSteps(fillBySubsetSum(searchOf(problem), 0, problem.demand));
        const first = sizes.findIndex((size, k) => size <= room && counts[k]! > 0);
        if (first < 0) expect(pattern).toBeUndefined();
        else {
          expect(pattern!.entries.map(([index]) => index)).toContain(first);
          expect(patternSum(pattern!, problem.sizes)).toBe(fullest(sizes, counts, room, first));
        }
      }),
    );
  });

  test("a dive makes sound plans, never a worse one, and mostly finds the best", () => {
    let [jobs, best, better] = [0, 0, 0];
    fc.assert(
      fc.property(smallJob, (job) => {
        const { problem, least } = stateJob(job) ?? {};
        if (problem === undefined || least === undefined) return;
        const { search, node } = startGreedily(problem);
        const before = search.incumbent.whole ? search.incumbent.cost : Infinity;
        search.bound = least;
        runSteps(diveForPlan(programmed(search, false), node, 1));
        const { incumbent } = search;
        expectSound(problem, incumbent.plan, incumbent.remaining);
        expect(planCost(incumbent.plan)).toBeCloseTo(incumbent.cost, 6);
        if (!incumbent.whole) return;
        expect(incumbent.cost).toBeGreaterThanOrEqual(least - 1e-6);
        expect(incumbent.cost).toBeLessThanOrEqual(before);
        jobs++;
        if (incumbent.cost < before) better++;
        if (incumbent.cost < least + 1e-6) best++;
      }),
    );
    expect(better).toBeGreaterThan(0);
    expect(best).toBeGreaterThan(0.8 * jobs);
  });
});

describe("proofs", () => {
  test("a complete search of the patterns has found the least cost", () => {
    let complete = 0;
    fc.assert(
      fc.property(smallJob, (job) => {
        const { problem, least } = stateJob(job) ?? {};
        if (problem === undefined || least === undefined) return;
        const { search, node } = startGreedily(problem, 1e8);
        if (!runSteps(searchPatterns(programmed(search, false), node, 1e6))) return;
        const { incumbent } = search;
        complete++;
        expectSound(problem, incumbent.plan, incumbent.remaining);
        expect(incumbent.whole).toBe(true);
        expect(incumbent.cost).toBeCloseTo(least, 6);
      }),
    );
    expect(complete).toBeGreaterThan(20);
  });

  test("a shortage is proven only where brute force finds no plan, and mostly there", () => {
    let [none, proven] = [0, 0];
    const scarce = smallJob.map((job) => ({
      ...job,
      sticks: job.sticks.map((stick) => ({ ...stick, count: stick.count ?? 1 })),
    }));
    fc.assert(
      fc.property(scarce, (job) => {
        const { problem, least } = stateJob(job) ?? {};
        if (problem === undefined) return;
        const { search } = startGreedily(problem);
        runSteps(searchShortage(search));
        const { incumbent, impossible } = search;
        expectSound(problem, incumbent.plan, incumbent.remaining);
        if (least === undefined) {
          none++;
          expect(incumbent.whole).toBe(false);
        }
        if (!impossible) return;
        proven++;
        expect(least).toBeUndefined();
      }),
    );
    expect(proven).toBeGreaterThan(0.8 * none);
    expect(none).toBeGreaterThan(5);
  });
});
