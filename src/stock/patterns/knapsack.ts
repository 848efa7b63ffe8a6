import { type Budget, isSpent, spend } from "../search/budget.js";
import type { Steps } from "../steps.js";

/** A bounded knapsack in integers: how to fill one room at most profit. */
export interface Knapsack {
  /** Profit of one of each item, an integer; items with none are left out. */
  readonly profits: Float64Array;
  /** What one of each item takes. */
  readonly sizes: Float64Array;
  /** How many of each item there are. */
  readonly most: Float64Array;
  /** Share key of each item, or -1. */
  readonly keys: Int32Array;
  /** What each share key takes once. */
  readonly setups: Float64Array;
  /** What each unit of a set-up costs, 0 or more. */
  readonly setupRate: number;
  /** The room. */
  readonly room: number;
  /** Only a profit above this is of interest. */
  readonly above: number;
}

/** What filling the room came to. */
export interface Filling {
  /** No filling has a larger profit than this; if `exact`, it is the largest profit or `above`, whichever is larger. */
  readonly value: number;
  /** Whether the search was complete. */
  readonly exact: boolean;
  /** The fillings found, each better than the one before; empty if none is above `above`. */
  readonly found: readonly (readonly [item: number, count: number][])[];
}

/** A branch takes as long as that many entries of the simplex. */
const STEPS_OF_A_BRANCH = 8;
/** An item takes that many times as long as an entry of the simplex to be put in its place. */
const STEPS_OF_AN_ITEM = 10;
/** How many of the fillings found are handed back: the last ones differ enough to be columns of their own. */
const MOST_FOUND = 4;

/**
 * Solves a bounded knapsack by depth-first branch and bound.
 *
 * Items go by profit per size. A branch is cut off when even the room left, filled at the next item's rate, can't beat the
 * best. That product is rounded, so it is raised by two units before the comparison: profits are integers below 2^52, and
 * a bound may be too large but never too small. A share key's set-up is left out of the bound. It gives up after some
 * branches, and once the budget is spent.
 */
export function* fillRoom(knapsack: Knapsack, budget: Budget, branchLimit: number): Steps<Filling> {
  const { profits, sizes, most, keys, setups, setupRate, room, above } = knapsack;
  const order: number[] = [];
  for (let item = 0; item < sizes.length; item++) {
    if (profits[item]! > 0 && most[item]! > 0 && sizes[item]! <= room) order.push(item);
  }
  // Items that take nothing (a saving as long as piece and kerf) come first, at an infinite rate.
  const rate = (item: number): number => (sizes[item]! > 0 ? profits[item]! / sizes[item]! : Infinity);
  order.sort((a, b) => rate(b) - rate(a) || a - b);
  const n = order.length;
  const profit = new Float64Array(n);
  const size = new Float64Array(n);
  const limit = new Float64Array(n);
  const key = new Int32Array(n);
  const rates = new Float64Array(n + 1);
  const smallest = new Float64Array(n + 1).fill(Infinity);
  for (let k = n - 1; k >= 0; k--) {
    const item = order[k]!;
    profit[k] = profits[item]!;
    size[k] = sizes[item]!;
    limit[k] = most[item]!;
    key[k] = keys[item]!;
    rates[k] = size[k]! > 0 ? rate(item) : Number.MAX_VALUE;
    smallest[k] = Math.min(smallest[k + 1]!, size[k]!);
  }
  const count = new Float64Array(n);
  const keyCount = new Float64Array(setups.length);
  const found: [number, number][][] = [];
  let best = above;
  let value = 0;
  let left = room;
  let branches = 0;
  let counted = 0;
  let k = 0;
  if (spend(budget, STEPS_OF_AN_ITEM * sizes.length)) yield;
  for (;;) {
    // Forward: take as many of each item as fit, until nothing fits or nothing can come of it.
    let hopeless = false;
    while (k < n) {
      if (left < smallest[k]!) {
        k = n;
        break;
      }
      if (value + left * rates[k]! + 2 <= best) {
        hopeless = true;
        break;
      }
      const group = key[k]!;
      const setup = group >= 0 && keyCount[group] === 0 ? setups[group]! : 0;
      const space = left - setup;
      if (space >= size[k]!) {
        const taken = size[k]! > 0 ? Math.min(limit[k]!, Math.floor(space / size[k]!)) : limit[k]!;
        count[k] = taken;
        value += taken * profit[k]! - setup * setupRate;
        left = space - taken * size[k]!;
        if (group >= 0) keyCount[group] = keyCount[group]! + taken;
      }
      k++;
      branches++;
    }
    if (!hopeless && value > best) {
      best = value;
      const filling: [number, number][] = [];
      for (let j = 0; j < n; j++) if (count[j]! > 0) filling.push([order[j]!, count[j]!]);
      if (found.length === MOST_FOUND) found.shift();
      found.push(filling);
    }
    const due = spend(budget, STEPS_OF_A_BRANCH * (branches - counted));
    counted = branches;
    if (due) yield;
    if (branches > branchLimit || (due && isSpent(budget)))
      return { value: Math.max(best, upperBound()), exact: false, found };
    // Back: give back one of the last item that was taken; once that is hopeless, all of it.
    let j = k - 1;
    for (;;) {
      while (j >= 0 && count[j] === 0) j--;
      if (j < 0) return { value: best, exact: true, found };
      branches++;
      giveBack(j, 1);
      if (value + left * rates[j + 1]! + 2 > best) break;
      giveBack(j, count[j]!);
      // With the last of its key a set-up comes back too, which can make the rest worth another look.
      if (key[j]! >= 0 && value + left * rates[j + 1]! + 2 > best) break;
    }
    k = j + 1;
  }

  function giveBack(j: number, times: number): void {
    if (times === 0) return;
    count[j] = count[j]! - times;
    value -= times * profit[j]!;
    left += times * size[j]!;
    const group = key[j]!;
    if (group < 0) return;
    keyCount[group] = keyCount[group]! - times;
    if (keyCount[group] === 0) {
      value += setups[group]! * setupRate;
      left += setups[group]!;
    }
  }

  /** Profit of the best filling if pieces could be cut anywhere. */
  function upperBound(): number {
    let bound = 2 + n;
    let space = room;
    for (let j = 0; j < n && space > 0; j++) {
      const taken = Math.min(limit[j]!, size[j]! > 0 ? space / size[j]! : Infinity);
      bound += Math.ceil(taken * profit[j]!);
      space -= taken * size[j]!;
    }
    return bound;
  }
}
