import { type Budget, isSpent, spend } from "../search/budget.js";
import type { Steps } from "../steps.js";

/** A column of a linear program. */
export interface Column {
  /** Its own cost. */
  readonly own: number;
  /** What it costs now: a penalty while it is barred. */
  cost: number;
  /** Its rows. */
  readonly rows: readonly number[];
  /** Its entries, in the order of its rows. */
  readonly entries: readonly number[];
  /** Whether it may not enter the basis. */
  barred: boolean;
}

/**
 * A linear program that grows columns: least cost of x >= 0 with a x >= b or a x <= b in each row.
 *
 * Solved by a revised simplex with an explicit inverse of the basis. All of it is plain floating point; nothing that is
 * proven rests on its values.
 */
export interface LinearProgram {
  /** For each row 1 if it is a >= row, -1 if it is a <= row. */
  readonly senses: Int8Array;
  /** Right-hand sides, with a small perturbation against degenerate steps. */
  readonly rhs: Float64Array;
  /** What missing a row by 1 costs, times the row's weight. */
  penalty: number;
  /** Weights of the rows in that. */
  readonly weights: Float64Array;
  /** The columns. */
  readonly columns: Column[];
  /** Inverse of the basis, row by row. */
  readonly inverse: Float64Array;
  /** Variable of each row of the basis: k < n is row k's slack, k < 2 n the penalty of row k - n, the others are columns. */
  readonly basis: Int32Array;
  /** For each variable 1 if it is in the basis, else 0. */
  readonly inBasis: number[];
  /** Values of the basic variables. */
  readonly values: Float64Array;
  /** Prices of the rows. */
  readonly duals: Float64Array;
  /** Scratch: the column that is entering the basis, in terms of the basis. */
  readonly direction: Float64Array;
  /** Pivots since the inverse was last computed afresh. */
  sinceFresh: number;
  /** Entries updated and not counted yet. */
  steps: number;
}

/** Computes the values of the basis from the right-hand sides. */
export function setValues(program: LinearProgram): void {
  const { inverse, rhs, values } = program;
  const n = rhs.length;
  for (let row = 0; row < n; row++) {
    let sum = 0;
    for (let k = 0; k < n; k++) sum += inverse[row * n + k]! * rhs[k]!;
    values[row] = sum;
  }
  program.steps += n * n;
}

/** What a slack, a penalty or a column costs. */
export function costOf(program: LinearProgram, variable: number): number {
  const n = program.senses.length;
  if (variable < n) return 0;
  if (variable < 2 * n) return program.penalty * program.weights[variable - n]!;
  return program.columns[variable - 2 * n]!.cost;
}

/** Computes the duals from the costs of the basis. */
export function priceRows(program: LinearProgram): void {
  const { inverse, basis, duals } = program;
  const n = basis.length;
  duals.fill(0);
  for (let row = 0; row < n; row++) {
    const cost = costOf(program, basis[row]!);
    if (cost === 0) continue;
    for (let k = 0; k < n; k++) duals[k] = duals[k]! + cost * inverse[row * n + k]!;
  }
  program.steps += n * n;
}

/** A variable's column times a row of the inverse, which starts at an offset, or times the duals. */
export function product(program: LinearProgram, variable: number, by: Float64Array, offset: number): number {
  const n = program.senses.length;
  if (variable < n) return -program.senses[variable]! * by[offset + variable]!;
  if (variable < 2 * n) return program.senses[variable - n]! * by[offset + variable - n]!;
  const { rows, entries } = program.columns[variable - 2 * n]!;
  let sum = 0;
  for (let k = 0; k < rows.length; k++) sum += by[offset + rows[k]!]! * entries[k]!;
  return sum;
}

/** What the objective gains or loses by one of a variable. */
export function reducedCost(program: LinearProgram, variable: number): number {
  return costOf(program, variable) - product(program, variable, program.duals, 0);
}

/** Starts over from penalties and slacks, whose columns are those of the unit matrix. */
export function restart(program: LinearProgram): void {
  const n = program.basis.length;
  program.inverse.fill(0);
  program.inBasis.fill(0);
  for (let row = 0; row < n; row++) {
    program.inverse[row * n + row] = 1;
    const variable = program.senses[row]! > 0 ? n + row : row;
    program.basis[row] = variable;
    program.inBasis[variable] = 1;
  }
  program.values.set(program.rhs);
  program.sinceFresh = 0;
  program.steps += n * n;
}

/** Whether so many pivots were made that the inverse has to be computed afresh. */
export function isStale({ basis, sinceFresh }: LinearProgram): boolean {
  return sinceFresh > 100 + basis.length;
}

/**
 * Computes the inverse afresh: starts over and brings the basic variables in again, each in the free row where its pivot is
 * largest. What comes in no more, since its pivot has become too small, stays out. Once the budget is spent, the basis is
 * left as far as it got.
 */
export function* refresh(program: LinearProgram, budget: Budget): Steps<void> {
  const { basis, direction } = program;
  const n = basis.length;
  const wanted = new Set(basis);
  restart(program);
  const free = new Uint8Array(n);
  for (let row = 0; row < n; row++) free[row] = wanted.delete(basis[row]!) ? 0 : 1;
  for (const variable of wanted) {
    setDirection(program, variable);
    let row = -1;
    let largest = 1e-9;
    for (let k = 0; k < n; k++) {
      if (free[k] === 1 && Math.abs(direction[k]!) > largest) [row, largest] = [k, Math.abs(direction[k]!)];
    }
    if (row < 0) continue;
    pivot(program, row, variable, 0);
    free[row] = 0;
    if (countWork(program, budget)) yield;
    if (isSpent(budget)) break;
  }
  program.sinceFresh = 0;
  setValues(program);
  priceRows(program);
}

/** Counts the entries updated since the last call; returns whether the caller has to yield. */
export function countWork(program: LinearProgram, budget: Budget): boolean {
  const steps = program.steps;
  program.steps = 0;
  return spend(budget, steps);
}

/** Replaces the basic variable of a row by another, whose direction is set and whose reduced cost is given. */
export function pivot(program: LinearProgram, row: number, variable: number, reduced: number): void {
  const { inverse, values, duals, basis, inBasis, direction } = program;
  const n = basis.length;
  const size = direction[row]!;
  const start = row * n;
  for (let k = 0; k < n; k++) inverse[start + k] = inverse[start + k]! / size;
  const step = values[row]! / size;
  for (let other = 0; other < n; other++) {
    const factor = direction[other]!;
    if (other === row || factor === 0) continue;
    const to = other * n;
    for (let k = 0; k < n; k++) inverse[to + k] = inverse[to + k]! - factor * inverse[start + k]!;
    values[other] = values[other]! - factor * step;
    program.steps += n;
  }
  values[row] = step;
  for (let k = 0; k < n; k++) duals[k] = duals[k]! + reduced * inverse[start + k]!;
  inBasis[basis[row]!] = 0;
  inBasis[variable] = 1;
  basis[row] = variable;
  program.sinceFresh++;
}

/** Sets the direction: a variable's column in terms of the basis. */
export function setDirection(program: LinearProgram, variable: number): void {
  const { direction, inverse } = program;
  const n = direction.length;
  for (let row = 0; row < n; row++) direction[row] = product(program, variable, inverse, row * n);
  program.steps += 4 * n;
}

/** The value of the objective at the basic solution, penalties included. */
export function programValue(program: LinearProgram): number {
  let value = 0;
  program.basis.forEach((variable, row) => (value += costOf(program, variable) * Math.max(0, program.values[row]!)));
  return value;
}

/** How much the rows are missed in all. */
export function missed(program: LinearProgram): number {
  const n = program.basis.length;
  let sum = 0;
  program.basis.forEach((variable, row) => {
    if (variable >= n && variable < 2 * n) sum += Math.max(0, program.values[row]!);
  });
  return sum;
}
