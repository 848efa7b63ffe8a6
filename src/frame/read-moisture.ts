import { checkArray, checkObject, refuse } from "../core/check.js";
import { checkMoisture, type Moisture } from "../wood/moisture.js";
import type { FrameMoisture } from "./brief.js";

/** Most seasons that a brief may name. */
const MAX_SEASONS: number = 1000;

function readOne(value: unknown, path: string): Moisture {
  checkMoisture(value, path);
  return value as Moisture;
}

/**
 * Checks the moistures that a frame is made at and will meet.
 *
 * @param value - the moistures
 * @returns the checked moistures
 */
export function readMoisture(value: unknown): FrameMoisture {
  const moisture = checkObject(value, "moisture");
  const what = "an array of one or more moistures";
  const seasons = checkArray(moisture["seasons"], "moisture.seasons", what);
  if (seasons.length === 0 || seasons.length > MAX_SEASONS) refuse("range", "moisture.seasons", seasons, what);
  return {
    made: readOne(moisture["made"], "moisture.made"),
    seasons: seasons.map((season, index) => readOne(season, `moisture.seasons[${index}]`)),
  };
}
