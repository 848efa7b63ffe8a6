import { checkDegrees, checkObject, reject } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { Point } from "../core/geometry-types.js";
import type { PanelPlan } from "./panel-plan.js";
import { panelPlan } from "./stored-panel.js";
import { blankEdges, cutEdge, sawn } from "./sawn-piece.js";

/** Options of {@link simulatePanel}. */
export interface SimulatePanelOptions {
  /** By how many degrees the gauge stands off what the plan says, positive when the kept part between fence and blade is wider; -20 to 20, default 0. */
  readonly settingError?: number | undefined;
}

/** Points of the piece closer than this, as a share of the blank's size, are one corner. */
const SAME_CORNER: number = 1e-9;

/** The corners of a piece without those that rounding doubled, from the one nearest to a given point on. */
function cleaned(piece: readonly Point[], first: Point, size: number): Point[] {
  const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
  const corners = piece.filter((point, index) => {
    const before = piece[(index + piece.length - 1) % piece.length]!;
    return apart(point, before) > size * SAME_CORNER;
  });
  const start = corners.reduce(
    (best, corner, index) => (apart(corner, first) < apart(corners[best]!, first) ? index : best),
    0,
  );
  return [...corners.slice(start), ...corners.slice(0, start)];
}

/**
 * Cuts a panel from its blank as the plan says. Each cut takes its direction from the side at the fence, as that side was really cut. It takes its place from
 * the middle of the side, marked on the blank.
 *
 * It is the plan's own check: without an error of the setting it must return the panel. With one, the error of every side's direction is the error times the
 * cut's `errorMultiple`.
 *
 * @param plan - from `planPanel`
 * @param options - an error of the gauge
 * @returns the corners of what was cut, counter-clockwise from the start of side 0, from the blank's lower left corner
 * @throws {InputError} when the plan is none, a cut uses a side before it exists, or the error is out of range
 * @example
 * ```ts
 * import { planPanel, simulatePanel } from "miterwright/panel";
 *
 * const plan = planPanel({ polygon: { sides: 6, apothem: 50 } });
 * simulatePanel(plan)[0]; //=> { x: 28.8675134594813, y: 0 }
 * plan.corners[0]?.point; //=> { x: 28.8675134594813, y: 0 }
 * ```
 */
export function simulatePanel(plan: PanelPlan, options: SimulatePanelOptions = {}): Point[] {
  readStored(plan, "plan", panelPlan);
  const error = checkDegrees(checkObject(options)["settingError"] ?? 0, "settingError", -20, 20);
  const { width, height } = plan.blank;
  const edges = blankEdges(plan);
  let piece: Point[] = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  for (const cut of plan.cuts) {
    const fence = edges.get(cut.against);
    if (fence === undefined) {
      return reject(
        "impossible",
        `plan.cuts[${cut.step - 1}].against`,
        cut.against,
        `Expected \`plan.cuts[${cut.step - 1}].against\` to be a side that exists by then, got ${cut.against}`,
      );
    }
    const edge = cutEdge(fence, cut, error);
    edges.set(cut.side, edge);
    piece = sawn(piece, edge);
  }
  return cleaned(piece, plan.corners[0]!.point, width + height);
}
