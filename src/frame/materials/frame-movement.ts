import { openMiter } from "../../wood/internal.js";
import type { OpenMiter } from "../../wood/index.js";
import type { FilledBrief } from "../brief/brief.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { rangeOf } from "./range-of.js";
import type { PlacedArris } from "../ring-geometry-types.js";
import { sectionMovement, type OutwardShift, type SectionMovement } from "./section-movement.js";
import { moistureYear } from "./usual-year.js";

/** What the molding does in one of the seasons: an open joint, and by how much the frame has changed. */
export interface SeasonMovement extends OpenMiter {
  /** Moisture content of the wood, in percent. */
  readonly moisture: number;
  /** Change of the molding's level width, from where the contents touch to the outermost point; positive when it swells. */
  readonly levelWidthChange: number;
  /** Change of the lip's level width, from the innermost point to where the contents touch; positive when it swells. */
  readonly lipChange: number;
  /**
   * How far the innermost point has drawn back at every side, 0 or more: the lip laps so much less. Where several points are innermost, the one that draws back
   * most counts.
   */
  readonly sightOpens: number;
  /** The names of the innermost arrises that draw back so far: several where they tie, none where the point has no name. */
  readonly sightArrises: readonly string[];
  /** How far the opening has grown at every side where the contents touch, 0 or more. */
  readonly openingGrows: number;
}

/**
 * What is not known of a molding's movement. `section`: only level measures of it are known, so the joints are taken to open as if all of the width taken level
 * moved like the faster of width and thickness, which is the most that it can. `lip-width`: what the lip adds to the open joints is not counted.
 */
export type MovementUnknown = "section" | "lip-width";

/** What a year does to a frame's wood. */
export interface FrameMovement {
  /** Moisture content when the joints are fitted, in percent. */
  readonly made: number;
  /** Every season of the brief, in its order. */
  readonly seasons: readonly SeasonMovement[];
  /** The most that a joint opens inside in any season. */
  readonly inside: number;
  /** The most that a joint opens outside in any season. */
  readonly outside: number;
  /** The brief's accepted gap. */
  readonly acceptedGap: number;
  /** The most that the innermost point draws back at any side. */
  readonly sightOpens: number;
  /** What the brief does not tell of the molding, in the order of the union; none where it tells all. */
  readonly unknown: readonly MovementUnknown[];
}

/** Points whose shifts differ by less than this part of the whole move alike. */
const ALIKE: number = 1e-9;

/** How wide a joint stands open when its ends are pressed together, from the points that move outward least, which touch, to those that move most. */
function openBy(
  points: SectionMovement["points"],
  shift: OutwardShift,
  [least, most]: readonly [number, number],
  planMiter: number,
): OpenMiter {
  const change = most - least;
  const outsAt = (extreme: number): readonly [number, number] =>
    rangeOf(points.filter((point) => Math.abs(shift(point) - extreme) <= ALIKE * change).map((point) => point.out));
  const [touching, open] = [outsAt(least), outsAt(most)];
  // Where points move alike, take those farthest apart.
  const [inside, outside] = [touching[1] - open[0], open[1] - touching[0]];
  return inside >= outside ? openMiter(planMiter, inside, -change) : openMiter(planMiter, outside, change);
}

function whatIsUnknown({ measured }: FilledBrief, { isKnown }: SectionMovement): MovementUnknown[] {
  if (measured === undefined) return [];
  const unknown: MovementUnknown[] = [];
  if (!isKnown) unknown.push("section");
  if (measured.lap === undefined) unknown.push("lip-width");
  return unknown;
}

/**
 * What the seasons do to a frame's wood.
 *
 * Both ends of a piece keep their places along it while its section moves, so a point that moves outward by d stands off the plane of its joint by d sin h
 * more. Pressed together, the ends touch where d is least and stand open by 2 (most - least) sin h where it is most. The lines through the touching points
 * keep their lengths, so every other point's polygon grows by its own d less the least: no opening ever becomes smaller.
 */
export function frameMovement(brief: FilledBrief, geometry: FrameGeometry): FrameMovement | null {
  if (brief.species === undefined) return null;
  const section = sectionMovement(brief, geometry);
  const { made, seasons } = moistureYear(brief.moisture);
  const { planMiter } = geometry.corners[0];
  const { longest, shortest } = geometry.pieces[0];
  // All that tie, as both arrises of an edge do that stands plumb: they need not move alike.
  const tie = ALIKE * (longest.out - shortest.out);
  const isInnermost = ({ out }: PlacedArris): boolean => out - shortest.out <= tie;
  const inner = section.points.filter(isInnermost);
  const outer = section.points.filter(({ out }) => longest.out - out <= tie);
  const innerArrises = Object.entries(geometry.arrises).filter(([, arris]) => isInnermost(arris));
  const moved = seasons.map((moisture): SeasonMovement => {
    const shift = section.shift(made, moisture);
    const range = rangeOf(section.points.map(shift));
    const [sight, contents] = [Math.max(...inner.map(shift)), shift(geometry.deciding)];
    const alike = ALIKE * (range[1] - range[0]);
    return {
      ...openBy(section.points, shift, range, planMiter),
      moisture,
      levelWidthChange: Math.max(...outer.map(shift)) - contents + 0,
      lipChange: contents - sight + 0,
      sightOpens: Math.max(0, sight - range[0]),
      sightArrises: innerArrises.filter(([, arris]) => sight - shift(arris) <= alike).map(([name]) => name),
      openingGrows: Math.max(0, contents - range[0]),
    };
  });
  const worst = (opens: OpenMiter["opens"]): number =>
    moved.reduce((most, season) => (season.opens === opens ? Math.max(most, season.jointGap) : most), 0);
  return {
    made,
    seasons: moved,
    inside: worst("inside"),
    outside: worst("outside"),
    acceptedGap: brief.acceptedGap,
    sightOpens: moved.reduce((most, season) => Math.max(most, season.sightOpens), 0),
    unknown: whatIsUnknown(brief, section),
  };
}
