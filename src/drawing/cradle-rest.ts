import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import type { Profile } from "../profile/index.js";
import type { Cradle } from "../saw/index.js";

/** Points this close to each other, as a share of the section's size, are one. */
const SAME_POINT: number = 1e-9;

/** A stick's section on its cradle. */
export interface CradleRest {
  /** The section, with the wedge's toe at the origin and y up. */
  readonly section: readonly Point[];
  /** How far the stick reaches below the wedge's toe, e.g. with the lip of a steep rabbet; 0 where it does not. */
  readonly dip: number;
}

/**
 * How a section rests on the wedge that props it.
 *
 * @param profile - the molding's section
 * @param cradle - its cradle
 * @returns the section on the wedge, and how high a base the wedge needs
 */
export function restOnCradle(profile: Profile, cradle: Cradle): CradleRest {
  const { outline } = profile;
  const { angle, high, top } = cradle;
  const bottom = Math.min(...outline.map(({ y }) => y));
  const size = Math.max(...outline.map(({ x, y }) => Math.abs(x) + Math.abs(y)));
  const resting = outline.filter(({ y }) => y - bottom <= SAME_POINT * size).map(({ x }) => x);
  const toe = high === "outer edge" ? Math.min(...resting) : Math.min(...resting) + top;
  const section = outline.map(({ x, y }) => {
    const along = high === "outer edge" ? x - toe : toe - x;
    return {
      x: along * cosDeg(angle) - (y - bottom) * sinDeg(angle),
      y: along * sinDeg(angle) + (y - bottom) * cosDeg(angle),
    };
  });
  const low = Math.min(...section.map(({ y }) => y));
  return { section, dip: -low > SAME_POINT * size ? -low : 0 };
}
