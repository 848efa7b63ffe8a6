import {
  rabbetSeating,
  sectionAt,
  type Profile,
  type RabbetSeating,
  type RabbetArris,
  type Section,
} from "../profile/index.js";
import type { FilledSizing, MeasuredMolding } from "./brief/brief.js";
import type { PlacedArris } from "./ring-geometry-types.js";

/** A molding as it stands in the finished frame. */
export interface PlacedSection {
  /** Every named point. */
  readonly arrises: Readonly<Record<string, PlacedArris>>;
  /** The whole outline; for a measured molding just its known points. */
  readonly points: readonly PlacedArris[];
  /** The point that decides where contents touch; without a rabbet the innermost point. */
  readonly deciding: PlacedArris;
  /** The seating of the contents; `null` where there is no rabbet or no section to tell. */
  readonly seating: RabbetSeating | null;
}

function measuredSection({ levelWidth, lap }: MeasuredMolding): PlacedSection {
  const wall: PlacedArris = { out: lap ?? 0, up: null };
  const outer: PlacedArris = { out: (lap ?? 0) + levelWidth, up: null };
  const arrises = lap === undefined ? { wall, outer } : { wall, outer, sight: { out: 0, up: null } };
  return { arrises, points: Object.values(arrises), deciding: wall, seating: null };
}

/** The three arrises of a rabbet, or `null` where the profile has none. */
function rabbetArrises({ arrises }: Profile): Pick<Profile<RabbetArris>, "arrises"> | null {
  const { sightBack, wallLedge, wallMouth } = arrises;
  if (sightBack === undefined || wallLedge === undefined || wallMouth === undefined) return null;
  return { arrises: { sightBack, wallLedge, wallMouth } };
}

function innermost(points: readonly PlacedArris[]): PlacedArris {
  return points.reduce((best, point) => (point.out < best.out ? point : best));
}

/** Stands the brief's molding at the frame's slope. */
export function placeSection(brief: FilledSizing): PlacedSection {
  if (brief.measured !== undefined) return measuredSection(brief.measured);
  const { profile, slope, contents, clearance } = brief;
  const { outline, arrises }: Section = sectionAt(profile, slope);
  const rabbeted = rabbetArrises(profile);
  if (rabbeted === null) return { arrises, points: outline, deciding: innermost(outline), seating: null };
  const seating = rabbetSeating(rabbeted, { slope, contents, clearance });
  const deciding = seating.possible ? seating.opening : innermost([arrises["wallLedge"]!, arrises["wallMouth"]!]);
  return { arrises, points: outline, deciding, seating };
}

/**
 * The point of the section that reaches farthest to one side, with its name where it has one.
 *
 * On a tie a named point wins.
 */
export function extremePoint(section: PlacedSection, side: 1 | -1): PlacedArris & { readonly arris: string | null } {
  let best: PlacedArris | undefined;
  let arris: string | null = null;
  const beats = (point: PlacedArris): boolean => best === undefined || side * (point.out - best.out) > 0;
  for (const [name, point] of Object.entries(section.arrises)) {
    if (beats(point)) [best, arris] = [point, name];
  }
  for (const point of section.points) {
    if (beats(point)) [best, arris] = [point, null];
  }
  const { out, up } = best!;
  return { out, up, arris };
}
