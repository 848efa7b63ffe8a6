import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import type { SectionPoint } from "./profile.js";
import type { RabbetHold, RabbetMiss } from "./rabbet-seating-types.js";
import { outOf, upOf } from "./tilt.js";
import { wallPoint, wallTouch, type RabbetPoints } from "./wall-touch.js";

/**
 * What rounding may do to the level of a line, as a share of its coordinates: a thousand roundings. A ledge that rises by
 * less is called level, and a wall that drops by less is too steep to hold anything.
 */
const LEVEL_TOLERANCE: number = 1e-12;

/** The seating of contents in a rabbet, before the kinds are told apart. */
export interface Seating extends Omit<RabbetHold, "possible" | "slope" | "thickness" | "layers"> {
  /** Height of the contents' front. */
  readonly front: number;
}

/** Why there is no seating. */
export type NoSeating = Pick<RabbetMiss, "reason" | "shortBy">;

/**
 * Where level contents come to rest in a tilted rabbet. Unchecked.
 *
 * Everything is a difference of points in the section, tilted afterward: the difference of two tilted points would lose
 * what they have in common.
 */
export function seatContents(
  rabbet: RabbetPoints,
  slope: number,
  thickness: number,
  clearance: number,
): Seating | NoSeating {
  const { sight, ledge, mouth } = rabbet;
  const cos = cosDeg(slope);
  const sin = sinDeg(slope);
  const stand = ({ x, y }: Point): SectionPoint => ({ out: outOf(x, y, cos, sin), up: upOf(x, y, cos, sin) });
  const [ledgeX, ledgeY] = [ledge.x - sight.x, ledge.y - sight.y];
  const [wallX, wallY] = [mouth.x - ledge.x, mouth.y - ledge.y];
  const ledgeOut = outOf(ledgeX, ledgeY, cos, sin);
  const rise = upOf(ledgeX, ledgeY, cos, sin);
  const wallOut = outOf(wallX, wallY, cos, sin);
  const drop = -upOf(wallX, wallY, cos, sin);
  const wall = Math.hypot(wallX, wallY);
  // Under a ledge that rises the sight edge alone bears, so that it may even hang over inward.
  if (!(drop > LEVEL_TOLERANCE * wall && (rise >= 0 || ledgeOut > 0))) return { reason: "too-steep", shortBy: 0 };
  if (rise > drop) return { reason: "past-mouth", shortBy: (rise - drop) * (wall / drop) };

  const share = wallTouch(rabbet, cos, sin);
  const lap = outOf(ledgeX + share * wallX, ledgeY + share * wallY, cos, sin) - clearance;
  if (!(lap > 0)) return { reason: "falls-through", shortBy: -lap + 0 };

  // How far the front lies below the corner. On a ledge that falls outward it lies above the corner instead, by as much as
  // the ledge rises from there to the contents' edge.
  const gap = clearance - outOf(share * wallX, share * wallY, cos, sin);
  const below = rise < 0 ? rise * (gap / ledgeOut) : rise;
  const front = rise < 0 ? stand(ledge).up - below : stand(sight).up;
  const depthUsed = Math.max(0, (below + thickness) * (wall / drop));
  const level =
    LEVEL_TOLERANCE *
    ((Math.abs(ledge.x) + Math.abs(sight.x)) * Math.abs(sin) + (Math.abs(ledge.y) + Math.abs(sight.y)) * cos);
  const bearsOn = Math.abs(rise) <= level ? "ledge" : rise > 0 ? "sight-edge" : "corner";
  return {
    bearsOn,
    bearing: { out: stand(sight).out + (bearsOn === "corner" ? lap : 0), up: front },
    opening: stand(wallPoint(rabbet, share)),
    lap,
    depthUsed,
    depthLeft: wall - depthUsed,
    roomLost: wallOut < 0 ? -wallOut : (wallOut / drop) * thickness,
    front,
  };
}
