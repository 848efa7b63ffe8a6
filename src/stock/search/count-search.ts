import { isSpent, spend } from "./budget.js";
import type { Steps } from "../steps.js";
import { relax } from "../linear/column-generation.js";
import { leastCombinations } from "../bounds/combinations.js";
import { type Dive, diveForPlan } from "./dive.js";
import { cutoffFor, type Findings, type Incumbent, offerPlan } from "./incumbent.js";
import { searchPatterns } from "./pattern-tree.js";
import { priceKind } from "../patterns/pricing.js";
import { costStep, safeBound } from "../bounds/safe-bound.js";
import type { Subproblem } from "../model/subproblem.js";

/** A part of the plans: those with a certain combination of sticks. */
interface Box {
  /** The problem with these sticks. */
  readonly node: Subproblem;
  /** No plan in it costs less. */
  readonly bound: number;
  /** How often it has been searched in vain. */
  readonly effort: number;
}

/** From this effort on a combination has to wait for dearer ones. */
const DEEP = 2;
/** Combinations beyond which they are given up, so that memory has a bound. */
const MOST_OPEN = 20_000;
/** What looking at a combination takes for each kind and item: numbers of any size are slow. */
const STEPS_OF_A_NUMBER = 30;
/** Searches of a combination after which it is given up. */
const MOST_EFFORT = 30;

/**
 * Goes through the combinations of sticks from the cheapest one up.
 *
 * With several lengths this is where the bound of the linear program is weak: between two sums of costs lies a whole
 * cost. In a combination the cost is decided, if offcuts earn nothing, and what remains is to find a plan or to show that
 * there is none. Most combinations are refuted by the linear program alone. Those that aren't are searched in turn, each
 * time with more effort.
 */
export function* searchCounts(dive: Dive, found: Findings, root: Subproblem): Steps<void> {
  const { master, budget } = dive;
  const { problem } = master;
  const step = costStep(problem);
  const cutoff = (): number => cutoffFor(found, root);
  const decided = problem.credit === 0;
  /** From this bound on a combination is refuted; where its cost is decided, by any bound above that. */
  const beyond = ({ bound }: Box): number => (decided ? bound + step : cutoff());
  // With a credit the sums are lower than the costs, so that all of them have to be looked at.
  let level = decided ? dive.goal : -Infinity;
  let open: Box[] = [];
  for (;;) {
    const bound = open.reduce(
      (least, box) => Math.min(least, box.bound),
      Math.min(Math.max(level, dive.goal), cutoff()),
    );
    found.bound = Math.max(found.bound, bound);
    if (spend(budget, 20 * open.length)) yield;
    if (isSpent(budget) || bound >= cutoff() || open.length > MOST_OPEN) return;
    open.sort((a, b) => a.effort - b.effort || a.bound - b.bound);
    let [box] = open;
    // Dearer combinations are looked at before too much is spent on the cheaper ones.
    if (level < cutoff() && (box?.effort ?? DEEP) >= DEEP) {
      const { cost, choices, complete } = yield* leastCombinations(problem, level, cutoff() - step, budget);
      if (!complete) return;
      level = cost + step;
      for (const choice of choices)
        open.push({ node: { ...root, ...choice }, bound: Math.max(cost, dive.goal), effort: 0 });
      continue;
    }
    if (box === undefined) continue;
    open.shift();
    const { node, effort } = box;
    if (effort === 0) {
      const { bound: reached, last } = yield* relax(master, node, beyond(box), budget);
      if (isSpent(budget)) return;
      if (reached >= beyond(box)) {
        // What refutes one combination refutes others like it. Kinds that this combination does not use were not priced.
        const { prices, worths: priced } = last!;
        const worths = priced.slice();
        for (let kind = 0; kind < worths.length; kind++) {
          if (node.most[kind] === 0) worths[kind] = (yield* priceKind(problem, node, prices, kind, 0, budget)).worth;
        }
        const rest: Box[] = [];
        for (const other of open) {
          if (safeBound(problem, other.node, prices, worths).bound < beyond(other)) rest.push(other);
          if (spend(budget, STEPS_OF_A_NUMBER * (problem.kinds.length + problem.sizes.length))) yield;
        }
        open = rest;
        continue;
      }
      box = { ...box, bound: Math.max(box.bound, reached) };
    }
    // Where the cost is decided, any plan will do.
    const inner: Incumbent = { ...found, ...(decided ? { cost: box.bound + step, whole: true } : {}) };
    const within: Dive = { ...dive, incumbent: inner, goal: box.bound };
    yield* diveForPlan(within, node, effort + 1);
    const complete =
      !isSpent(budget) && inner.cost > box.bound && effort > 0 && (yield* searchPatterns(within, node, 2 ** effort));
    if (inner.plan !== found.plan) offerPlan(problem, found, inner.plan, inner.remaining);
    if (!complete && effort < MOST_EFFORT) open.push({ ...box, effort: effort + 1 });
    else if (!complete) return;
  }
}
