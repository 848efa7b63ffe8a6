import { checkArray, checkLength, checkLengthOrZero, checkObject, checkSlope, checkText } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import { checkMark, marksOf } from "./check-profile.js";
import type { Profile, RabbetMark, SectionPoint } from "./profile.js";
import { outOf, upOf } from "./tilt.js";
import { wallTouch } from "./wall-touch.js";

/** One thing that lies in the rabbet. */
export interface RabbetContent {
  /** What to call it, e.g. `glass`. */
  readonly name: string;
  /** Its thickness in the caller's length unit, positive. */
  readonly thickness: number;
}

/** Options of {@link rabbetFit}. */
export interface RabbetFitOptions {
  /** The frame's slope in degrees, -90 to 90. */
  readonly slope: number;
  /** What lies in the rabbet, front to back: the first lies nearest the viewer. May be empty. */
  readonly contents: readonly RabbetContent[];
  /** Kept free between contents and `opening` at every side, level, in the caller's length unit; zero or more. Default: 0. */
  readonly clearance?: number;
}

/** Between which heights one thing lies in the rabbet, measured like `up` of {@link SectionPoint}. */
export interface RabbetLayer {
  /** What it is called. */
  readonly name: string;
  /** Height of its front, the side toward the viewer. */
  readonly front: number;
  /** Height of its back. */
  readonly back: number;
}

/** How level contents sit in a rabbet that can hold them. Lengths are in the caller's unit. */
export interface RabbetHold {
  /** The rabbet can hold level contents at this slope. */
  readonly possible: true;
  /** The slope in degrees. */
  readonly slope: number;
  /**
   * What the contents' front rests on: the sight edge's back arris (a ledge that rises outward), the whole ledge (a level
   * one), or, with their outer arris only, the ledge where it falls outward into its corner with the wall.
   */
  readonly bearsOn: "sight-edge" | "ledge" | "corner";
  /** The point where they bear; of a level ledge its inner end. */
  readonly bearing: SectionPoint;
  /** The point of the wall that decides the contents' size: the panel and the frame are sized there, whatever the contents' thickness. */
  readonly opening: SectionPoint;
  /** How far the lip laps the contents, level, from the sight edge's back arris to the contents' edge: `clearance` is taken off. Positive. */
  readonly lap: number;
  /** How much of the wall lies in front of the contents' back, along the wall from the ledge; 0 or more. */
  readonly depthUsed: number;
  /** How much of the wall is left behind the contents for fasteners, along the wall; negative when the contents stand proud of its mouth. */
  readonly depthLeft: number;
  /**
   * Level room that the wall's lean costs at every side, 0 or more: beside the contents' back when the wall leans
   * outward toward its mouth, between mouth and corner when it leans inward.
   */
  readonly roomLost: number;
  /** Thickness of all contents together. */
  readonly thickness: number;
  /** The contents from front to back. */
  readonly layers: readonly RabbetLayer[];
}

/** That a rabbet cannot hold level contents, and why. */
export interface RabbetMiss {
  /** The rabbet cannot hold level contents at this slope. */
  readonly possible: false;
  /** The slope in degrees. */
  readonly slope: number;
  /**
   * What is wrong: the wall ends before the contents' front (`past-mouth`), the contents are too small for the lip to
   * hold (`falls-through`), or ledge and wall no longer face the contents (`too-steep`).
   */
  readonly reason: "past-mouth" | "falls-through" | "too-steep";
  /** The same in a sentence for people. */
  readonly why: string;
  /** What is lacking, in the caller's length unit: depth along the wall, or level width of the ledge; 0 when it is `too-steep`. */
  readonly shortBy: number;
}

/** How level contents sit in a rabbet, or why they cannot. */
export type RabbetFit = RabbetHold | RabbetMiss;

/** A ledge is called level when it rises or falls by less than this share of its coordinates: a thousand roundings. It only chooses a word. */
const LEVEL_TOLERANCE: number = 1e-12;

const REASONS: Readonly<Record<RabbetMiss["reason"], string>> = {
  "past-mouth": "The rabbet is too shallow: at this slope its wall ends before it reaches the front of level contents",
  "falls-through": "The rabbet is too narrow: contents small enough to go in would fall through the sight opening",
  "too-steep": "The frame is too steep: at this slope the rabbet's ledge and wall no longer face level contents",
};

/** Checks the contents and gives them with their total thickness. */
function readContents(value: unknown): { contents: RabbetContent[]; thickness: number } {
  const contents = checkArray(value, "contents", "an array of contents").map((item, index) => {
    const path = `contents[${index}]`;
    const content = checkObject(item, path);
    return {
      name: checkText(content["name"], `${path}.name`),
      thickness: checkLength(content["thickness"], `${path}.thickness`),
    };
  });
  return { contents, thickness: contents.reduce((sum, content) => sum + content.thickness, 0) };
}

/** The heights between which each of the contents lies. */
function layersBelow(front: number, contents: readonly RabbetContent[]): RabbetLayer[] {
  let used = 0;
  return contents.map(({ name, thickness }) => {
    const above = used;
    used += thickness;
    return { name, front: front - above, back: front - used };
  });
}

/**
 * How level contents sit in a molding's rabbet once it is tilted.
 *
 * Contents go in from the back and rise until they bear. A square-cut rabbet of width w and depth d holds contents of total
 * thickness T so. Slope s > 0: they bear on the sight edge's back arris and touch the wall at their front; lap w / cos s,
 * depth used w tan s + T / cos s, room lost at their back T tan s; impossible if w tan s > d. Slope s < 0: they must pass
 * the mouth, which is d sin|s| narrower than the corner, so lap w cos s - d sin|s|; their outer arris bears on the ledge
 * close to the corner, depth used T / cos s - d tan² s. Slope 0: flat on the ledge, lap w, depth used T. All of it is
 * derived from the three marks alone, so it also holds for rabbets that are not square. The ledge and the wall are taken as
 * straight, and nothing else as being in the way.
 *
 * @param profile - the molding's section, with its three rabbet marks
 * @param options - the slope, the contents and the clearance
 * @returns where they bear, which point decides their size and what is left, or why they cannot be held
 * @throws {InputError} when an option is out of range or a rabbet mark is missing
 * @example
 * ```ts
 * import { molding, rabbetFit } from "miterwright/profile";
 *
 * const stick = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
 * const flat = rabbetFit(stick, { slope: 0, contents: [{ name: "glass", thickness: 2 }] });
 * flat.possible && flat.depthLeft; //=> 8
 * const steep = rabbetFit(stick, { slope: 60, contents: [{ name: "glass", thickness: 2 }] });
 * steep.possible; //=> false
 * ```
 */
export function rabbetFit(profile: Pick<Profile<RabbetMark>, "marks">, options: RabbetFitOptions): RabbetFit {
  const given = checkObject(options);
  const slope = checkSlope(given["slope"]);
  const { contents, thickness } = readContents(given["contents"]);
  const clearance = given["clearance"] === undefined ? 0 : checkLengthOrZero(given["clearance"], "clearance");
  const marks = marksOf(profile);
  const sight = checkMark(marks, "sightBack");
  const ledge = checkMark(marks, "wallLedge");
  const mouth = checkMark(marks, "wallMouth");
  const cos = cosDeg(slope);
  const sin = sinDeg(slope);
  const miss = (reason: RabbetMiss["reason"], shortBy: number): RabbetMiss => ({
    possible: false,
    slope,
    reason,
    why: REASONS[reason],
    shortBy,
  });

  // Differences in the section, tilted afterward: the difference of two tilted points would lose their common part.
  const ledgeX = ledge.x - sight.x;
  const ledgeY = ledge.y - sight.y;
  const wallX = mouth.x - ledge.x;
  const wallY = mouth.y - ledge.y;
  const run = outOf(ledgeX, ledgeY, cos, sin);
  const rise = upOf(ledgeX, ledgeY, cos, sin);
  const lean = outOf(wallX, wallY, cos, sin);
  const drop = -upOf(wallX, wallY, cos, sin);
  if (!(run > 0 && drop > 0)) return miss("too-steep", 0);
  const wall = Math.hypot(wallX, wallY);
  if (rise > drop) return miss("past-mouth", (rise - drop) * (wall / drop));

  const share = wallTouch(ledgeX, ledgeY, wallX, wallY, cos, sin);
  const touchX = share * wallX;
  const touchY = share * wallY;
  const lap = outOf(ledgeX + touchX, ledgeY + touchY, cos, sin) - clearance;
  if (!(lap > 0)) return miss("falls-through", -lap + 0);

  // How far the contents' front lies below the corner. On a ledge that falls outward it lies above it by as much as the
  // ledge rises from the corner to the contents' edge.
  const gap = Math.max(0, clearance - outOf(touchX, touchY, cos, sin));
  const below = rise < 0 ? rise * (gap / run) : rise;
  const front = rise < 0 ? upOf(ledge.x, ledge.y, cos, sin) - below : upOf(sight.x, sight.y, cos, sin);
  const level =
    LEVEL_TOLERANCE *
    ((Math.abs(ledge.x) + Math.abs(sight.x)) * Math.abs(sin) + (Math.abs(ledge.y) + Math.abs(sight.y)) * cos);
  const bearsOn = Math.abs(rise) <= level ? "ledge" : rise > 0 ? "sight-edge" : "corner";
  const depthUsed = Math.max(0, (below + thickness) * (wall / drop));
  return {
    possible: true,
    slope,
    bearsOn,
    bearing: {
      out: outOf(sight.x, sight.y, cos, sin) + (bearsOn === "corner" ? Math.min(lap, run) : 0),
      up: front,
    },
    opening: {
      out: outOf(ledge.x + touchX, ledge.y + touchY, cos, sin),
      up: upOf(ledge.x + touchX, ledge.y + touchY, cos, sin),
    },
    lap,
    depthUsed,
    depthLeft: wall - depthUsed,
    roomLost: lean < 0 ? -lean : lean * (thickness / drop),
    thickness,
    layers: layersBelow(front, contents),
  };
}
