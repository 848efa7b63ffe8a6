import { checkMoisture } from "../../wood/internal.js";
import type { FrameMoisture } from "../brief/brief.js";

/**
 * Moisture of the wood where the brief names none. 8 % when it is made: the damp end of the 6 to 8 % at which lumber for furniture and cabinetry is
 * usually delivered (Forest Products Laboratory, Wood Handbook, FPL-GTR-190, p. 13-13). 6 and 12 % later: what wood comes to at 21 °C in a heated room of
 * 30 % humidity and in a damp one of 65 %, by the handbook's eq. (4-5), to half of a percent; those two climates are common practice, no printed source.
 */
const USUAL_MOISTURE: FrameMoisture = { made: 8, seasons: [6, 12] };

/**
 * Temperatures of what goes in, in degrees Celsius, where the brief names no climate: put in at 20, later an unheated room at 5 and a sunlit wall at 40.
 * Common practice, no printed source.
 */
const USUAL_TEMPERATURES: Year = { made: 20, seasons: [5, 40] };

/** A quantity when the frame is made, and what it will be later. */
export interface Year {
  /** When the joints are glued and the contents put in. */
  readonly made: number;
  /** Later, one or more. */
  readonly seasons: readonly number[];
}

/** The moisture of the wood over a brief's seasons. By default 8 % when made, then 6 and 12 %. */
export function moistureYear(moisture: FrameMoisture = USUAL_MOISTURE): Year {
  const { made, seasons } = moisture;
  return {
    made: checkMoisture(made, "moisture.made"),
    seasons: seasons.map((season, index) => checkMoisture(season, `moisture.seasons[${index}]`)),
  };
}

/**
 * The temperature of what goes in over a brief's seasons: those of the climates that the brief names, and the usual ones where it names none.
 */
export function temperatureYear(moisture: FrameMoisture | undefined): Year {
  const { made, seasons } = USUAL_TEMPERATURES;
  const named = (moisture?.seasons ?? []).flatMap((season) => (typeof season === "number" ? [] : [season.temperature]));
  const first = moisture?.made;
  return {
    made: typeof first === "object" ? first.temperature : made,
    seasons: named.length === 0 ? seasons : named,
  };
}
