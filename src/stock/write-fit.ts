import type { Findings } from "./search.js";
import { fromGrid } from "./grid.js";
import type { StockModel } from "./integer-model.js";
import type { Pattern, Problem } from "./problem.js";
import type { StockCut, StockFit, StockLayout, StopReason } from "./stock-fit.js";
import type { Stretch } from "./stock-job.js";

/** Pieces of the model that are still to be handed out for an item. */
interface Queue {
  readonly members: readonly number[];
  at: number;
  left: number;
}

/** One place of a layout: which item, in which room. */
interface Slot {
  readonly item: number;
  readonly room: number;
}

/** Slots of a pattern in the order in which they are cut: room by room, pieces of one share key side by side, long ones first. */
function slotsOf(problem: Problem, pattern: Pattern): Slot[] {
  const slots: Slot[] = [];
  pattern.items.forEach((item, k) => {
    for (let n = 0; n < pattern.counts[k]!; n++) slots.push({ item, room: pattern.rooms?.[k] ?? 0 });
  });
  const { keys } = problem;
  return slots.sort((a, b) => a.room - b.room || keys[b.item]! - keys[a.item]! || a.item - b.item);
}

/** Positions are grid numbers until here; a decimal grid gives decimal positions. */
function cutsOf(model: StockModel, slots: readonly Slot[], pieces: readonly number[], stick: number) {
  const { grid, kerf } = model;
  const cuts: StockCut[] = [];
  const ends = model.sticks[stick]!.clear.map(({ start }) => start);
  const place = (piece: number, from: number): number => {
    const { id, parts, lengths, run } = model.pieces[piece]!;
    let at = from;
    parts.forEach((part, k) => {
      if (k > 0) at += kerf;
      const start = fromGrid(at, grid);
      const end = grid.exact ? fromGrid(at + part, grid) : start + lengths[k]!;
      cuts.push(run ? { piece: id, part: k, start, end } : { piece: id, start, end });
      at += part;
    });
    return at;
  };
  slots.forEach(({ room }, k) => {
    const piece = model.pieces[pieces[k]!]!;
    const before = k > 0 && slots[k - 1]!.room === room ? model.pieces[pieces[k - 1]!]! : undefined;
    const shared = before?.key !== undefined && before.key === piece.key ? piece.saving : 0;
    ends[room] = place(pieces[k]!, ends[room]! + (before === undefined ? 0 : kerf - shared));
  });
  const filled = new Set(slots.map(({ room }) => room));
  const offcuts = model.sticks[stick]!.clear.map((clear, room) => ({
    start: ends[room]! + (filled.has(room) ? kerf : 0),
    end: clear.end,
  }));
  return { cuts, offcuts: offcuts.filter(({ start, end }) => end > start) };
}

/**
 * Layouts of a plan: patterns with the names of pieces, split where a name runs out.
 *
 * @yields {object} a layout and what the sums need of it
 */
function* layoutsOf(
  model: StockModel,
  problem: Problem,
  findings: Findings,
  queues: readonly Queue[],
): Generator<{ layout: StockLayout; stick: number; pieces: readonly number[]; kept: number }> {
  const advance = (queue: Queue): void => {
    while (queue.left === 0) queue.left = model.pieces[queue.members[++queue.at]!]!.count;
  };
  for (const { pattern, times } of findings.plan) {
    const { stick } = problem.kinds[pattern.kind]!;
    const slots = slotsOf(problem, pattern);
    let left = times;
    while (left > 0) {
      const pieces = slots.map(({ item }) => {
        const queue = queues[item]!;
        advance(queue);
        queue.left--;
        return queue.members[queue.at]!;
      });
      // The same names serve again as often as every one of them is still there in that number.
      let more = left - 1;
      const own = new Map<Queue, number>();
      let single = true;
      for (const [k, { item }] of slots.entries()) {
        const queue = queues[item]!;
        if (queue.members[queue.at] !== pieces[k]) single = false;
        own.set(queue, (own.get(queue) ?? 0) + 1);
      }
      for (const [queue, count] of own) more = single ? Math.min(more, Math.floor(queue.left / count)) : 0;
      for (const [queue, count] of own) queue.left -= more * count;
      const { cuts, offcuts } = cutsOf(model, slots, pieces, stick);
      const keptOnes = offcuts.filter(({ start, end }) => end - start >= model.keep);
      const stretch = ({ start, end }: Stretch): Stretch => ({
        start: fromGrid(start, model.grid),
        end: fromGrid(end, model.grid),
      });
      const longest = offcuts.reduce((most, { start, end }) => Math.max(most, end - start), 0);
      yield {
        layout: {
          stick: model.sticks[stick]!.id,
          times: more + 1,
          cuts,
          offcut: fromGrid(longest, model.grid),
          kept: keptOnes.map(stretch),
        },
        stick,
        pieces,
        kept: keptOnes.reduce((sum, { start, end }) => sum + end - start, 0),
      };
      left -= more + 1;
    }
  }
}

/**
 * A relative difference that is 0 exactly when the two are equal.
 *
 * @param cost - cost of a plan
 * @param bound - a bound of it, the cost at most
 * @returns the difference over the larger magnitude, 0 to 2
 */
export function gapBetween(cost: number, bound: number): number {
  return cost === bound ? 0 : (cost - bound) / Math.max(Math.abs(cost), Math.abs(bound));
}

/**
 * Turns what the search found into a plan with names and lengths.
 *
 * @param model - the job in integers
 * @param problem - the problem that was searched
 * @param findings - what was found
 * @param stopped - why the search ended early
 * @returns the plan
 */
export function writeFit(
  model: StockModel,
  problem: Problem,
  findings: Findings,
  stopped: StopReason | undefined,
): StockFit {
  const { grid, costGrid } = model;
  const queues = problem.members.map((members): Queue => ({ members, at: 0, left: model.pieces[members[0]!]!.count }));
  const layouts: StockLayout[] = [];
  const counts = new Float64Array(model.sticks.length);
  // Sums in grid numbers where the grid is exact, so that they come out as the decimals a person would get.
  const length = (sum: number): number => (grid.exact ? fromGrid(sum, grid) : sum);
  let used = 0;
  let made = 0;
  let kept = 0;
  for (const entry of layoutsOf(model, problem, findings, queues)) {
    layouts.push(entry.layout);
    const { times } = entry.layout;
    counts[entry.stick] = counts[entry.stick]! + times;
    const stick = model.sticks[entry.stick]!;
    used += times * (grid.exact ? stick.length : stick.given);
    kept += times * entry.kept;
    for (const k of entry.pieces) {
      const piece = model.pieces[k]!;
      const lengths = grid.exact ? piece.parts : piece.lengths;
      for (const part of lengths) made += times * part;
    }
  }
  const unplaced: { piece: string; count: number }[] = [];
  const missing = new Map<number, number>();
  findings.remaining.forEach((count, item) => {
    const { members, at, left } = queues[item]!;
    if (count === 0) return;
    members.slice(at).forEach((piece, k) => missing.set(piece, k === 0 ? left : model.pieces[piece]!.count));
  });
  model.pieces.forEach(({ id }, k) => {
    const count = missing.get(k) ?? 0;
    if (count > 0) unplaced.push({ piece: id, count });
  });
  const short = unplaced.length > 0;
  const status = short ? "short" : findings.bound === findings.cost ? "optimal" : "feasible";
  const cost = fromGrid(findings.cost, costGrid);
  const bound = fromGrid(short ? Math.min(0, findings.cost) : findings.bound, costGrid);
  const lengths = { used: length(used), made: length(made), kept: fromGrid(kept, grid) };
  return {
    status,
    layouts,
    cost: cost + 0,
    bound: bound + 0,
    gap: short ? 1 : gapBetween(cost, bound),
    resolution: fromGrid(1, grid),
    unplaced,
    ...(short ? { shortage: findings.impossible ? ("proven" as const) : ("not found" as const) } : {}),
    ...(stopped === undefined || status === "optimal" ? {} : { stopped }),
    sticks: model.sticks.flatMap(({ id }, k) => (counts[k]! > 0 ? [{ stick: id, count: counts[k]! }] : [])),
    ...lengths,
    waste: Math.max(0, grid.exact ? fromGrid(used - made - kept, grid) : used - made - lengths.kept),
  };
}
