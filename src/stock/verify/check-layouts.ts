import { checkArray, checkInteger, checkObject, checkText } from "../../core/check.js";
import { checkPlaces, type Rest } from "./check-places.js";
import { doubleOf, exactOf, largerOf } from "./exact.js";
import { type Inspection, isNear, mismatch, readNumber } from "./inspection.js";
import type { StatedStick } from "./stated-job.js";

/** How many of each name; a name that is not there counts as 0. */
export type Tally = Map<string, bigint>;

/** Adds to a tally. */
export function add(tally: Tally, id: string, count: bigint): void {
  tally.set(id, (tally.get(id) ?? 0n) + count);
}

/** Sums over all layouts. */
export interface Sums {
  cost: bigint;
  sticksLength: bigint;
  keptLength: bigint;
  readonly placed: Tally;
  readonly sticks: Tally;
}

/** A layout that is checked. */
interface Layout {
  readonly stick: StatedStick;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly path: string;
}

/** Compares the offcuts that a layout lists with what is left of its stick; returns the length of those that are kept. */
function checkOffcuts(inspection: Inspection, { stick, fields, path }: Layout, rests: readonly Rest[]): bigint {
  const { job, slack, report } = inspection;
  const off = 2n * slack + 2n * stick.noise;
  const longest = rests.reduce((most, { start, end }) => largerOf(most, end - start), 0n);
  const wrong = mismatch(fields["offcut"], `${path}.offcut`, longest, off);
  if (wrong !== undefined) report("offcut", `${path}.offcut`, wrong);
  const { keep } = job;
  const listed = checkArray(fields["kept"], `${path}.kept`).map((value, k) => {
    const at = `${path}.kept[${k}]`;
    const { start, end } = checkObject(value, at);
    return { start: exactOf(readNumber(start, `${at}.start`)), end: exactOf(readNumber(end, `${at}.end`)), at };
  });
  let kept = 0n;
  let next = 0;
  for (const { start, end } of rests) {
    const entry = listed[next];
    const isListed = entry !== undefined && isNear(entry.start, start, off) && isNear(entry.end, end, off);
    if (isListed) {
      next++;
      kept += entry.end - entry.start;
      if (keep !== undefined && entry.end - entry.start >= keep - off) continue;
      report("offcut", entry.at, "The offcut is shorter than is worth keeping");
    } else if (keep !== undefined && end - start >= keep + off && end - start > off) {
      const text = `from ${doubleOf(start)} to ${doubleOf(end)}`;
      kept += end - start;
      report("offcut", `${path}.kept`, `The offcut ${text} is worth keeping, and not listed`);
    }
  }
  for (const { at } of listed.slice(next)) report("offcut", at, "There is no such offcut");
  return kept;
}

/** Checks every layout, and sums up what they make, use and keep. */
export function checkLayouts(inspection: Inspection, layouts: readonly unknown[]): Sums {
  const { job, report } = inspection;
  const sums: Sums = { cost: 0n, sticksLength: 0n, keptLength: 0n, placed: new Map(), sticks: new Map() };
  layouts.forEach((value, k) => {
    const path = `fit.layouts[${k}]`;
    const fields = checkObject(value, path);
    const times = BigInt(checkInteger(fields["times"], `${path}.times`, 1, 1e9));
    const id = checkText(fields["stick"], `${path}.stick`);
    const stick = job.sticks.get(id);
    if (stick === undefined) {
      report("unknown-stick", path, `The job has no stick ${JSON.stringify(id)}`);
      return;
    }
    const { placed, rests } = checkPlaces(inspection, stick, fields["pieces"], `${path}.pieces`);
    sums.keptLength += times * checkOffcuts(inspection, { stick, fields, path }, rests);
    sums.cost += times * stick.cost;
    sums.sticksLength += times * stick.length;
    add(sums.sticks, id, times);
    for (const [piece, count] of placed) add(sums.placed, piece, times * count);
  });
  return sums;
}
