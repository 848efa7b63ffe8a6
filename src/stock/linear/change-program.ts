import { type LinearProgram, priceRows, restart, setValues } from "./linear-program.js";

/** A number from 0.5 to 1 that depends on the row alone: the same perturbation on every machine. */
function jitter(row: number): number {
  return 0.5 + ((row * 7919 + 104_729) % 1009) / 2018;
}

/** A program without columns. */
export function makeProgram(
  senses: Int8Array,
  rhs: Float64Array,
  penalty: number,
  weights: Float64Array,
): LinearProgram {
  const n = senses.length;
  const program: LinearProgram = {
    senses,
    rhs: new Float64Array(n),
    penalty,
    weights,
    costs: [],
    rows: [],
    entries: [],
    barred: [],
    inverse: new Float64Array(n * n),
    basis: new Int32Array(n),
    values: new Float64Array(n),
    duals: new Float64Array(n),
    direction: new Float64Array(n),
    sinceFresh: 0,
    steps: 0,
  };
  restart(program);
  setRhs(program, rhs);
  priceRows(program);
  return program;
}

/** Adds a column. */
export function addColumn(
  program: LinearProgram,
  cost: number,
  rows: readonly number[],
  entries: readonly number[],
): void {
  program.costs.push(cost);
  program.rows.push(rows);
  program.entries.push(entries);
  program.barred.push(false);
}

/** Changes the right-hand sides. The basis stays; {@link solveProgram} repairs it. */
export function setRhs(program: LinearProgram, rhs: Float64Array): void {
  const n = rhs.length;
  for (let row = 0; row < n; row++) {
    // Each row is made a little easier, but never negative, so that the first basis can be a penalty or slack in each.
    const eased = rhs[row]! - program.senses[row]! * 1e-7 * jitter(row);
    program.rhs[row] = eased > 0 ? eased : 1e-11 * jitter(row);
  }
  setValues(program);
}

/** Raises or lowers the penalty, keeping the basis. */
export function setPenalty(program: LinearProgram, penalty: number): void {
  program.penalty = penalty;
  priceRows(program);
}

/** Bars columns, which drives those that are in the basis out at a penalty, and lets the others in again. */
export function setBarred(
  program: LinearProgram,
  isBarred: (column: number) => boolean,
  cost: (column: number) => number,
): void {
  for (let column = 0; column < program.costs.length; column++) {
    program.barred[column] = isBarred(column);
    program.costs[column] = program.barred[column]! ? 100 * program.penalty : cost(column);
  }
  program.steps += 10 * program.costs.length;
  priceRows(program);
}
