import { type Entry, makePattern, mostTimes, type Pattern, takeOff, type Use } from "./pattern.js";
import type { Problem } from "./problem.js";

/** What is left of a problem once some sticks are decided on. */
export interface Subproblem {
  /** How many of each item are still needed. */
  readonly demand: Float64Array;
  /** How many sticks of each kind have to be used at least. */
  readonly least: Float64Array;
  /** How many may be used; Infinity for as many as needed. */
  readonly most: Float64Array;
  /** The sticks decided on. */
  readonly fixed: readonly Use[];
}

/** The whole problem as a subproblem, in which nothing is decided. */
export function wholeProblem(problem: Problem): Subproblem {
  return {
    demand: problem.demand.slice(),
    least: new Float64Array(problem.kinds.length),
    most: Float64Array.from(problem.kinds, ({ limit }) => limit),
    fixed: [],
  };
}

/** A subproblem with other bounds on the numbers of sticks of each kind. */
export function withSticks(node: Subproblem, sticks: Pick<Subproblem, "least" | "most">): Subproblem {
  return { ...node, ...sticks };
}

/** A pattern without what is not needed any more; undefined if nothing is left of it. */
function trimPattern(problem: Problem, pattern: Pattern, demand: Float64Array): Pattern | undefined {
  const left = new Map<number, number>();
  const entries = pattern.entries.map(([item, count, room]): Entry => {
    const available = left.get(item) ?? demand[item]!;
    const some = Math.min(count, available);
    left.set(item, available - some);
    return [item, some, room];
  });
  if (entries.every(([, count], k) => count === pattern.entries[k]![1])) return pattern;
  const used = entries.filter(([, count]) => count > 0);
  return used.length === 0 ? undefined : makePattern(problem, pattern.kind, used);
}

/**
 * Decides on some sticks, as far as there is need and there are sticks. A pattern that makes more than is needed is
 * trimmed for the last stick.
 */
export function decide(problem: Problem, node: Subproblem, uses: readonly Use[]): Subproblem {
  const demand = node.demand.slice();
  const least = node.least.slice();
  const most = node.most.slice();
  const fixed = [...node.fixed];
  for (const use of uses) {
    let left = Math.min(use.times, most[use.pattern.kind]!);
    while (left > 0) {
      const pattern = trimPattern(problem, use.pattern, demand);
      if (pattern === undefined) break;
      const times = Math.min(left, mostTimes(pattern, demand, most));
      takeOff(pattern, times, demand, most);
      least[pattern.kind] = Math.max(0, least[pattern.kind]! - times);
      fixed.push({ pattern, times });
      left -= times;
    }
  }
  return { demand, least, most, fixed };
}

/** Layouts decided on beyond which no search goes deeper: each step down is a call, and their number is limited. */
const MOST_FIXED = 1500;

/** Whether so many layouts are decided on that a search must not go deeper. */
export function isDeep(node: Subproblem): boolean {
  return node.fixed.length > MOST_FIXED;
}
