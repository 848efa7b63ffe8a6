import { type Budget, isSpent } from "../search/budget.js";
import type { Steps } from "../steps.js";
import {
  costOf,
  countWork,
  type LinearProgram,
  pivot,
  priceRows,
  product,
  refresh,
  restart,
  setDirection,
} from "./linear-program.js";

/** How an attempt to solve a program ended. */
export type SolveState = "solved" | "spent" | "stuck";

/** Reduced costs below this are worth a pivot; costs are scaled to about 1. */
const OPTIMALITY = 1e-10;
/** Smallest pivot. */
const PIVOT = 1e-8;
/** Values above minus this count as 0 or more. */
const FEASIBILITY = 1e-8;

/** A program that is being solved. */
interface Solution {
  readonly program: LinearProgram;
  readonly budget: Budget;
  /** For each variable 1 if it is in the basis. */
  readonly inBasis: Uint8Array;
}

/** Pivots that keep the reduced costs right until no value is negative. */
function* dualSteps(solution: Solution, mostPivots: number): Steps<SolveState> {
  const { program, budget, inBasis } = solution;
  const { basis, values } = program;
  const n = basis.length;
  for (let pivots = 0; ; pivots++) {
    let row = -1;
    let lowest = -FEASIBILITY;
    for (let k = 0; k < n; k++) {
      if (values[k]! < lowest) [row, lowest] = [k, values[k]!];
    }
    if (row < 0) return "solved";
    if (pivots === mostPivots) return "stuck";
    if (countWork(program, budget)) yield;
    if (isSpent(budget)) return "spent";
    let entering = -1;
    let bestRatio = Infinity;
    let bestSize = 0;
    for (let variable = 0; variable < 2 * n + program.costs.length; variable++) {
      if (inBasis[variable] === 1) continue;
      if (variable >= 2 * n && program.barred[variable - 2 * n]!) continue;
      const alpha = product(program, variable, program.inverse, row * n);
      if (alpha > -PIVOT) continue;
      const reduced = Math.max(0, costOf(program, variable) - product(program, variable, program.duals, 0));
      const ratio = reduced / -alpha;
      if (ratio < bestRatio - 1e-12 || (ratio <= bestRatio + 1e-12 && -alpha > bestSize)) {
        [entering, bestRatio, bestSize] = [variable, ratio, -alpha];
      }
    }
    program.steps += 8 * program.costs.length;
    if (entering < 0) return "stuck";
    setDirection(program, entering);
    yield* enter(solution, row, entering, costOf(program, entering) - product(program, entering, program.duals, 0));
  }
}

/** Brings a variable into the basis, and computes the inverse afresh now and then. */
function* enter(solution: Solution, row: number, variable: number, reduced: number): Steps<void> {
  const { program, budget, inBasis } = solution;
  inBasis[program.basis[row]!] = 0;
  inBasis[variable] = 1;
  pivot(program, row, variable, reduced);
  if (program.sinceFresh <= 100 + program.basis.length) return;
  yield* refresh(program, budget);
  flagBasis(solution);
}

function flagBasis({ program, inBasis }: Solution): void {
  inBasis.fill(0);
  for (const variable of program.basis) inBasis[variable] = 1;
}

/** Solves a program from its present basis: first with dual steps if values are negative, then with primal ones. */
export function* solveProgram(program: LinearProgram, budget: Budget): Steps<SolveState> {
  const { basis, values, direction } = program;
  const n = basis.length;
  const inBasis = new Uint8Array(2 * n + program.costs.length);
  const solution: Solution = { program, budget, inBasis };
  flagBasis(solution);
  const mostPivots = 50 * (n + 10);
  const repaired = yield* dualSteps(solution, mostPivots);
  if (repaired === "spent") return "spent";
  if (repaired === "stuck") {
    restart(program);
    priceRows(program);
    flagBasis(solution);
  }
  for (let pivots = 0; pivots < mostPivots; pivots++) {
    if (countWork(program, budget)) yield;
    if (isSpent(budget)) return "spent";
    let entering = -1;
    let steepest = -OPTIMALITY;
    for (let variable = 0; variable < 2 * n + program.costs.length; variable++) {
      if (inBasis[variable] === 1) continue;
      if (variable >= 2 * n && program.barred[variable - 2 * n]!) continue;
      const reduced = costOf(program, variable) - product(program, variable, program.duals, 0);
      if (reduced < steepest) [entering, steepest] = [variable, reduced];
    }
    program.steps += 4 * program.costs.length;
    if (entering < 0) return "solved";
    setDirection(program, entering);
    let row = -1;
    let least = Infinity;
    for (let k = 0; k < n; k++) {
      const size = direction[k]!;
      if (size < PIVOT) continue;
      const ratio = Math.max(0, values[k]!) / size;
      if (ratio < least - 1e-12 || (ratio <= least + 1e-12 && size > direction[row]!)) [row, least] = [k, ratio];
    }
    // Costs are 0 or more but for credits, whose kinds are limited: an endless ray is an error of rounding.
    if (row < 0) {
      if (program.sinceFresh === 0) return "stuck";
      yield* refresh(program, budget);
      flagBasis(solution);
      continue;
    }
    yield* enter(solution, row, entering, steepest);
  }
  return "stuck";
}
