import type { Hazard } from "../../core/hazard.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import { isInches } from "./round-length.js";
import { makeHazard } from "./make-hazard.js";

/** A pound in kilograms (international yard and pound agreement, 1959). */
const POUND = 0.45359237;

/** A mass of common practice, round in either system. */
interface RoundMass {
  readonly kilograms: number;
  readonly pounds: number;
}

/** A frame of this mass is no longer lifted onto a wall by one person on a ladder; common practice, no printed source. */
const ONE_PERSON: RoundMass = { kilograms: 10, pounds: 20 };
/** A frame of this mass is hung by people who do so for a living; common practice, no printed source. */
const QUALIFIED: RoundMass = { kilograms: 25, pounds: 50 };

/**
 * The hazard of a heavy frame. What is not known of its mass only adds to it.
 *
 * @param mass - all mass that is known, in kilograms; `null` where none is
 * @param unit - the plan's unit, which says in which system the limits are round
 * @returns the hazard, or none
 */
export function heavyHazard(mass: number | null, unit: LengthUnit): Hazard[] {
  const limitOf = ({ kilograms, pounds }: RoundMass): number => (isInches(unit) ? pounds * POUND : kilograms);
  const [onePerson, qualified] = [limitOf(ONE_PERSON), limitOf(QUALIFIED)];
  if (mass === null || mass < onePerson) return [];
  const isDeadly = mass >= qualified;
  const limit = isDeadly ? qualified : onePerson;
  return [makeHazard("heavy", isDeadly ? "danger" : "warning", { quantities: { mass: { mass, limit } } })];
}
