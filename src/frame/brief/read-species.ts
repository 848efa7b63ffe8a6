import { plainCopy } from "../../core/plain-copy.js";
import { type Grain, type Wood, type WoodSpecies } from "../../wood/index.js";
import { checkGrain, readWood } from "../../wood/internal.js";
import { knownKeys, together } from "../../core/together.js";

/** What a wood may have: all that `woodSpecies` gives, so that its result will do. */
const SPECIES_KEYS: readonly (keyof WoodSpecies)[] = [
  "name",
  "radial",
  "tangential",
  "coefficients",
  "fiberSaturation",
  "specificGravity",
  "seen",
];

/**
 * Checks a wood, by its name in the table or by figures of one's own.
 *
 * @param value - the wood
 * @param path - its name in error texts
 * @returns a copy of the wood as it was given
 */
export function readSpecies(value: unknown, path: string): Wood {
  const coefficients = (value as { coefficients?: unknown } | null | undefined)?.coefficients;
  together<unknown>([
    () => readWood(value, path),
    knownKeys(value, path, SPECIES_KEYS),
    knownKeys(coefficients, `${path}.coefficients`, ["radial", "tangential"]),
  ]);
  return plainCopy(value as Wood);
}

/**
 * Checks the direction of the growth rings.
 *
 * @param value - the grain
 * @param path - its name in error texts
 * @returns the grain as it was given
 */
export function readGrain(value: unknown, path: string): Grain {
  checkGrain(value, path);
  return value as Grain;
}
