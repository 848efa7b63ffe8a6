import {
  checkFields,
  checkInteger,
  checkLength,
  checkLengthOrZero,
  checkNumber,
  MAX_LENGTH,
  refuse,
} from "../../core/check.js";
import { tanDeg } from "../../core/degrees.js";
import type { Profile } from "../../profile/index.js";
import type { StockJob, StockStick } from "../../stock/index.js";
import type { RoughMethod } from "../brief/brief.js";
import { checkSticks } from "../../stock/internal.js";
import { checkGeometry } from "../check-geometry.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { checkRough } from "../sawing/check-rough.js";
import { roughPiece } from "../sawing/rough-length.js";

/** Options of {@link stockJob}. */
export interface StockJobOptions {
  /** Width of the saw cut, 0 or more. */
  readonly kerf: number;
  /** How pieces are parted from the stick; default `{ method: "none" }`. */
  readonly rough?: RoughMethod | undefined;
  /** The sticks on offer. */
  readonly sticks: readonly StockStick[];
  /** Length lost at each end of a stick; default one cut, so that a long point never starts on the raw end. */
  readonly trim?: number | undefined;
  /** Shortest offcut worth keeping; without it none is, or with a credit every one. */
  readonly keep?: number | undefined;
  /** Worth of a kept offcut per length; default 0. */
  readonly credit?: number | undefined;
  /** The grid on which lengths are compared; default as `fitStock` chooses. */
  readonly resolution?: number | undefined;
  /** How many such frames are made, an integer from 1 to 1e6; default 1. */
  readonly frames?: number | undefined;
  /**
   * Lets neighbors share one slanted cut by rolling the stick half a turn about its length between them. Only for flat stock with two good faces: it takes
   * effect only where the section is the same after half a roll. Default false.
   */
  readonly bothFacesGood?: boolean | undefined;
}

/** The options that there are. */
const OPTIONS: readonly (keyof StockJobOptions)[] = [
  ...(["kerf", "rough", "sticks", "trim", "keep", "credit", "resolution", "frames", "bothFacesGood"] as const),
];

/** Points this close, as a share of the section's size, are the same after half a roll. */
const SAME_POINT: number = 1e-9;

/**
 * Whether a section is the same after half a roll about its middle.
 *
 * @param profile - the molding's section
 * @returns true when every corner has a partner opposite
 */
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

/** Sticks of the job's own, with nothing in them but what was given. */
function copySticks(value: unknown): StockStick[] {
  return checkSticks(value, "sticks").map(({ id, length, count, cost, defects }, k) => {
    const given = (value as readonly StockStick[])[k]!;
    return {
      id,
      length,
      ...(given.count === undefined ? {} : { count }),
      ...(given.cost === undefined ? {} : { cost }),
      ...(given.defects === undefined ? {} : { defects }),
    };
  });
}

/** An option that may be left out, checked where it is given. */
function optional(value: unknown, check: (value: unknown) => number): number | undefined {
  return value === undefined ? undefined : check(value);
}

/**
 * The job of a geometry that needs no check.
 *
 * @param geometry - of the library's own making, or checked
 * @param options - as for {@link stockJob}
 * @returns the job
 */
export function stockJobOf(geometry: FrameGeometry, options: StockJobOptions): StockJob {
  const given = checkFields(options, "", OPTIONS);
  const kerf = checkLengthOrZero(given["kerf"], "kerf");
  const { rough: parting = { method: "none" }, bothFacesGood = false } = given;
  const rough = checkRough(checkFields(parting, "rough", ["method", "allowance"]));
  const sticks = copySticks(given["sticks"]);
  const trim = optional(given["trim"], (value) => checkLengthOrZero(value, "trim"));
  const keep = optional(given["keep"], (value) => checkLengthOrZero(value, "keep"));
  const credit = optional(given["credit"], (value) => checkNumber(value, "credit", 0, MAX_LENGTH));
  const resolution = optional(given["resolution"], (value) => checkLength(value, "resolution"));
  const frames = optional(given["frames"], (value) => checkInteger(value, "frames", 1, 1e6)) ?? 1;
  if (typeof bothFacesGood !== "boolean") refuse("type", "bothFacesGood", bothFacesGood, "true or false");
  const ringPiece = geometry.pieces[0];
  const piece = roughPiece(ringPiece.longest.length, ringPiece.end, kerf, rough);
  const share = rough.method === "none" ? sharedCut(geometry, bothFacesGood === true) : {};
  return {
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
  return stockJobOf(checkGeometry(geometry), options);
}
