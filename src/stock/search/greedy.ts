import { type Entry, makePattern, mostTimes, type Pattern, patternSum, takeOff, type Use } from "../model/pattern.js";
import { setupOf } from "../model/problem.js";
import type { Subproblem } from "../model/subproblem.js";
import type { Steps } from "../steps.js";
import { sumOf } from "../sums.js";
import { isSpent, spend } from "./budget.js";
import type { PartialPlan, Search } from "./search.js";

/** How many kinds are tried for each stick; a job of ten thousand kinds must not take ten thousand fillings a stick. */
const MOST_KINDS_TRIED = 64;
/** What one of them takes to be put in order, in entries of the simplex. */
const STEPS_OF_A_KIND = 10;
/** What a layout takes besides its entries. */
const STEPS_OF_A_LAYOUT = 50;
/** Kinds times items that are tried for each stick, if that means fewer kinds, but never fewer than four. */
const MOST_TRIED = 2000;

/** The first item from some place on that is still needed; ways past those that aren't are made shorter as they are gone. */
function nextNeeded(skip: Int32Array, from: number): number {
  let item = from;
  while (skip[item] !== item) {
    skip[item] = skip[skip[item]!]!;
    item = skip[item]!;
  }
  return item;
}

/** The first item from some place on that is no larger than what is left. */
function firstSmall(sizes: Float64Array, left: number, from: number): number {
  let [low, high] = [from, sizes.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sizes[middle]! > left) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Fills one stick of a kind from the items that remain; undefined if nothing fits. `skip` leads past the items that are not
 * needed any more.
 */
export type Fill = (
  search: Search,
  kind: number,
  remaining: Float64Array,
  skip: Int32Array,
) => Steps<Pattern | undefined>;

/** Fills a stick with the largest items that fit, the first-fit decreasing rule; see {@link Fill}. */
export function* fillFirstFit(
  { problem, budget }: Search,
  kind: number,
  remaining: Float64Array,
  skip: Int32Array,
): Steps<Pattern | undefined> {
  const { sizes, keys, kinds } = problem;
  const { rooms } = kinds[kind]!;
  const entries: Entry[] = [];
  const rest = rooms.length > 1 ? remaining.slice() : remaining;
  for (const [room, space] of rooms.entries()) {
    let left = space;
    let looked = 0;
    const paid = new Set<number>();
    for (let item = 0; ; item++) {
      item = nextNeeded(skip, firstSmall(sizes, left, item));
      if (item >= sizes.length) break;
      looked++;
      const size = sizes[item]!;
      const key = keys[item]!;
      const setup = paid.has(key) ? 0 : setupOf(problem, item);
      const count = Math.min(rest[item]!, Math.floor((left - setup) / size));
      if (!(count > 0)) continue;
      paid.add(key);
      left -= setup + count * size;
      entries.push([item, count, room]);
      if (rest !== remaining) rest[item] = rest[item]! - count;
    }
    if (spend(budget, STEPS_OF_A_LAYOUT + 10 * looked)) yield;
  }
  return entries.length === 0 ? undefined : makePattern(problem, kind, entries);
}

/**
 * Fills stick after stick, each time the one that costs least per length made, as long as there are items and sticks.
 *
 * With `whole` it goes on once the budget is spent: then, if time is up, with the kind that costs least per length.
 */
export function* fillGreedily(
  search: Search,
  { demand, most: available }: Pick<Subproblem, "demand" | "most">,
  fill: Fill = fillFirstFit,
  whole = false,
): Steps<PartialPlan> {
  const { problem, budget } = search;
  const remaining = demand.slice();
  const left = available.slice();
  const skip = Int32Array.from({ length: demand.length + 1 }, (_, item) => (demand[item] === 0 ? item + 1 : item));
  const perRoom = problem.kinds.map(({ cost, rooms }) => cost / sumOf(rooms));
  const order = problem.kinds.map((_, kind) => kind).sort((a, b) => perRoom[a]! - perRoom[b]! || a - b);
  if (spend(budget, STEPS_OF_A_KIND * order.length + demand.length)) yield;
  const mostTried = Math.min(MOST_KINDS_TRIED, Math.max(4, Math.floor(MOST_TRIED / problem.sizes.length)));
  const plan: Use[] = [];
  for (;;) {
    const spent = isSpent(budget);
    if (spent && !whole) return { plan, remaining };
    // The number of steps decides what is found, so it alone never makes a plan simpler.
    const most = spent && budget.stopped !== "steps" ? 1 : mostTried;
    let best: Pattern | undefined;
    let bestRate = Infinity;
    const open: number[] = [];
    let looked = 0;
    for (; looked < order.length && open.length < most; looked++) {
      const kind = order[looked]!;
      const pattern = left[kind]! > 0 ? yield* fill(search, kind, remaining, skip) : undefined;
      // What does not fit now never will, since the demand only shrinks.
      if (pattern === undefined) continue;
      open.push(kind);
      const rate = pattern.cost / patternSum(pattern, problem.sizes);
      if (rate < bestRate) [best, bestRate] = [pattern, rate];
    }
    order.splice(0, looked, ...open);
    if (best === undefined) return { plan, remaining };
    const times = mostTimes(best, remaining, left);
    takeOff(best, times, remaining, left);
    for (const [item] of best.entries) if (remaining[item] === 0) skip[item] = item + 1;
    plan.push({ pattern: best, times });
    if (spend(budget, STEPS_OF_A_LAYOUT + looked)) yield;
  }
}
