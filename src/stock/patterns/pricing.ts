import type { Prices } from "../bounds/safe-bound.js";
import { type Entry, makePattern, type Pattern } from "../model/pattern.js";
import type { Subproblem } from "../model/subproblem.js";
import type { Budget } from "../search/budget.js";
import type { Search } from "../search/search.js";
import type { Steps } from "../steps.js";
import { type Filling, fillRoom, type Knapsack } from "./knapsack.js";
import { fillRoomByTable, MOST_TABLE_ENTRIES, tableEntries } from "./knapsack-table.js";

/** Branches of a knapsack after which it is given up: some hundredths of a second. */
const MOST_BRANCHES = 2e6;
/** Branches that find most of the good patterns where they are easily found. */
const QUICK_BRANCHES = 20_000;
/** Entries of a table that takes no longer than those. */
const SMALL_TABLE = 200_000;

/** What the best pattern of a kind is worth. */
export interface Offer {
  /** Worth of the best pattern and its credit, or the threshold if that is larger: no pattern is worth more. */
  readonly worth: number;
  /** The patterns found above the threshold, the best one last. */
  readonly patterns: readonly Pattern[];
}

/**
 * Solves one room's knapsack: by a quick branch and bound if that comes to an end or finds anything, else by the table if
 * it is not too large, else by a long branch and bound.
 */
function* solve(knapsack: Knapsack, budget: Budget, branchLimit: number): Steps<Filling> {
  if (branchLimit < MOST_BRANCHES) return yield* fillRoom(knapsack, budget, branchLimit);
  const simple = knapsack.keys.every((key) => key < 0) && knapsack.sizes.every((size) => size > 0);
  const entries = simple ? tableEntries(knapsack) : Infinity;
  const small = entries <= SMALL_TABLE;
  const quick = yield* fillRoom(knapsack, budget, small ? entries / 10 : QUICK_BRANCHES);
  if (quick.exact || (!small && quick.found.length > 0)) return quick;
  if (entries > MOST_TABLE_ENTRIES) return yield* fillRoom(knapsack, budget, branchLimit);
  return (yield* fillRoomByTable(knapsack, budget)) ?? quick;
}

/** Which patterns of a kind are looked for. */
export interface PatternQuery {
  /** Index of the kind. */
  readonly kind: number;
  /** Only patterns worth more than this are of interest; an integer. */
  readonly above: number;
  /** Branches after which a knapsack is given up; below the default, the first good patterns will do. */
  readonly branchLimit?: number | undefined;
}

/** Which fillings of one room are looked for. */
interface RoomQuery extends PatternQuery {
  /** The room, by default the first. */
  readonly place?: number;
}

/**
 * Best fillings of one room, the credit for its offcut included.
 *
 * With a credit there are two cases. Either the offcut is not counted; or enough stays free for one that is kept, and each
 * unit that is taken costs the credit it would have earned. The better of the two knapsacks is the answer, exactly.
 */
function* priceRoom(
  { problem, budget }: Search,
  { demand: most }: Subproblem,
  { items: prices, scale }: Prices,
  { kind, above, branchLimit = MOST_BRANCHES, place = 0 }: RoomQuery,
): Steps<Pick<Filling, "value" | "found">> {
  const { sizes, keys, setups, credit, keep, kinds } = problem;
  const { rooms, losses } = kinds[kind]!;
  const room = rooms[place]!;
  const loss = losses[place]!;
  const free = room - keep - loss;
  const fill = (profits: Float64Array, setupRate: number, space: number, least: number): Steps<Filling> =>
    solve({ profits, sizes, most, keys, setups, setupRate, room: space, above: least }, budget, branchLimit);
  if (credit === 0 || free < 0) return yield* fill(prices, 0, room, above);
  const rate = credit * scale;
  const whole = rate * (room - loss);
  const profits = prices.map((price, item) => price - rate * sizes[item]!);
  const kept = yield* fill(profits, rate, free, Math.max(0, above - whole));
  // An empty room is worth its whole credit, found or not.
  const best = Math.max(above, kept.value + whole);
  const filled = yield* fill(prices, 0, room, best);
  return { value: Math.max(filled.value, best), found: [...kept.found, ...filled.found] };
}

/**
 * Finds the patterns of a kind that are worth most at given prices, and a worth that none exceeds.
 *
 * No pattern has more of an item in a room than the subproblem needs.
 */
export function* priceKind(search: Search, node: Subproblem, prices: Prices, query: PatternQuery): Steps<Offer> {
  const { problem } = search;
  const { kind, above, branchLimit } = query;
  const { rooms } = problem.kinds[kind]!;
  if (rooms.length === 1) {
    const { value, found } = yield* priceRoom(search, node, prices, query);
    return { worth: value, patterns: found.map((filling) => makePattern(problem, kind, filling)) };
  }
  // Rooms are filled one by one: a stick is worth what its rooms are.
  let worth = 0;
  const entries: Entry[] = [];
  for (let place = 0; place < rooms.length; place++) {
    const { value, found } = yield* priceRoom(search, node, prices, { kind, above: 0, branchLimit, place });
    worth += value;
    for (const [item, count] of found.at(-1) ?? []) entries.push([item, count, place]);
  }
  const better = worth > above && entries.length > 0;
  return { worth: Math.max(worth, above), patterns: better ? [makePattern(problem, kind, entries)] : [] };
}
