import type { Hazard } from "../../core/hazard.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { FrameHanging, HangerSeat, HangingWire, HungFrame } from "../hanging/frame-hanging.js";
import type { RoundLength } from "./round-length.js";
import { ruleLength } from "./common-practice.js";
import { makeHazard } from "./make-hazard.js";

/** Below this angle each half of a wire pulls more than the whole frame weighs, in degrees: 1 / (2 sin 30°) is 1. */
const FLAT_WIRE: number = 30;
/** A hanger is no wider than the plate of a small one; common practice, no printed source. */
const LEAST_SURFACE: RoundLength = { millimeters: 10, inches: 0.375 };
/** A hanger on a surface that leans more than this is pulled askew, in degrees; common practice, no printed source. */
const LEANING: number = 10;

function seatHazards(seat: HangerSeat, unit: LengthUnit): Hazard[] {
  const { screwDepth, screwFits, wood, deepest, width, leanAngle } = seat;
  const hazards: Hazard[] = [];
  if (screwFits === false && screwDepth !== null) {
    hazards.push(
      makeHazard("long-screws", "caution", {
        quantities: { length: { screw: screwDepth, wood, deepest } },
        facts: { points: screwDepth < wood ? "near-face" : "through" },
      }),
    );
  }
  const limit = ruleLength(LEAST_SURFACE, unit);
  if (width < limit) {
    hazards.push(makeHazard("narrow-hanger-seat", "caution", { quantities: { length: { width, limit } } }));
  }
  if (Math.abs(leanAngle) > LEANING) {
    const angle = { leanAngle, limit: LEANING };
    hazards.push(makeHazard("leaning-hanger-seat", "caution", { quantities: { angle } }));
  }
  return hazards;
}

function wireHazards({ angle, belowTop }: HangingWire, { share }: HungFrame["load"]): Hazard[] {
  const hazards: Hazard[] = [];
  if (angle < FLAT_WIRE) {
    const quantities = { angle: { angle, limit: FLAT_WIRE }, percent: { pull: 100 * share } };
    hazards.push(makeHazard("flat-wire", "caution", { quantities, source: "equilibrium of the wire" }));
  }
  if (belowTop < 0) {
    const quantities = { length: { above: -belowTop } };
    hazards.push(makeHazard("hook-shows", "notice", { quantities, source: "geometry of the wire" }));
  }
  return hazards;
}

/**
 * The hazards of hanging.
 *
 * @param hanging - how the frame hangs; `null` where it does not
 * @param unit - unit of the lengths
 * @returns the hazards
 */
export function hangingHazards(hanging: FrameHanging | null, unit: LengthUnit): Hazard[] {
  if (hanging === null) return [];
  if (!hanging.possible) return [makeHazard("no-hanger-seat", "notice", { source: "geometry of the profile" })];
  const { seat, wire, load } = hanging;
  const hazards = [
    ...(seat === null ? [] : seatHazards(seat, unit)),
    ...(wire === null ? [] : wireHazards(wire, load)),
  ];
  if (!load.complete) hazards.push(makeHazard("mass-not-known", "caution", {}));
  return hazards;
}
