import { creditFor, type Entry, makePattern, type Pattern, type Problem } from "./problem.js";
import type { Subproblem } from "./subproblem.js";
import { largestOf } from "./sums.js";

/** The patterns found, and whether they are all. */
export interface Enumeration {
  /** The patterns, some of them more than once if a kind has several rooms. */
  readonly patterns: readonly Pattern[];
  /** Whether there are no others. */
  readonly complete: boolean;
  /** Branches tried. */
  readonly branches: number;
}

/** What to enumerate. */
export interface EnumerationLimits {
  /** Item that must be in the pattern. */
  readonly item: number;
  /** Least worth of the pattern and its credit at the prices. */
  readonly least: number;
  /** Most patterns. */
  readonly patterns: number;
  /** Most branches. */
  readonly branches: number;
}

/**
 * Finds all patterns of a kind that hold an item and are worth enough.
 *
 * Where offcuts earn nothing, a stick that has room for a needed piece might as well hold it, so patterns to which a piece
 * can be added are left out.
 *
 * @param problem - the problem
 * @param node - what is left of it
 * @param kind - index of the kind
 * @param prices - integer prices of the items
 * @param scale - units of the prices in a step of the cost grid
 * @param limits - the item, the worth, and when to give up
 * @returns the patterns
 */
export function enumeratePatterns(
  problem: Problem,
  node: Subproblem,
  kind: number,
  prices: Float64Array,
  scale: number,
  limits: EnumerationLimits,
): Enumeration {
  const { sizes, keys, setups, credit } = problem;
  const { rooms, losses } = problem.kinds[kind]!;
  const patterns: Pattern[] = [];
  const longest = largestOf(rooms, 0);
  const order: number[] = [];
  for (let item = 0; item < sizes.length; item++) {
    if (node.demand[item]! > 0 && sizes[item]! <= longest) order.push(item);
  }
  // An item that takes nothing has an endless rate; a large one will do.
  const rate = (item: number): number => prices[item]! / Math.max(sizes[item]!, 1e-9);
  order.sort((a, b) => rate(b) - rate(a) || a - b);
  const n = order.length;
  const own = order.indexOf(limits.item);
  const rates = Float64Array.from(order, rate);
  // Place j of room r is number r * n + j.
  const counts = new Float64Array(rooms.length * n);
  const used = new Float64Array(n);
  const left = Float64Array.from(rooms);
  const keyCounts = rooms.map(() => new Float64Array(setups.length));
  const creditOf = (rest: number, room: number): number => creditFor(problem, rest, losses[room]!) * scale;
  // What the rooms after each can be worth at most.
  const after = new Float64Array(rooms.length + 1);
  for (let room = rooms.length - 1; room >= 0; room--) {
    after[room] = after[room + 1]! + rooms[room]! * (rates[0] ?? 0) + creditOf(rooms[room]!, room) + 2;
  }
  let branches = 0;
  let complete = true;

  const setupFor = (room: number, item: number): number => {
    const key = keys[item]!;
    return key >= 0 && keyCounts[room]![key] === 0 ? setups[key]! : 0;
  };
  const put = (room: number, j: number, times: number): void => {
    const item = order[j]!;
    const key = keys[item]!;
    counts[room * n + j] = counts[room * n + j]! + times;
    used[j] = used[j]! + times;
    if (times > 0) left[room] = left[room]! - setupFor(room, item);
    left[room] = left[room]! - times * sizes[item]!;
    if (key < 0) return;
    keyCounts[room]![key] = keyCounts[room]![key]! + times;
    if (times < 0) left[room] = left[room] + setupFor(room, item);
  };
  const canGrow = (): boolean =>
    order.some(
      (item, j) =>
        used[j]! < node.demand[item]! && left.some((rest, room) => sizes[item]! + setupFor(room, item) <= rest),
    );
  const keep = (worth: number): void => {
    if (worth < limits.least || (credit === 0 && canGrow())) return;
    const entries: Entry[] = [];
    counts.forEach((count, place) => {
      if (count > 0) entries.push([order[place % n]!, count, Math.floor(place / n)]);
    });
    patterns.push(makePattern(problem, kind, entries));
  };
  const walk = (room: number, j: number, worth: number): void => {
    if (!complete) return;
    if (++branches > limits.branches || patterns.length >= limits.patterns) {
      complete = false;
      return;
    }
    if (room === rooms.length) {
      keep(worth);
      return;
    }
    if (j === n) {
      walk(room + 1, 0, worth + creditOf(left[room]!, room));
      return;
    }
    // Raised by two units, since the product is rounded; a set-up is left out of it.
    const most = worth + left[room]! * rates[j]! + creditOf(left[room]!, room) + after[room + 1]! + 2;
    if (most < limits.least) return;
    const item = order[j]!;
    const space = left[room]! - setupFor(room, item);
    const fits = sizes[item]! > 0 ? Math.floor(space / sizes[item]!) : space >= 0 ? Infinity : 0;
    const times = Math.min(node.demand[item]! - used[j]!, Math.max(0, fits));
    if (times > 0) put(room, j, times);
    for (let more = times; ; more--) {
      walk(room, j + 1, worth + more * prices[item]!);
      if (more === 0) break;
      put(room, j, -1);
    }
  };
  rooms.forEach((space, room) => {
    if (own < 0 || sizes[limits.item]! + setupFor(room, limits.item) > space) return;
    put(room, own, 1);
    walk(0, 0, prices[limits.item]!);
    put(room, own, -1);
  });
  return { patterns, complete, branches };
}
