import type { Hazard } from "miterwright/errors";
import { describeHazard } from "miterwright/words";

/** What a hazard tells people to heed. */
export function heed(hazard: Hazard): string {
  return describeHazard(hazard, { length: String, angle: String }).sentence;
}
