import type { Master } from "../linear/master.js";
import { planCost, roomsLeft, type Use } from "../model/pattern.js";
import type { Problem } from "../model/problem.js";
import type { Subproblem } from "../model/subproblem.js";
import { largestOf } from "../sums.js";
import { type Budget, isSpent } from "./budget.js";

/** A plan and what it leaves over. */
export interface PartialPlan {
  /** The sticks. */
  readonly plan: readonly Use[];
  /** How many of each item have no place. */
  readonly remaining: Float64Array;
}

/** The best plan so far. */
export interface Incumbent extends PartialPlan {
  /** Its cost. */
  readonly cost: number;
  /** Whether it makes every piece. */
  readonly whole: boolean;
}

/**
 * What all parts of one search share: made once, and handed to each of them.
 *
 * A search within another, for other costs or among some of the plans only, is one of its own that spends the same budget.
 */
export interface Search {
  /** What is searched. */
  readonly problem: Problem;
  /** What may be spent. */
  readonly budget: Budget;
  /** The best plan so far. */
  incumbent: Incumbent;
  /** No plan that makes every piece costs less. */
  bound: number;
  /** Whether it is proven that no plan makes every piece. */
  impossible: boolean;
}

/** A search that has come to its linear program. */
export interface ProgramSearch extends Search {
  /** The program over the patterns found so far. */
  readonly master: Master;
}

/** A search that has no plan yet, and no bound. */
export function startSearch(problem: Problem, budget: Budget): Search {
  const incumbent: Incumbent = { plan: [], cost: 0, remaining: problem.demand, whole: false };
  return { problem, budget, incumbent, bound: 0, impossible: false };
}

/** The same search, with a linear program from now on. */
export function addMaster(search: Search, master: Master): ProgramSearch {
  return Object.assign(search, { master });
}

/** A search for a plan that beats an incumbent, among plans that cost no less than a bound. */
export function searchWithin(search: ProgramSearch, incumbent: Incumbent, bound: number): ProgramSearch {
  return { ...search, incumbent, bound };
}

/** Whether the budget is spent, or no plan costs less than the incumbent. */
export function isOver({ budget, incumbent, bound }: Search): boolean {
  return isSpent(budget) || (incumbent.whole && incumbent.cost <= bound);
}

/** What a plan for a subproblem must cost less than to be of any use; Infinity as long as no plan makes every piece. */
export function cutoffFor({ incumbent }: Search, node: Subproblem): number {
  return incumbent.whole ? incumbent.cost - planCost(node.fixed) : Infinity;
}

/** Length of the pieces that have no place. */
function missing({ sizes }: Problem, remaining: Float64Array): number {
  return remaining.reduce((sum, count, item) => sum + count * sizes[item]!, 0);
}

/** The most room that is left in a stick: of two plans of one cost, the one with the longer offcut is the better. */
function longestRest(problem: Problem, plan: readonly Use[]): number {
  return plan.reduce((longest, { pattern }) => largestOf(roomsLeft(problem, pattern), longest), 0);
}

/**
 * Offers the sticks that a subproblem has decided on, together with a plan for what it left.
 *
 * They are taken for the best plan if they make more, or as much at less cost, or at the same cost with a longer offcut.
 */
export function offerPlan(search: Search, { fixed }: Pick<Subproblem, "fixed">, rest: PartialPlan): void {
  const { problem, incumbent } = search;
  const { remaining } = rest;
  const plan = [...fixed, ...rest.plan];
  const cost = planCost(plan);
  const whole = remaining.every((count) => count === 0);
  const worse =
    Number(incumbent.whole) - Number(whole) ||
    (whole ? 0 : missing(problem, remaining) - missing(problem, incumbent.remaining)) ||
    cost - incumbent.cost ||
    longestRest(problem, incumbent.plan) - longestRest(problem, plan);
  if (worse < 0) search.incumbent = { plan, cost, remaining, whole };
}

/** Offers the sticks of a subproblem that has decided on everything; returns whether it has. */
export function offerDone(search: Search, node: Subproblem): boolean {
  const done = node.demand.every((count) => count === 0);
  if (done) offerPlan(search, node, { plan: [], remaining: node.demand });
  return done;
}
