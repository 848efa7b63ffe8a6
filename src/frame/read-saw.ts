import { parseSaw, type BevelScale, type MiterScale, type Saw } from "../saw/index.js";
import { knownKeys, together } from "./together.js";

const SAW_KEYS: readonly (keyof Saw)[] = ["fence", "miter", "bevel", "depth", "depthAt45", "crosscut", "gaugeReach"];
const SCALE_KEYS: readonly (keyof MiterScale & keyof BevelScale)[] = ["left", "right", "reads", "step"];

/**
 * Checks a brief's saw: the first thing that is wrong with its measures, and every key that a saw does not have.
 *
 * @param value - the saw
 * @returns the checked saw
 */
export function readSaw(value: unknown): Saw {
  const { miter, bevel } = (value ?? {}) as { miter?: unknown; bevel?: unknown };
  const [saw] = together<unknown>([
    () => parseSaw(value, "saw"),
    knownKeys(value, "saw", SAW_KEYS),
    knownKeys(miter, "saw.miter", SCALE_KEYS),
    knownKeys(bevel, "saw.bevel", SCALE_KEYS),
  ]);
  return saw as Saw;
}
