import { type Entry, makePattern, type Pattern } from "../model/pattern.js";
import { setupOf } from "../model/problem.js";
import type { Search } from "../search/search.js";
import type { Steps } from "../steps.js";
import { fillRoom } from "./knapsack.js";

/** Branches after which a filling is good enough. */
const MOST_BRANCHES = 500;

/**
 * Fills a stick as full as possible around the largest item that fits: it is the one that will be hardest to place later.
 * Undefined if nothing fits.
 */
export function* fillBySubsetSum(
  { problem, budget }: Search,
  kind: number,
  remaining: Float64Array,
): Steps<Pattern | undefined> {
  const { sizes, keys, setups, kinds } = problem;
  const profits = sizes.map((size) => Math.floor((size + 1e-3) * 2 ** 20));
  const left = remaining.slice();
  const entries: Entry[] = [];
  for (const [place, room] of kinds[kind]!.rooms.entries()) {
    const fits = (count: number, item: number): boolean => count > 0 && sizes[item]! + setupOf(problem, item) <= room;
    const first = left.findIndex(fits);
    if (first < 0) continue;
    const key = keys[first]!;
    left[first] = left[first]! - 1;
    // The set-up of the first item's key is paid with it.
    const free = setups.map((setup, k) => (k === key ? 0 : setup));
    const space = room - sizes[first]! - setupOf(problem, first);
    const knapsack = { profits, sizes, most: left, keys, setups: free, setupRate: 0, room: space, above: 0 };
    const filling = yield* fillRoom(knapsack, budget, MOST_BRANCHES);
    const best = new Map<number, number>([[first, 1]]);
    for (const [item, count] of filling.found.at(-1) ?? []) {
      best.set(item, (best.get(item) ?? 0) + count);
      left[item] = left[item]! - count;
    }
    for (const [item, count] of best) entries.push([item, count, place]);
  }
  return entries.length === 0 ? undefined : makePattern(problem, kind, entries);
}
