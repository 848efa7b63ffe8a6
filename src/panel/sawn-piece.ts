import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { rotated } from "../core/rotated.js";
import type { PanelCut, PanelPlan } from "./panel-plan.js";

/** The line of an edge: a point on it and its direction, the panel to the left. */
export interface Edge {
  /** A point on it. */
  readonly through: Point;
  /** Its direction, a unit vector. */
  readonly direction: Point;
}

/** How far a point lies to the left of an edge. Negative to the right. */
export function leftOf(edge: Edge, point: Point): number {
  const { through, direction } = edge;
  return direction.x * (point.y - through.y) - direction.y * (point.x - through.x);
}

/** What is left of a convex piece when everything to the right of an edge falls off. */
export function sawn(piece: readonly Point[], edge: Edge): Point[] {
  const rest: Point[] = [];
  for (const [index, point] of piece.entries()) {
    const next = piece[(index + 1) % piece.length]!;
    const here = leftOf(edge, point);
    const there = leftOf(edge, next);
    if (here >= 0) rest.push(point);
    if (here >= 0 !== there >= 0) {
      const share = here / (here - there);
      rest.push({ x: point.x + share * (next.x - point.x), y: point.y + share * (next.y - point.y) });
    }
  }
  return rest;
}

/**
 * The direction of a new side, from that of the side at the fence: the two enclose 90 degrees, less the setting when the gauge is swung closed, more when open. Cut
 * with the panel turned over, the new side lies on the other hand.
 */
function cutDirection(fence: Edge, cut: PanelCut, error: number): Point {
  const enclosed = (cut.swing === "closed" ? 90 - cut.setting : 90 + cut.setting) + error;
  const angle = cut.up === "front" ? 180 - enclosed : enclosed - 180;
  return rotated(fence.direction, cosDeg(angle), sinDeg(angle));
}

/** The edge that a cut makes, from the one at the fence. */
export function cutEdge(fence: Edge, cut: PanelCut, error: number): Edge {
  return { through: cut.middle.point, direction: cutDirection(fence, cut, error) };
}

/** The edges that the blank has already, by the sides that the plan says they are. */
export function blankEdges(plan: PanelPlan): Map<number, Edge> {
  const count = plan.panel.sides;
  return new Map(
    plan.existing.map((side) => {
      const [from, to] = [plan.corners[side]!.point, plan.corners[(side + 1) % count]!.point];
      const upright = Math.abs(to.x - from.x) < Math.abs(to.y - from.y);
      const direction = upright ? { x: 0, y: Math.sign(to.y - from.y) } : { x: Math.sign(to.x - from.x), y: 0 };
      return [side, { through: from, direction }];
    }),
  );
}
