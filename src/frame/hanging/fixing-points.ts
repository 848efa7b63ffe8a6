import { cosDeg, sinDeg, tanDeg } from "../../core/degrees.js";
import type { Point } from "../../core/geometry-types.js";
import type { FrameGeometry } from "../frame-geometry.js";

/** A place where a hanger is screwed to the frame. */
export interface Fixing {
  /** The side, counter-clockwise from 0 at the bottom, as seen from the front. */
  readonly side: number;
  /** Where it is, from the frame's center and as seen from the front: x to the right, y up. */
  readonly point: Point;
  /** How far from the upper end of that side, along the frame's outermost line. */
  readonly fromCorner: number;
}

/** The two fixings of a frame. */
export interface FixingPair {
  /** Left and right, as seen from the front; from the back the other way round. They mirror each other. */
  readonly fixings: readonly [left: Fixing, right: Fixing];
  /** How far they lie below the frame's highest point. */
  readonly below: number;
  /** How far they lie above the frame's center. */
  readonly above: number;
  /** How far they lie apart, level. */
  readonly apart: number;
}

/** Fixings lie so far below the top, as a share of the frame's height; common practice, no printed source. */
const BELOW_TOP: number = 1 / 3;
/** But at least so far above the center, as a share of the height: a frame hung from near its center tips forward. Common practice, no printed source. */
const ABOVE_CENTER: number = 1 / 8;
/** The part of a side's length at each of its ends that is left to the joint; common practice, no printed source. */
const END_SHARE: number = 1 / 6;

/** How high the frame's highest point stands above its center. */
function topOf({ sides, pose, overall }: FrameGeometry): number {
  const { apothem, circumradius } = overall.polygon;
  return (sides % 2 === 0) === (pose === "side-down") ? apothem : circumradius;
}

/**
 * Where to fix the hangers of a frame: on the two sides that mirror each other and come nearest to a third of the frame's height below its top.
 *
 * Hangers run on a polygon of apothem A, the line along the sticks into which their screws go. Side k looks in the direction f = 360 k / n - 90 degrees, and 180 / n more
 * when the frame stands on a corner; its point u from its middle is as high as A sin f + u cos f. A sixth of the side at each end is left to the joint.
 * The height aimed at is a third of the overall height below the top, or an eighth of it above the center where that is higher, as in a triangle that
 * hangs with a corner down. Where two pairs of sides come equally near, the upper pair is taken.
 */
export function fixingPair(geometry: FrameGeometry, apothem: number): FixingPair {
  const { sides, pose, overall } = geometry;
  const { planMiter } = geometry.corners[0];
  const top = topOf(geometry);
  const { height } = overall.extent;
  const aim = Math.max(top - BELOW_TOP * height, ABOVE_CENTER * height);
  const reach = (1 - 2 * END_SHARE) * apothem * tanDeg(planMiter);
  let best = { side: 0, x: 0, y: -Infinity, u: 0, miss: Infinity };
  for (let side = 0; 2 * side < sides; side++) {
    // In half turns over n, so that a side which looks straight up or to the right does so to the bit.
    const facing = (360 * side + (pose === "side-down" ? 0 : 180)) / sides - 90;
    const [cos, sin] = [cosDeg(facing), sinDeg(facing)];
    if (!(cos > 0)) continue;
    const wanted = (aim - apothem * sin) / cos;
    const u = Math.min(reach, Math.max(-reach, wanted));
    const y = apothem * sin + u * cos;
    const miss = Math.abs(u - wanted) * cos;
    if (y > 0 && (miss < best.miss || (miss === best.miss && y > best.y))) {
      best = { side, x: apothem * cos - u * sin, y, u, miss };
    }
  }
  const { side, x, y, u } = best;
  const mirrored = (2 * sides - side - (pose === "side-down" ? 0 : 1)) % sides;
  const fromCorner = overall.polygon.side / 2 - u;
  return {
    fixings: [
      { side: mirrored, point: { x: -x, y }, fromCorner },
      { side, point: { x, y }, fromCorner },
    ],
    below: top - y,
    above: y,
    apart: 2 * x,
  };
}
