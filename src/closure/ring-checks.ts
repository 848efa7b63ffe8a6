import { checkLength, checkObject, checkSides, checkSlope } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import { regularPolygon } from "../polygon/index.js";
import { compoundMiterKernel } from "../miter/compound-kernel.js";
import { checkGap, gaugeTolerance, type GaugeToleranceOptions } from "./gauge-tolerance.js";
import { gapPerDegree, regularClosure } from "./regular-closure.js";

/** Options of {@link ringChecks}. */
export interface RingChecksOptions extends GaugeToleranceOptions {
  /** Distance from the center to the line that is measured at, e.g. the rabbet's wall or the sight edge, 1e-100 to 1e100. */
  readonly apothem: number;
  /** Thickness of the molding at the joint; with it, flatness gets a tolerance. */
  readonly thickness?: number;
}

/** One thing to measure on a ring. */
export interface RingCheck {
  /** Which check. */
  readonly code:
    | "stick-length"
    | "corner-angle"
    | "last-joint"
    | "side-to-side"
    | "corner-to-side"
    | "corner-to-corner"
    | "flatness"
    | "slope";
  /** When: on the loose sticks, on the dry frame with all joints but the last pulled tight, or on the glued one. */
  readonly when: "sticks" | "dry" | "glued";
  /** What to measure, for people. */
  readonly label: string;
  /** Whether value and tolerance are lengths, in the unit of the options, or angles in degrees. */
  readonly kind: "length" | "angle";
  /** What it must be. */
  readonly value: number;
  /** By how much it may be off either way. */
  readonly tolerance: number;
}

/** Corners of a ring of n tight joints that all share the error of an open angle, from the first stick's start to the last one's end. */
function openPolygon(sides: number, side: number, angle: number): [number, number][] {
  const turn = (360 - angle) / sides;
  const corners: [number, number][] = [[0, 0]];
  for (let stick = 0; stick < sides; stick += 1) {
    const [x, y] = corners[stick]!;
    corners.push([x + side * cosDeg(stick * turn), y + side * sinDeg(stick * turn)]);
  }
  return corners;
}

/** Largest deviations of what is measured across a polygon of n + 1 corners. */
function deviations(
  sides: number,
  corners: readonly (readonly [number, number])[],
  flats: number,
  diagonal: number,
): { flats: number; diagonal: number } {
  const far = Math.floor(sides / 2);
  let [flatsOff, diagonalOff] = [0, 0];
  for (let corner = 0; corner + far < sides; corner += 1) {
    const [ax, ay] = corners[corner]!;
    const [bx, by] = corners[corner + far]!;
    const [cx, cy] = corners[corner + far + 1]!;
    // From the corner, or from the middle of its side, to the line of the side opposite.
    const [dx, dy] = corners[corner + 1]!;
    const [px, py] = sides % 2 === 1 ? [ax, ay] : [(ax + dx) / 2, (ay + dy) / 2];
    const distance = Math.abs((cx - bx) * (py - by) - (cy - by) * (px - bx)) / Math.hypot(cx - bx, cy - by);
    flatsOff = Math.max(flatsOff, Math.abs(distance - flats));
    diagonalOff = Math.max(diagonalOff, Math.abs(Math.hypot(bx - ax, by - ay) - diagonal));
  }
  return { flats: flatsOff, diagonal: diagonalOff };
}

/**
 * How far the slope moves at most when miter and bevel each keep within what the gap allows. The gap itself does not bound the slope, since errors of
 * both can cancel in it; a slope that is further off tells of two errors.
 */
function slopeOff(sides: number, slope: number, options: GaugeToleranceOptions): number {
  const { each } = gaugeTolerance(options).shared;
  const { miter, bevel } = compoundMiterKernel(180 / sides, slope);
  const corners = [each, -each].flatMap((dm) => [each, -each].map((db) => [miter + dm, bevel + db] as const));
  return Math.max(...corners.map(([m, b]) => Math.abs(regularClosure(sides, m, b).slope - slope)));
}

/**
 * What to measure on the sticks, on the dry and on the glued ring, with tolerances that follow from the gap accepted at the last joint.
 *
 * The V that is accepted shows an open angle; when all cuts share it and all joints but the last are tight, the ring is a polygon of known
 * sides and turns, and the tolerance of a measure across it is the most by which that polygon is off, opened either way. The lengths may scatter by what
 * opens the last joint as far: q/2 each, where half of the ring too long by it and half too short leaves a closing vector of
 * q sin(floor(n/2) 180/n) / sin(180/n). Out of flat is what a fold along a line through the center makes of joints that gape by the gap over
 * their thickness.
 *
 * @param options - sides (3 to 1e6), slope, level width, accepted gap, where it is measured, and the thickness if known
 * @returns the checks, in the order in which they are best made
 * @throws {InputError} when a value is missing or out of range, or the gap is not less than the width
 * @example
 * ```ts
 * import { ringChecks } from "miterwright/closure";
 *
 * const checks = ringChecks({ sides: 6, width: 40, gap: 0.25, apothem: 150 });
 * const flats = checks.find((check) => check.code === "side-to-side");
 * flats?.value; //=> 300
 * flats?.tolerance.toFixed(2); //=> "0.31"
 * ```
 */
export function ringChecks(options: RingChecksOptions): readonly RingCheck[] {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const slope = checkSlope(given["slope"] ?? 0);
  const { width, gap } = checkGap(given);
  const apothem = checkLength(given["apothem"], "apothem");
  const thickness = given["thickness"] === undefined ? undefined : checkLength(given["thickness"], "thickness");

  const polygon = regularPolygon({ sides, apothem });
  const angle = gap / gapPerDegree(sides, width);
  const half = 180 / sides;
  const far = Math.floor(sides / 2) * half;
  const diagonal = 2 * polygon.circumradius * sinDeg(far);
  const off = [angle, -angle].map((open) =>
    deviations(sides, openPolygon(sides, polygon.side, open), polygon.acrossFlats, diagonal),
  );
  const flatsOff = Math.max(...off.map((one) => one.flats));
  const diagonalOff = Math.max(...off.map((one) => one.diagonal));
  const stickOff = (gap * sinDeg(half)) / sinDeg(far) / 2;
  const [opposite, flats] =
    sides % 2 === 0
      ? (["side-to-side", "from the middle of each side square to the opposite side"] as const)
      : (["corner-to-side", "from each corner square to the opposite side"] as const);

  const checks: RingCheck[] = [
    {
      code: "stick-length",
      when: "sticks",
      label: "length of every stick along the line that is measured at; one against the other, not by the rule",
      kind: "length",
      value: polygon.side,
      tolerance: stickOff,
    },
    {
      code: "corner-angle",
      when: "dry",
      label: "inside angle of every tight corner, taken level",
      kind: "angle",
      value: polygon.interiorAngle,
      tolerance: angle / sides,
    },
    {
      code: "last-joint",
      when: "dry",
      label: "V of the last joint, one end touching",
      kind: "length",
      value: 0,
      tolerance: gap,
    },
  ];
  for (const when of ["dry", "glued"] as const) {
    checks.push(
      { code: opposite, when, label: flats, kind: "length", value: polygon.acrossFlats, tolerance: flatsOff },
      {
        code: "corner-to-corner",
        when,
        label: "between every two corners farthest apart",
        kind: "length",
        value: diagonal,
        tolerance: diagonalOff,
      },
    );
    if (thickness === undefined) continue;
    // Two joints that gape by gap / thickness fold the ring; the corner farthest from the fold is a circumradius off it.
    const lift = (polygon.circumradius * gap) / thickness;
    checks.push({
      code: "flatness",
      when,
      label: "gap under any corner on a flat bench",
      kind: "length",
      value: 0,
      tolerance: lift,
    });
  }
  if (slope !== 0) {
    checks.push({
      code: "slope",
      when: "dry",
      label: "slope of every side against the bench, the joints tight",
      kind: "angle",
      value: slope,
      tolerance: slopeOff(sides, slope, options),
    });
  }
  return checks;
}
