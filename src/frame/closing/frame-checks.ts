import { cosDeg } from "../../core/degrees.js";
import { offsetPolygon } from "../../polygon/index.js";
import { liftTolerance, pieceTolerance, ringTolerances } from "../../closure/internal.js";
import { type FrameGeometry, jointWidth } from "../frame-geometry.js";
import type { MeasureAlong } from "../sawing/measure-along.js";

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
  /** The arris that is measured at, where a tape or a rule finds it; `null` where there is none of a name, or nothing is measured along one. */
  readonly arris: string | null;
  /** Of the opening and the level width: whether they are taken at the frame's inside, in the rabbet, or at `arris`, which a tape finds elsewhere; `null` for other checks. */
  readonly place: "inside" | "rabbet" | "arris" | null;
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
  /** Where that is. */
  readonly place: NonNullable<FrameCheck["place"]>;
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
 */
export function openingArris(geometry: FrameGeometry): OpeningArris {
  const { seating, measured, deciding, arrises, levelWidth, pieces } = geometry;
  if (seating === null && measured === null) {
    return { arris: pieces[0].shortest.arris, place: "inside", beyond: 0 };
  }
  const arris = measured === null ? "wallMouth" : "wall";
  const beyond = arrises[arris]!.out - deciding.out;
  if (Math.abs(beyond) <= SAME_PLACE * levelWidth) {
    return { arris, place: "rabbet", beyond: 0 };
  }
  return { arris, place: "arris", beyond };
}

/**
 * What to measure on the pieces, on the dry frame and on the glued one. The pieces are measured along a line, by default the longest one; `measure` is `null`
 * then.
 */
export function frameChecks(geometry: FrameGeometry, measure: MeasureAlong | null, acceptedGap: number): FrameCheck[] {
  const { sides, overall, slope, levelWidth, pieces } = geometry;
  const { planMiter } = geometry.corners[0];
  const width = jointWidth(geometry);
  const tolerated = acceptedGap < width ? ringTolerances({ sides, width, acceptedGap, slope }) : null;
  const { arris: inside, place, beyond } = openingArris(geometry);
  const opening = beyond === 0 ? geometry.opening : offsetPolygon(geometry.opening, beyond);
  const [inner, outer] = [tolerated?.across(opening.side), tolerated?.across(overall.polygon.side)];
  const { height } = overall;
  const lift = height !== null && acceptedGap < height ? liftTolerance(standsOn(geometry), height, acceptedGap) : null;
  const outermost = pieces[0].longest.arris;
  const { arris, length } = measure ?? pieces[0].longest;

  const lengthCheck = (
    code: FrameCheck["code"],
    when: FrameCheck["when"],
    at: Pick<FrameCheck, "arris" | "place">,
    [value, tolerance]: readonly [number, number | null],
  ): FrameCheck => ({ code, when, arris: at.arris, place: at.place, kind: "length", value, tolerance });
  const angleCheck = (code: FrameCheck["code"], value: number, tolerance: number | null): FrameCheck => ({
    code,
    when: "dry",
    arris: null,
    place: null,
    kind: "angle",
    value,
    tolerance,
  });
  const [nowhere, open, whole] = [
    { arris: null, place: null },
    { arris: inside, place },
    { arris: outermost, place: null },
  ];
  const checks: FrameCheck[] = [
    lengthCheck("piece-length", "pieces", { arris, place: null }, [length, pieceTolerance(sides, acceptedGap)]),
    lengthCheck("level-width", "pieces", open, [levelWidth - beyond, null]),
    angleCheck("miter-sum", 360, null),
    angleCheck("corner-angle", 180 - 2 * planMiter, tolerated?.corner ?? null),
    lengthCheck("last-joint", "dry", nowhere, [0, acceptedGap]),
    lengthCheck("opening-across-flats", "dry", open, [opening.acrossFlats, inner?.flats ?? null]),
    lengthCheck("opening-across-corners", "dry", open, [opening.acrossCorners, inner?.diagonal ?? null]),
    lengthCheck("overall-across-flats", "dry", whole, [overall.polygon.acrossFlats, outer?.flats ?? null]),
    lengthCheck("overall-across-corners", "dry", whole, [overall.polygon.acrossCorners, outer?.diagonal ?? null]),
    lengthCheck("flatness", "dry", nowhere, [0, lift]),
  ];
  if (slope !== 0) checks.push(angleCheck("slope", slope, tolerated?.slope() ?? null));
  checks.push(
    lengthCheck("glued-across-flats", "glued", open, [opening.acrossFlats, inner?.flats ?? null]),
    lengthCheck("glued-across-corners", "glued", open, [opening.acrossCorners, inner?.diagonal ?? null]),
    lengthCheck("glued-flatness", "glued", nowhere, [0, lift]),
  );
  return checks;
}
