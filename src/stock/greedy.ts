import { type Budget, isSpent } from "./budget.js";
import { type Entry, makePattern, type Pattern, patternSum, type Problem, setupOf, type Use } from "./problem.js";
import { sumOf } from "./sums.js";

/** How many kinds are tried for each stick; a job of ten thousand kinds must not take ten thousand fillings a stick. */
const MOST_KINDS_TRIED = 64;
/** Layouts between two looks at the clock. */
const STICKS_BETWEEN_PAUSES = 32;
/** Kinds times items that are tried for each stick, if that means fewer kinds, but never fewer than four. */
const MOST_TRIED = 2000;

/** Fills a stick with the largest items that fit, the first-fit decreasing rule; undefined if nothing fits. */
function fillFirstFit(problem: Problem, kind: number, remaining: Float64Array): Pattern | undefined {
  const { sizes, keys, kinds } = problem;
  const spaces = kinds[kind]!.rooms;
  const entries: Entry[] = [];
  const rest = remaining.slice();
  spaces.forEach((space, room) => {
    let left = space;
    const paid = new Set<number>();
    for (let item = 0; item < sizes.length; item++) {
      const size = sizes[item]!;
      if (size > left) continue;
      const key = keys[item]!;
      const setup = paid.has(key) ? 0 : setupOf(problem, item);
      const count = Math.min(rest[item]!, Math.floor((left - setup) / size));
      if (!(count > 0)) continue;
      paid.add(key);
      left -= setup + count * size;
      entries.push([item, count, room]);
      rest[item] = rest[item]! - count;
    }
  });
  return entries.length === 0 ? undefined : makePattern(problem, kind, entries);
}

/** Fills one stick of a kind; undefined if nothing fits. */
export type Fill = (problem: Problem, kind: number, remaining: Float64Array) => Pattern | undefined;

/** A plan and what it leaves over. */
export interface PartialPlan {
  /** The sticks. */
  readonly plan: readonly Use[];
  /** How many of each item have no place. */
  readonly remaining: Float64Array;
}

/**
 * How often a pattern can be used before an item or its kind runs out.
 *
 * @param pattern - the pattern
 * @param remaining - how many of each item are needed
 * @param available - how many sticks of each kind are left
 * @returns the number of times
 */
export function mostTimes(pattern: Pattern, remaining: Float64Array, available: Float64Array): number {
  const need = new Map<number, number>();
  for (const [item, count] of pattern.entries) need.set(item, (need.get(item) ?? 0) + count);
  let times = available[pattern.kind]!;
  for (const [item, count] of need) times = Math.min(times, Math.floor(remaining[item]! / count));
  return times;
}

/**
 * Takes what a pattern makes off the demand.
 *
 * @param pattern - the pattern
 * @param times - how often it is used
 * @param remaining - how many of each item are needed; changed
 * @param available - how many sticks of each kind are left; changed
 */
export function takeOff(pattern: Pattern, times: number, remaining: Float64Array, available: Float64Array): void {
  for (const [item, count] of pattern.entries) remaining[item] = remaining[item]! - count * times;
  available[pattern.kind] = available[pattern.kind]! - times;
}

/**
 * Fills stick after stick, each time the one that costs least per length made.
 *
 * @param problem - the problem
 * @param demand - how many of each item to place
 * @param available - how many sticks of each kind there are
 * @param fill - fills one stick of a kind; undefined if nothing fits
 * @param budget - once it is spent, no more sticks are filled; without one, they all are
 * @returns a plan that makes as much as it found room for
 * @yields {undefined} nothing, between some sticks
 */
export function* fillGreedily(
  problem: Problem,
  demand: Float64Array,
  available: Float64Array,
  fill: Fill = fillFirstFit,
  budget?: Budget,
): Generator<undefined, PartialPlan> {
  const remaining = demand.slice();
  const left = available.slice();
  const perRoom = problem.kinds.map(({ cost, rooms }) => cost / sumOf(rooms));
  const order = problem.kinds.map((_, kind) => kind).sort((a, b) => perRoom[a]! - perRoom[b]! || a - b);
  const mostTried = Math.min(MOST_KINDS_TRIED, Math.max(4, Math.floor(MOST_TRIED / problem.sizes.length)));
  const plan: Use[] = [];
  for (;;) {
    let best: Pattern | undefined;
    let bestRate = Infinity;
    const open: number[] = [];
    let looked = 0;
    for (; looked < order.length && open.length < mostTried; looked++) {
      const kind = order[looked]!;
      const pattern = left[kind]! > 0 ? fill(problem, kind, remaining) : undefined;
      // What does not fit now never will, since the demand only shrinks.
      if (pattern === undefined) continue;
      open.push(kind);
      const rate = pattern.cost / patternSum(pattern, problem.sizes);
      if (rate < bestRate) [best, bestRate] = [pattern, rate];
    }
    order.splice(0, looked, ...open);
    if (best === undefined || (budget !== undefined && isSpent(budget))) return { plan, remaining };
    const times = mostTimes(best, remaining, left);
    takeOff(best, times, remaining, left);
    plan.push({ pattern: best, times });
    if (plan.length % STICKS_BETWEEN_PAUSES === 0) yield undefined;
  }
}
