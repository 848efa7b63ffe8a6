import { checkArray, checkLength, checkObject } from "../core/check.js";
import { measuredOpening, type MeasuredOpening, type OpeningMeasures } from "../closure/index.js";
import type { OneOf, Pose } from "../core/geometry-types.js";
import { planPanel, type PanelPlan } from "../panel/index.js";
import type { FramePlan } from "./plan-frame.js";

/** A panel that is made for the frame as it was glued, and what differs from the plan. */
export interface OpeningPanel extends MeasuredOpening {
  /** How the panel is cut. */
  readonly panel: PanelPlan;
  /** By how much the opening is wider across flats than planned, at its narrowest; negative where it is narrower. */
  readonly difference: number;
  /** By how much it may be off either way, from the plan's check; `null` where none follows. */
  readonly tolerance: number | null;
  /** Whether it is off by no more than that; `null` where no tolerance follows. */
  readonly within: boolean | null;
  /** What would be left free at every side of the panel that was planned; negative where that one does not go in. */
  readonly clearanceLeft: number;
}

/**
 * The panel from the measured opening of the glued frame, instead of the planned one.
 *
 * Measure at the line where the contents touch, in the rabbet. The largest regular opening that the measures vouch for takes the place of the planned one; clearance and
 * pose stay those of the plan. An opening whose measures differ by more than the clearance takes no panel without a gap on one side: look at `spread`.
 *
 * @param plan - from `planFrame`; also one that was read back from JSON
 * @param measures - exactly one of `acrossFlats` (n/2 lengths from side to side, for odd n n lengths from corner to side) and `fromCenter` (n lengths from one point to every side)
 * @returns the panel, the opening as measured, and what differs from the plan; lengths in the plan's unit
 * @throws {InputError} when the plan is not one, a length is out of range, there are not as many as the sides ask for, not exactly one kind is given, or the clearance leaves no panel
 * @example
 * ```ts
 * import { panelForOpening, planFrame } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 42, thickness: 18, rabbet: { width: 8, depth: 9 } });
 * const plan = planFrame({ sides: 6, profile, opening: { acrossFlats: 300 }, clearance: 1 });
 * const { panel, difference, within } = panelForOpening(plan, { acrossFlats: [300.2, 299.8, 300.1] });
 * panel.panel.acrossFlats; //=> 297.8
 * [difference.toFixed(1), within]; //=> ["-0.2", true]
 * ```
 */
export function panelForOpening(plan: FramePlan, measures: OneOf<OpeningMeasures>): OpeningPanel {
  const given = checkObject(plan, "plan");
  const brief = checkObject(given["brief"], "plan.brief");
  const planned = checkObject(checkObject(given["geometry"], "plan.geometry")["opening"], "plan.geometry.opening");
  const checks = checkArray(given["checks"], "plan.checks").map((check, index) =>
    checkObject(check, `plan.checks[${index}]`),
  ) as unknown as FramePlan["checks"];
  const acrossFlats = checkLength(planned["acrossFlats"], "plan.geometry.opening.acrossFlats");
  const apothem = checkLength(planned["apothem"], "plan.geometry.opening.apothem");
  const opening = measuredOpening({ ...checkObject(measures, "measures"), sides: brief["sides"] } as never);
  const clearance = brief["clearance"] as number;
  const panel = planPanel({ polygon: opening.polygon, clearance, pose: brief["pose"] as Pose });
  const difference = opening.polygon.acrossFlats - acrossFlats;
  const tolerance = checks.find((check) => check.code === "glued-across-flats")?.tolerance ?? null;
  return {
    ...opening,
    panel,
    difference,
    tolerance,
    within: tolerance === null ? null : Math.abs(difference) <= tolerance,
    clearanceLeft: clearance + (opening.polygon.apothem - apothem),
  };
}
