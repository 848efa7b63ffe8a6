import { refuse } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { about } from "./about.js";
import type { ReadCut } from "./read-molding.js";

/** Where a cut at an arris ends: on the face and on the edge. */
export interface CutEnds {
  /** Its end on the face. */
  readonly face: Point;
  /** Its end on the edge. */
  readonly edge: Point;
}

/**
 * Takes off an arris of the face by one plane.
 *
 * By width and angle a the plane leaves the face along (-cos a, -sin a), seen with the face running toward +x, and meets
 * the edge, of direction (ex, ey), at the depth width sin a / (ex sin a - ey cos a).
 */
export function chamfer(cut: ReadCut, arris: Point, edgeEnd: Point, faceSize: number): CutEnds {
  const inward = cut.at === "sightFace" ? 1 : -1;
  const edgeX = edgeEnd.x - arris.x;
  const edgeY = edgeEnd.y - arris.y;
  const edgeSize = Math.hypot(edgeX, edgeY);
  if (!(cut.width < faceSize))
    refuse("impossible", `${cut.path}.width`, cut.width, `less than the face's width (${about(faceSize)})`);
  const share = depthOf(cut, (inward * edgeX) / edgeSize, edgeY / edgeSize) / edgeSize;
  if (!(share > 0 && share < 1)) {
    const given = cut.angle === undefined ? "depth" : "angle";
    refuse(
      "impossible",
      `${cut.path}.${given}`,
      cut[given],
      `small enough to leave some of the edge (${about(edgeSize)})`,
    );
  }
  return {
    face: { x: arris.x + inward * cut.width, y: arris.y },
    edge: { x: arris.x + share * edgeX, y: arris.y + share * edgeY },
  };
}

/** How far down the edge a chamfer goes; not positive when it never meets the edge. */
function depthOf({ width, depth, angle }: ReadCut, edgeX: number, edgeY: number): number {
  if (angle === undefined) return depth as number;
  const sin = sinDeg(angle);
  return (width * sin) / (edgeX * sin - edgeY * cosDeg(angle));
}
