import { checkArray, checkObject, refuse } from "../core/check.js";
import { checkMoisture, type Moisture } from "../wood/moisture.js";
import type { FrameMoisture } from "./brief.js";
import { fieldsTogether, together } from "./together.js";

/** Most seasons that a brief may name. */
const MAX_SEASONS: number = 1000;

function readOne(value: unknown, path: string): Moisture {
  checkMoisture(value, path);
  return value as Moisture;
}

function readSeasons(value: unknown): Moisture[] {
  const what = "an array of one or more moistures";
  const seasons = checkArray(value, "moisture.seasons", what);
  if (seasons.length === 0 || seasons.length > MAX_SEASONS) refuse("range", "moisture.seasons", seasons, what);
  return together(seasons.map((season, index) => () => readOne(season, `moisture.seasons[${index}]`)));
}

/**
 * Checks the moistures that a frame is made at and will meet.
 *
 * @param value - the moistures
 * @returns the checked moistures
 */
export function readMoisture(value: unknown): FrameMoisture {
  const moisture = checkObject(value, "moisture");
  return fieldsTogether<FrameMoisture>({
    made: () => readOne(moisture["made"], "moisture.made"),
    seasons: () => readSeasons(moisture["seasons"]),
  });
}
