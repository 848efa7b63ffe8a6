import { plainCopy } from "../../core/plain-copy.js";
import { checkArray, refuse } from "../../core/check.js";
import { type Moisture } from "../../wood/index.js";
import { checkMoisture } from "../../wood/internal.js";
import type { FrameMoisture } from "./brief.js";
import { fieldsTogether, knownKeys, together } from "../../core/together.js";

/** Most seasons that a brief may name. */
const MAX_SEASONS: number = 1000;

function readOne(value: unknown, path: string): Moisture {
  together<unknown>([() => checkMoisture(value, path), knownKeys(value, path, ["temperature", "humidity"])]);
  return plainCopy(value as Moisture);
}

function readSeasons(value: unknown, path: string): Moisture[] {
  const what = "an array of one or more moistures";
  const seasons = checkArray(value, path, what);
  if (seasons.length === 0 || seasons.length > MAX_SEASONS) refuse("range", path, seasons, what);
  return together(seasons.map((season, index) => () => readOne(season, `${path}[${index}]`)));
}

/**
 * Checks the moistures that a frame is made at and will meet.
 *
 * @param value - the moistures
 * @returns the checked moistures
 */
export function readMoisture(value: unknown): FrameMoisture {
  return fieldsTogether<FrameMoisture>(value, "moisture", { made: readOne, seasons: readSeasons });
}
