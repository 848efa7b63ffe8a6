import type { Master } from "../linear/master.js";
import { planCost, roomsTaken, type Use } from "../model/pattern.js";
import type { Problem } from "../model/problem.js";
import type { Subproblem } from "../model/subproblem.js";
import type { Budget } from "./budget.js";

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

/** Whether no plan costs less than the incumbent. */
export function isProven({ incumbent, bound }: Search): boolean {
  return incumbent.whole && incumbent.cost <= bound;
}

/** What a plan for a subproblem must cost less than to be of any use; Infinity as long as no plan makes every piece. */
export function cutoffFor({ incumbent }: Search, node: Subproblem): number {
  return incumbent.whole ? incumbent.cost - node.fixedCost : Infinity;
}

/** Length of the pieces that have no place. */
function missing({ sizes }: Problem, remaining: Float64Array): number {
  return remaining.reduce((sum, count, item) => sum + count * sizes[item]!, 0);
}

/** The most room that is left in a stick: of two plans of one cost, the one with the longer offcut is the better. */
function longestRest(problem: Problem, plan: readonly Use[]): number {
  let longest = 0;
  for (const { pattern } of plan) {
    const taken = roomsTaken(problem, pattern);
    problem.kinds[pattern.kind]!.rooms.forEach((space, room) => {
      longest = Math.max(longest, space - taken[room]!);
    });
  }
  return longest;
}

/** Takes a plan for the best if it makes more, or as much at less cost, or at the same cost with a longer offcut. */
export function offerPlan(search: Search, plan: readonly Use[], remaining: Float64Array): void {
  const { problem, incumbent } = search;
  const cost = planCost(plan);
  const whole = remaining.every((count) => count === 0);
  const worse =
    Number(incumbent.whole) - Number(whole) ||
    (whole ? 0 : missing(problem, remaining) - missing(problem, incumbent.remaining)) ||
    cost - incumbent.cost ||
    longestRest(problem, incumbent.plan) - longestRest(problem, plan);
  if (worse < 0) search.incumbent = { plan, cost, remaining, whole };
}

/** Offers the sticks that a subproblem has decided on, together with a plan for what it left. */
export function offerRest(search: Search, node: Subproblem, rest: PartialPlan): void {
  offerPlan(search, [...node.fixed, ...rest.plan], rest.remaining);
}
