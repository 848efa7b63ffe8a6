import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { StockJob } from "miterwright/stock";
import { materialBound } from "../../src/stock/bounds/material-bound.js";
import { relax, type Relaxation } from "../../src/stock/linear/column-generation.js";
import { enumeratePatterns } from "../../src/stock/patterns/enumerate-patterns.js";
import { priceKind } from "../../src/stock/patterns/pricing.js";
import { patternName } from "../../src/stock/model/pattern.js";
import type { Problem } from "../../src/stock/model/problem.js";
import { roundPrices, safeBound } from "../../src/stock/bounds/safe-bound.js";
import { wholeProblem } from "../../src/stock/model/subproblem.js";
import { programmed, runSteps, searchOf, stateJob } from "../laws/stated-problem.js";
import { smallJob } from "../laws/stock.js";

/** The problem of a job and its least cost; undefined if there is no plan. */
function stated(job: StockJob): { problem: Problem; least: number } | undefined {
  const { problem, least } = stateJob(job) ?? {};
  return problem === undefined || least === undefined ? undefined : { problem, least };
}

describe("bounds", () => {
  test("the material bound is below the least cost", () => {
    let tight = 0;
    fc.assert(
      fc.property(smallJob, (job) => {
        const given = stated(job);
        if (given === undefined) return;
        const bound = materialBound(given.problem);
        expect(bound).toBeDefined();
        expect(bound!).toBeLessThanOrEqual(given.least + 1e-6);
        if (bound! > given.least - 1e-6) tight++;
      }),
    );
    expect(tight).toBeGreaterThan(5);
  });

  test("a safe bound holds for any prices, and for those of the relaxation it is good", () => {
    let better = 0;
    fc.assert(
      fc.property(smallJob, fc.array(fc.double({ min: -2, max: 60, noNaN: true }), { minLength: 9 }), (job, any) => {
        const given = stated(job);
        if (given === undefined) return;
        const { problem, least } = given;
        const node = wholeProblem(problem);
        const duals = Float64Array.from(problem.sizes, (_, item) => any[item]!);
        const prices = roundPrices(problem, node, duals);
        const search = searchOf(problem);
        const worths = Float64Array.from(
          problem.kinds,
          (_, kind) => runSteps(priceKind(search, node, prices, { kind, above: 0 })).worth,
        );
        expect(safeBound(problem, node, prices, worths).bound).toBeLessThanOrEqual(least + 1e-6);
        const relaxation: Relaxation = runSteps(relax(programmed(search, true), node, Infinity));
        expect(relaxation.bound).toBeLessThanOrEqual(least + 1e-6);
        if (relaxation.bound > materialBound(problem)!) better++;
      }),
    );
    expect(better).toBeGreaterThan(5);
  });

  test("a pattern is never worth more than pricing says, and the best one is found", () => {
    fc.assert(
      fc.property(smallJob, fc.array(fc.nat(40), { minLength: 9 }), (job, any) => {
        const given = stated(job);
        if (given === undefined) return;
        const { problem } = given;
        const node = wholeProblem(problem);
        const items = Float64Array.from(problem.sizes, (_, item) => any[item]! + 1);
        problem.kinds.forEach((kind, index) => {
          const search = searchOf(problem);
          const prices = { items, scale: 1 };
          const { worth, patterns } = runSteps(priceKind(search, node, prices, { kind: index, above: 0 }));
          const worthOf = (pattern: (typeof patterns)[number]): number =>
            pattern.entries.reduce((sum, [item, count]) => sum + items[item]! * count, kind.cost - pattern.cost);
          const best = patterns.at(-1);
          // With nothing in it a stick may still earn its credit; that is no pattern.
          if (best !== undefined && problem.credit === 0) expect(worthOf(best)).toBe(worth);
          problem.sizes.forEach((_, item) => {
            const limits = { kind: index, item, least: -1e9, patterns: 1e5, branches: 1e6 };
            const all = runSteps(enumeratePatterns(search, node, prices, limits));
            expect(all.complete).toBe(true);
            for (const pattern of all.patterns) {
              expect(pattern.entries.map(([other]) => other)).toContain(item);
              expect(worthOf(pattern)).toBeLessThanOrEqual(worth + 1e-6);
            }
            // Those that are worth enough are what is left of all of them.
            const least = worth / 2;
            const some = runSteps(enumeratePatterns(search, node, prices, { ...limits, least }));
            const names = new Set(all.patterns.filter((pattern) => worthOf(pattern) >= least).map(patternName));
            expect(new Set(some.patterns.map(patternName))).toEqual(names);
          });
        });
      }),
      { numRuns: 60 },
    );
  });
});
