import { isInches, POUND } from "../../core/unit-sizes.js";
import type { HangerSeat, HangingWire } from "../hanging/frame-hanging.js";
import { roundLength, type RoundLength } from "../round-length.js";
import { COMPUTED, raise, type HazardRule, type PlanFacts } from "./hazard-rule.js";

/** A mass of common practice, round in either system. */
interface RoundMass {
  readonly kilograms: number;
  readonly pounds: number;
}

/** A frame of this mass is no longer lifted onto a wall by one person on a ladder; common practice, no printed source. */
const ONE_PERSON: RoundMass = { kilograms: 10, pounds: 20 };
/** A frame of this mass is hung by people who do so for a living; common practice, no printed source. */
const QUALIFIED: RoundMass = { kilograms: 25, pounds: 50 };
/** Below this angle each half of a wire pulls more than the whole frame weighs, in degrees: 1 / (2 sin 30°) is 1. */
const FLAT_WIRE: number = 30;
/** A hanger is no wider than the plate of a small one; common practice, no printed source. */
const LEAST_SURFACE: RoundLength = { millimeters: 10, inches: 0.375 };
/** A hanger on a surface that leans more than this is pulled askew, in degrees; common practice, no printed source. */
const LEANING: number = 10;

/** The mass that hangs, or that is lifted where nothing hangs. What is not known of it only adds to it. */
export const heavy: HazardRule = ({ materials, hanging, unit }) => {
  const mass = hanging?.possible === true ? hanging.load.mass : materials.mass.total;
  const limitOf = ({ kilograms, pounds }: RoundMass): number => (isInches(unit) ? pounds * POUND : kilograms);
  const [onePerson, qualified] = [limitOf(ONE_PERSON), limitOf(QUALIFIED)];
  if (mass === null || mass < onePerson) return [];
  const isDeadly = mass >= qualified;
  const limit = isDeadly ? qualified : onePerson;
  return raise("heavy", isDeadly ? "danger" : "warning", { quantities: { mass: { mass, limit } } });
};

/** No surface at the back that a hanger could be screwed to. */
export const noSeat: HazardRule = ({ hanging }) =>
  hanging?.possible === false ? raise("no-hanger-seat", "notice", { source: COMPUTED }) : [];

/** Where a hanger is screwed on, and the wire, each where there is one. */
function seatOf({ hanging }: PlanFacts): HangerSeat | null {
  return hanging?.possible === true ? hanging.seat : null;
}
function wireOf({ hanging }: PlanFacts): HangingWire | null {
  return hanging?.possible === true ? hanging.wire : null;
}

/** Screws that end too near the face, or come out of it. */
export const longScrews: HazardRule = (facts) => {
  const seat = seatOf(facts);
  if (seat?.screwFits !== false || seat.screwDepth === null) return [];
  const { screwDepth, wood, deepest } = seat;
  return raise("long-screws", "caution", {
    quantities: { length: { screw: screwDepth, wood, deepest } },
    facts: { points: screwDepth < wood ? "near-face" : "through" },
  });
};

/** A surface too narrow for the plate of a hanger. */
export const narrowSeat: HazardRule = (facts) => {
  const width = seatOf(facts)?.width ?? Infinity;
  const limit = roundLength(LEAST_SURFACE, facts.unit);
  return width < limit ? raise("narrow-hanger-seat", "caution", { quantities: { length: { width, limit } } }) : [];
};

/** A surface that leans, so that a hanger is pulled askew. */
export const leaningSeat: HazardRule = (facts) => {
  const leanAngle = seatOf(facts)?.leanAngle ?? 0;
  if (!(Math.abs(leanAngle) > LEANING)) return [];
  return raise("leaning-hanger-seat", "caution", { quantities: { angle: { leanAngle, limit: LEANING } } });
};

/** A wire so flat that each half pulls more than the whole frame weighs. */
export const flatWire: HazardRule = ({ hanging }) => {
  if (hanging?.possible !== true || hanging.wire === null || hanging.wire.angle >= FLAT_WIRE) return [];
  const quantities = {
    angle: { angle: hanging.wire.angle, limit: FLAT_WIRE },
    percent: { pull: 100 * hanging.load.share },
  };
  return raise("flat-wire", "caution", { quantities, source: COMPUTED });
};

/** A wire whose hook shows above the frame. */
export const hookShows: HazardRule = (facts) => {
  const belowTop = wireOf(facts)?.belowTop ?? 0;
  if (!(belowTop < 0)) return [];
  return raise("hook-shows", "notice", {
    quantities: { length: { above: -belowTop } },
    source: COMPUTED,
  });
};

/** A frame that hangs, of which not all masses are known. */
export const massNotKnown: HazardRule = ({ hanging }) =>
  hanging?.possible === true && !hanging.load.complete ? raise("mass-not-known", "caution", {}) : [];
