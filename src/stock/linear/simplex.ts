import { type Budget, isSpent } from "../search/budget.js";
import type { Steps } from "../steps.js";
import {
  countWork,
  isStale,
  type LinearProgram,
  pivot,
  priceRows,
  product,
  reducedCost,
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

/** Pivots that keep the reduced costs right until no value is negative. */
function* dualSteps(program: LinearProgram, mostPivots: number, budget: Budget): Steps<SolveState> {
  const { values, inverse, inBasis, columns } = program;
  const n = values.length;
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
    for (let variable = 0; variable < inBasis.length; variable++) {
      if (inBasis[variable] === 1 || (variable >= 2 * n && columns[variable - 2 * n]!.barred)) continue;
      const alpha = product(program, variable, inverse, row * n);
      if (alpha > -PIVOT) continue;
      const reduced = Math.max(0, reducedCost(program, variable));
      const ratio = reduced / -alpha;
      if (ratio < bestRatio - 1e-12 || (ratio <= bestRatio + 1e-12 && -alpha > bestSize)) {
        [entering, bestRatio, bestSize] = [variable, ratio, -alpha];
      }
    }
    program.steps += 8 * columns.length;
    if (entering < 0) return "stuck";
    setDirection(program, entering);
    pivot(program, row, entering, reducedCost(program, entering));
    if (isStale(program)) yield* refresh(program, budget);
  }
}

/**
 * Solves a program from its present basis: first with dual steps if values are negative, then with primal ones. It is
 * "stuck" after very many pivots; the duals are still good for a bound. Once the budget is spent, it is left as it is.
 */
export function* solveProgram(program: LinearProgram, budget: Budget): Steps<SolveState> {
  const { values, direction, inBasis, columns } = program;
  const n = values.length;
  const mostPivots = 50 * (n + 10);
  const repaired = yield* dualSteps(program, mostPivots, budget);
  if (repaired === "spent") return "spent";
  if (repaired === "stuck") {
    restart(program);
    priceRows(program);
  }
  for (let pivots = 0; pivots < mostPivots; pivots++) {
    if (countWork(program, budget)) yield;
    if (isSpent(budget)) return "spent";
    let entering = -1;
    let steepest = -OPTIMALITY;
    for (let variable = 0; variable < inBasis.length; variable++) {
      if (inBasis[variable] === 1 || (variable >= 2 * n && columns[variable - 2 * n]!.barred)) continue;
      const reduced = reducedCost(program, variable);
      if (reduced < steepest) [entering, steepest] = [variable, reduced];
    }
    program.steps += 4 * columns.length;
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
      continue;
    }
    pivot(program, row, entering, steepest);
    if (isStale(program)) yield* refresh(program, budget);
  }
  return "stuck";
}
