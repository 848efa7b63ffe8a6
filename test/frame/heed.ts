import type { Hazard } from "miterwright/errors";
import { hazardText } from "miterwright/words";
import { formatsWith } from "../formats.js";

/** What a hazard tells people to heed. */
export function heed(hazard: Hazard): string {
  return hazardText(hazard, { formats: formatsWith() }).sentence;
}
