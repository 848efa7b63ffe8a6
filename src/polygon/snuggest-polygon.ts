import { atan2Deg } from "../core/degrees.js";
import type { Pose } from "../core/geometry-types.js";
import { centerBetween, type Demand, demandsOfSides } from "./enclosing-sides.js";
import { tangentOfQuarters } from "./quarter-turns.js";
import { directionInParts, type Snug, snugPolygon } from "./snug-polygon.js";

/**
 * A rotation must gain more than this to be preferred to a symmetric one: less is rounding. Relative to the apothem.
 */
const ROUNDING: number = 2 ** -49;

/** Whether a polygon is smaller than another by more than rounding. */
function beats(apothem: number, other: number): boolean {
  return apothem < other * (1 - ROUNDING);
}

/** The demand that takes over from `top` next, when the tangent of the rotation grows up to `end`. */
function nextDemand(demands: readonly Demand[], top: Demand, end: number): [next: Demand, tangent: number] | undefined {
  let found: [Demand, number] | undefined;
  for (const demand of demands) {
    if (demand.growth <= top.growth) continue;
    const tangent = (demand.lack - top.lack) / (demand.growth - top.growth);
    if (tangent < (found?.[1] ?? end)) found = [demand, tangent];
  }
  return found;
}

/**
 * The best rotation of an odd polygon between its two symmetric ones, if any beats them.
 *
 * Over one part of rotation every demand is a sine that bends downward, so the least of the greatest demand is where
 * one takes over from another. Divided by cos r the demands are straight lines over tan r: their upper envelope is
 * walked corner by corner.
 */
function betweenSymmetric(n: number, x: number, y: number, symmetric: Snug): Snug {
  const diagonal = Math.hypot(x, y);
  const demands = demandsOfSides(n, directionInParts(n, x, y));
  const end = tangentOfQuarters(1, n);
  let best = symmetric;
  let top = demands.reduce((a, b) => (b.lack < a.lack || (b.lack === a.lack && b.growth > a.growth) ? b : a));
  for (let step = nextDemand(demands, top, end); step; step = nextDemand(demands, top, end)) {
    const [next, tangent] = step;
    const apothem = (diagonal * (1 - top.lack + top.growth * tangent)) / Math.hypot(1, tangent);
    if (beats(apothem, best.apothem)) {
      const rotation = atan2Deg(tangent, 1);
      best = { apothem, center: centerBetween(n, top, (rotation / 90) * n, diagonal), rotation };
    }
    top = next;
  }
  return best;
}

/**
 * The smallest polygon around an upright rectangle, in a pose or over all rotations, with x and y half the rectangle's
 * width and height.
 *
 * An even polygon has its center on the rectangle's. Its apothem is the half diagonal times the cosine of the angle
 * from a diagonal to the nearest normal; the normals are farthest from both diagonals halfway between them, which is
 * one of the poses. For an odd one, its own symmetries and the rectangle's reduce all rotations to those from 0 to 90/n
 * degrees, at whose ends it is symmetric to the rectangle's upright or level axis.
 */
export function snuggestPolygon(n: number, standing: Pose | "free", x: number, y: number): Snug {
  if (standing !== "free") return snugPolygon(n, standing, x, y);
  const upright = snugPolygon(n, "side-down", x, y);
  if (n % 2 === 0) {
    const other = snugPolygon(n, "corner-down", x, y);
    return beats(other.apothem, upright.apothem) ? other : upright;
  }
  // Rotated by 90/n it has a side that stands plumb: at the right if n is one more than a multiple of 4, else at the
  // left.
  const lying = snugPolygon(n, "side-down", y, x);
  const right = n % 4 === 1 ? -lying.center.y : lying.center.y;
  const level = { apothem: lying.apothem, center: { x: right + 0, y: 0 }, rotation: 90 / n };
  return betweenSymmetric(n, x, y, beats(level.apothem, upright.apothem) ? level : upright);
}
