import { inOrder, LENGTH, LENGTH_OR_ZERO, MAX_LENGTH, refuse } from "../../core/check.js";
import { readField, type FieldCheck, type Fields } from "../../core/field.js";
import { tanDeg } from "../../core/degrees.js";
import type { Profile } from "../../profile/index.js";
import type { StockJob } from "../../stock/index.js";
import type { BriefBase } from "../brief/brief.js";
import { readRough } from "../brief/read-rough.js";
import { readSticks } from "../../stock/internal.js";
import { checkGeometry } from "../check-geometry.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { roughPiece } from "../sawing/rough-length.js";

/** Options of {@link stockJob}. */
export interface StockJobOptions
  extends Pick<BriefBase<string>, "rough">, Pick<StockJob, "sticks" | "keep" | "credit" | "resolution"> {
  /** Width of the saw cut, 0 or more. */
  readonly kerf: number;
  /** Length lost at each end of a stick; default one cut, so that a long point never starts on the raw end. */
  readonly trim?: number | undefined;
  /** How many such frames are made, an integer from 1 to 1e6; default 1. */
  readonly frames?: number | undefined;
  /**
   * Lets neighbors share one slanted cut by rolling the stick half a turn about its length between them. Only for flat stock with two good faces: it takes
   * effect only where the section is the same after half a roll. Default false.
   */
  readonly bothFacesGood?: boolean | undefined;
}

const flag: FieldCheck<boolean> = (value, path) =>
  typeof value === "boolean" ? value : refuse("type", path, value, "true or false");
const OPTIONS: Fields<StockJobOptions> = {
  kerf: LENGTH_OR_ZERO,
  rough: { kind: "optional", of: readRough },
  sticks: readSticks,
  trim: { kind: "optional", of: LENGTH_OR_ZERO },
  keep: { kind: "optional", of: LENGTH_OR_ZERO },
  credit: { kind: "optional", of: { kind: "number", min: 0, max: MAX_LENGTH } },
  resolution: { kind: "optional", of: LENGTH },
  frames: { kind: "optional", of: { kind: "integer", min: 1, max: 1e6 } },
  bothFacesGood: { kind: "optional", of: flag },
};

/** Points this close, as a share of the section's size, are the same after half a roll. */
const SAME_POINT: number = 1e-9;

/** Whether a section is the same after half a roll about its middle. */
function unchangedByHalfRoll(profile: Profile): boolean {
  const xs = profile.outline.map((point) => point.x);
  const ys = profile.outline.map((point) => point.y);
  const sumX = Math.min(...xs) + Math.max(...xs);
  const sumY = Math.min(...ys) + Math.max(...ys);
  const size = Math.max(...xs) - Math.min(...xs) + Math.max(...ys) - Math.min(...ys);
  return profile.outline.every((point) =>
    profile.outline.some(
      (other) => Math.abs(point.x + other.x - sumX) + Math.abs(point.y + other.y - sumY) <= size * SAME_POINT,
    ),
  );
}

/** What neighbors save when they share a slanted cut: the joint width times tan h. */
function sharedCut(geometry: FrameGeometry, wanted: boolean): { share?: { key: string; saving: number } } {
  if (!wanted || geometry.profile === null || !unchangedByHalfRoll(geometry.profile)) return {};
  const { longest, shortest } = geometry.pieces[0];
  return { share: { key: "side", saving: (longest.out - shortest.out) * tanDeg(geometry.corners[0].planMiter) } };
}

/** The job of a geometry and of options that need no check. */
export function stockJobOf(geometry: FrameGeometry, options: StockJobOptions): StockJob {
  const { kerf, rough = { method: "none" }, sticks, frames = 1, bothFacesGood = false } = options;
  const { trim, keep, credit, resolution } = options;
  const ringPiece = geometry.pieces[0];
  const piece = roughPiece(ringPiece.longest.length, ringPiece.end, kerf, rough);
  const share = rough.method === "none" ? sharedCut(geometry, bothFacesGood) : {};
  return {
    schemaVersion: 1,
    pieces: [{ id: "side", length: piece.length, count: ringPiece.count * frames, ...share }],
    sticks,
    kerf: piece.kerfAlong,
    trim: trim ?? piece.kerfAlong,
    ...(keep === undefined ? {} : { keep }),
    ...(credit === undefined ? {} : { credit }),
    ...(resolution === undefined ? {} : { resolution }),
  };
}

/**
 * The stock-fitting job of a frame: its pieces, with what a mitered cut really takes of a stick. Hand it to `fitStock`, here, async or in a worker.
 *
 * @param geometry - from `frameGeometry`
 * @param options - kerf, roughs, sticks, and what `fitStock` knows besides
 * @returns the job, in the geometry's unit
 * @throws {InputError} when an option is missing, unknown or not sound
 * @example
 * ```ts
 * import { frameGeometry, stockJob } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 *
 * const frame = frameGeometry({ sides: 6, opening: { side: 200 }, profile: molding({ width: 40, thickness: 20 }) });
 * const job = stockJob(frame, { kerf: 3, sticks: [{ id: "pine", length: 2400 }] });
 * job.pieces[0]?.count; //=> 6
 * job.pieces[0]?.length; //=> 246.188021535171
 * job.kerf; //=> 3.46410161513775
 * ```
 */
export function stockJob(geometry: FrameGeometry, options: StockJobOptions): StockJob {
  const checked = checkGeometry(geometry);
  return stockJobOf(checked, readField<StockJobOptions>({ kind: "record", fields: OPTIONS }, options, "", inOrder));
}
