import type { Hazard } from "../../core/hazard.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { FrameHanging, HangerSeat, HangingWire, HungFrame } from "../hanging/frame-hanging.js";
import type { RoundLength } from "../round-length.js";
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
    const sentence =
      screwDepth < wood
        ? "The hangers' screws leave little wood before their points and can split it or push it out of the face: use shorter ones."
        : "The hangers' screws are longer than the wood is thick where they go in, and come out at the other side: use shorter ones.";
    hazards.push(makeHazard("long-screws", "caution", sentence, { length: { screw: screwDepth, wood, deepest } }));
  }
  const limit = ruleLength(LEAST_SURFACE, unit);
  if (width < limit) {
    const sentence =
      "The surface that the hangers are screwed to is narrower than most hangers, and thin wood splits: use narrow ones and drill for the screws, or screw a strip across.";
    hazards.push(makeHazard("narrow-hanger-seat", "caution", sentence, { length: { width, limit } }));
  }
  if (Math.abs(leanAngle) > LEANING) {
    const sentence =
      "The hangers do not lie flat to the wall but on a surface that leans: put wedges under them so that the pull does not pry them off, and check that the frame's back still touches the wall.";
    hazards.push(
      makeHazard("leaning-hanger-seat", "caution", sentence, { angle: { lean: leanAngle, limit: LEANING } }),
    );
  }
  return hazards;
}

function wireHazards({ angle, belowTop }: HangingWire, { share }: HungFrame["load"]): Hazard[] {
  const hazards: Hazard[] = [];
  if (angle < FLAT_WIRE) {
    const sentence =
      "The wire is so flat that each half of it pulls more than the whole frame weighs: leave it longer, or use two hooks.";
    const numbers = { angle: { angle, limit: FLAT_WIRE }, percent: { pull: 100 * share } };
    hazards.push(makeHazard("flat-wire", "caution", sentence, numbers, "equilibrium of the wire"));
  }
  if (belowTop < 0) {
    const sentence = "At this angle the hook shows above the frame: use a flatter wire or two hooks.";
    hazards.push(
      makeHazard("hook-shows", "notice", sentence, { length: { above: -belowTop } }, "geometry of the wire"),
    );
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
  if (!hanging.possible) {
    const sentence =
      "No surface of the molding lies toward the wall at this slope, so a hanger has nothing to lie on: hang the frame by a cleat or a bracket of its own.";
    return [makeHazard("no-hanger-seat", "notice", sentence, {}, "geometry of the profile")];
  }
  const { seat, wire, load } = hanging;
  const hazards = [
    ...(seat === null ? [] : seatHazards(seat, unit)),
    ...(wire === null ? [] : wireHazards(wire, load)),
  ];
  if (!load.complete) {
    const sentence =
      "Not all that hangs has a known mass: weigh the finished frame before you choose wire, hangers and hooks.";
    hazards.push(makeHazard("mass-not-known", "caution", sentence));
  }
  return hazards;
}
