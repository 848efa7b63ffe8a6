import { sumOf } from "../sums.js";
import { creditFor, type Problem } from "./problem.js";

/** Some of one item in a pattern, and in which room they lie; without one, in room 0. */
export type Entry = readonly [item: number, count: number, room?: number | undefined];

/** One way to cut a kind of stick. */
export interface Pattern {
  /** Index of the kind. */
  readonly kind: number;
  /** What is in it. An item can occur twice, in different rooms. */
  readonly entries: readonly Entry[];
  /** The stick's cost less the credit for its offcuts. */
  readonly cost: number;
}

/** A pattern with its cost: that of the stick less the credit for its offcuts. */
export function makePattern(problem: Problem, kind: number, entries: readonly Entry[]): Pattern {
  const { cost, losses } = problem.kinds[kind]!;
  if (problem.credit === 0) return { kind, entries, cost };
  const credits = roomsLeft(problem, { kind, entries }).map((left, room) => creditFor(problem, left, losses[room]!));
  return { kind, entries, cost: cost - sumOf(credits) };
}

/** What the items of a pattern and their set-ups leave of each room. */
export function roomsLeft(problem: Problem, { kind, entries }: Pick<Pattern, "kind" | "entries">): Float64Array {
  const { sizes, keys, setups, kinds } = problem;
  const left = Float64Array.from(kinds[kind]!.rooms);
  const paid = new Set<number>();
  for (const [item, count, room = 0] of entries) {
    const key = keys[item]!;
    const name = room * setups.length + key;
    const setup = key < 0 || paid.has(name) ? 0 : setups[key]!;
    if (key >= 0) paid.add(name);
    left[room] = left[room]! - sizes[item]! * count - setup;
  }
  return left;
}

/** How many of each item a pattern makes, in all its rooms. */
export function itemCounts({ entries }: Pattern): Map<number, number> {
  const counts = new Map<number, number>();
  for (const [item, count] of entries) counts.set(item, (counts.get(item) ?? 0) + count);
  return counts;
}

/** Sum over the pieces of a pattern of a value of their item. */
export function patternSum(pattern: Pattern, values: Float64Array): number {
  return pattern.entries.reduce((sum, [item, count]) => sum + values[item]! * count, 0);
}

/** A name that patterns of the same content share. */
export function patternName(pattern: Pattern): string {
  const names = pattern.entries.map(([item, count, room = 0]) => `${item}*${count}@${room}`);
  return `${pattern.kind}:${names.sort().join()}`;
}

/** A pattern and how many sticks are cut by it. */
export interface Use {
  /** The pattern. */
  readonly pattern: Pattern;
  /** How many sticks. */
  readonly times: number;
}

/** What a plan costs. */
export function planCost(plan: readonly Use[]): number {
  return plan.reduce((sum, { pattern, times }) => sum + pattern.cost * times, 0);
}

/** How often a pattern can be used before an item that remains or the sticks of its kind run out. */
export function mostTimes(pattern: Pattern, remaining: Float64Array, available: Float64Array): number {
  let times = available[pattern.kind]!;
  for (const [item, count] of itemCounts(pattern)) times = Math.min(times, Math.floor(remaining[item]! / count));
  return times;
}

/** Takes what a pattern makes and uses off the items that remain and the sticks of each kind. */
export function takeOff(pattern: Pattern, times: number, remaining: Float64Array, available: Float64Array): void {
  for (const [item, count] of pattern.entries) remaining[item] = remaining[item]! - count * times;
  available[pattern.kind] = available[pattern.kind]! - times;
}
