import { type LinearProgram, priceRows, restart, setValues } from "./linear-program.js";

/** A number from 0.5 to 1 that depends on the row alone: the same perturbation on every machine. */
function jitter(row: number): number {
  return 0.5 + ((row * 7919 + 104_729) % 1009) / 2018;
}

/**
 * A program without columns, its right-hand sides 0 and its penalty 1. The basis is the penalties of the >= rows and the
 * slacks of the others.
 */
export function makeProgram(senses: Int8Array, weights: Float64Array): LinearProgram {
  const n = senses.length;
  const program: LinearProgram = {
    senses,
    rhs: new Float64Array(n),
    penalty: 1,
    weights,
    columns: [],
    inverse: new Float64Array(n * n),
    basis: new Int32Array(n),
    values: new Float64Array(n),
    duals: new Float64Array(n),
    direction: new Float64Array(n),
    inBasis: Array.from({ length: 2 * n }, () => 0),
    sinceFresh: 0,
    steps: 0,
  };
  restart(program);
  setRhs(program, new Float64Array(n));
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
  program.columns.push({ own: cost, cost, rows, entries, barred: false });
  program.inBasis.push(0);
}

/** Changes the right-hand sides, which are 0 or more. The basis stays; `solveProgram` repairs it. */
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
export function setBarred(program: LinearProgram, isBarred: (column: number) => boolean): void {
  const { columns, penalty } = program;
  columns.forEach((column, k) => {
    column.barred = isBarred(k);
    column.cost = column.barred ? 100 * penalty : column.own;
  });
  program.steps += 10 * columns.length;
  priceRows(program);
}
