import { RECORDS_BETWEEN_PAUSES, type Steps } from "../steps.js";
import { chooseCostGrid } from "./cost-grid.js";
import { gcd, type Grid, toGrid } from "./grid.js";
import type { StockModel } from "./integer-model.js";
import { sumOf } from "../sums.js";

/** A kind of stick, as the search sees it. */
export interface Kind {
  /** Index of the stick in the model. */
  readonly stick: number;
  /** Room of each clear stretch: its length and one kerf, since the last piece's kerf may hang over. */
  readonly rooms: readonly number[];
  /** For each room what it loses of what is left in it before that is an offcut: a kerf, less what the trim holds of one. */
  readonly losses: readonly number[];
  /** Cost in steps of the cost grid. */
  readonly cost: number;
  /** How many there are, Infinity for as many as needed. */
  readonly limit: number;
}

/**
 * The problem in bare integers: cover the demand for items by sticks at least cost.
 *
 * With n pieces in a stretch there are n - 1 kerfs between them, so each piece takes its length and one kerf, and the
 * stretch has its length and one kerf. Where m pieces have one share key, the first also takes the key's saving, and each of them
 * that much less. Both are exact.
 */
export interface Problem {
  /** What each item takes, largest first; for items of a share key, less the saving. */
  readonly sizes: Float64Array;
  /** How many of each. */
  readonly demand: Float64Array;
  /** Share key of each item as an index into `setups`, or -1. */
  readonly keys: Int32Array;
  /** What a stretch takes once for each share key in it. */
  readonly setups: Float64Array;
  /** The kinds of sticks. */
  readonly kinds: readonly Kind[];
  /** Grid of the costs. */
  readonly costGrid: Grid;
  /** Worth of one step of a kept offcut, in steps of the cost grid. */
  readonly credit: number;
  /** Shortest offcut that is kept; Infinity if none is. */
  readonly keep: number;
  /** The model's pieces that each item stands for. */
  readonly members: readonly (readonly number[])[];
}

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

/** A pattern and how many sticks are cut by it. */
export interface Use {
  /** The pattern. */
  readonly pattern: Pattern;
  /** How many sticks. */
  readonly times: number;
}

/** Worth of what is left in a room of a stick. */
export function creditFor(problem: Problem, left: number, loss: number): number {
  return left >= problem.keep + loss ? problem.credit * (left - loss) : 0;
}

/** The longest offcuts that a stick can have. */
export function mostLeft(kind: Pick<Kind, "rooms" | "losses">): number {
  return sumOf(kind.rooms.map((room, place) => Math.max(0, room - kind.losses[place]!)));
}

/** What the first item of its share key takes besides its size. */
export function setupOf(problem: Problem, item: number): number {
  return problem.setups[problem.keys[item]!] ?? 0;
}

/** What the items of a pattern take. */
export function roomsTaken(problem: Problem, pattern: Pattern): Float64Array {
  const taken = new Float64Array(problem.kinds[pattern.kind]!.rooms.length);
  const paid = new Set<number>();
  for (const [item, count, room = 0] of pattern.entries) {
    taken[room] = taken[room]! + problem.sizes[item]! * count;
    const key = problem.keys[item]!;
    if (key < 0) continue;
    const name = room * problem.setups.length + key;
    if (!paid.has(name)) taken[room] = taken[room] + problem.setups[key]!;
    paid.add(name);
  }
  return taken;
}

/** A pattern with its cost. */
export function makePattern(problem: Problem, kind: number, entries: readonly Entry[]): Pattern {
  return withCost(problem, { kind, entries, cost: 0 });
}

/** A pattern at the cost it has in a problem. */
export function withCost(problem: Problem, pattern: Pattern): Pattern {
  const { kind, entries } = pattern;
  const { cost, rooms, losses } = problem.kinds[kind]!;
  if (problem.credit === 0) return { kind, entries, cost };
  const taken = roomsTaken(problem, pattern);
  const credits = rooms.map((space, room) => creditFor(problem, space - taken[room]!, losses[room]!));
  return { kind, entries, cost: cost - sumOf(credits) };
}

/** Sum over the pieces of a pattern. */
export function patternSum(pattern: Pattern, values: Float64Array): number {
  return pattern.entries.reduce((sum, [item, count]) => sum + values[item]! * count, 0);
}

/** A name that patterns of the same content share. */
export function patternName(pattern: Pattern): string {
  const names = pattern.entries.map(([item, count, room = 0]) => `${item}*${count}@${room}`);
  return `${pattern.kind}:${names.sort().join()}`;
}

/** What a plan costs. */
export function planCost(plan: readonly Use[]): number {
  return plan.reduce((sum, { pattern, times }) => sum + pattern.cost * times, 0);
}

/** Drops kinds that another kind makes needless: one that is no shorter, no dearer and never runs out. */
export function withoutDominated(kinds: readonly Kind[]): Kind[] {
  const isEndless = (kind: Kind): boolean => kind.limit === Infinity && kind.rooms.length === 1;
  const endless = kinds.filter(isEndless).sort((a, b) => b.rooms[0]! - a.rooms[0]! || a.cost - b.cost);
  // From the longest to the shorter ones only a lower cost than any before is of use.
  const best = new Set<Kind>();
  let least = Infinity;
  for (const kind of endless) {
    if (kind.cost >= least) continue;
    best.add(kind);
    least = kind.cost;
  }
  // The longest first, and so the dearest: the last one that is long enough is the cheapest of them.
  const front = [...best];
  const cheapest = (room: number): number => {
    let [low, high] = [0, front.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (front[middle]!.rooms[0]! >= room) low = middle + 1;
      else high = middle;
    }
    return front[low - 1]?.cost ?? Infinity;
  };
  return kinds.filter((kind) => {
    const all = sumOf(kind.rooms);
    if (all === 0 || kind.limit === 0) return false;
    return isEndless(kind) ? best.has(kind) : cheapest(all) > kind.cost;
  });
}

/** Pieces of one size and key. */
interface Item {
  readonly size: number;
  readonly key: number;
  demand: number;
  readonly members: number[];
}

/** Turns a model into a problem: equal pieces merged, useless sticks dropped, common factors divided out. */
export function* stateProblem(model: StockModel): Steps<Problem> {
  const { kerf, keep, worth } = model;
  const keyIndex = new Map<string, number>();
  const setups: number[] = [];
  const items: Item[] = [];
  // By key and size.
  const known = new Map<number, Map<number, Item>>();
  for (const [k, piece] of model.pieces.entries()) {
    if (k % RECORDS_BETWEEN_PAUSES === RECORDS_BETWEEN_PAUSES - 1) yield;
    const count = model.counts[k]!;
    if (count === 0) continue;
    let key = -1;
    if (piece.key !== undefined && piece.saving > 0) {
      key = keyIndex.get(piece.key) ?? setups.length;
      keyIndex.set(piece.key, key);
      setups[key] = piece.saving;
    }
    const size = piece.length + kerf - piece.saving;
    const ofKey = known.get(key) ?? new Map<number, Item>();
    known.set(key, ofKey);
    const item = ofKey.get(size);
    if (item === undefined) {
      const first = { size, key, demand: count, members: [k] };
      ofKey.set(size, first);
      items.push(first);
    } else {
      item.demand += count;
      item.members.push(k);
    }
  }
  items.sort((a, b) => b.size - a.size || a.key - b.key);
  const pieces = sumOf(model.counts);
  // A credit that a whole stick of the grid's exact lengths could earn forbids coarser units; without one, only sums of
  // sizes matter, and rooms may be rounded down to what such sums can reach.
  const divisor = worth > 0 ? 1 : Math.max(1, [...items.map(({ size }) => size), ...setups].reduce(gcd, 0));
  const costGrid = chooseCostGrid(
    model.sticks.map(({ cost }) => cost),
    worth,
    pieces,
  );
  const credit = toGrid(worth, costGrid, "nearest");
  const kinds = model.sticks.map(({ clear, cost: given, limit }, stick): Kind => {
    const spaces = clear.map(({ start, end }) => end - start + kerf);
    const losses = clear.map(({ end, reach }) => kerf - (reach - end));
    const cost = toGrid(given, costGrid, "nearest");
    // On a rounded grid a stick can earn what it does not at its own cost.
    const earns = BigInt(credit) * BigInt(mostLeft({ rooms: spaces, losses })) > BigInt(cost);
    return {
      stick,
      rooms: spaces.map((space) => Math.floor(space / divisor)),
      losses,
      cost,
      // A stick that earns more than it costs would be used without end, were it not for one piece at least in each.
      limit: limit === Infinity && earns ? pieces : limit,
    };
  });
  return {
    sizes: Float64Array.from(items, ({ size }) => size / divisor),
    demand: Float64Array.from(items, ({ demand }) => demand),
    keys: Int32Array.from(items, ({ key }) => key),
    setups: Float64Array.from(setups, (setup) => setup / divisor),
    kinds: withoutDominated(kinds),
    credit,
    costGrid,
    keep,
    members: items.map(({ members }) => members),
  };
}
