import fc from "fast-check";
import { expect, test } from "vitest";
import { leastCombinations } from "../../src/stock/bounds/combinations.js";
import type { Kind, Problem } from "../../src/stock/model/problem.js";
import { runSteps, searchOf } from "../laws/stated-problem.js";

const kindOf = fc.record({
  room: fc.integer({ min: 1, max: 9 }),
  cost: fc.integer({ min: -3, max: 9 }),
  limit: fc.nat(3),
});

/** A problem of pieces of length 1: all that matters is how long they are in sum. */
function problemOf(total: number, credit: number, given: readonly { room: number; cost: number; limit: number }[]) {
  const kinds = given.map(({ room, cost, limit }, stick): Kind => {
    // A limit of 3 stands for no limit, but no stick that earns is endless.
    return {
      stick,
      rooms: [room],
      losses: [0],
      cost: cost + credit * room,
      limit: limit === 3 && cost >= 0 ? Infinity : limit,
    };
  });
  const problem: Problem = {
    sizes: Float64Array.of(1),
    demand: Float64Array.of(total),
    keys: Int32Array.of(-1),
    setups: new Float64Array(0),
    kinds,
    costGrid: { times: 1, per: 1, exact: true },
    credit,
    keep: 0,
    members: [[0]],
  };
  return problem;
}

test("no combination of sticks is left out, and none is too short", () => {
  const kinds = fc.array(kindOf, { minLength: 1, maxLength: 3 });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), fc.nat(2), kinds, fc.nat(20), (total, credit, given, beyond) => {
      const problem = problemOf(total, credit, given);
      // What earns is counted as if all of it were used.
      const earned = given.reduce((sum, { cost, limit }) => sum + Math.min(0, cost) * limit, 0);
      const from = credit * total + earned + beyond;
      const found = runSteps(leastCombinations(searchOf(problem), from, from + 30));
      if (!found.complete) {
        expect(given.every(({ cost }) => cost <= 0)).toBe(true);
        return;
      }
      // All ways to choose the sticks that cost something, besides all of those that don't.
      const mosts = problem.kinds.map(({ limit }) => Math.min(limit, total));
      const counts = mosts.map((_, k) => (given[k]!.cost <= 0 ? problem.kinds[k]!.limit : 0));
      let least = Infinity;
      let all: string[] = [];
      const walk = (k: number): void => {
        if (k < counts.length) {
          if (given[k]!.cost <= 0) {
            walk(k + 1);
            return;
          }
          for (let count = 0; count <= mosts[k]!; count++) {
            counts[k] = count;
            walk(k + 1);
          }
          return;
        }
        const room = counts.reduce((sum, count, n) => sum + (count > 0 ? count * given[n]!.room : 0), 0);
        const paid = counts.reduce((sum, count, n) => sum + (given[n]!.cost > 0 ? count * given[n]!.cost : 0), 0);
        const sticks = counts.reduce((sum, count, n) => sum + (given[n]!.cost > 0 ? count : 0), 0);
        const cost = credit * total + earned + paid;
        if (room < total || sticks > total || cost < from || cost > from + 30 || cost > least) return;
        if (cost < least) [least, all] = [cost, []];
        all.push(counts.join());
      };
      walk(0);
      expect(found.cost).toBe(least);
      // Of those that cost nothing any number may be used.
      for (const { least: fewest } of found.choices) {
        expect(fewest.every((count, k) => count === 0 || given[k]!.cost > 0)).toBe(true);
      }
      expect(found.choices.map(({ most }) => most.join()).sort()).toEqual(all.sort());
    }),
    { numRuns: 1000 },
  );
});
