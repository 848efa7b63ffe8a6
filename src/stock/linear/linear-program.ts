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
  /** Entries updated and not counted yet. */
  steps: number;
}
