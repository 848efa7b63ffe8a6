import { cosDeg } from "../core/degrees.js";
import { toleranceKernel } from "../closure/gauge-tolerance.js";
import { acrossTolerance, liftTolerance, slopeTolerance, stickTolerance } from "../closure/ring-tolerances.js";
import type { FrameGeometry } from "./frame-geometry.js";
import { jointWidth } from "./joint-width.js";
import { markLabel } from "./mark-label.js";
import type { MeasureAlong } from "./measure-along.js";

/** One thing to measure on a frame, and what it must be. */
export interface FrameCheck {
  /** Which check; no two of a plan have the same. */
  readonly code:
    | "stick-length"
    | "level-width"
    | "miter-sum"
    | "corner-angle"
    | "last-joint"
    | "opening-across-flats"
    | "opening-across-corners"
    | "overall-across-flats"
    | "overall-across-corners"
    | "flatness"
    | "slope"
    | "glued-across-flats"
    | "glued-across-corners"
    | "glued-flatness";
  /** When: on the loose sticks, on the dry frame with all joints but the last pulled tight, or on the glued one. */
  readonly when: "sticks" | "dry" | "glued";
  /** What to measure, for people. */
  readonly label: string;
  /** Whether value and tolerance are lengths in the plan's unit or angles in degrees. */
  readonly kind: "length" | "angle";
  /** What it must be. */
  readonly value: number;
  /**
   * By how much it may be off either way if the last joint is to keep within the accepted gap: what a ring is off whose cuts all share the error that just gives it. `null` where none
   * follows from the gap, or too little is known of the molding.
   */
  readonly tolerance: number | null;
}

/** Distance from the center to the corners that the frame stands on: its lower edge, which is the inner one of a frame that rises outward. */
function standsOn({ slope, overall, opening, sticks, deciding, corners }: FrameGeometry): number {
  if (slope <= 0) return overall.polygon.circumradius;
  return opening.circumradius + (sticks[0]!.shortest.out - deciding.out) / cosDeg(corners[0]!.planMiter);
}

/**
 * What to measure on the sticks, on the dry frame and on the glued one.
 *
 * @param geometry - the frame
 * @param measure - the line along which the sticks are measured; `null` for the longest one
 * @param gap - the V that is accepted at the last joint
 * @returns the checks, in the order in which they are best made
 */
export function frameChecks(geometry: FrameGeometry, measure: MeasureAlong | null, gap: number): FrameCheck[] {
  const { sides, opening, overall, slope, levelWidth } = geometry;
  const { planMiter } = geometry.corners[0]!;
  const width = jointWidth(geometry);
  const tolerated = gap < width ? toleranceKernel(sides, width, gap, slope) : null;
  const off = (side: number): { flats: number | null; diagonal: number | null } =>
    tolerated === null ? { flats: null, diagonal: null } : acrossTolerance(sides, side, tolerated.angle);
  const [inner, outer] = [off(opening.side), off(overall.polygon.side)];
  const { height } = overall;
  const lift = height !== null && gap < height ? liftTolerance(standsOn(geometry), height, gap) : null;
  const flats = sides % 2 === 0 ? "side to opposite side" : "corner to opposite side";
  const diagonal = "corner to farthest corner";
  const inside = geometry.fit === null && geometry.measured === null ? "inside" : "in the rabbet";
  const { mark, length } = measure ?? geometry.sticks[0]!.longest;

  const lengthCheck = (
    code: FrameCheck["code"],
    when: FrameCheck["when"],
    label: string,
    value: number,
    tolerance: number | null,
  ): FrameCheck => ({ code, when, label, kind: "length", value, tolerance });
  const checks: FrameCheck[] = [
    lengthCheck(
      "stick-length",
      "sticks",
      `length of every piece along the ${markLabel(mark)}, one against the other`,
      length,
      stickTolerance(sides, gap),
    ),
    lengthCheck(
      "level-width",
      "sticks",
      `level width, outward from ${inside === "inside" ? "the inside" : "the rabbet's wall"}`,
      levelWidth,
      null,
    ),
    {
      code: "miter-sum",
      when: "dry",
      label: `${sides} corners, two plan miters each, add up to`,
      kind: "angle",
      value: 360,
      tolerance: null,
    },
    {
      code: "corner-angle",
      when: "dry",
      label: "inside angle of every tight corner, in plan",
      kind: "angle",
      value: 180 - 2 * planMiter,
      tolerance: tolerated === null ? null : tolerated.angle / sides,
    },
    lengthCheck("last-joint", "dry", "gap of the last joint, its other end touching", 0, gap),
    lengthCheck("opening-across-flats", "dry", `opening, ${inside}, ${flats}`, opening.acrossFlats, inner.flats),
    lengthCheck(
      "opening-across-corners",
      "dry",
      `opening, ${inside}, ${diagonal}`,
      opening.acrossCorners,
      inner.diagonal,
    ),
    lengthCheck("overall-across-flats", "dry", `whole frame, ${flats}`, overall.polygon.acrossFlats, outer.flats),
    lengthCheck(
      "overall-across-corners",
      "dry",
      `whole frame, ${diagonal}`,
      overall.polygon.acrossCorners,
      outer.diagonal,
    ),
    lengthCheck("flatness", "dry", "gap under any corner on a flat bench", 0, lift),
  ];
  if (slope !== 0) {
    checks.push({
      code: "slope",
      when: "dry",
      label: "slope of every side against the bench",
      kind: "angle",
      value: slope,
      tolerance: tolerated === null ? null : slopeTolerance(sides, slope, tolerated.shared.each),
    });
  }
  checks.push(
    lengthCheck(
      "glued-across-flats",
      "glued",
      `opening again, before the panel is cut, ${flats}`,
      opening.acrossFlats,
      inner.flats,
    ),
    lengthCheck("glued-across-corners", "glued", `opening again, ${diagonal}`, opening.acrossCorners, inner.diagonal),
    lengthCheck("glued-flatness", "glued", "gap under any corner on a flat bench, again", 0, lift),
  );
  return checks;
}
