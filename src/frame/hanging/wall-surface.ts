import { atan2Deg, cosDeg } from "../../core/degrees.js";
import type { Point } from "../../core/geometry-types.js";
import type { Profile } from "../../profile/index.js";

/** The surface of a molding that a hanger is screwed to. */
export interface WallSurface {
  /** Its middle, where the screw goes in, in the section's own axes. */
  readonly middle: Point;
  /** Its width, across the stick. */
  readonly width: number;
  /** Its angle to the wall in degrees, -45 to 45; positive where its outer edge stands farther from the wall. */
  readonly leanAngle: number;
  /** How much wood lies behind its middle, square to it: as deep a hole comes out at the other side. */
  readonly wood: number;
}

/** A surface that leans more than this no longer lies toward the wall, in degrees. */
const STEEPEST: number = 45;
/** What rounding may do to a distance from a line, as a share of the section's size: corners on one straight line are still on it. */
const ON_LINE: number = 1e-12;

/** An edge of the outline, in the direction that has the wood at its left. */
interface Edge {
  readonly from: Point;
  readonly along: Point;
  readonly length: number;
}

/** The edges of an outline that runs either way round. */
function edgesOf(outline: readonly Point[]): Edge[] {
  const last = outline.length - 1;
  const pairs = outline.map((point, index) => [outline[index === 0 ? last : index - 1]!, point] as const);
  const origin = outline[0]!;
  const turn = pairs.reduce(
    (sum, [a, b]) => sum + (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y),
    0,
  );
  return pairs.flatMap(([a, b]) => {
    const [from, to] = turn < 0 ? [b, a] : [a, b];
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    return length > 0 ? [{ from, along: { x: (to.x - from.x) / length, y: (to.y - from.y) / length }, length }] : [];
  });
}

/** An edge's angle to the wall as it stands, from -180 to 180 degrees. Added, so that a square edge leans by the slope to the bit. */
function leanAngleOf({ along }: Edge, slope: number): number {
  const leanAngle = atan2Deg(along.y, along.x) + slope;
  return leanAngle > 180 ? leanAngle - 360 : leanAngle < -180 ? leanAngle + 360 : leanAngle + 0;
}

/** How far a point lies on the wood's side of an edge's line. */
function inside({ from, along }: Edge, { x, y }: Point): number {
  return along.x * (y - from.y) - along.y * (x - from.x);
}

/** The distance from a point of an edge, square to it into the wood, to where the wood ends. */
function woodBehind(middle: Point, surface: Edge, edges: readonly Edge[]): number {
  const { along } = surface;
  let least = Infinity;
  for (const edge of edges) {
    if (edge === surface) continue;
    // The ray is middle + t (-along.y, along.x), the edge from + u e.
    const { from, along: e, length } = edge;
    const cross = -along.y * e.y - along.x * e.x;
    if (cross === 0) continue;
    const [x, y] = [from.x - middle.x, from.y - middle.y];
    const t = (x * e.y - y * e.x) / cross;
    const u = (-along.y * y - along.x * x) / -cross;
    if (t > 0 && t < least && u >= -ON_LINE * length && u <= length * (1 + ON_LINE)) least = t;
  }
  return least;
}

/**
 * The surface of a molding that a hanger is screwed to: of those that lie toward the wall as the frame hangs, the widest.
 *
 * A surface lies toward the wall when it leans 45 degrees at the most and no other part of the section reaches beyond its plane, which leaves a rabbet's ledge
 * out. On a flat frame it is the back. Where the sides stand steep it is the edge that has come to lie at the back: a box hangs by its back edge. `null` where
 * none lies toward the wall.
 */
export function wallSurface(profile: Pick<Profile, "outline">, slope: number): WallSurface | null {
  const { outline } = profile;
  const edges = edgesOf(outline);
  const size = outline.reduce(
    (most, { x, y }) => Math.max(most, Math.abs(x - outline[0]!.x), Math.abs(y - outline[0]!.y)),
    0,
  );
  const found = edges
    .map((edge) => {
      const leanAngle = leanAngleOf(edge, slope);
      return { edge, leanAngle, level: edge.length * cosDeg(leanAngle) };
    })
    .filter(({ leanAngle }) => Math.abs(leanAngle) <= STEEPEST)
    .sort((a, b) => b.level - a.level)
    .find(({ edge }) => outline.every((point) => inside(edge, point) >= -ON_LINE * size));
  if (found === undefined) return null;
  const { edge, leanAngle } = found;
  const { from, along, length } = edge;
  const middle = { x: from.x + (along.x * length) / 2, y: from.y + (along.y * length) / 2 };
  return { middle, width: length, leanAngle, wood: woodBehind(middle, edge, edges) };
}
