import { checkObject, reject } from "../core/check.js";
import { checkMoisture, type Moisture } from "./moisture.js";
import { readWood } from "./read-wood.js";
import { moistureStrain } from "./shrinkage.js";
import type { Wood } from "./wood-species.js";

/** Mass of a cubic meter of water, in kilograms. */
const WATER: number = 1000;
/** Moisture content at which specific gravities are listed, in percent. */
const LISTED_AT: number = 12;

/** Options of {@link woodDensity}. */
export interface WoodDensityOptions {
  /** The wood, by its name in the table or by figures of your own; its specific gravity must be known. */
  readonly species: Wood;
  /** Its moisture: a content in percent, 0 to 300, or the climate that leads to it; default 12. */
  readonly moisture?: Moisture | undefined;
}

/**
 * Density of a wood at a moisture content.
 *
 * Specific gravity G is ovendry mass over the mass of water of the volume at 12 %. At moisture M the wood weighs 1 + M / 100 times as much as ovendry, and its
 * volume is that at 12 % times what it has moved radially and tangentially since: 1000 G (1 + M / 100) / ((1 + r)(1 + t)).
 *
 * @param options - the wood and its moisture
 * @returns kilograms per cubic meter
 * @throws {InputError} when the wood is unknown or its specific gravity is, or the moisture is out of range
 * @example
 * ```ts
 * import { woodDensity } from "miterwright/wood";
 *
 * woodDensity({ species: "black cherry" }); //=> 560
 * woodDensity({ species: "black cherry", moisture: 8 }).toFixed(0); //=> "548"
 * ```
 * @see Forest Products Laboratory, Wood Handbook, FPL-GTR-190, 2010, chapter 4 (density and specific gravity)
 */
export function woodDensity(options: WoodDensityOptions): number {
  const given = checkObject(options);
  const { name, specificGravity, radial, tangential, fiberSaturation } = readWood(given["species"]);
  const moisture = checkMoisture(given["moisture"] ?? LISTED_AT, "moisture");
  if (specificGravity === null) {
    const whose = name === null ? "" : ` of "${name}"`;
    return reject(
      "missing",
      "species.specificGravity",
      given["species"],
      `Expected the specific gravity${whose} to be known; give an object with \`specificGravity\` as \`species\``,
    );
  }
  const across = 1 + moistureStrain(radial, fiberSaturation, LISTED_AT, moisture);
  const along = 1 + moistureStrain(tangential, fiberSaturation, LISTED_AT, moisture);
  return (WATER * specificGravity * (100 + moisture)) / 100 / (across * along);
}
