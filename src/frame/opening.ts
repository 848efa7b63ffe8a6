import type { Point } from "../core/geometry-types.js";
import { tanDeg } from "../core/degrees.js";
import { offsetPolygon, polygonAround, polygonWithin, regularPolygon, type RegularPolygon } from "../polygon/index.js";
import type { FilledSizing } from "./brief/brief.js";
import type { PlacedSection } from "./placed-section.js";

/** The polygon that the brief's opening asks for, and what it was made around or cut from. */
export interface SizedOpening {
  /** The opening at the arris `at`: the given measure comes back bit for bit. */
  readonly given: RegularPolygon;
  /** Where the center of the contained rectangle or of the sheet lies, seen from the polygon's center. */
  readonly center: Point | null;
}

/**
 * Sizes the opening from the brief.
 *
 * `contains`: the smallest polygon round the rectangle, then `clearance` outward. `cutFrom`: the largest polygon that the sheet gives, then `clearance`
 * outward, since the opening is larger than the panel. A measure is the opening's own. Throws where the measure gives a polygon beyond the lengths that can be
 * computed with.
 */
export function sizeOpening(brief: FilledSizing): SizedOpening {
  const { sides, pose, opening, clearance } = brief;
  if (opening.contains !== undefined) {
    const { width, height, allowance = 0 } = opening.contains;
    const { polygon, center } = polygonAround({ sides, width, height, pose, allowance });
    return { given: offsetPolygon(polygon, clearance), center };
  }
  if (opening.cutFrom !== undefined) {
    const { polygon, center } = polygonWithin({ sides, ...opening.cutFrom, pose });
    return { given: offsetPolygon(polygon, clearance), center };
  }
  return { given: regularPolygon({ sides, ...opening }), center: null };
}

/** How far inside or outside the given opening a point of the section runs, as a difference of apothems. */
export function apothemOffset(section: PlacedSection, at: string, out: number): number {
  return out - (at === "opening" ? section.deciding.out : section.arrises[at]!.out);
}

/** The length of a piece along a line that runs `offset` outside the given opening. */
export function lengthAt(given: RegularPolygon, offset: number, planMiter: number): number {
  return given.side + 2 * offset * tanDeg(planMiter);
}
