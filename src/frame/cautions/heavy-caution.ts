import type { Caution } from "../../core/caution.js";
import { makeCaution } from "./make-caution.js";

/** A frame of this mass is no longer lifted onto a wall by one person on a ladder, in kilograms; common practice, no printed source. */
const ONE_PERSON: number = 10;
/** A frame of this mass is hung by people who do so for a living, in kilograms; common practice, no printed source. */
const QUALIFIED: number = 25;

/**
 * The caution of a heavy frame. What is not known of its mass only adds to it.
 *
 * @param mass - all mass that is known, in kilograms; `null` where none is
 * @returns the caution, or none
 */
export function heavyCaution(mass: number | null): Caution[] {
  if (mass === null || mass < ONE_PERSON) return [];
  if (mass < QUALIFIED) {
    const sentence =
      "The frame is heavy: lift and hang it with two people, into studs or masonry, and not over a bed, a seat or a way through unless somebody qualified has seen wall and fixings.";
    return [makeCaution("heavy", "care", sentence, { mass: { mass, limit: ONE_PERSON } })];
  }
  const sentence =
    "The frame is so heavy that it can kill when it falls: have somebody qualified choose wall, fixings and hangers by the local codes, and hang nothing of the kind over people.";
  return [makeCaution("heavy", "danger", sentence, { mass: { mass, limit: QUALIFIED } })];
}
