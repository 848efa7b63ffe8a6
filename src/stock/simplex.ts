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
  /** Costs of the columns. */
  readonly costs: number[];
  /** Rows of each column. */
  readonly rows: (readonly number[])[];
  /** Entries of each column, in the order of its rows. */
  readonly entries: (readonly number[])[];
  /** Columns that may not enter the basis. */
  readonly barred: boolean[];
  /** Inverse of the basis, row by row. */
  readonly inverse: Float64Array;
  /** Variable of each row of the basis: k < n is row k's slack, k < 2 n the penalty of row k - n, the others are columns. */
  readonly basis: Int32Array;
  /** Values of the basic variables. */
  readonly values: Float64Array;
  /** Prices of the rows. */
  readonly duals: Float64Array;
  /** Pivots since the inverse was last computed afresh. */
  sinceFresh: number;
  /** Entries updated so far. */
  work: number;
}

/** How an attempt to solve a program ended. */
export type SolveState = "solved" | "paused" | "stuck";

/** Reduced costs below this are worth a pivot; costs are scaled to about 1. */
const OPTIMALITY = 1e-10;
/** Smallest pivot. */
const PIVOT = 1e-8;
/** Values above minus this count as 0 or more. */
const FEASIBILITY = 1e-8;

/** A number from 0.5 to 1 that depends on the row alone: the same perturbation on every machine. */
function jitter(row: number): number {
  return 0.5 + ((row * 7919 + 104_729) % 1009) / 2018;
}

/**
 * A program without columns.
 *
 * @param senses - 1 for each row that is >=, -1 for each that is <=
 * @param rhs - right-hand sides, 0 or more
 * @param penalty - what missing a row by 1 costs, times the row's weight
 * @param weights - weights of the rows
 * @returns the program, its basis the penalties of the >= rows and the slacks of the others
 */
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
    sinceFresh: 0,
    work: 0,
  };
  restart(program);
  setRhs(program, rhs);
  priceRows(program);
  return program;
}

/**
 * Adds a column.
 *
 * @param program - the program; changed
 * @param cost - its cost
 * @param rows - its rows
 * @param entries - its entries
 */
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

/**
 * Changes the right-hand sides. The basis stays; {@link solveProgram} repairs it.
 *
 * @param program - the program; changed
 * @param rhs - the right-hand sides, 0 or more
 */
export function setRhs(program: LinearProgram, rhs: Float64Array): void {
  const n = rhs.length;
  for (let row = 0; row < n; row++) {
    // Each row is made a little easier, but never negative, so that the first basis can be a penalty or slack in each.
    const eased = rhs[row]! - program.senses[row]! * 1e-7 * jitter(row);
    program.rhs[row] = eased > 0 ? eased : 1e-11 * jitter(row);
  }
  setValues(program);
}

/** Computes the values of the basis from the right-hand sides. */
function setValues({ inverse, rhs, values }: LinearProgram): void {
  const n = rhs.length;
  for (let row = 0; row < n; row++) {
    let sum = 0;
    for (let k = 0; k < n; k++) sum += inverse[row * n + k]! * rhs[k]!;
    values[row] = sum;
  }
}

function costOf(program: LinearProgram, variable: number): number {
  const n = program.senses.length;
  if (variable < n) return 0;
  if (variable < 2 * n) return program.penalty * program.weights[variable - n]!;
  return program.costs[variable - 2 * n]!;
}

/** Computes the duals from the costs of the basis. */
function priceRows(program: LinearProgram): void {
  const { inverse, basis, duals } = program;
  const n = basis.length;
  duals.fill(0);
  for (let row = 0; row < n; row++) {
    const cost = costOf(program, basis[row]!);
    if (cost === 0) continue;
    for (let k = 0; k < n; k++) duals[k] = duals[k]! + cost * inverse[row * n + k]!;
  }
  program.work += n * n;
}

/** A variable's column times a row of the inverse (from `offset`), or times the duals. */
function product(program: LinearProgram, variable: number, by: Float64Array, offset: number): number {
  const n = program.senses.length;
  if (variable < n) return -program.senses[variable]! * by[offset + variable]!;
  if (variable < 2 * n) return program.senses[variable - n]! * by[offset + variable - n]!;
  const rows = program.rows[variable - 2 * n]!;
  const entries = program.entries[variable - 2 * n]!;
  let sum = 0;
  for (let k = 0; k < rows.length; k++) sum += by[offset + rows[k]!]! * entries[k]!;
  return sum;
}

/** Starts over from penalties and slacks, whose columns are those of the unit matrix. */
function restart(program: LinearProgram): void {
  const n = program.basis.length;
  program.inverse.fill(0);
  for (let row = 0; row < n; row++) {
    program.inverse[row * n + row] = 1;
    program.basis[row] = program.senses[row]! > 0 ? n + row : row;
  }
  program.values.set(program.rhs);
  program.sinceFresh = 0;
}

/**
 * Computes the inverse afresh: starts over and brings the basic variables in again, each in the free row where its pivot is
 * largest. What comes in no more, since its pivot has become too small, stays out.
 */
function refresh(program: LinearProgram): void {
  const { basis } = program;
  const n = basis.length;
  const wanted = new Set(basis);
  const direction = new Float64Array(n);
  restart(program);
  const free = new Uint8Array(n);
  for (let row = 0; row < n; row++) free[row] = wanted.delete(basis[row]!) ? 0 : 1;
  for (const variable of wanted) {
    directionOf(program, variable, direction);
    let row = -1;
    let largest = 1e-9;
    for (let k = 0; k < n; k++) {
      if (free[k] === 1 && Math.abs(direction[k]!) > largest) [row, largest] = [k, Math.abs(direction[k]!)];
    }
    if (row < 0) continue;
    pivot(program, row, variable, direction, 0);
    free[row] = 0;
  }
  program.sinceFresh = 0;
  setValues(program);
  priceRows(program);
}

/** Replaces the basic variable of a row by another; `direction` is that one's column in terms of the basis. */
function pivot(program: LinearProgram, row: number, variable: number, direction: Float64Array, reduced: number): void {
  const { inverse, values, duals, basis } = program;
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
    program.work += n;
  }
  values[row] = step;
  for (let k = 0; k < n; k++) duals[k] = duals[k]! + reduced * inverse[start + k]!;
  basis[row] = variable;
  program.sinceFresh++;
}

function directionOf(program: LinearProgram, variable: number, direction: Float64Array): void {
  const n = program.basis.length;
  for (let row = 0; row < n; row++) direction[row] = product(program, variable, program.inverse, row * n);
  program.work += 4 * n;
}

/** Pivots that keep the reduced costs right until no value is negative. */
function dualSteps(program: LinearProgram, inBasis: Uint8Array, mostPivots: number, pauseAt: number): SolveState {
  const { basis, values } = program;
  const n = basis.length;
  const direction = new Float64Array(n);
  for (let pivots = 0; ; pivots++) {
    let row = -1;
    let lowest = -FEASIBILITY;
    for (let k = 0; k < n; k++) {
      if (values[k]! < lowest) [row, lowest] = [k, values[k]!];
    }
    if (row < 0) return "solved";
    if (pivots === mostPivots) return "stuck";
    if (program.work > pauseAt) return "paused";
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
    program.work += 8 * program.costs.length;
    if (entering < 0) return "stuck";
    directionOf(program, entering, direction);
    const reduced = costOf(program, entering) - product(program, entering, program.duals, 0);
    enter(program, inBasis, row, entering, direction, reduced);
  }
}

/** Brings a variable into the basis, and computes the inverse afresh now and then. */
function enter(
  program: LinearProgram,
  inBasis: Uint8Array,
  row: number,
  variable: number,
  direction: Float64Array,
  reduced: number,
): void {
  inBasis[program.basis[row]!] = 0;
  inBasis[variable] = 1;
  pivot(program, row, variable, direction, reduced);
  if (program.sinceFresh <= 100 + program.basis.length) return;
  refresh(program);
  markBasis(program, inBasis);
}

function markBasis(program: LinearProgram, inBasis: Uint8Array): void {
  inBasis.fill(0);
  for (const variable of program.basis) inBasis[variable] = 1;
}

/**
 * Solves a program from its present basis: first with dual steps if values are negative, then with primal ones.
 *
 * @param program - the program; its basis, values and duals are changed
 * @param steps - entries to update before it pauses
 * @returns "paused" if calling it again would go on; "stuck" after very many pivots, the duals are still good for a bound
 */
export function solveProgram(program: LinearProgram, steps: number = Infinity): SolveState {
  const { basis, values } = program;
  const n = basis.length;
  const inBasis = new Uint8Array(2 * n + program.costs.length);
  const direction = new Float64Array(n);
  markBasis(program, inBasis);
  const mostPivots = 50 * (n + 10);
  const pauseAt = program.work + steps;
  const repaired = dualSteps(program, inBasis, mostPivots, pauseAt);
  if (repaired === "paused") return "paused";
  if (repaired === "stuck") {
    restart(program);
    priceRows(program);
    markBasis(program, inBasis);
  }
  for (let pivots = 0; pivots < mostPivots; pivots++) {
    if (program.work > pauseAt) return "paused";
    let entering = -1;
    let steepest = -OPTIMALITY;
    for (let variable = 0; variable < 2 * n + program.costs.length; variable++) {
      if (inBasis[variable] === 1) continue;
      if (variable >= 2 * n && program.barred[variable - 2 * n]!) continue;
      const reduced = costOf(program, variable) - product(program, variable, program.duals, 0);
      if (reduced < steepest) [entering, steepest] = [variable, reduced];
    }
    program.work += 4 * program.costs.length;
    if (entering < 0) return "solved";
    directionOf(program, entering, direction);
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
      refresh(program);
      markBasis(program, inBasis);
      continue;
    }
    enter(program, inBasis, row, entering, direction, steepest);
  }
  return "stuck";
}

/**
 * The value of the objective, penalties included.
 *
 * @param program - a solved program
 * @returns the cost of its basic solution
 */
export function programValue(program: LinearProgram): number {
  let value = 0;
  program.basis.forEach((variable, row) => (value += costOf(program, variable) * Math.max(0, program.values[row]!)));
  return value;
}

/**
 * How much the rows are missed in all.
 *
 * @param program - a solved program
 * @returns the sum of the penalty variables
 */
export function missed(program: LinearProgram): number {
  const n = program.basis.length;
  let sum = 0;
  program.basis.forEach((variable, row) => {
    if (variable >= n && variable < 2 * n) sum += Math.max(0, program.values[row]!);
  });
  return sum;
}

/**
 * Raises or lowers the penalty, keeping the basis.
 *
 * @param program - the program; changed
 * @param penalty - what missing a row by 1 costs
 */
export function setPenalty(program: LinearProgram, penalty: number): void {
  program.penalty = penalty;
  priceRows(program);
}

/**
 * Bars columns, which drives those that are in the basis out at a penalty, and lets the others in again.
 *
 * @param program - the program; changed
 * @param isBarred - whether a column is barred
 * @param cost - the cost of a column that is not
 */
export function setBarred(
  program: LinearProgram,
  isBarred: (column: number) => boolean,
  cost: (column: number) => number,
): void {
  for (let column = 0; column < program.costs.length; column++) {
    program.barred[column] = isBarred(column);
    program.costs[column] = program.barred[column]! ? 100 * program.penalty : cost(column);
  }
  priceRows(program);
}
