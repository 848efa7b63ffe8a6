import type { PartialPlan } from "./greedy.js";
import { planCost, type Problem, roomsTaken, type Use } from "../model/problem.js";
import type { Subproblem } from "../model/subproblem.js";

/** The best plan so far. */
export interface Incumbent {
  /** Its sticks. */
  plan: readonly Use[];
  /** Its cost. */
  cost: number;
  /** How many of each item it has no place for. */
  remaining: Float64Array;
  /** Whether it makes every piece. */
  whole: boolean;
}

/** What a search has found so far. */
export interface Findings extends Incumbent {
  /** No plan that makes every piece costs less. */
  bound: number;
  /** Whether it is proven that no plan makes every piece. */
  impossible: boolean;
}

/** What is known of a problem before its search. */
export function nothingFound(problem: Problem): Findings {
  return { plan: [], cost: 0, remaining: problem.demand, whole: false, bound: 0, impossible: false };
}

/** What a plan for a subproblem must cost less than to be of any use. */
export function cutoffFor(incumbent: Incumbent, node: Subproblem): number {
  return incumbent.whole ? incumbent.cost - node.fixedCost : Infinity;
}

/** Length of the pieces that have no place. */
function missing(problem: Problem, remaining: Float64Array): number {
  return remaining.reduce((sum, count, item) => sum + count * problem.sizes[item]!, 0);
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
export function offerPlan(problem: Problem, incumbent: Incumbent, plan: readonly Use[], remaining: Float64Array): void {
  const cost = planCost(plan);
  const whole = remaining.every((count) => count === 0);
  const worse =
    Number(incumbent.whole) - Number(whole) ||
    (whole ? 0 : missing(problem, remaining) - missing(problem, incumbent.remaining)) ||
    cost - incumbent.cost ||
    longestRest(problem, incumbent.plan) - longestRest(problem, plan);
  if (worse < 0) Object.assign(incumbent, { plan, cost, remaining, whole });
}

/** Offers the sticks that are decided on together with a plan for what is left. */
export function offerRest(problem: Problem, incumbent: Incumbent, node: Subproblem, rest: PartialPlan): void {
  offerPlan(problem, incumbent, [...node.fixed, ...rest.plan], rest.remaining);
}
