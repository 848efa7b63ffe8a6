import { cosDeg, sinDeg } from "../../core/degrees.js";
import { machineErrors, type MachineErrors } from "../../closure/index.js";
import { gapPerDegree } from "../../closure/internal.js";
import { compoundMiterKernel } from "../../miter/internal.js";
import type { SawSetting } from "../../miter/index.js";
import type { FrameGeometry } from "../frame-geometry.js";
import type { LayResult } from "../sawing/lay-result.js";
import { flatTwin, lyingFlat } from "../sawing/lying-plane.js";

/** What can be wrong with a saw: the gauge off square, its scale, the blade off upright, its scale. */
export type SawFault = keyof MachineErrors["effect"];

/** What a fault of a saw can bring about, to first order. `leaves-step`: the pieces climb like a stair and leave a step at the last one. */
export type SawFaultOutcome = "opens-last-joint" | "dishes-frame" | "changes-slope" | "leaves-step";

/** What one fault of a saw does to the frame. */
export interface SawFaultEffect {
  /** The fault. */
  readonly fault: SawFault;
  /** Whether it adds up where two ends meet or cancels there; `idle` where the angle is not set. */
  readonly effect: "adds" | "cancels" | "idle";
  /** The gap that a tenth of a degree of it makes at the last joint; 0 where it cancels, which leaves less than can be seen. */
  readonly jointGap: number;
  /** By how many degrees a tenth of a degree of it changes the slope, either way: how far it dishes the frame. */
  readonly slopeOff: number;
  /** Height of the step that a tenth of a degree of it makes at the last joint: where ends differ, the pieces of a splayed frame climb like a stair. */
  readonly step: number;
  /** What comes of it; empty where nothing does. */
  readonly outcomes: readonly SawFaultOutcome[];
}

/** What the faults of a saw do to the frame, as its pieces are moved between their ends. */
export interface SawErrors {
  /** How the stick comes from the cut of its end to that of its start: end for end with the other edge at the fence, or past the blade. */
  readonly move: "flip-end-for-end" | "slide-past-the-blade";
  /** The faults. */
  readonly faults: readonly SawFaultEffect[];
}

/** The error that effects are told for, in degrees: the width of a line on most scales. */
const TENTH: number = 0.1;
/** An angle does nothing to first order where its share of the turn or of the slope is below this. */
const NOTHING: number = 1e-9;

/**
 * What the faults of a saw do to a frame, in its lay and with its move.
 *
 * Rolled by r away from its place in the frame, a stick is cut like a stick that lies flat, of a frame of slope r. So errors add up or cancel, open and tip as
 * in that frame. Errors that are opposite at both ends leave the pieces climbing by what they are worth in the frame itself.
 */
export function sawErrors(geometry: FrameGeometry, width: number, lay: LayResult): SawErrors {
  const { sides, slope } = geometry;
  const { first, second, rotation } = lay;
  const move = first.kept === second.kept ? "flip-end-for-end" : "slide-past-the-blade";
  const twin = flatTwin(rotation);
  const exact = compoundMiterKernel(180 / sides, twin);
  const perDegree = gapPerDegree(sides, width);
  const climb = (end: SawSetting, start: SawSetting): number => {
    const [a, b] = [end, start].map(
      (error) => lyingFlat({ miter: exact.miter + error.miter, bevel: exact.bevel + error.bevel }, slope - twin).miter,
    ) as [number, number];
    return Math.abs(sides * sinDeg(slope) * sinDeg((a - b) / 2)) * geometry.pieces[0].longest.length;
  };
  const effectOf = (fault: SawFault): SawFaultEffect => {
    const { effect, angle, slopeOff, end, start } = machineErrors({
      sides,
      slope: twin,
      move,
      kept: first.kept,
      [fault]: TENTH,
    });
    const scale = fault === "square" || fault === "swing" ? "miter" : "bevel";
    const isSet = first[scale].toward !== "none";
    const does = (fault === "swing" || fault === "lean") && !isSet ? "idle" : effect[fault];
    if (does === "idle") return { fault, effect: does, jointGap: 0, slopeOff: 0, step: 0, outcomes: [] };
    if (does === "cancels") {
      const step = climb(end, start);
      return { fault, effect: does, jointGap: 0, slopeOff: 0, step, outcomes: step > 0 ? ["leaves-step"] : [] };
    }
    // To first order a miter opens by cos r and tips by sin r, a bevel the other way round.
    const [opening, tipping] = scale === "miter" ? [cosDeg(twin), sinDeg(twin)] : [sinDeg(twin), cosDeg(twin)];
    const outcomes: SawFaultOutcome[] = [];
    if (Math.abs(opening) >= NOTHING) outcomes.push("opens-last-joint");
    if (Math.abs(tipping) >= NOTHING) outcomes.push(slope === 0 ? "dishes-frame" : "changes-slope");
    return {
      fault,
      effect: does,
      jointGap: Math.abs(angle) * perDegree,
      slopeOff: Math.abs(slopeOff),
      step: 0,
      outcomes,
    };
  };
  return { move, faults: (["square", "swing", "upright", "lean"] as const).map(effectOf) };
}
