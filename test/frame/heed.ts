import type { Hazard } from "miterwright/errors";
import { hazardText } from "miterwright/words";

/** What a hazard tells people to heed. */
export function heed(hazard: Hazard): string {
  return hazardText(hazard, { length: String, angle: String }).sentence;
}
