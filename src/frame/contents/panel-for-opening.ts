import { checkFields, checkObject, checkWord } from "../../core/check.js";
import { measuredOpening, type MeasuredOpening, type OpeningMeasures } from "../../closure/index.js";
import type { OneOf } from "../../core/geometry-types.js";
import { planPanel, type PanelPlan } from "../../panel/index.js";
import { offsetPolygon } from "../../polygon/index.js";
import { readStored } from "../../core/stored.js";
import { checkGeometry } from "../check-geometry.js";
import { frameChecks } from "../stored/assembly.js";
import { filledBrief } from "../stored/brief.js";
import { openingArris } from "../closing/frame-checks.js";
import type { FrameGeometry } from "../frame-geometry.js";
import type { FramePlan } from "../plan-frame.js";

/** Options of {@link panelForOpening}. */
export interface OpeningPanelOptions {
  /** Where the measures were taken: the name of an arris, or `opening` for the line where the contents touch; default the `arris` of the plan's glued checks. */
  readonly at?: string | undefined;
}

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

/** How much farther from the center than the line where the contents touch an arris is. */
function beyondContents(geometry: FrameGeometry, at: unknown): number {
  if (at === undefined) return openingArris(geometry).beyond;
  const names = ["opening", ...Object.keys(geometry.arrises)];
  const name = checkWord(at, "at", names);
  return name === "opening" ? 0 : geometry.arrises[name]!.out - geometry.deciding.out;
}

/**
 * The panel from the measured opening of the glued frame, instead of the planned one.
 *
 * Measure where the plan's glued checks say: in the rabbet, or where a sloping frame's wall leans at its edge at the back. From there the opening at the line where the
 * contents touch follows. The largest regular opening that the measures vouch for takes the place of the planned one; clearance and pose stay those of the plan. An opening
 * whose measures differ by more than the clearance takes no panel without a gap on one side: look at `spread`.
 *
 * @param plan - from `planFrame`; also one that was read back from JSON
 * @param measures - exactly one of `acrossFlats` (n/2 lengths from side to side, for odd n n lengths from corner to side) and `fromCenter` (n lengths from one point to every side)
 * @param options - where else it was measured
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
export function panelForOpening(
  plan: FramePlan,
  measures: OneOf<OpeningMeasures>,
  options: OpeningPanelOptions = {},
): OpeningPanel {
  const given = checkObject(plan, "plan");
  const brief = readStored(given["brief"], "plan.brief", filledBrief);
  const geometry = checkGeometry(given["geometry"], "plan.geometry");
  const checks = readStored(given["checks"], "plan.checks", frameChecks);
  const { acrossFlats, apothem } = geometry.opening;
  const beyond = beyondContents(geometry, checkFields(options, "", ["at"])["at"]);
  const measured = measuredOpening({ ...checkObject(measures, "measures"), sides: brief.sides } as never);
  const polygon = beyond === 0 ? measured.polygon : offsetPolygon(measured.polygon, -beyond);
  const { clearance, pose } = brief;
  const panel = planPanel({ polygon, clearance, pose });
  const difference = polygon.acrossFlats - acrossFlats;
  const tolerance = checks.find((check) => check.code === "glued-across-flats")?.tolerance ?? null;
  return {
    ...measured,
    polygon,
    panel,
    difference,
    tolerance,
    within: tolerance === null ? null : Math.abs(difference) <= tolerance,
    clearanceLeft: clearance + (polygon.apothem - apothem),
  };
}
