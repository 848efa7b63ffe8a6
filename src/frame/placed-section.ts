import { rabbetFit, sectionAt, type Profile, type RabbetFit, type RabbetMark, type Section } from "../profile/index.js";
import type { FilledBrief, MeasuredMolding } from "./brief.js";
import type { PlacedMark } from "./ring-geometry-types.js";

/** A molding as it stands in the finished frame. */
export interface PlacedSection {
  /** Every named point. */
  readonly marks: Readonly<Record<string, PlacedMark>>;
  /** The whole outline; for a measured molding just its known points. */
  readonly points: readonly PlacedMark[];
  /** The point that decides where contents touch; without a rabbet the innermost point. */
  readonly deciding: PlacedMark;
  /** How the contents sit; `null` where there is no rabbet or no section to tell. */
  readonly fit: RabbetFit | null;
}

function measuredSection({ levelWidth, lap }: MeasuredMolding): PlacedSection {
  const wall: PlacedMark = { out: lap ?? 0, up: null };
  const outer: PlacedMark = { out: (lap ?? 0) + levelWidth, up: null };
  const marks = lap === undefined ? { wall, outer } : { wall, outer, sight: { out: 0, up: null } };
  return { marks, points: Object.values(marks), deciding: wall, fit: null };
}

/** The three marks of a rabbet, or `null` where the profile has none. */
function rabbetMarks({ marks }: Profile): Pick<Profile<RabbetMark>, "marks"> | null {
  const { sightBack, wallLedge, wallMouth } = marks;
  if (sightBack === undefined || wallLedge === undefined || wallMouth === undefined) return null;
  return { marks: { sightBack, wallLedge, wallMouth } };
}

function innermost(points: readonly PlacedMark[]): PlacedMark {
  return points.reduce((best, point) => (point.out < best.out ? point : best));
}

/**
 * Stands the brief's molding at the frame's slope.
 *
 * @param brief - the filled brief
 * @returns its points in place and the one that decides the opening
 */
export function placeSection(brief: FilledBrief): PlacedSection {
  if (brief.measured !== undefined) return measuredSection(brief.measured);
  const { profile, slope, contents, clearance } = brief;
  const { outline, marks }: Section = sectionAt(profile, slope);
  const rabbeted = rabbetMarks(profile);
  if (rabbeted === null) return { marks, points: outline, deciding: innermost(outline), fit: null };
  const fit = rabbetFit(rabbeted, { slope, contents, clearance });
  const deciding = fit.possible ? fit.opening : innermost([marks["wallLedge"]!, marks["wallMouth"]!]);
  return { marks, points: outline, deciding, fit };
}

/**
 * The point of the section that reaches farthest to one side, with its name where it has one.
 *
 * On a tie a named point wins.
 *
 * @param section - the molding in place
 * @param side - 1 for the outermost, -1 for the innermost
 * @returns the point and its name
 */
export function extremePoint(section: PlacedSection, side: 1 | -1): PlacedMark & { readonly mark: string | null } {
  let best: PlacedMark | undefined;
  let mark: string | null = null;
  const beats = (point: PlacedMark): boolean => best === undefined || side * (point.out - best.out) > 0;
  for (const [name, point] of Object.entries(section.marks)) {
    if (beats(point)) [best, mark] = [point, name];
  }
  for (const point of section.points) {
    if (beats(point)) [best, mark] = [point, null];
  }
  const { out, up } = best!;
  return { out, up, mark };
}
