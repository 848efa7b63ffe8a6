import { cosDeg } from "../core/degrees.js";
import { offsetPolygon } from "../polygon/index.js";
import { toleranceKernel } from "../closure/gauge-tolerance.js";
import { acrossTolerance, liftTolerance, slopeTolerance, pieceTolerance } from "../closure/ring-tolerances.js";
import type { FrameGeometry } from "./frame-geometry.js";
import { jointWidth } from "./joint-width.js";
import { arrisLabel } from "./arris-label.js";
import type { MeasureAlong } from "./measure-along.js";

/** One thing to measure on a frame, and what it must be. */
export interface FrameCheck {
  /** Which check; no two of a plan have the same. */
  readonly code:
    | "piece-length"
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
  /** When: on the loose pieces, on the dry frame with all joints but the last pulled tight, or on the glued one. */
  readonly when: "pieces" | "dry" | "glued";
  /** What to measure, for people. */
  readonly label: string;
  /** The arris that is measured at, where a tape or a rule finds it; `null` where there is none of a name, or nothing is measured along one. */
  readonly arris: string | null;
  /** Whether value and tolerance are lengths in the plan's unit or angles in degrees. */
  readonly kind: "length" | "angle";
  /** What it must be. */
  readonly value: number;
  /**
   * By how much it may be off either way if the last joint is to keep within the accepted gap. A ring whose cuts all share the error that just makes that gap
   * is off by so much. `null` where none follows from the gap, or too little is known of the molding.
   */
  readonly tolerance: number | null;
}

/** Distance from the center to the corners that the frame stands on: its lower edge, which is the inner one of a frame that rises outward. */
function standsOn({ slope, overall, opening, pieces, deciding, corners }: FrameGeometry): number {
  if (slope <= 0) return overall.polygon.circumradius;
  return opening.circumradius + (pieces[0].shortest.out - deciding.out) / cosDeg(corners[0].planMiter);
}

/** Where the opening is measured on the frame. */
interface OpeningArris {
  /** Its name, if it has one. */
  readonly arris: string | null;
  /** What to call the place within a sentence. */
  readonly place: string;
  /** The same as the start of the level width. */
  readonly start: string;
  /** How much farther from the center it is than the opening of the contents. */
  readonly beyond: number;
}

/** Arrises whose level distances differ by less, as a share of the level width, are at one place. */
const SAME_PLACE: number = 1e-9;

/**
 * The arris at which the opening can be measured.
 *
 * Where the frame slopes, the rabbet's wall leans, and the contents touch it along a line somewhere on it. A tape finds the wall's edge at the back, which
 * stays in reach however the wall leans. Without a rabbet the opening is decided by an arris as it is.
 *
 * @param geometry - the frame
 * @returns the arris
 */
export function openingArris(geometry: FrameGeometry): OpeningArris {
  const { seating, measured, deciding, arrises, levelWidth, pieces } = geometry;
  if (seating === null && measured === null) {
    return { arris: pieces[0].shortest.arris, place: "inside", start: "the inside", beyond: 0 };
  }
  const arris = measured === null ? "wallMouth" : "wall";
  const beyond = arrises[arris]!.out - deciding.out;
  if (Math.abs(beyond) <= SAME_PLACE * levelWidth) {
    return { arris, place: "in the rabbet", start: "the rabbet's wall", beyond: 0 };
  }
  const label = arrisLabel(arris);
  return { arris, place: `at the ${label}`, start: `the ${label}`, beyond };
}

/**
 * What to measure on the pieces, on the dry frame and on the glued one.
 *
 * @param geometry - the frame
 * @param measure - the line along which the pieces are measured; `null` for the longest one
 * @param acceptedGap - the accepted gap
 * @returns the checks, in the order in which they are best made
 */
export function frameChecks(geometry: FrameGeometry, measure: MeasureAlong | null, acceptedGap: number): FrameCheck[] {
  const { sides, overall, slope, levelWidth, pieces } = geometry;
  const { planMiter } = geometry.corners[0];
  const width = jointWidth(geometry);
  const tolerated = acceptedGap < width ? toleranceKernel(sides, width, acceptedGap, slope) : null;
  const off = (side: number): { flats: number | null; diagonal: number | null } =>
    tolerated === null ? { flats: null, diagonal: null } : acrossTolerance(sides, side, tolerated.angle);
  const { arris: inside, place, start, beyond } = openingArris(geometry);
  const opening = beyond === 0 ? geometry.opening : offsetPolygon(geometry.opening, beyond);
  const [inner, outer] = [off(opening.side), off(overall.polygon.side)];
  const { height } = overall;
  const lift = height !== null && acceptedGap < height ? liftTolerance(standsOn(geometry), height, acceptedGap) : null;
  const flats = sides % 2 === 0 ? "side to opposite side" : "corner to opposite side";
  const diagonal = "corner to farthest corner";
  const outermost = pieces[0].longest.arris;
  const { arris, length } = measure ?? pieces[0].longest;

  const check = (
    code: FrameCheck["code"],
    when: FrameCheck["when"],
    label: string,
    at: string | null,
    value: number,
    tolerance: number | null,
    kind: FrameCheck["kind"] = "length",
  ): FrameCheck => ({ code, when, label, arris: at, kind, value, tolerance });
  const across = `opening, ${place},`;
  const checks: FrameCheck[] = [
    check(
      "piece-length",
      "pieces",
      `length of every piece along the ${arrisLabel(arris)}, one against the other`,
      arris,
      length,
      pieceTolerance(sides, acceptedGap),
    ),
    check("level-width", "pieces", `width taken level, from ${start}`, inside, levelWidth - beyond, null),
    check("miter-sum", "dry", `${sides} corners, two plan miters each, add up to`, null, 360, null, "angle"),
    check(
      "corner-angle",
      "dry",
      "inside angle of every tight corner, in plan",
      null,
      180 - 2 * planMiter,
      tolerated === null ? null : tolerated.angle / sides,
      "angle",
    ),
    check("last-joint", "dry", "gap of the last joint, its other end touching", null, 0, acceptedGap),
    check("opening-across-flats", "dry", `${across} ${flats}`, inside, opening.acrossFlats, inner.flats),
    check("opening-across-corners", "dry", `${across} ${diagonal}`, inside, opening.acrossCorners, inner.diagonal),
    check("overall-across-flats", "dry", `overall, ${flats}`, outermost, overall.polygon.acrossFlats, outer.flats),
    check(
      "overall-across-corners",
      "dry",
      `overall, ${diagonal}`,
      outermost,
      overall.polygon.acrossCorners,
      outer.diagonal,
    ),
    check("flatness", "dry", "gap under any corner on a flat bench", null, 0, lift),
  ];
  if (slope !== 0) {
    const slopes = tolerated === null ? null : slopeTolerance(sides, slope, tolerated.shared.each);
    checks.push(check("slope", "dry", "slope of every side against the bench", null, slope, slopes, "angle"));
  }
  const again = beyond === 0 ? "opening again," : `opening again, ${place},`;
  checks.push(
    check(
      "glued-across-flats",
      "glued",
      `${again} before the panel is cut, ${flats}`,
      inside,
      opening.acrossFlats,
      inner.flats,
    ),
    check("glued-across-corners", "glued", `${again} ${diagonal}`, inside, opening.acrossCorners, inner.diagonal),
    check("glued-flatness", "glued", "gap under any corner on a flat bench, again", null, 0, lift),
  );
  return checks;
}
