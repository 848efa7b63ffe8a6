import { cosDeg, sinDeg } from "../../core/degrees.js";
import { sectionAt } from "../../profile/index.js";
import { acrossThickness, checkGrain, woodStrain, readWood } from "../../wood/internal.js";
import type { FilledBrief } from "../brief/brief.js";
import type { FrameGeometry } from "../frame-geometry.js";
import type { PlacedArris } from "../ring-geometry-types.js";

/** How far a point of the section moves outward, but for what the whole piece moves by. */
export type OutwardShift = (point: PlacedArris) => number;

/** How a molding's section moves, as far as it is known. */
export interface SectionMovement {
  /** The known points of the section. */
  readonly points: readonly PlacedArris[];
  /** Whether the section is known: if not, sloping pieces are taken to move as much as their faster direction everywhere. */
  readonly isKnown: boolean;
  /** How the section moves from one moisture content to another. */
  readonly shift: (from: number, to: number) => OutwardShift;
}

/**
 * How the section of a brief's molding moves.
 *
 * Its width stretches by e and its thickness by f. A point at x and y of the section stands at out = x cos s - y sin s, so it moves outward by e x cos s - f y
 * sin s = out (e cos² s + f sin² s) + up (e - f) sin s cos s. For a molding known by level measures alone the second part is not known, except at slope 0 and
 * upright, where it is zero.
 */
export function sectionMovement(brief: FilledBrief, geometry: FrameGeometry): SectionMovement {
  const { slope, profile } = brief;
  const wood = readWood(brief.species);
  const rings = checkGrain(brief.grain ?? "flat-sawn");
  const [sine, cosine] = [sinDeg(slope), cosDeg(slope)];
  const isKnown = profile !== undefined || sine * cosine === 0;
  return {
    points: profile === undefined ? Object.values(geometry.arrises) : sectionAt(profile, slope).outline,
    isKnown,
    shift: (from, to) => {
      const width = woodStrain(wood, rings, from, to);
      const thickness = woodStrain(wood, acrossThickness(rings), from, to);
      if (!isKnown) {
        const faster = Math.abs(width) < Math.abs(thickness) ? thickness : width;
        return ({ out }) => out * faster;
      }
      const perOut = width * cosine * cosine + thickness * sine * sine;
      const perUp = (width - thickness) * sine * cosine;
      return ({ out, up }) => out * perOut + (up ?? 0) * perUp;
    },
  };
}
