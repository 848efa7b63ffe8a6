import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeBudget } from "../../src/stock/search/budget.js";
import * as branching from "../../src/stock/patterns/knapsack.js";
import type { Filling, Knapsack } from "../../src/stock/patterns/knapsack.js";
import * as table from "../../src/stock/patterns/knapsack-table.js";
import { runSteps } from "../laws/stated-problem.js";

const fillRoom = (knapsack: Knapsack, branchLimit = 1e6): Filling =>
  runSteps(branching.fillRoom(knapsack, makeBudget(Infinity), branchLimit));
const fillRoomByTable = (knapsack: Knapsack): Filling =>
  runSteps(table.fillRoomByTable(knapsack, makeBudget(Infinity)))!;

interface Item {
  readonly size: number;
  readonly profit: number;
  readonly most: number;
  readonly key: number;
}

/** A filling's profit, or undefined if it does not fit. */
function profitOf(
  items: readonly Item[],
  counts: readonly number[],
  setups: readonly number[],
  rate: number,
  room: number,
) {
  let taken = 0;
  let profit = 0;
  const paid = new Set<number>();
  items.forEach((item, k) => {
    taken += item.size * counts[k]!;
    profit += item.profit * counts[k]!;
    if (counts[k]! > 0 && item.key >= 0) paid.add(item.key);
  });
  for (const key of paid) {
    taken += setups[key]!;
    profit -= setups[key]! * rate;
  }
  return taken <= room ? profit : undefined;
}

/** The largest profit of all fillings, by trying every one. */
function bestByForce(items: readonly Item[], setups: readonly number[], rate: number, room: number): number {
  let best = 0;
  const counts = items.map(() => 0);
  const walk = (k: number): void => {
    if (k === items.length) {
      best = Math.max(best, profitOf(items, counts, setups, rate, room) ?? 0);
      return;
    }
    for (counts[k] = 0; counts[k] <= items[k]!.most; counts[k]++) walk(k + 1);
    counts[k] = 0;
  };
  walk(0);
  return best;
}

function knapsackOf(
  items: readonly Item[],
  setups: readonly number[],
  setupRate: number,
  room: number,
  above = 0,
): Knapsack {
  return {
    profits: Float64Array.from(items, ({ profit }) => profit),
    sizes: Float64Array.from(items, ({ size }) => size),
    most: Float64Array.from(items, ({ most }) => most),
    keys: Int32Array.from(items, ({ key }) => key),
    setups: Float64Array.from(setups),
    setupRate,
    room,
    above,
  };
}

function countsOf(items: readonly Item[], filling: Filling): number[] {
  const counts = items.map(() => 0);
  for (const [item, count] of filling.found.at(-1) ?? []) counts[item]! += count;
  return counts;
}

const itemsOf = (keys: number): fc.Arbitrary<Item[]> =>
  fc.array(
    fc.record({
      size: fc.integer({ min: 1, max: 15 }),
      profit: fc.integer({ min: 0, max: 20 }),
      most: fc.integer({ min: 0, max: 3 }),
      key: fc.integer({ min: -1, max: keys - 1 }),
    }),
    { minLength: 1, maxLength: 5 },
  );
const room = fc.integer({ min: 1, max: 40 });

describe("knapsack", () => {
  test("branch and bound against brute force, with set-ups", () => {
    fc.assert(
      fc.property(itemsOf(2), fc.tuple(fc.nat(6), fc.nat(6)), fc.nat(3), room, (items, setups, rate, space) => {
        const filling = fillRoom(knapsackOf(items, setups, rate, space));
        const best = bestByForce(items, setups, rate, space);
        expect([filling.exact, filling.value]).toEqual([true, best]);
        if (best > 0) expect(profitOf(items, countsOf(items, filling), setups, rate, space)).toBe(best);
      }),
    );
  });

  test("the table against brute force", () => {
    fc.assert(
      fc.property(itemsOf(0), room, (items, space) => {
        const filling = fillRoomByTable(knapsackOf(items, [], 0, space));
        const best = bestByForce(items, [], 0, space);
        expect(filling.value).toBe(best);
        if (best > 0) expect(profitOf(items, countsOf(items, filling), [], 0, space)).toBe(best);
      }),
    );
  });

  test("finds nothing where nothing is above the threshold, and the best where something is", () => {
    fc.assert(
      fc.property(itemsOf(0), room, (items, space) => {
        const best = bestByForce(items, [], 0, space);
        for (const fill of [fillRoom, fillRoomByTable]) {
          const none = fill(knapsackOf(items, [], 0, space, best));
          expect([none.value, none.found]).toEqual([best, []]);
          if (best > 0) expect(fill(knapsackOf(items, [], 0, space, best - 1)).value).toBe(best);
        }
      }),
    );
  });

  test("gives up with a bound that holds", () => {
    fc.assert(
      fc.property(itemsOf(0), room, (items, space) => {
        const filling = fillRoom(knapsackOf(items, [], 0, space), 2);
        expect(filling.value).toBeGreaterThanOrEqual(bestByForce(items, [], 0, space));
      }),
    );
  });
});
