import { cosDeg } from "../../core/degrees.js";
import { layRotation, sawSetting, type EndCut, type Lay, type SawSetting } from "../../miter/index.js";
import { checkTilt } from "../../miter/internal.js";
import {
  lieSection,
  type Cradle,
  type CutPlacement,
  type CutSize,
  type Hand,
  type LyingSection,
  type Obstacle,
  type Saw,
  type ShowingSide,
} from "../../saw/index.js";
import { cutSizeKernel, placementKernel, wedgeUnder, type RolledStick, type SideSurfaces } from "../../saw/internal.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { Profile } from "../../profile/index.js";
import { givenUpBy, type LayWish } from "./lay-preference.js";
import { usualDepth, usualToothRoom } from "./usual-lengths.js";

/** One way to lay the stick on the saw: what the scales must show for both ends, and whether it can be done. */
export interface LayResult {
  /** The lay's name, or its rotation in degrees. */
  readonly lay: Lay;
  /** The lay as a rotation about the stick's length away from its finished place, in degrees. */
  readonly rotation: number;
  /** Miter of the `end` cut in this lay, in degrees with the sign of the conventions; that of the `start` cut is the same in a regular frame. */
  readonly miter: number;
  /** Bevel of the `end` cut in this lay, in degrees with the sign of the conventions. */
  readonly bevel: number;
  /** The stick's `end` on the saw. */
  readonly first: CutPlacement;
  /** The stick's `start` on the saw. */
  readonly second: CutPlacement;
  /** How the section lies; `null` where only level measures are known. */
  readonly lying: LyingSection | null;
  /** The wedge that holds the stick; `null` where none is needed or no section is known. */
  readonly cradle: Cradle | null;
  /** Height of the work, depth along the blade and length of the cut across the table, for either end; `null` where no section is known. */
  readonly size: CutSize | null;
  /**
   * How high the blade of a table saw is set, plumb from the table to its highest tooth. That is 6 mm or 1/4 in above the work, so that its gullets clear it
   * (common practice, no printed source), or as high as it goes. `null` on a saw whose blade comes down from above, and where no section is known.
   */
  readonly bladeHeight: number | null;
  /** Whether the saw can make both cuts and the stick lies still, as far as the saw's limits are given; see `depthInDoubt`. */
  readonly possible: boolean;
  /**
   * Whether it is not known that the saw cuts deep enough: the saw does not say, and the cut takes more of the blade than usual saws have, 75 mm or 3 in (common
   * practice, no printed source).
   */
  readonly depthInDoubt: boolean;
  /** The wishes that this lay does not meet, the weightiest first; empty when it meets all. */
  readonly givenUp: readonly LayWish[];
  /** Why not; empty when possible. */
  readonly obstacles: readonly Obstacle[];
}

/** What {@link layResult} needs to know. */
export interface LayQuestion {
  /** The lay in question. */
  readonly lay: Lay;
  /** The `end` cut and the `start` cut. */
  readonly cuts: { readonly start: EndCut; readonly end: EndCut };
  /** The molding's section, where it is known. */
  readonly profile: Profile | null;
  /** The saw. */
  readonly saw: Saw;
  /** Unit of the lengths. */
  readonly unit: LengthUnit;
  /** The side that shows in the finished frame. */
  readonly shows: ShowingSide;
  /** Which way the surfaces of its sides face. */
  readonly sides: SideSurfaces;
}

/** The sides kept at the two ends of a stick that is flipped between them. */
const FLIPPED: readonly (readonly [Hand, Hand])[] = [
  ["left", "left"],
  ["right", "right"],
];
/** The sides kept at the two ends of a stick that slides past the blade between them. */
const MIRRORED: readonly (readonly [Hand, Hand])[] = [
  ["left", "right"],
  ["right", "left"],
];

/** Greatest height of work that a saw cuts through at a bevel. Infinite where the saw does not say. */
export function depthAt(saw: Saw, bevel: number): number {
  if (saw.depth === undefined) return Infinity;
  const tilted = saw.depth * cosDeg(bevel);
  return saw.depthAt45 === undefined || bevel === 0 ? tilted : Math.min(tilted, saw.depthAt45);
}

function sizeObstacles(saw: Saw, size: CutSize, bevel: number): Obstacle[] {
  const obstacles: Obstacle[] = [];
  if (size.height > depthAt(saw, bevel)) obstacles.push({ code: "depth" });
  if (saw.crosscut !== undefined && size.line > saw.crosscut) obstacles.push({ code: "crosscut" });
  return obstacles;
}

function supportObstacles(lay: Lay, lying: LyingSection, cradle: Cradle | null): Obstacle[] {
  if (cradle !== null) return [];
  const { support, center, steady } = lying;
  if (support.to - support.from <= 0) return [{ code: lay === "propped" ? "no-flat-back" : "needs-cradle" }];
  if (steady) return [];
  return [{ code: support.from < center.across && center.across < support.to ? "rocks" : "tips-over" }];
}

/**
 * Places both ends on the saw, each tried with the kept part on either side of the blade.
 *
 * A blade that leans one way can only keep the same side, so the stick is flipped end for end. Where it leans both ways the stick keeps its edge at the fence
 * and slides past the blade, which spares the errors of a stick whose edges are not parallel. The side that is kept does not decide which part lies under the
 * blade: that is the lay's, since the blade leans over the wood whose higher part is the shorter.
 */
function placeBoth(
  { cuts, lay, saw }: LayQuestion,
  setting: SawSetting,
  stick: RolledStick,
): { first: CutPlacement; second: CutPlacement } {
  const end = { cut: cuts.end, setting };
  const start = { cut: cuts.start, setting: sawSetting(cuts.start, lay) };
  const first = (kept: Hand): CutPlacement => placementKernel(end, stick, saw, kept);
  const second = (kept: Hand): CutPlacement => placementKernel(start, stick, saw, kept);
  const firsts = { left: first("left"), right: first("right") };
  const seconds = { left: second("left"), right: second("right") };
  const leansBothWays = saw.bevel.left > 0 && saw.bevel.right > 0;
  const pairs = (leansBothWays ? [...MIRRORED, ...FLIPPED] : [...FLIPPED, ...MIRRORED]).map(([one, other]) => ({
    first: firsts[one],
    second: seconds[other],
  }));
  const obstacles = (pair: { first: CutPlacement; second: CutPlacement }): number =>
    pair.first.obstacles.length + pair.second.obstacles.length;
  return pairs.reduce((best, pair) => (obstacles(pair) < obstacles(best) ? pair : best));
}

/** Works out one lay: settings of both ends, how the stick lies, and the obstacles. */
export function layResult(question: LayQuestion): LayResult {
  const { lay, cuts, profile, saw, unit, shows, sides } = question;
  const { slope } = cuts.end;
  const setting = sawSetting(cuts.end, lay);
  const { miter, bevel } = setting;
  const rotation = layRotation(lay, slope);
  const tilt = checkTilt(lay, slope);
  const lying = profile === null ? null : lieSection(profile, { slope, lay });
  const { first, second } = placeBoth(question, setting, {
    rotation,
    tilt,
    look: { isLying: lying?.steady === true, sides, shows },
  });
  const cradle = profile !== null && lay === "propped" && first.cradled ? wedgeUnder(profile, slope) : null;
  const obstacles: Obstacle[] = [];
  for (const obstacle of [...first.obstacles, ...second.obstacles]) {
    if (!obstacles.some((known) => known.code === obstacle.code)) obstacles.push(obstacle);
  }
  const size = lying === null ? null : cutSizeKernel(lying, setting);
  if (lying !== null && size !== null)
    obstacles.push(...sizeObstacles(saw, size, bevel), ...supportObstacles(lay, lying, cradle));
  const bladeHeight =
    size === null || saw.fence === "far" ? null : Math.min(size.height + usualToothRoom(unit), depthAt(saw, bevel));
  return {
    lay,
    rotation,
    miter,
    bevel,
    first,
    second,
    lying,
    cradle,
    size,
    bladeHeight,
    possible: obstacles.length === 0,
    depthInDoubt: size !== null && saw.depth === undefined && size.depth > usualDepth(unit),
    givenUp: givenUpBy({ placement: first, lying, shows }),
    obstacles,
  };
}
