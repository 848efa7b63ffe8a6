import { type Budget, isSpent, spend } from "../search/budget.js";
import type { Steps } from "../steps.js";
import type { Filling, Knapsack } from "./knapsack.js";

/** Most entries of a table, of a byte each. */
export const MOST_TABLE_ENTRIES: number = 2.5e7;
/** Most room that a table is made for: for each unit it also holds a number of eight bytes. */
const MOST_ROOM = 4e6;
/** Entries between two looks at the budget. */
const ENTRIES_AT_A_TIME = 100_000;

/** Some of one item, taken together or not at all. */
interface Lot {
  readonly item: number;
  readonly count: number;
}

/** Splits each item into lots of 1, 2, 4, ... and a rest, so that every number of them is a sum of lots. */
function lotsOf(knapsack: Knapsack): Lot[] {
  const { profits, most, sizes, room } = knapsack;
  const lots: Lot[] = [];
  for (let item = 0; item < profits.length; item++) {
    if (!(profits[item]! > 0 && sizes[item]! <= room)) continue;
    let left = Math.min(most[item]!, Math.floor(room / sizes[item]!));
    for (let count = 1; left > 0; count *= 2) {
      lots.push({ item, count: Math.min(count, left) });
      left -= count;
    }
  }
  return lots;
}

/** Entries that the table of a knapsack would have, Infinity for a table that would be too wide. */
export function tableEntries(knapsack: Knapsack): number {
  return knapsack.room > MOST_ROOM ? Infinity : lotsOf(knapsack).length * (knapsack.room + 1);
}

/**
 * Solves a bounded knapsack without share keys by dynamic programming over the room.
 *
 * The answer to small items, of which branch and bound tries too many, and to sizes that are all alike, which its bound
 * can't tell apart. All sizes are positive. Undefined if the budget is spent before the best filling is known.
 */
export function* fillRoomByTable(knapsack: Knapsack, budget: Budget): Steps<Filling | undefined> {
  const { profits, sizes, room, above } = knapsack;
  const lots = lotsOf(knapsack);
  const width = room + 1;
  // values[c] is the best profit that takes c at most.
  const values = new Float64Array(width);
  const taken = new Uint8Array(width * lots.length);
  for (const [row, { item, count }] of lots.entries()) {
    const size = sizes[item]! * count;
    const profit = profits[item]! * count;
    const start = row * width;
    for (let c = room; c >= size;) {
      const last = Math.max(size, c - ENTRIES_AT_A_TIME);
      if (spend(budget, 2 * (c - last))) {
        yield;
        if (isSpent(budget)) return undefined;
      }
      for (; c >= last; c--) {
        const value = values[c - size]! + profit;
        if (value > values[c]!) {
          values[c] = value;
          taken[start + c] = 1;
        }
      }
    }
  }
  if (!(values[room]! > above)) return { value: above, exact: true, found: [] };
  const counts = new Map<number, number>();
  let left = room;
  for (let row = lots.length - 1; row >= 0; row--) {
    if (taken[row * width + left] === 0) continue;
    const { item, count } = lots[row]!;
    counts.set(item, (counts.get(item) ?? 0) + count);
    left -= count * sizes[item]!;
  }
  return { value: values[room]!, exact: true, found: [[...counts]] };
}
