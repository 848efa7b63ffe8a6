import type { Budget } from "../search/budget.js";
import type { Steps } from "../steps.js";
import { type Filling, fillRoom, type Knapsack } from "./knapsack.js";
import { fillRoomByTable, MOST_TABLE_ENTRIES, tableEntries } from "./knapsack-table.js";
import { type Entry, makePattern, type Pattern, type Problem } from "../model/problem.js";
import type { Subproblem } from "../model/subproblem.js";

/** Branches of a knapsack after which it is given up: some hundredths of a second. */
const MOST_BRANCHES = 2e6;
/** Branches that find most of the good patterns where they are easily found. */
const QUICK_BRANCHES = 20_000;
/** Entries of a table that takes no longer than those. */
const SMALL_TABLE = 200_000;

/** Integer prices of the items, in units of 1 / `scale` of a step of the cost grid. */
export interface Prices {
  /** What one of each item is worth, an integer of 0 or more. */
  readonly items: Float64Array;
  /** Units of a step of the cost grid, a power of two. */
  readonly scale: number;
}

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
function* solve(knapsack: Knapsack, budget: Budget): Steps<Filling> {
  if (knapsack.branchLimit < MOST_BRANCHES) return yield* fillRoom(knapsack, budget);
  const simple = knapsack.keys.every((key) => key < 0) && knapsack.sizes.every((size) => size > 0);
  const entries = simple ? tableEntries(knapsack) : Infinity;
  const small = entries <= SMALL_TABLE;
  const quick = yield* fillRoom({ ...knapsack, branchLimit: small ? entries / 10 : QUICK_BRANCHES }, budget);
  if (quick.exact || (!small && quick.found.length > 0)) return quick;
  if (entries > MOST_TABLE_ENTRIES) return yield* fillRoom(knapsack, budget);
  return (yield* fillRoomByTable(knapsack, budget)) ?? quick;
}

/**
 * Best fillings of one room, the credit for its offcut included.
 *
 * With a credit there are two cases. Either the offcut is not counted; or enough stays free for one that is kept, and each
 * unit that is taken costs the credit it would have earned. The better of the two knapsacks is the answer, exactly.
 */
function* priceRoom(
  problem: Problem,
  node: Subproblem,
  prices: Prices,
  room: number,
  loss: number,
  above: number,
  budget: Budget,
  branchLimit: number,
): Steps<Pick<Filling, "value" | "found">> {
  const { sizes, keys, setups, credit } = problem;
  const keepRoom = problem.keep + loss;
  const plain: Knapsack = {
    profits: prices.items,
    sizes,
    most: node.demand,
    keys,
    setups,
    setupRate: 0,
    room,
    above,
    branchLimit,
  };
  if (credit === 0 || keepRoom > room) return yield* solve(plain, budget);
  const rate = credit * prices.scale;
  const whole = rate * (room - loss);
  const kept = yield* solve(
    {
      ...plain,
      profits: prices.items.map((price, item) => price - rate * sizes[item]!),
      setupRate: rate,
      room: room - keepRoom,
      above: Math.max(0, above - whole),
    },
    budget,
  );
  // An empty room is worth its whole credit, found or not.
  const best = Math.max(above, kept.value + whole);
  const filled = yield* solve({ ...plain, above: best }, budget);
  return { value: Math.max(filled.value, best), found: [...kept.found, ...filled.found] };
}

/** Finds the patterns of a kind that are worth most at given prices. */
export function* priceKind(
  problem: Problem,
  node: Subproblem,
  prices: Prices,
  kind: number,
  above: number,
  budget: Budget,
  branchLimit: number = MOST_BRANCHES,
): Steps<Offer> {
  const { rooms, losses } = problem.kinds[kind]!;
  if (rooms.length === 1) {
    const { value, found } = yield* priceRoom(problem, node, prices, rooms[0]!, losses[0]!, above, budget, branchLimit);
    return { worth: value, patterns: found.map((filling) => makePattern(problem, kind, filling)) };
  }
  // Rooms are filled one by one: a stick is worth what its rooms are.
  let worth = 0;
  const entries: Entry[] = [];
  for (const [place, room] of rooms.entries()) {
    const { value, found } = yield* priceRoom(problem, node, prices, room, losses[place]!, 0, budget, branchLimit);
    worth += value;
    for (const [item, count] of found.at(-1) ?? []) entries.push([item, count, place]);
  }
  const better = worth > above && entries.length > 0;
  return { worth: Math.max(worth, above), patterns: better ? [makePattern(problem, kind, entries)] : [] };
}
