import { atan2Deg, cosDeg, DEGREES } from "../core/degrees.js";
import { cross, dot, norm, scale, type Vector } from "../core/vector.js";
import { endNormal, endPoint, joinChain, minus, plus, squareTo, type Chain } from "./chain.js";
import { outOfFlat } from "./flatness.js";
import { checkRing, type MeasuredRing } from "./measured-piece.js";
import { opensAt, type OpenEnd } from "./regular-closure.js";
import { compose, jointRotation, rotate, type Rotation } from "./rotation.js";

/** How a ring of pieces closes, or fails to. */
export interface RingClosure {
  /**
   * Open angle in degrees: 360 less the turns of all joints. Positive when the turns fall short, so that the last joint gapes at the
   * outside; negative when they exceed a full turn, so that it gapes at the inside.
   */
  readonly angle: number;
  /**
   * What stays open at the last joint when all others are pulled tight, square to the joint; negative where the pieces would
   * overlap. For equal pieces it is a wedge with its apex at the ring's center.
   */
  readonly openGap: {
    /** At the inner end of the joint line. */
    readonly inside: number;
    /** At its outer end. */
    readonly outside: number;
  };
  /** The closing vector: from where the last piece's measured line ends to where the first one's starts, all other joints tight. */
  readonly vector: {
    /** Along the ring, counter-clockwise; negative where the pieces would overlap. */
    readonly along: number;
    /** How much farther out the first piece starts than the last one ends. */
    readonly out: number;
    /** How much higher. */
    readonly up: number;
  };
  /** The gap of the last joint, 0 or more, when it touches at one end of its joint line: (width / cos h) times the open angle. */
  readonly jointGap: number;
  /** Which end of that gap is open; `nowhere` below a billionth of a degree. Only where it is not `"nowhere"` does it go into `correctSetting` as `open`. */
  readonly opens: OpenEnd;
  /** The slope at which the ring closes, in degrees: the mean of its pieces'. */
  readonly slope: number;
  /** The slope of every piece. They differ in rings of unequal sides, and where the ring is twisted. */
  readonly slopes: readonly number[];
  /** By how many degrees the faces of the last joint gape from back to face; positive when they gape toward the face. Not 0 in a twisted ring. */
  readonly tilt: number;
  /** By how many degrees the first piece is rolled against the last one at their joint; positive when its outer edge is the lower. */
  readonly roll: number;
  /**
   * How far the corners that the ring stands on are out of one plane, its last joint closed by half from either side: the distance between the two planes that
   * hold them all and are parallel to the plane that fits them best, by least squares of heights. Other parallel planes may hold them at a smaller distance. A
   * ring that is flat has 0.
   */
  readonly outOfFlat: number;
  /** Whether it rocks on a flat bench: `outOfFlat` is more than a billionth of the longest piece. */
  readonly rocks: boolean;
}

/** A ring out of flat by less than this, as a share of the longest piece, is flat but for rounding. */
const ROCKS: number = 1e-9;

/** Angle of a rotation's part about an axis, in degrees, -360 to 360. */
function partAbout([w, x, y, z]: Rotation, axis: Vector): number {
  return 2 * atan2Deg(dot([x, y, z], axis), w);
}

/** Reduces an angle to between -180 and 180. */
function wrapped(degrees: number): number {
  return degrees - 360 * Math.round(degrees / 360);
}

/** The turns of a chain's joints about its upward direction, the last joint's among them. */
function turnsOf({ pieces, up }: Chain): number[] {
  return pieces.map(({ piece, rotation }, index) => {
    const [w, ...axis] = jointRotation(piece.end, pieces[(index + 1) % pieces.length]!.piece.start);
    const turn = 2 * atan2Deg(norm(axis), w);
    return dot(rotate(rotation, axis), up) < 0 ? -turn : turn;
  });
}

/** The axes of the last joint: along the ring, outward, up. The joint plane stands halfway between the two cuts. */
function jointAxes({ pieces, up }: Chain): [along: Vector, out: Vector] {
  const ending = endNormal(pieces.at(-1)!, 1);
  const sum = squareTo(minus(ending, endNormal(pieces[0]!, -1)), up);
  const size = norm(sum);
  // Cuts that look the same way have no plane between them; then the first piece's own direction will do.
  const along = size > 1e-9 ? scale(sum, 1 / size) : squareTo([1, 0, 0], up);
  return [along, cross(along, up)];
}

/**
 * How a ring of really cut pieces closes: what stays open at the last joint when every other one is pressed tight.
 *
 * Each start is pressed face to face against the end before it; the measured lines meet in one point, and the backs in one line across the
 * joint. Two ends with miters m1, m2 and bevels b1, b2 then turn the ring by 2 acos(cos((m1 + m2)/2) cos((b1 + b2)/2)) in all, and
 * a ring of equal ends closes at the slope atan2(sin b, sin m cos b). Only the sum of a joint's two bevels counts, and in
 * a flat frame only the sum of its two miters. Errors dm and db of every cut open a ring of n sides by -2n (cos s dm + cos m sin s db),
 * to first order. The upward direction is the normal of the polygon of the measured lines.
 *
 * @param options - the pieces in the order of the ring (3 to 1000), where their lengths were measured, and the joint width
 * @returns open angle, gaps, closing vector and slopes; lengths in the unit of the pieces, angles in degrees
 * @throws {InputError} when there are too few or too many pieces, or a value is missing or out of range
 * @example
 * ```ts
 * import { ringClosure } from "miterwright/closure";
 *
 * // Eight pieces, every miter a tenth of a degree short of 22.5.
 * const cut = { miter: 22.4, bevel: 0 };
 * const piece = { length: 200, start: cut, end: cut };
 * const closure = ringClosure({ pieces: Array.from({ length: 8 }, () => piece), at: "outside", width: 40 });
 * closure.angle; //=> 1.6
 * closure.jointGap; //=> 1.20904369235
 * closure.opens; //=> "outside"
 * ```
 * @see William Noyes, Handwork in Wood, Manual Arts Press 1910 (Project Gutenberg 20846), on miter joints; the closing condition itself is common practice, no printed source
 */
export function ringClosure(options: MeasuredRing): RingClosure {
  const ring = checkRing(options, 3);
  const chain = joinChain(ring);
  const { pieces, unit, up } = chain;
  const first = pieces[0]!;
  const last = pieces.at(-1)!;

  // Where a piece like the first would stand if the last joint were pressed tight as well.
  const full = compose(last.rotation, jointRotation(last.piece.end, first.piece.start));
  const turns = turnsOf(chain);
  const counted = 360 - turns.reduce((sum, turn) => sum + turn, 0);
  // The rotation knows the angle to the last digits, but not how many full turns it holds.
  const angle = counted + wrapped(-partAbout(full, up) - counted);

  const [along, out] = jointAxes(chain);
  const residual: Rotation = full[0] < 0 ? [-full[0], -full[1], -full[2], -full[3]] : full;
  const apart = (outward: number): Vector => minus(endPoint(first, -1, outward), endPoint(last, 1, outward));
  const vector = apart(0);
  const [inside, outside] = [-ring.at, ring.width - ring.at].map((t) => dot(apart(t / unit), along) * unit + 0);
  const slopes = pieces.map((piece) => piece.slope);
  const slope = slopes.reduce((sum, one) => sum + one / slopes.length, 0);

  // The half turn of the last joint once the open angle is shared by all joints: 180/n for a regular ring.
  const half = (turns.at(-1)! + angle / pieces.length) / 2;
  const joint = ring.width / Math.max(Math.abs(cosDeg(half)), Number.EPSILON);
  // Sloping pieces stand on their lower edge: the inner one, or with a negative slope the outer.
  const foot = (slope < 0 ? ring.width - ring.at : -ring.at) / unit;
  const feet = pieces.map((piece, index) => {
    const before = pieces.at(index - 1)!;
    return scale(plus(endPoint(piece, -1, foot), endPoint(before, 1, foot)), 0.5);
  });
  const flatness = outOfFlat(feet, up);
  return {
    angle,
    openGap: { inside: inside!, outside: outside! },
    vector: { along: dot(vector, along) * unit + 0, out: dot(vector, out) * unit + 0, up: dot(vector, up) * unit + 0 },
    jointGap: (joint * Math.abs(angle)) / DEGREES,
    opens: opensAt(angle),
    slope,
    slopes,
    tilt: partAbout(residual, out),
    roll: 0 - partAbout(residual, along),
    outOfFlat: flatness * unit,
    rocks: flatness > ROCKS * Math.max(...ring.pieces.map((piece) => piece.length / unit)),
  };
}
