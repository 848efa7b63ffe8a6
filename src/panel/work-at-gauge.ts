import type { Point } from "../core/geometry-types.js";
import type { PanelPlan } from "./panel-plan.js";
import { blankEdges, cutEdge, leftOf, sawn } from "./sawn-piece.js";

/** How a panel lies at the gauge for one cut. */
export interface WorkAtGauge {
  /** The cut, by its place in the order of work. */
  readonly step: number;
  /** How far the work reaches from the gauge's fence, square to it: the gauge is at least so far from where the cut begins. */
  readonly depth: number;
  /** Length of the edge that bears on the gauge's fence. */
  readonly bearing: number;
}

/** A corner this close to an edge, as a share of the blank's size, lies on it. */
const ON_EDGE: number = 1e-9;

/** How the panel lies at the gauge at every cut, as far as it has been cut by then. */
export function workAtGauge(plan: PanelPlan): WorkAtGauge[] {
  const { width, height } = plan.blank;
  const edges = blankEdges(plan);
  let piece: readonly Point[] = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  return plan.cuts.map((cut) => {
    const fence = edges.get(cut.against)!;
    let depth = 0;
    let from = Infinity;
    let to = -Infinity;
    for (const point of piece) {
      const off = leftOf(fence, point);
      depth = Math.max(depth, off);
      if (off > (width + height) * ON_EDGE) continue;
      const along = point.x * fence.direction.x + point.y * fence.direction.y;
      from = Math.min(from, along);
      to = Math.max(to, along);
    }
    const edge = cutEdge(fence, cut, 0);
    edges.set(cut.side, edge);
    piece = sawn(piece, edge);
    return { step: cut.step, depth, bearing: to - from };
  });
}
