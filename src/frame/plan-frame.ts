import { inOrder } from "../core/check.js";
import type { Hazard } from "../core/hazard.js";
import { planPanel, type PanelPlan } from "../panel/index.js";
import type { StockJob } from "../stock/index.js";
import type { FilledBrief, FrameBrief, MeasuredBrief, MeasuredArris, ProfileBrief } from "./brief/brief.js";
import { HAZARD_RULES } from "./hazards/hazard-rules.js";
import { containedRest } from "./contents/contained-rest.js";
import { planContents, type FrameContents } from "./contents/contents-plan.js";
import { planSawing, withHazards } from "./sawing/saw-plan.js";
import type { SawPlan } from "./sawing/saw-plan-types.js";
import { frameAssembly, type FrameAssembly } from "./closing/frame-assembly.js";
import { frameChecks, type FrameCheck } from "./closing/frame-checks.js";
import { geometryOf, type FrameGeometry } from "./frame-geometry.js";
import { frameMaterials, type FrameMaterials } from "./materials/frame-materials.js";
import { frameMovement, type FrameMovement } from "./materials/frame-movement.js";
import type { FrameHanging } from "./hanging/frame-hanging.js";
import { hangFrame } from "./hanging/hang-frame.js";
import { readBrief } from "./brief/read-brief.js";
import { sticksTooShort } from "./sawing/rough-length.js";
import { stockJobOf } from "./materials/stock-job.js";

/** A whole frame, planned: plain data that survives JSON. */
export interface FramePlan<M extends string = string> {
  /** Which form of plan it is. `parsePlan`, drawings and sheets refuse a plan of another. */
  readonly schemaVersion: 1;
  /** The brief with its defaults filled in. */
  readonly brief: FilledBrief<M>;
  /** The frame as geometry. */
  readonly geometry: FrameGeometry<M>;
  /** How the pieces are cut. */
  readonly sawing: SawPlan;
  /** The jobs to hand to `fitStock`, one for each molding; empty unless the brief offers sticks and one of them is long enough for a piece. */
  readonly stockJobs: readonly StockJob[];
  /** What goes into the frame. */
  readonly contents: FrameContents;
  /** How the panel that goes in is cut from a squared blank; `null` where the clearance leaves no panel. */
  readonly panel: PanelPlan | null;
  /** What the seasons do to the molding; `null` where the brief names no wood. */
  readonly movement: FrameMovement | null;
  /** What to measure on the pieces, on the dry frame and on the glued one. */
  readonly checks: readonly FrameCheck[];
  /** How it is put together, and what its last joint asks of the saw. */
  readonly assembly: FrameAssembly;
  /** What it takes, weighs and costs. */
  readonly materials: FrameMaterials;
  /** How it hangs; `null` where the brief does not hang it. */
  readonly hanging: FrameHanging | null;
  /** Every hazard of the plan; the first is that the contents miss the lip, where they do. */
  readonly hazards: readonly Hazard[];
}

/**
 * Plans a whole frame from a brief: its geometry, how its pieces are cut, what goes in, what to check and to beware of.
 *
 * It never fits stock itself: hand each of its `stockJobs` to `fitStock`, here, async or in a worker.
 *
 * @param brief - sides, slope, opening, molding, saw and sticks; see {@link FrameBrief}
 * @returns the plan, in the brief's length unit and degrees
 * @throws {InputError} for the brief's first issue (`tryParseBrief` reports all), or when the opening is so tight that a piece would have no length at some edge
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 *
 * const plan = planFrame({
 *   sides: 5,
 *   slope: 20,
 *   opening: { contains: { width: 200, height: 150 } },
 *   profile: molding({ width: 45, thickness: 18, rabbet: { width: 8, depth: 10 } }),
 *   contents: [{ name: "glass", thickness: 2 }],
 *   clearance: 1.5,
 * });
 * plan.contents.possible; //=> true
 * plan.sawing.operations.length; //=> 2
 * ```
 */
export function planFrame<M extends string>(brief: ProfileBrief<M>): FramePlan<M>;
/**
 * The same for a molding that is known by level measures alone.
 *
 * @param brief - sides, slope, opening, level measures, saw and sticks
 * @returns the plan; heights are `null`
 * @throws {InputError} for the brief's first issue, or when the opening is too tight
 */
export function planFrame(brief: MeasuredBrief): FramePlan<MeasuredArris>;
/**
 * The same for a brief of either kind.
 *
 * @param brief - sides, slope, opening, molding, saw and sticks
 * @returns the plan
 * @throws {InputError} for the brief's first issue, or when the opening is too tight
 */
export function planFrame(brief: FrameBrief): FramePlan;
export function planFrame(brief: FrameBrief): FramePlan {
  const filled = readBrief(brief, inOrder);
  const { kerf, rough, saw, unit, acceptedGap, lay, shows, sticks, clearance, pose } = filled;
  const geometry = geometryOf(filled);
  const sawingFacts = planSawing(geometry, { saw, kerf, rough, unit, acceptedGap, lay, shows });
  const { sawing } = sawingFacts;
  const movement = frameMovement(filled, geometry);
  const contents = planContents(filled, geometry, movement);
  const materials = frameMaterials(filled, geometry, sawing.rough, contents);
  const hanging = hangFrame(filled, geometry, materials.mass);
  const rest = containedRest(filled, geometry);
  const panel = contents.panel === null ? null : planPanel({ polygon: geometry.opening, clearance, pose });
  const facts = { ...sawingFacts, brief: filled, contents, rest, panel, materials, movement, hanging };
  const raised = HAZARD_RULES.flatMap((rule) => rule(facts));
  const tooShort = sticksTooShort(sticks ?? [], sawing.rough);
  return {
    schemaVersion: 1,
    brief: filled,
    geometry,
    sawing: withHazards(sawingFacts, raised),
    stockJobs: sticks === undefined || tooShort ? [] : [stockJobOf(geometry, { kerf, rough, sticks })],
    contents,
    panel,
    movement,
    checks: frameChecks(geometry, sawing.operations.at(-1)?.measure ?? null, acceptedGap),
    assembly: frameAssembly(geometry, sawing, acceptedGap),
    materials,
    hanging,
    hazards: raised.map(({ hazard }) => hazard),
  };
}
