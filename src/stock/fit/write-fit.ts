import type { Stretch } from "../job/stock-job.js";
import { fromGrid } from "../model/grid.js";
import type { StockModel } from "../model/integer-model.js";
import type { Pattern } from "../model/pattern.js";
import type { Problem } from "../model/problem.js";
import type { Search } from "../search/search.js";
import { RECORDS_BETWEEN_PAUSES, type Steps } from "../steps.js";
import type { PlacedPiece, StockFit, StockLayout } from "./stock-fit.js";

/** Pieces of the model that are still to be handed out for an item. */
interface Queue {
  readonly members: readonly number[];
  at: number;
  left: number;
}

/** Equal pieces side by side in a room of a layout: of which item, how many, and which of the model's pieces they are. */
interface Row {
  readonly item: number;
  readonly room: number;
  readonly count: number;
}

/** The rows of a pattern in the order in which they are cut: room by room, pieces of one share key side by side, long ones first. */
function rowsOf(problem: Problem, pattern: Pattern): Row[] {
  const { keys } = problem;
  return pattern.entries
    .map(([item, count, room = 0]): Row => ({ item, room, count }))
    .sort((a, b) => a.room - b.room || keys[b.item]! - keys[a.item]! || a.item - b.item);
}

/** A row, or a part of one, with the piece of the model that it is. */
interface NamedRow extends Row {
  readonly member: number;
}

/** Gives the rows of one stick their pieces: as many of a name as there still are, then of the next. */
function nameRows(model: StockModel, queues: readonly Queue[], rows: readonly Row[]): NamedRow[] {
  const named: NamedRow[] = [];
  for (const { item, room, count } of rows) {
    const queue = queues[item]!;
    for (let left = count; left > 0;) {
      while (queue.left === 0) queue.left = model.counts[queue.members[++queue.at]!]!;
      const some = Math.min(left, queue.left);
      queue.left -= some;
      left -= some;
      named.push({ item, room, count: some, member: queue.members[queue.at]! });
    }
  }
  return named;
}

/** Positions are grid numbers until here; a decimal grid gives decimal positions. */
function piecesIn(model: StockModel, rows: readonly NamedRow[], stick: number) {
  const { grid, kerf, ids, pieces } = model;
  const { clear } = model.sticks[stick]!;
  const placed: PlacedPiece[] = [];
  const ends = clear.map(({ start }) => start);
  rows.forEach(({ room, member, count }, k) => {
    const { parts, lengths, length, sequence, key, saving } = pieces[member]!;
    const before = rows[k - 1];
    // The cut before a piece is shared with a neighbor of the same key.
    const shared = key !== undefined && before?.room === room && pieces[before.member]!.key === key;
    const piece = ids[member]!;
    const step = length + kerf - (key === undefined ? 0 : saving);
    const several = count === 1 ? { count } : { count, pitch: fromGrid(step, grid) };
    const first = ends[room]! - (shared ? saving : 0);
    let at = first;
    parts.forEach((part, n) => {
      const start = fromGrid(at, grid);
      const end = grid.exact ? fromGrid(at + part, grid) : start + lengths[n]!;
      placed.push(sequence ? { piece, part: n, start, end, ...several } : { piece, start, end, ...several });
      at += part + kerf;
    });
    ends[room] = first + (count - 1) * step + length + kerf;
  });
  // What is left of a clear stretch starts after the last cut.
  const rests = clear.map(({ reach }, room) => ({ start: ends[room]!, end: reach }));
  return { placed, offcuts: rests.filter(({ start, end }) => end > start) };
}

/** Turns what the search has found into a plan with names and lengths. */
export function* writeFit(model: StockModel, search: Search): Steps<StockFit> {
  const { problem, impossible, bound: proven } = search;
  const { plan, remaining, cost: least } = search.incumbent;
  const { stopped } = search.budget;
  const { grid, ids, pieces, worth } = model;
  const queues = problem.members.map((members): Queue => ({ members, at: 0, left: model.counts[members[0]!]! }));
  const layouts: StockLayout[] = [];
  const counts = new Float64Array(model.sticks.length);
  let kept = 0;
  for (const { pattern, times } of plan) {
    const { stick } = problem.kinds[pattern.kind]!;
    const rows = rowsOf(problem, pattern);
    for (let left = times; left > 0;) {
      const named = nameRows(model, queues, rows);
      // The same names serve again as often as every one of them is still there in that number.
      let same = left;
      const own = new Map<Queue, number>();
      for (const { item, member, count } of named) {
        const queue = queues[item]!;
        if (queue.members[queue.at] !== member) same = 1;
        own.set(queue, (own.get(queue) ?? 0) + count);
      }
      for (const [queue, count] of own) same = Math.min(same, 1 + Math.floor(queue.left / count));
      for (const [queue, count] of own) queue.left -= (same - 1) * count;
      const { placed, offcuts } = piecesIn(model, named, stick);
      const worthy = offcuts.filter(({ start, end }) => end - start >= model.keep);
      const longest = offcuts.reduce((most, { start, end }) => Math.max(most, end - start), 0);
      layouts.push({
        stick: model.sticks[stick]!.id,
        times: same,
        pieces: placed,
        offcut: fromGrid(longest, grid),
        kept: worthy.map(({ start, end }): Stretch => ({ start: fromGrid(start, grid), end: fromGrid(end, grid) })),
      });
      for (const { start, end } of worthy) kept += same * (end - start);
      counts[stick] = counts[stick]! + same;
      left -= same;
      if (layouts.length % RECORDS_BETWEEN_PAUSES === 0) yield;
    }
  }
  const missing = new Float64Array(ids.length);
  remaining.forEach((count, item) => {
    const { members, at, left } = queues[item]!;
    if (count === 0) return;
    for (const piece of members.slice(at)) missing[piece] = model.counts[piece]!;
    missing[members[at]!] = left;
  });
  // Sums in grid numbers where the grid is exact, so that they come out as the decimals a person would get.
  const length = (sum: number): number => (grid.exact ? fromGrid(sum, grid) : sum);
  let sticksSum = 0;
  let given = -worth * kept;
  model.sticks.forEach((stick, k) => {
    sticksSum += counts[k]! * (grid.exact ? stick.length : stick.given);
    given += counts[k]! * stick.cost;
  });
  let piecesSum = 0;
  pieces.forEach(({ parts, lengths }, k) => {
    for (const part of grid.exact ? parts : lengths) piecesSum += part * (model.counts[k]! - missing[k]!);
  });
  const unplaced = ids.flatMap((piece, k) => (missing[k]! > 0 ? [{ piece, count: missing[k]! }] : []));
  const short = unplaced.length > 0;
  const status = short ? "short" : proven >= least ? "optimal" : "feasible";
  // Costs that share no grid are rounded for the search alone.
  const onCosts = (count: number): number => fromGrid(count, problem.costGrid);
  const cost = (problem.costGrid.exact ? onCosts(least) : given) + 0;
  // A bound below the cost on the rounded grid is below it in the costs as given too.
  const below = problem.costGrid.exact ? onCosts(proven) : given - onCosts(least - proven);
  const bound = status === "optimal" ? cost : Math.min(short ? 0 : below, cost);
  const gap = cost === bound ? 0 : (cost - bound) / Math.max(Math.abs(cost), Math.abs(bound));
  const keptLength = fromGrid(kept, grid);
  return {
    schemaVersion: 1,
    status,
    layouts,
    cost,
    bound,
    relativeGap: short ? 1 : gap,
    resolution: fromGrid(1, grid),
    unplaced,
    ...(short ? { shortage: impossible ? ("proven" as const) : ("not-found" as const) } : {}),
    ...(stopped === undefined || status === "optimal" ? {} : { stopped }),
    sticks: model.sticks.flatMap(({ id }, k) => (counts[k]! > 0 ? [{ stick: id, count: counts[k]! }] : [])),
    sticksLength: length(sticksSum),
    piecesLength: length(piecesSum),
    keptLength,
    wasteLength: Math.max(0, length(sticksSum - piecesSum - (grid.exact ? kept : keptLength))),
  };
}
