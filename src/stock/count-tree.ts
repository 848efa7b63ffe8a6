import { isSpent } from "./budget.js";
import { type Relaxation, relax } from "./column-generation.js";
import { type Dive, diveForPlan } from "./dive.js";
import { cutoffFor } from "./incumbent.js";
import { searchPatterns } from "./pattern-tree.js";
import type { Subproblem } from "./subproblem.js";

/** A part of the plans: those whose numbers of sticks lie in a box. */
export interface Box {
  /** The problem with these numbers. */
  readonly node: Subproblem;
  /** No plan in it costs less. */
  readonly bound: number;
  /** Whether the numbers are decided. */
  readonly pinned: boolean;
}

/** How many sticks of each kind a fractional solution uses. */
function countsOf(relaxation: Relaxation, kinds: number): Float64Array {
  const counts = new Float64Array(kinds);
  for (const { pattern, times } of relaxation.fractions) counts[pattern.kind] = counts[pattern.kind]! + times;
  return counts;
}

function within(node: Subproblem, kind: number, least: number, most: number): Subproblem {
  const box = { ...node, least: node.least.slice(), most: node.most.slice() };
  box.least[kind] = Math.max(least, node.least[kind]!);
  box.most[kind] = Math.min(most, node.most[kind]!);
  return box;
}

/**
 * Parts a box: at the number that is farthest from whole, or around numbers that are all whole. Every choice of numbers in
 * the box is in one of the parts.
 *
 * @param box - the box
 * @param counts - how many sticks of each kind the relaxation uses
 * @returns the parts
 */
export function partBox(box: Box, counts: Float64Array): Box[] {
  const { node, bound } = box;
  let kind = -1;
  let farthest = 1e-4;
  counts.forEach((count, k) => {
    const distance = Math.abs(count - Math.round(count));
    if (distance > farthest) [kind, farthest] = [k, distance];
  });
  if (kind >= 0) {
    const below = Math.floor(counts[kind]!);
    return [
      { node: within(node, kind, 0, below), bound, pinned: false },
      { node: within(node, kind, below + 1, Infinity), bound, pinned: false },
    ];
  }
  const boxes: Box[] = [];
  let rest = node;
  counts.forEach((count, k) => {
    const whole = Math.round(count);
    if (whole > rest.least[k]!) boxes.push({ node: within(rest, k, 0, whole - 1), bound, pinned: false });
    if (whole < rest.most[k]!) boxes.push({ node: within(rest, k, whole + 1, Infinity), bound, pinned: false });
    rest = within(rest, k, whole, whole);
  });
  boxes.push({ node: rest, bound, pinned: true });
  return boxes;
}

/**
 * Branches on how many sticks of each kind are used, always in the box of the least bound.
 *
 * With several priced lengths this is where the bound is weak: between two numbers of sticks lies a whole price. Once the
 * numbers are decided and offcuts earn nothing, so is the cost, and what remains is to find a plan or to show that there is
 * none.
 *
 * @param dive - the search around it
 * @param root - the whole problem
 * @param report - told of every rise of the bound
 * @returns the bound at the end
 * @yields {undefined} nothing, between two pieces of work
 */
export function* searchCounts(
  dive: Dive,
  root: Subproblem,
  report: (bound: number) => void,
): Generator<undefined, number> {
  const { master, incumbent, budget } = dive;
  const kinds = master.problem.kinds.length;
  const open: Box[] = [{ node: root, bound: dive.goal, pinned: false }];
  const left: number[] = [];
  const cutoff = (): number => cutoffFor(incumbent, root);
  const lowest = (): number => [...open.map(({ bound }) => bound), ...left].reduce((a, b) => Math.min(a, b), cutoff());
  while (open.length > 0) {
    let first = 0;
    open.forEach(({ bound }, k) => {
      if (bound <= open[first]!.bound) first = k;
    });
    const box = open[first]!;
    const least = lowest();
    report(least);
    if (least >= cutoff() || isSpent(budget)) return least;
    const relaxation = yield* relax(master, box.node, cutoff(), budget);
    if (isSpent(budget)) return lowest();
    open.splice(first, 1);
    const bound = Math.max(box.bound, relaxation.bound);
    if (bound >= cutoff()) continue;
    const inner: Dive = { ...dive, goal: bound };
    yield* diveForPlan(inner, box.node, box.pinned ? 3 : 1);
    if (isSpent(budget)) {
      open.push(box);
      return lowest();
    }
    if (bound >= cutoff()) continue;
    if (!box.pinned) {
      for (const child of partBox({ ...box, bound }, countsOf(relaxation, kinds))) open.push(child);
      continue;
    }
    const complete = yield* searchPatterns(inner, box.node, 30);
    if (!complete && bound < cutoff()) left.push(bound);
  }
  return lowest();
}
