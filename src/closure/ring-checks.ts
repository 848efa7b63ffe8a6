import { checkLength, checkObject, checkSides, checkSlope } from "../core/check.js";
import { sinDeg } from "../core/degrees.js";
import { regularPolygon } from "../polygon/index.js";
import { checkGap, type GaugeToleranceOptions } from "./gauge-tolerance.js";
import { liftTolerance, pieceTolerance, ringTolerances } from "./ring-tolerances.js";

/** Options of {@link ringChecks}. */
export interface RingChecksOptions extends GaugeToleranceOptions {
  /** Distance from the center to the line that is measured at, e.g. the rabbet's wall or the sight edge, 1e-100 to 1e100. */
  readonly apothem: number;
  /** Thickness of the molding at the joint; with it, flatness gets a tolerance. */
  readonly thickness?: number | undefined;
}

/**
 * One thing to measure on a ring: a code and numbers. `ringCheckText` of `miterwright/words` says in words what to measure.
 */
export interface RingCheck {
  /** Which check. */
  readonly code:
    | "piece-length"
    | "corner-angle"
    | "last-joint"
    | "side-to-side"
    | "corner-to-side"
    | "corner-to-corner"
    | "flatness"
    | "slope";
  /** When: on the loose pieces, on the dry frame with all joints but the last pulled tight, or on the glued one. */
  readonly when: "pieces" | "dry" | "glued";
  /** Whether value and tolerance are lengths, in the unit of the options, or angles in degrees. */
  readonly kind: "length" | "angle";
  /** What it must be. */
  readonly value: number;
  /** By how much it may be off either way. */
  readonly tolerance: number;
}

/**
 * What to measure on the pieces, on the dry and on the glued ring, with tolerances that follow from the accepted gap.
 *
 * The accepted gap shows an open angle. When all cuts share it and all joints but the last are tight, the ring is a polygon of known sides and turns. The
 * tolerance of a measure across it is the most by which that polygon is off, opened either way. The lengths may scatter by what opens the last joint as far:
 * q/2 each, where half of the ring too long by it and half too short leaves a closing vector of q sin(floor(n/2) 180/n) / sin(180/n). The tolerance of flatness
 * is a fold along a line through the center, whose joints gape by the accepted gap over their thickness.
 *
 * @param options - sides (3 to 1e6), slope, joint width, accepted gap, where it is measured, and the thickness if known
 * @returns the checks, in the order in which they are best made
 * @throws {InputError} when a value is missing or out of range, or the gap is not less than the width
 * @example
 * ```ts
 * import { ringChecks } from "miterwright/closure";
 *
 * const checks = ringChecks({ sides: 6, width: 40, acceptedGap: 0.25, apothem: 150 });
 * const flats = checks.find((check) => check.code === "side-to-side");
 * flats?.value; //=> 300
 * flats?.tolerance.toFixed(2); //=> "0.31"
 * ```
 */
export function ringChecks(options: RingChecksOptions): readonly RingCheck[] {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const slope = checkSlope(given["slope"] ?? 0);
  const { width, gap: acceptedGap } = checkGap(given, "acceptedGap");
  const apothem = checkLength(given["apothem"], "apothem");
  const thickness = given["thickness"] === undefined ? undefined : checkLength(given["thickness"], "thickness");

  const polygon = regularPolygon({ sides, apothem });
  const tolerances = ringTolerances({ sides, width, acceptedGap, slope });
  const far = Math.floor(sides / 2) * (180 / sides);
  const diagonal = 2 * polygon.circumradius * sinDeg(far);
  const off = tolerances.across(polygon.side);
  const opposite = sides % 2 === 0 ? "side-to-side" : "corner-to-side";

  const checks: RingCheck[] = [
    {
      code: "piece-length",
      when: "pieces",
      kind: "length",
      value: polygon.side,
      tolerance: pieceTolerance(sides, acceptedGap),
    },
    {
      code: "corner-angle",
      when: "dry",
      kind: "angle",
      value: polygon.interiorAngle,
      tolerance: tolerances.corner,
    },
    {
      code: "last-joint",
      when: "dry",
      kind: "length",
      value: 0,
      tolerance: acceptedGap,
    },
  ];
  for (const when of ["dry", "glued"] as const) {
    checks.push(
      { code: opposite, when, kind: "length", value: polygon.acrossFlats, tolerance: off.flats },
      {
        code: "corner-to-corner",
        when,
        kind: "length",
        value: diagonal,
        tolerance: off.diagonal,
      },
    );
    if (thickness === undefined) continue;
    checks.push({
      code: "flatness",
      when,
      kind: "length",
      value: 0,
      tolerance: liftTolerance(polygon.circumradius, thickness, acceptedGap),
    });
  }
  if (slope !== 0) {
    checks.push({
      code: "slope",
      when: "dry",
      kind: "angle",
      value: slope,
      tolerance: tolerances.slope(),
    });
  }
  return checks;
}
