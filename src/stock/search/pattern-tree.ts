import { type Relaxation, relax } from "../linear/column-generation.js";
import { type Pattern, patternName, patternSum } from "../model/pattern.js";
import { costStep } from "../model/problem.js";
import { decide, isDeep, type Subproblem } from "../model/subproblem.js";
import { enumeratePatterns } from "../patterns/enumerate-patterns.js";
import type { Steps } from "../steps.js";
import { isSpent, spend } from "./budget.js";
import { completeGreedily } from "./dive.js";
import { cutoffFor, offerDone, type ProgramSearch } from "./search.js";

/** Patterns of a kind beyond which the tree is not searched completely. */
const MOST_PATTERNS = 3000;
/** Branches of their enumeration beyond which it isn't either; some hundredths of a second. */
const MOST_BRANCHES = 200_000;
/** What a pattern takes to be named and put in its place, in entries of the simplex. */
const STEPS_OF_A_PATTERN = 300;

/** A pattern to branch on. */
interface Branch {
  readonly name: string;
  readonly pattern: Pattern;
}

/** The patterns that can hold the first item still needed in a plan cheaper than the incumbent; likely ones first. */
function* branchesOf(
  search: ProgramSearch,
  node: Subproblem,
  relaxation: Relaxation,
  banned: ReadonlySet<string>,
): Steps<{ branches: Branch[]; complete: boolean }> {
  const { problem, budget, master } = search;
  const { last } = relaxation;
  if (last === undefined) return { branches: [], complete: false };
  const item = node.demand.findIndex((count) => count > 0);
  const { prices, safe } = last;
  // A plan with this pattern costs at least the bound plus what the pattern costs beyond its worth.
  const slack = (cutoffFor(search, node) - costStep(problem)) * prices.scale - safe.worth;
  const times = new Map(relaxation.fractions.map((entry) => [patternName(entry.pattern), entry.times]));
  const named = new Map<string, Branch & { readonly rank: number }>();
  let complete = true;
  let left = MOST_BRANCHES;
  for (let kind = 0; kind < problem.kinds.length; kind++) {
    if (!(node.most[kind]! > 0)) continue;
    const least = problem.kinds[kind]!.cost * prices.scale - safe.rests[kind]! - slack - 8;
    const query = { kind, item, least, patterns: MOST_PATTERNS, branches: left };
    const found = yield* enumeratePatterns(search, node, prices, query);
    left -= found.branches;
    complete &&= found.complete;
    for (const pattern of found.patterns) {
      const name = patternName(pattern);
      if (banned.has(name)) continue;
      const worth = patternSum(pattern, prices.items) / prices.scale;
      named.set(name, { name, pattern, rank: (times.get(name) ?? 0) + (worth - pattern.cost) / master.unit });
      if (spend(budget, STEPS_OF_A_PATTERN)) yield;
    }
  }
  return { branches: [...named.values()].sort((a, b) => b.rank - a.rank), complete };
}

/**
 * Searches for a plan that costs less than the incumbent, branching on the pattern that holds the first item still needed.
 *
 * Unlike a dive it can prove that there is none: one of the patterns tried has to be in every plan that costs less, and
 * once a pattern has been tried in vain it is banned from the branches after it.
 *
 * The discrepancies are how often, in sum, it may depart from the likeliest pattern. Returns whether the search was complete.
 */
export function* searchPatterns(
  search: ProgramSearch,
  node: Subproblem,
  discrepancies: number,
  banned: ReadonlySet<string> = new Set(),
): Steps<boolean> {
  const { problem, budget } = search;
  if (offerDone(search, node)) return true;
  const cutoffNow = (): number => cutoffFor(search, node);
  const relaxation = yield* relax(search, node, cutoffNow());
  if (relaxation.bound >= cutoffNow()) return true;
  if (isSpent(budget) || isDeep(node)) return false;
  yield* completeGreedily(search, node, relaxation);
  if (relaxation.bound >= cutoffNow()) return true;
  const { branches, complete } = yield* branchesOf(search, node, relaxation, banned);
  // No more are kept than will be tried: there is such a list for every step down the tree.
  branches.splice(discrepancies + 2);
  const tried = new Set(banned);
  let all = complete;
  for (const [rank, { name, pattern }] of branches.entries()) {
    if (rank > discrepancies) return false;
    const child = decide(problem, node, [{ pattern, times: 1 }]);
    all = (yield* searchPatterns(search, child, discrepancies - rank, tried)) && all;
    if (relaxation.bound >= cutoffNow()) return true;
    if (isSpent(budget)) return false;
    tried.add(name);
  }
  return all;
}
