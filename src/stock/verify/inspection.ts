import { checkNumber } from "../../core/check.js";
import type { StockJob } from "../job/stock-job.js";
import { doubleOf, exactOf } from "./exact.js";
import type { StatedJob } from "./stated-job.js";

/** What is wrong with a plan. */
export interface FitFault {
  /** Which rule it breaks. */
  readonly code:
    | "unknown-piece"
    | "unknown-stick"
    | "length"
    | "spacing"
    | "clear"
    | "sequence"
    | "offcut"
    | "demand"
    | "limit"
    | "total"
    | "status";
  /** Where, e.g. `fit.layouts[2].pieces[0]`. */
  readonly path: string;
  /** A sentence. */
  readonly message: string;
}

/** What the checks of a plan share. */
export interface Inspection {
  /** The job in its own lengths. */
  readonly job: StatedJob;
  /** How far the plan's grid may make it give away: 0 where the job's lengths lie on it. */
  readonly slack: bigint;
  /** Tells what is wrong. */
  readonly report: (code: FitFault["code"], path: string, message: string) => void;
}

/** Any finite number, sign and all: what is wrong with it is told, not thrown. */
export function readNumber(value: unknown, path: string): number {
  return checkNumber(value, path, -Number.MAX_VALUE, Number.MAX_VALUE);
}

/** Whether two lengths differ by no more than `off`. */
export function isNear(one: bigint, other: bigint, off: bigint): boolean {
  return one - other <= off && other - one <= off;
}

/** Reads a number that may be off by some slack; returns what to report if it is not the right one. */
export function mismatch(value: unknown, path: string, right: bigint, slack: bigint): string | undefined {
  const given = readNumber(value, path);
  return isNear(exactOf(given), right, slack) ? undefined : `Expected ${doubleOf(right)}, got ${given}`;
}

/**
 * How far the plan's grid may make it give away: nothing where all lengths of the job are steps of it, else some steps. A grid that does not hold them all is
 * the one that was asked for, or a fine one: a hundred-thousandth of the longest stick at most.
 */
export function slackOf(job: StockJob, resolution: number, report: Inspection["report"]): bigint {
  const { trim = 0, pieces, sticks } = job;
  const ends = typeof trim === "number" ? [trim] : [trim.start, trim.end];
  const lengths = [job.kerf ?? 0, job.keep ?? 0, ...ends];
  for (const { length, sequence, share } of pieces) {
    for (const part of sequence ?? [length]) lengths.push(part);
    lengths.push(share?.saving ?? 0);
  }
  let longest = 0;
  for (const { length, defects = [] } of sticks) {
    longest = Math.max(longest, length);
    lengths.push(length);
    for (const { start, end } of defects) lengths.push(start, end);
  }
  const isStep = (length: number): boolean => {
    const steps = length / resolution;
    return Math.abs(steps - Math.round(steps)) <= 2 ** -46 * steps;
  };
  // Longer than the longest stick a kerf may have any length.
  const holdsAll = resolution > 0 && lengths.every((length) => length > longest || isStep(length));
  const asked = job.resolution;
  const sound =
    asked === undefined ? holdsAll || resolution <= longest / 1e5 : Math.abs(resolution - asked) <= 1e-12 * asked;
  if (!(resolution > 0 && sound)) {
    report(
      "total",
      "fit.resolution",
      `Expected ${asked ?? "a grid that holds the job's lengths, or a fine one"}, got ${resolution}`,
    );
    return 0n;
  }
  return holdsAll ? 0n : 4n * exactOf(resolution);
}
