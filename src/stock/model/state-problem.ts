import { refuse } from "../../core/check.js";
import { RECORDS_BETWEEN_PAUSES, type Steps } from "../steps.js";
import { largestOf, sumOf } from "../sums.js";
import { commonGrid, gcd, type Grid, MAX_GRID_NUMBER, toGrid } from "./grid.js";
import type { StockModel } from "./integer-model.js";
import { type Kind, mostLeft, type Problem } from "./problem.js";

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
    let item = ofKey.get(size);
    if (item === undefined) {
      item = { size, key, demand: 0, members: [] };
      ofKey.set(size, item);
      items.push(item);
    }
    item.demand += count;
    item.members.push(k);
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

/** A cost of fewer steps on a grid that does not hold it is too rough to compare plans by. */
const LEAST_STEPS: number = 2 ** 24;

/**
 * Costs that share no grid are rounded to one that is fine enough for eleven digits and coarse enough for exact sums: each
 * piece may take a stick of its own. Costs that share none and differ too much to be compared are refused.
 */
function chooseCostGrid(costs: readonly number[], worth: number, pieces: number): Grid {
  const largest = largestOf(costs, 0);
  const common = commonGrid([...costs, worth]);
  const mostSum = 2 ** 52 / Math.max(1, pieces);
  if (common !== undefined && toGrid(largest, common, "nearest") <= mostSum) return common;
  const times = largest / Math.min(MAX_GRID_NUMBER, Math.floor(mostSum));
  const rough = costs.find((cost) => cost > 0 && cost < LEAST_STEPS * times);
  if (rough !== undefined) refuse("range", "job.sticks", largest, `costs nearer to ${rough}, or no such stick`);
  return { times, per: 1, exact: false };
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
