import { checkSlope } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { type Profile, sectionCentroid } from "../profile/index.js";
import { CONTACT_TOLERANCE, lieSection, NARROWEST_SUPPORT } from "./lie-section.js";

/** The wedge that props a stick at its slope on the saw. */
export interface Cradle {
  /** Angle of its sloping top to the table, in degrees, more than 0 and less than 90. */
  readonly angle: number;
  /** Which edge of the stick lies higher in it. */
  readonly high: "outer-edge" | "sight-edge";
  /** Level run of the wedge under the stick's back, in the caller's length unit. */
  readonly levelRun: number;
  /** Height of the wedge at its high side. */
  readonly rise: number;
  /** Length of the sloping top, as wide as the back that rests on it. */
  readonly top: number;
  /** The wedge's section: the thin end at the origin, the right angle under the high side. */
  readonly outline: readonly Point[];
  /** The stick's section as it lies on the wedge, in the same axes. */
  readonly stick: readonly Point[];
  /** Height of a base under the wedge, so that what hangs below its thin end, such as the lip of a steep rabbet, clears the table; 0 where nothing does. */
  readonly base: number;
  /** Height of base, wedge and stick together above the table. */
  readonly height: number;
  /** Level distance from the thin end to the point below the stick's center of gravity. */
  readonly centerFromThinEnd: number;
  /** Whether the center of gravity is above the wedge's base; if not, the stick tips over and the base must be widened or clamped. */
  readonly steady: boolean;
  /** Level distance by which the base must be widened, on the side where the center of gravity hangs over; 0 when steady, or balanced right on the edge. */
  readonly widenBy: number;
}

/**
 * The wedge that holds a molding at its slope, back down, so that a plain miter cuts it ("propped").
 *
 * A back of width b needs a wedge of level run b cos s and rise b sin |s|. It needs a ledge at its thin end that keeps the stick from sliding, and a base under
 * it where a part of the stick beside its back hangs below the thin end.
 *
 * @param profile - the molding's section
 * @param slope - the frame's slope in degrees, -90 to 90
 * @returns the wedge, or `null` where there is none: at slopes 0, 90 and -90, and at any slope where the stick lies still on a surface of its own, as on a back that
 *   is milled level, none is needed; and a back that is pointed or round, flat over less than a tenth of the stick's width, gives a wedge nothing to carry
 * @throws {InputError} when the profile or the slope is not sound
 * @example
 * ```ts
 * import { molding } from "miterwright/profile";
 * import { cradleFor } from "miterwright/saw";
 *
 * const cradle = cradleFor(molding({ width: 40, thickness: 20 }), 30);
 * cradle?.rise; //=> 20
 * cradle?.high; //=> "outer-edge"
 * ```
 */
export function cradleFor(profile: Profile, slope: number): Cradle | null {
  const angle = Math.abs(checkSlope(slope));
  const { steady } = lieSection(profile, { slope, lay: "propped" });
  return angle === 0 || angle === 90 || steady ? null : wedgeUnder(profile, slope);
}

/** The wedge for a stick that needs one, unchecked. `null` where the back has no flat that it could carry. */
export function wedgeUnder(profile: Profile, slope: number): Cradle | null {
  const angle = Math.abs(slope);
  const center = sectionCentroid(profile);
  const { outline } = profile;
  const xs = outline.map((point) => point.x);
  const ys = outline.map((point) => point.y);
  const bottom = Math.min(...ys);
  const width = Math.max(...xs) - Math.min(...xs);
  const size = width + Math.max(...ys) - bottom;
  const resting = outline.filter((point) => point.y - bottom <= size * CONTACT_TOLERANCE).map((point) => point.x);
  const left = Math.min(...resting);
  const right = Math.max(...resting);
  const top = right - left;
  if (top < width * NARROWEST_SUPPORT) return null;
  const [cosine, sine] = [cosDeg(angle), sinDeg(angle)];
  const levelRun = top * cosine;
  const rise = top * sine;
  // Along the back from the thin end, which is the lower side: the sight edge's when the outer edge is the higher.
  const onWedge = ({ x, y }: Point): Point => {
    const along = slope > 0 ? x - left : right - x;
    return { x: along * cosine - (y - bottom) * sine + 0, y: along * sine + (y - bottom) * cosine + 0 };
  };
  const stick = outline.map(onWedge);
  const heights = stick.map((point) => point.y);
  const dip = -Math.min(...heights);
  const base = dip > size * CONTACT_TOLERANCE ? dip : 0;
  const centerFromThinEnd = onWedge(center).x;
  const overhang = Math.max(-centerFromThinEnd, centerFromThinEnd - levelRun);
  return {
    angle,
    high: slope > 0 ? "outer-edge" : "sight-edge",
    levelRun,
    rise,
    top,
    outline: [
      { x: 0, y: 0 },
      { x: levelRun, y: 0 },
      { x: levelRun, y: rise },
    ],
    stick,
    base,
    height: base + Math.max(...heights),
    centerFromThinEnd,
    steady: overhang < -size * CONTACT_TOLERANCE,
    widenBy: Math.max(0, overhang),
  };
}
