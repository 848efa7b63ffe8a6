import { itemCounts, type Pattern, patternName } from "../model/pattern.js";
import type { Problem } from "../model/problem.js";
import type { Subproblem } from "../model/subproblem.js";
import type { Budget } from "../search/budget.js";
import type { Steps } from "../steps.js";
import { largestOf, sumOf } from "../sums.js";
import { addColumn, makeProgram, setBarred, setRhs } from "./change-program.js";
import type { LinearProgram } from "./linear-program.js";
import { solveProgram } from "./simplex.js";

/** The linear program over the patterns found so far: one row an item, and rows for kinds whose number is bounded. */
export interface Master {
  /** How many items there are, whose rows come first. */
  readonly items: number;
  /** The program; its costs are in units of `unit`. */
  readonly program: LinearProgram;
  /** The pattern of each column. */
  readonly patterns: Pattern[];
  /** Names of the patterns, so that none is added twice. */
  readonly names: Set<string>;
  /** For each kind the row of its greatest number, or -1. */
  readonly mostRows: Int32Array;
  /** For each kind the row of its least number, or -1: without credits a stick too many is no gain anyway. */
  readonly leastRows: Int32Array;
  /** Steps of the cost grid that the program counts as 1. */
  readonly unit: number;
  /** Whether a missed row has its price, beyond which no item's price may rise; else it is to be avoided at any price. */
  readonly priced: boolean;
}

/** Takes the right-hand sides from a subproblem. */
function setDemand({ program, leastRows, mostRows }: Master, node: Subproblem): void {
  const rhs = new Float64Array(program.senses.length);
  rhs.set(node.demand);
  // No plan needs more sticks than pieces, so that is the limit of kinds without one.
  const pieces = sumOf(node.demand);
  node.most.forEach((most, kind) => {
    if (leastRows[kind]! >= 0) rhs[leastRows[kind]!] = node.least[kind]!;
    if (mostRows[kind]! >= 0) rhs[mostRows[kind]!] = Math.min(most, pieces);
  });
  setRhs(program, rhs);
}

/**
 * A master without patterns. With `branching` the numbers of sticks of each kind will be bounded later. The worths say
 * what missing one of each item costs, for good; by default it is so much that nothing is missed if possible.
 */
export function makeMaster(problem: Problem, node: Subproblem, branching: boolean, worths?: Float64Array): Master {
  const { kinds, sizes } = problem;
  let rows = sizes.length;
  const mostRows = Int32Array.from(kinds, ({ limit }) => (branching || limit !== Infinity ? rows++ : -1));
  const leastRows = Int32Array.from(kinds, () => (branching && problem.credit > 0 ? rows++ : -1));
  const senses = new Int8Array(rows).fill(1);
  for (const row of mostRows) if (row >= 0) senses[row] = -1;
  const unit = largestOf(worths ?? kinds.map(({ cost }) => cost), 1);
  const longest = largestOf(
    kinds.flatMap(({ rooms: spaces }) => spaces),
    1,
  );
  // Missing an item is priced by its size at first: prices are then of the right order before many patterns are known.
  const weights = new Float64Array(rows).fill(10);
  sizes.forEach((size, item) => {
    weights[item] = worths === undefined ? Math.max((2 * size) / longest, 1e-3) : worths[item]! / unit;
  });
  const program = makeProgram(senses, weights);
  const priced = worths !== undefined;
  const items = sizes.length;
  const master: Master = { items, program, patterns: [], names: new Set(), mostRows, leastRows, unit, priced };
  setDemand(master, node);
  return master;
}

/** Adds a pattern as a column; returns false if it is there already. */
export function addPattern(master: Master, pattern: Pattern): boolean {
  const { kind, cost } = pattern;
  const name = patternName(pattern);
  if (master.names.has(name)) return false;
  master.names.add(name);
  const entries = itemCounts(pattern);
  for (const row of [master.mostRows[kind]!, master.leastRows[kind]!]) if (row >= 0) entries.set(row, 1);
  addColumn(master.program, cost / master.unit, [...entries.keys()], [...entries.values()]);
  master.patterns.push(pattern);
  return true;
}

/**
 * Turns a master to a subproblem: new right-hand sides, and patterns barred that make more than is needed of an item.
 */
export function* aimMaster(master: Master, node: Subproblem, budget: Budget): Steps<void> {
  const { program, patterns } = master;
  setDemand(master, node);
  // The basis is repaired while its columns still have their costs; those that are barred are driven out after that.
  yield* solveProgram(program, budget);
  setBarred(program, (column) => patterns[column]!.entries.some(([item, count]) => count > node.demand[item]!));
}

/** Prices in steps of the cost grid: of each item, and for each kind what one more stick of it is worth. */
export function pricesOf(master: Master): { items: Float64Array; kinds: Float64Array } {
  const { program, mostRows, leastRows, unit, priced } = master;
  const { duals } = program;
  const items = duals.slice(0, master.items);
  items.forEach((dual, item) => {
    items[item] = (priced ? Math.min(program.weights[item]!, dual) : dual) * unit;
  });
  // A kind without a row has no price.
  const kinds = Float64Array.from(mostRows, (row, k) => ((duals[row] ?? 0) + (duals[leastRows[k]!] ?? 0)) * unit);
  return { items, kinds };
}

/** The patterns that a solution uses, and how many sticks are cut by each, fractions included. */
export function fractionsOf(master: Master): { pattern: Pattern; times: number }[] {
  const { program, patterns } = master;
  const n = program.basis.length;
  const fractions: { pattern: Pattern; times: number }[] = [];
  program.basis.forEach((variable, row) => {
    const times = program.values[row]!;
    if (variable >= 2 * n && times > 1e-6) fractions.push({ pattern: patterns[variable - 2 * n]!, times });
  });
  return fractions;
}
