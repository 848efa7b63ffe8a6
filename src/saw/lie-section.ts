import { checkObject, checkSlope } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import type { SawSettingOptions } from "../miter/index.js";
import { checkTilt } from "../miter/internal.js";
import { type Profile, sectionCentroid } from "../profile/index.js";
import { outOf, upOf } from "../profile/internal.js";

/** Points this close to a surface, as a share of the section's size, touch it: it absorbs the rounding of a rotation. */
export const CONTACT_TOLERANCE: number = 1e-9;

/**
 * What carries a stick is at least this share of its width: on less it rocks, and what looks flat there may be one facet of a curve. Common practice, no printed
 * source.
 */
export const NARROWEST_SUPPORT: number = 0.1;

/** A point of the section as the stick lies on the saw. */
export interface LyingPoint {
  /** Level distance in the direction away from the frame's center, in the caller's length unit; its origin is the sight edge's corner (0, 0) of the section. */
  readonly across: number;
  /** Height above the table. */
  readonly up: number;
}

/** Options of {@link lieSection}. */
export type LieSectionOptions = SawSettingOptions;

/** The stretch of the table on which a section rests. */
export interface Support {
  /** Its end nearer to the frame's center, as `across` of {@link LyingPoint}. */
  readonly from: number;
  /** Its end farther from the frame's center. */
  readonly to: number;
}

/** A molding's section as it lies on the saw. */
export interface LyingSection {
  /** How far the section is tilted from lying on its back, in degrees: slope minus the lay's rotation. */
  readonly tilt: number;
  /** The outline, point by point as in the profile. */
  readonly outline: readonly LyingPoint[];
  /** Level size of the section, square to the stick's length. */
  readonly width: number;
  /** Height of the section above the table. */
  readonly height: number;
  /** The stretch on which it rests, along `across`; of no length when it stands on an arris. */
  readonly support: Support;
  /** Center of gravity of the section. */
  readonly center: LyingPoint;
  /** Whether the stick lies still by itself: the center of gravity is above the support, which is at least a tenth of the section's level size. */
  readonly steady: boolean;
}

/**
 * Lays a section on the saw's table.
 *
 * A point (x, y) of a section lying at tilt f is at across = x cos f - y sin f and up = x sin f + y cos f, raised until the
 * lowest point touches the table.
 *
 * @param profile - the molding's section
 * @param options - the frame's slope and the lay
 * @returns where every point lies, what it rests on and whether it is steady there
 * @throws {InputError} when the profile, the slope or the lay is not sound
 * @example
 * ```ts
 * import { molding } from "miterwright/profile";
 * import { lieSection } from "miterwright/saw";
 *
 * const lying = lieSection(molding({ width: 40, thickness: 20 }), { slope: 30, lay: "outer-edge-down" });
 * lying.height; //=> 40
 * lying.steady; //=> true
 * ```
 */
export function lieSection(profile: Profile, options: LieSectionOptions): LyingSection {
  const given = checkObject(options);
  const slope = checkSlope(given["slope"]);
  const tilt = checkTilt(given["lay"], slope);
  const cosine = cosDeg(tilt);
  const sine = sinDeg(tilt);
  const rolled = (point: Point): LyingPoint => ({
    across: outOf(point.x, point.y, cosine, sine),
    up: upOf(point.x, point.y, cosine, sine),
  });
  const center = rolled(sectionCentroid(profile));
  const points = profile.outline.map(rolled);
  const ups = points.map((point) => point.up);
  const acrosses = points.map((point) => point.across);
  const low = Math.min(...ups);
  const height = Math.max(...ups) - low;
  const width = Math.max(...acrosses) - Math.min(...acrosses);
  const touch = (width + height) * CONTACT_TOLERANCE;
  const touching = points.filter((point) => point.up - low <= touch).map((point) => point.across);
  const support = { from: Math.min(...touching), to: Math.max(...touching) };
  const raised = (point: LyingPoint): LyingPoint => ({
    across: point.across,
    up: point.up - low <= touch ? 0 : point.up - low,
  });
  return {
    tilt,
    outline: points.map(raised),
    width,
    height,
    support,
    center: raised(center),
    steady:
      support.from + touch < center.across &&
      center.across < support.to - touch &&
      support.to - support.from >= width * NARROWEST_SUPPORT,
  };
}
