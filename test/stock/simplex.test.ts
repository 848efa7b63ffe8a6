import fc from "fast-check";
import loadHighs from "highs";
import { describe, expect, test } from "vitest";
import { type LinearProgram, missed, programValue } from "../../src/stock/linear/linear-program.js";
import { addColumn, makeProgram, setBarred, setPenalty, setRhs } from "../../src/stock/linear/change-program.js";
import { makeBudget } from "../../src/stock/search/budget.js";
import { solveProgram as stepsOf, type SolveState } from "../../src/stock/linear/simplex.js";
import { runSteps } from "../laws/stated-problem.js";

const highs = await loadHighs();

const solveProgram = (program: LinearProgram): SolveState => runSteps(stepsOf(program, makeBudget(Infinity)));

interface Case {
  readonly atLeast: readonly number[];
  readonly atMost: readonly number[];
  readonly columns: readonly { readonly cost: number; readonly entries: readonly number[] }[];
}

/** A covering program with a few limits, of the size of a small job. */
const program: fc.Arbitrary<Case> = fc
  .tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 0, max: 3 }), fc.integer({ min: 1, max: 25 }))
  .chain(([covers, limits, columns]) =>
    fc.record({
      atLeast: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: covers, maxLength: covers }),
      atMost: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: limits, maxLength: limits }),
      columns: fc.array(
        fc.record({
          cost: fc.integer({ min: 1, max: 50 }).map((cost) => cost / 25),
          entries: fc.array(fc.constantFrom(0, 0, 0, 1, 1, 2, 5), {
            minLength: covers + limits,
            maxLength: covers + limits,
          }),
        }),
        { minLength: columns, maxLength: columns },
      ),
    }),
  );

const PENALTY = 100;

/** The least cost by HiGHS, with the same penalties. */
function byHighs({ atLeast, atMost, columns }: Case): number {
  const terms = (row: number): string =>
    columns.map(({ entries }, k) => `+ ${entries[row]!} x${k}`).join(" ") +
    ` ${row < atLeast.length ? "+" : "-"} y${row}`;
  const rows = [...atLeast, ...atMost].map(
    (rhs, row) => `r${row}: ${terms(row)} ${row < atLeast.length ? ">=" : "<="} ${rhs}`,
  );
  const cost =
    columns.map(({ cost: each }, k) => `+ ${each} x${k}`).join(" ") +
    rows.map((_, row) => ` + ${PENALTY} y${row}`).join("");
  return highs.solve(`Minimize\n obj: ${cost}\nSubject To\n ${rows.join("\n ")}\nEnd`).ObjectiveValue;
}

function load({ atLeast, atMost, columns }: Case) {
  const senses = Int8Array.from([...atLeast.map(() => 1), ...atMost.map(() => -1)]);
  const loaded = makeProgram(senses, new Float64Array(senses.length).fill(1));
  setRhs(loaded, Float64Array.from([...atLeast, ...atMost]));
  setPenalty(loaded, PENALTY);
  for (const { cost, entries } of columns) {
    const rows = entries.flatMap((entry, row) => (entry === 0 ? [] : [row]));
    addColumn(
      loaded,
      cost,
      rows,
      rows.map((row) => entries[row]!),
    );
  }
  return loaded;
}

/** The perturbation of the right-hand sides, priced at the penalty, is all that may differ. */
const TOLERANCE = 1e-7 * PENALTY * 11;

describe("simplex", () => {
  test("against HiGHS", () => {
    fc.assert(
      fc.property(program, (given) => {
        const loaded = load(given);
        expect(solveProgram(loaded)).toBe("solved");
        expect(Math.abs(programValue(loaded) - byHighs(given))).toBeLessThan(TOLERANCE);
      }),
    );
  });

  test("from the last basis, after other right-hand sides and more columns", () => {
    fc.assert(
      fc.property(
        program,
        fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 11, maxLength: 11 }),
        (given, others) => {
          const half = Math.ceil(given.columns.length / 2);
          const loaded = load({ ...given, columns: given.columns.slice(0, half) });
          solveProgram(loaded);
          const changed = {
            ...given,
            atLeast: given.atLeast.map((_, k) => others[k]!),
            atMost: given.atMost.map((_, k) => others[k + 8]!),
          };
          setRhs(loaded, Float64Array.from([...changed.atLeast, ...changed.atMost]));
          expect(solveProgram(loaded)).toBe("solved");
          const part = { ...changed, columns: given.columns.slice(0, half) };
          expect(Math.abs(programValue(loaded) - byHighs(part))).toBeLessThan(TOLERANCE);
          for (const { cost, entries } of given.columns.slice(half))
            addColumn(loaded, cost, [...entries.keys()], entries);
          expect(solveProgram(loaded)).toBe("solved");
          expect(Math.abs(programValue(loaded) - byHighs(changed))).toBeLessThan(TOLERANCE);
        },
      ),
    );
  });

  test("without barred columns", () => {
    fc.assert(
      fc.property(program, (given) => {
        const loaded = load(given);
        solveProgram(loaded);
        setBarred(loaded, (column) => column % 2 === 1);
        expect(solveProgram(loaded)).toBe("solved");
        const rest = { ...given, columns: given.columns.filter((_, column) => column % 2 === 0) };
        expect(Math.abs(programValue(loaded) - byHighs(rest))).toBeLessThan(TOLERANCE);
      }),
    );
  });

  test("says by how much rows are missed", () => {
    const loaded = load({ atLeast: [3, 4], atMost: [], columns: [{ cost: 1, entries: [1, 0] }] });
    expect(solveProgram(loaded)).toBe("solved");
    expect(missed(loaded)).toBeCloseTo(4, 5);
  });
});
