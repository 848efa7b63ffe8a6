import type { Prices } from "../bounds/safe-bound.js";
import { type Entry, makePattern, type Pattern } from "../model/pattern.js";
import { creditFor } from "../model/problem.js";
import type { Subproblem } from "../model/subproblem.js";
import { isSpent, spend } from "../search/budget.js";
import type { Search } from "../search/search.js";
import type { Steps } from "../steps.js";
import { largestOf } from "../sums.js";

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
export interface EnumerationQuery {
  /** Index of the kind. */
  readonly kind: number;
  /** Item that must be in the pattern. */
  readonly item: number;
  /** Least worth of the pattern and its credit at the prices. */
  readonly least: number;
  /** Most patterns. */
  readonly patterns: number;
  /** Most branches. */
  readonly branches: number;
}

/** What a branch takes, in entries of the simplex. */
const STEPS_OF_A_BRANCH = 20;
/** What a pattern takes to be made. */
const STEPS_OF_A_PATTERN = 200;
/** Places of items in rooms beyond which a kind is not looked at: a stick of very many defects. */
const MOST_PLACES = 20_000;

/**
 * Finds all patterns of a kind that hold an item and are worth enough.
 *
 * Where offcuts earn nothing, a stick that has room for a needed piece might as well hold it, so patterns to which a piece
 * can be added are left out. Once the budget is spent, the patterns are not complete.
 */
export function* enumeratePatterns(
  { problem, budget }: Search,
  node: Subproblem,
  { items: prices, scale }: Prices,
  query: EnumerationQuery,
): Steps<Enumeration> {
  const { kind, item: needed, least, patterns: mostPatterns, branches: mostBranches } = query;
  const { sizes, keys, setups, credit } = problem;
  const { rooms, losses } = problem.kinds[kind]!;
  const patterns: Pattern[] = [];
  let branches = 0;
  const end = (complete: boolean): Enumeration => ({ patterns, complete, branches });
  const longest = largestOf(rooms, 0);
  const order: number[] = [];
  for (let item = 0; item < sizes.length; item++) {
    if (node.demand[item]! > 0 && sizes[item]! <= longest) order.push(item);
  }
  // An item that takes nothing has an endless rate; a large one will do.
  const rate = (item: number): number => prices[item]! / Math.max(sizes[item]!, 1e-9);
  order.sort((a, b) => rate(b) - rate(a) || a - b);
  const n = order.length;
  const places = rooms.length * n;
  if (places > MOST_PLACES) return end(false);
  const own = order.indexOf(needed);
  const rates = Float64Array.from(order, rate);
  // Place j of room r is number r * n + j.
  const counts = new Float64Array(places);
  const used = new Float64Array(n);
  const left = Float64Array.from(rooms);
  const keyCounts = rooms.map(() => new Float64Array(setups.length));
  const creditOf = (rest: number, room: number): number => creditFor(problem, rest, losses[room]!) * scale;
  // What the rooms after each can be worth at most.
  const after = new Float64Array(rooms.length + 1);
  for (let room = rooms.length - 1; room >= 0; room--) {
    after[room] = after[room + 1]! + rooms[room]! * (rates[0] ?? 0) + creditOf(rooms[room]!, room) + 2;
  }
  let uncounted = 4 * places;

  const setupFor = (room: number, item: number): number => {
    const key = keys[item]!;
    return key >= 0 && keyCounts[room]![key] === 0 ? setups[key]! : 0;
  };
  const put = (place: number, times: number): void => {
    const room = Math.floor(place / n);
    const j = place % n;
    const item = order[j]!;
    const key = keys[item]!;
    counts[place] = counts[place]! + times;
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
    uncounted += 2 * places;
    if (worth < least || (credit === 0 && canGrow())) return;
    uncounted += STEPS_OF_A_PATTERN;
    const entries: Entry[] = [];
    counts.forEach((count, place) => {
      if (count > 0) entries.push([order[place % n]!, count, Math.floor(place / n)]);
    });
    patterns.push(makePattern(problem, kind, entries));
  };
  // How many were put into each place, beside the item that must be there, and what the places before are worth.
  const more = new Float64Array(places);
  const worths = new Float64Array(places + 1);
  for (const [first, space] of rooms.entries()) {
    if (own < 0 || sizes[needed]! + setupFor(first, needed) > space) continue;
    put(first * n + own, 1);
    worths[0] = prices[needed]!;
    let place = 0;
    while (place >= 0) {
      uncounted += STEPS_OF_A_BRANCH;
      if (uncounted >= 1000) {
        const due = spend(budget, uncounted);
        uncounted = 0;
        if (due) yield;
        if (due && isSpent(budget)) return end(false);
      }
      if (++branches > mostBranches || patterns.length >= mostPatterns) return end(false);
      let worth = worths[place]!;
      let hopeless = place === places;
      if (hopeless) keep(worth + creditOf(left.at(-1)!, rooms.length - 1));
      else {
        const room = Math.floor(place / n);
        const j = place % n;
        if (j === 0 && room > 0) worth += creditOf(left[room - 1]!, room - 1);
        // Raised by two units, since the product is rounded; a set-up is left out of it.
        const most = worth + left[room]! * rates[j]! + creditOf(left[room]!, room) + after[room + 1]! + 2;
        hopeless = most < least;
        if (!hopeless) {
          const item = order[j]!;
          const rest = left[room]! - setupFor(room, item);
          const fits = sizes[item]! > 0 ? Math.floor(rest / sizes[item]!) : rest >= 0 ? Infinity : 0;
          const times = Math.min(node.demand[item]! - used[j]!, Math.max(0, fits));
          more[place] = times;
          if (times > 0) put(place, times);
          worths[place + 1] = worth + times * prices[item]!;
          place++;
        }
      }
      if (!hopeless) continue;
      // Back to the last place that holds some: it gives back one.
      for (place--; place >= 0 && more[place] === 0; place--);
      if (place < 0) break;
      more[place] = more[place]! - 1;
      put(place, -1);
      worths[place + 1] = worths[place + 1]! - prices[order[place % n]!]!;
      place++;
    }
    put(first * n + own, -1);
  }
  if (spend(budget, uncounted)) yield;
  return end(true);
}
