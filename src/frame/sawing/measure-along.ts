import { atan2Deg } from "../../core/degrees.js";
import type { Point } from "../../core/geometry-types.js";
import type { EndCut } from "../../miter/index.js";
import type { Profile } from "../../profile/index.js";
import type { RingPiece } from "../ring-geometry-types.js";

/** How a length is taken on the piece. */
export interface MeasureAlong {
  /** The arris along which it is taken, or `null` when the line has no name. */
  readonly arris: string | null;
  /** The length along it. */
  readonly length: number;
  /** Whether a tape can hook over a crisp long point. If not, square a pencil line to the length and measure between the marks. */
  readonly hook: boolean;
  /** Angle of the wood at the long point, on the surface where it is sharpest, in degrees; `null` where no section is known. */
  readonly pointAngle: number | null;
}

/** A tape's hook holds on a point at least this much sharper than square, in degrees; common practice, no printed source. */
const HOOK_MARGIN: number = 1;
/** An outline's corner blunter than this feels rounded to a hook, in degrees; common practice, no printed source. */
const CRISP_CORNER: number = 150;

/** Direction from one point of a section to another, as a unit vector. */
function direction(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/**
 * The sharpest angle that the wood has at an arris of a finished end, seen on the two surfaces beside it.
 *
 * On a surface that leaves the arris in the section's direction e, the end recedes by q = (across, through) . e / |along| for every unit, so the point's angle
 * is atan(1 / q).
 */
function pointAngleAt(profile: Profile, index: number, cut: EndCut): number {
  const { along, across, through } = cut.plane;
  const { outline } = profile;
  const here = outline[index]!;
  const neighbors = [outline[(index + 1) % outline.length]!, outline[(index + outline.length - 1) % outline.length]!];
  const angles = neighbors.map((neighbor) => {
    const e = direction(here, neighbor);
    return atan2Deg(1, (across * e.x + through * e.y) / Math.abs(along));
  });
  return Math.min(...angles);
}

function cornerAngle(profile: Profile, index: number): number {
  const { outline } = profile;
  const here = outline[index]!;
  const a = direction(here, outline[(index + 1) % outline.length]!);
  const b = direction(here, outline[(index + outline.length - 1) % outline.length]!);
  return Math.abs(atan2Deg(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y));
}

/**
 * Chooses the arris along which a piece's length is best taken: the longest, since a tape hooks over its long points.
 */
export function measureAlong(piece: RingPiece, profile: Profile | null): MeasureAlong {
  const { arris, length } = piece.longest;
  if (profile === null) return { arris, length, hook: true, pointAngle: null };
  const place = Object.entries(profile.arrises).find(([name]) => name === arris)?.[1];
  const index = profile.outline.findIndex((point) => point.x === place?.x && point.y === place.y);
  if (index < 0) return { arris, length, hook: false, pointAngle: null };
  const pointAngle = pointAngleAt(profile, index, piece.end);
  const crisp = cornerAngle(profile, index) < CRISP_CORNER;
  return { arris, length, hook: crisp && pointAngle < 90 - HOOK_MARGIN, pointAngle };
}
