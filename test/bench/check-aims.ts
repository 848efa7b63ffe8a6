import type { Aim } from "./aims.js";
import type { Row } from "./row.js";

/** How many times as bad as its aim a value may be. */
export const TOLERATED: number = 2;

/**
 * How many times as bad as its aim a value is: as long, or as slow.
 *
 * @param row - the row
 * @param aim - its aim
 * @returns 1 at the aim, less where it is better
 */
export function timesAim({ meaning, value }: Row, { aim }: Aim): number {
  return meaning === "times as fast as the other library" ? aim / value : value / aim;
}

/** What is wrong with one row. */
function faultOf(row: Row, aim: Aim | undefined): string | undefined {
  if (aim === undefined) return `${row.name}: has no aim in bench/aims.ts`;
  const times = timesAim(row, aim);
  if (times <= TOLERATED) return undefined;
  const value = `${Number(row.value.toPrecision(3))} ${row.meaning}`;
  return `${row.name}: ${value}, which misses the aim of ${aim.aim} by a factor of ${times.toFixed(1)}; ${TOLERATED} is allowed`;
}

/**
 * Holds the rows of a benchmark against their aims.
 *
 * @param rows - what was measured
 * @param aims - what it should be
 * @returns a sentence for every row beyond twice its aim or without one, and for every aim that no row answers; empty when all is well
 */
export function missedAims(rows: readonly Row[], aims: readonly Aim[]): string[] {
  const faults = rows.flatMap(
    (row) =>
      faultOf(
        row,
        aims.find(({ name }) => name === row.name),
      ) ?? [],
  );
  const unanswered = aims.filter(({ name }) => !rows.some((row) => row.name === name));
  return [...faults, ...unanswered.map(({ name }) => `${name}: has an aim, but was not measured`)];
}

/**
 * The better value of each row of two runs: what a busy machine spoiled once it seldom spoils again.
 *
 * @param first - rows of one run
 * @param second - the same rows of another
 * @returns the rows
 */
export function betterOf(first: readonly Row[], second: readonly Row[]): Row[] {
  return first.map((row) => {
    const { value } = second.find(({ name }) => name === row.name)!;
    const faster = row.meaning === "times as fast as the other library";
    return { ...row, value: faster ? Math.max(row.value, value) : Math.min(row.value, value) };
  });
}
