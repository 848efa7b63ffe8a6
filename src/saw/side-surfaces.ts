import type { Profile } from "../profile/index.js";
import { CONTACT_TOLERANCE } from "./lie-section.js";
import { SURFACE_NORMALS, type StickSurface } from "./stick-surface.js";

/** A direction in the section: outward from the sight edge, and from the back to the face. */
export type Direction = readonly [across: number, through: number];

/** For each side of a stick, which way the surfaces face that make it. */
export type SideSurfaces = { readonly [S in StickSurface]: readonly Direction[] };

/**
 * The sides of a stick whose edges are square, and whose face is parallel to its back: each faces as its surface does. The directions are written out, since
 * reading them from the other record would be work at import, which no bundler drops.
 */
export const SQUARE_SIDES: SideSurfaces = {
  back: [[0, -1]],
  face: [[0, 1]],
  "sight-edge": [[-1, 0]],
  "outer-edge": [[1, 0]],
};

/**
 * The surfaces of a section that face one of its sides, at the points that reach farthest there. Of the two surfaces beside such a point, it is the one that
 * faces the side more, or both where they face it alike.
 */
function facing(profile: Profile, [across, through]: Direction): Direction[] {
  const { outline } = profile;
  const reach = outline.map(({ x, y }) => x * across + y * through);
  const farthest = Math.max(...reach);
  const touch = (farthest - Math.min(...reach)) * CONTACT_TOLERANCE;
  const faces: Direction[] = [];
  outline.forEach((from, index) => {
    const after = (index + 1) % outline.length;
    const to = outline[after]!;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    // An outline runs counter-clockwise, so the wood lies to the left of its way.
    if (farthest - Math.max(reach[index]!, reach[after]!) <= touch && length > 0)
      faces.push([(to.y - from.y) / length, (from.x - to.x) / length]);
  });
  const towardSide = ([x, y]: Direction): number => x * across + y * through;
  const most = Math.max(...faces.map(towardSide));
  return faces.filter((face) => most - towardSide(face) <= CONTACT_TOLERANCE);
}

/** The surfaces that make the four sides of a section. */
export function sideSurfaces(profile: Profile): SideSurfaces {
  return {
    back: facing(profile, SURFACE_NORMALS.back),
    face: facing(profile, SURFACE_NORMALS.face),
    "sight-edge": facing(profile, SURFACE_NORMALS["sight-edge"]),
    "outer-edge": facing(profile, SURFACE_NORMALS["outer-edge"]),
  };
}
