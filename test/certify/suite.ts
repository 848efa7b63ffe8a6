import { realField } from "../../src/precise/real-field.js";
import { errorOf, limitOf, type Case, type Comparison } from "./comparison.js";
import { cornerGrid, someCorner } from "./corner-cases.js";
import { miterGrid, someCompoundMiter, someSetting } from "./miter-cases.js";
import { polygonGrid, somePolygon } from "./polygon-cases.js";
import { randomFrom, type Random } from "./random.js";
import { sectionGrid, someSection, somePiece } from "./section-cases.js";

/** How one quantity fared. */
export interface Row {
  /** What was compared. */
  readonly quantity: string;
  /** How many results. */
  readonly cases: number;
  /** The largest error in units. */
  readonly worst: number;
  /** Most units that its results may be off. */
  readonly limit: number;
  /** How many results were off by more than that. */
  readonly over: number;
  /** The inputs of the worst one. */
  readonly input: Case["input"];
}

/** Digits of the true values: more only where these leave a unit undecided. */
const DIGITS = [40, 80, 200, 600];

/** What random cases are drawn from, in turn. */
const KINDS: readonly ((random: Random) => Case)[] = [
  somePolygon,
  someCompoundMiter,
  someCorner,
  someSetting,
  someSection,
  somePiece,
];

/** All comparisons of a case with their errors. */
type Judge = (checked: Case) => readonly (readonly [Comparison, error: number])[];

/** Judges cases with true values of as many digits as each needs. */
function makeJudge(): Judge {
  const fields = DIGITS.map((digits) => realField(digits));
  return (checked) => {
    for (const field of fields) {
      const judged = checked.compare(field).map((comparison) => [comparison, errorOf(comparison)] as const);
      const decided = judged.flatMap(([comparison, error]) =>
        error === undefined ? [] : [[comparison, error] as const],
      );
      if (decided.length === judged.length) return decided;
    }
    throw new Error(`No true value for ${JSON.stringify(checked.input)}`);
  };
}

/** What is certified. */
export interface CertifyOptions {
  /** Whether the fixed grid is gone over first. */
  readonly grid: boolean;
  /** How many random cases. */
  readonly cases: number;
  /** What they are drawn with. */
  readonly seed: number;
}

/** The fixed grid, then random cases. */
function* allCases({ grid, cases, seed }: CertifyOptions): Generator<Case> {
  if (grid) yield* [...polygonGrid(), ...miterGrid(), ...cornerGrid(), ...sectionGrid()];
  const random = randomFrom(seed);
  for (let k = 0; k < cases; k += 1) yield KINDS[k % KINDS.length]!(random);
}

/**
 * Compares the library with the true values.
 *
 * @param options - what is certified
 * @returns a row for every quantity, in the order in which they came up
 */
export function certify(options: CertifyOptions): Row[] {
  const judge = makeJudge();
  const rows = new Map<string, Row>();
  for (const checked of allCases(options)) {
    for (const [comparison, error] of judge(checked)) {
      const { quantity } = comparison;
      const limit = limitOf(comparison);
      const row = rows.get(quantity) ?? { quantity, cases: 0, worst: -1, limit, over: 0, input: checked.input };
      rows.set(quantity, {
        quantity,
        cases: row.cases + 1,
        worst: Math.max(row.worst, error),
        limit,
        over: row.over + (error <= limit ? 0 : 1),
        input: error > row.worst ? checked.input : row.input,
      });
    }
  }
  return [...rows.values()];
}

/**
 * Writes the rows as a table.
 *
 * @param rows - the rows
 * @returns lines of text
 */
export function formatRows(rows: readonly Row[]): string {
  const lines = rows.map(({ quantity, cases, worst, limit, over, input }) => [
    quantity,
    String(cases),
    worst.toPrecision(3),
    String(limit),
    over === 0 ? "" : `${over} OVER`,
    JSON.stringify(input),
  ]);
  const table = [["quantity", "results", "worst", "limit", "", "worst at"], ...lines];
  const widths = table[0]!.map((_, column) => Math.max(...table.map((line) => line[column]!.length)));
  return table
    .map((line) =>
      line.map((cell, column) => (column === line.length - 1 ? cell : cell.padEnd(widths[column]!))).join("  "),
    )
    .join("\n");
}
