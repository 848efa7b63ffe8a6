import { checkLength, checkObject, checkRange, checkWord } from "../core/check.js";
import { checkGrain, strainAcross, woodStrain, type Grain } from "./grain.js";
import { checkMoisture, type Moisture } from "./moisture.js";
import { readWood } from "./read-wood.js";
import type { Wood } from "./wood-species.js";

/** Lowest moisture content for which change coefficients hold, in percent (Wood Handbook, eq. (13-2)). */
const COEFFICIENT_MIN: number = 6;
/** Highest moisture content for which change coefficients hold, in percent (the same). */
const COEFFICIENT_MAX: number = 14;

/** Options of {@link seasonalMovement}. */
export interface SeasonalMovementOptions {
  /** The wood, by its name in the table or by figures of your own. */
  readonly species: Wood;
  /** Size of the board across the grain at moisture `from`, in any unit, 1e-100 to 1e100. */
  readonly width: number;
  /** How the growth rings run at the board's end: `"flat-sawn"`, `"rift-sawn"`, `"quarter-sawn"`, or their angle to the face in degrees, 0 to 90. */
  readonly grain: Grain;
  /** Moisture before: a content in percent, 0 to 300 (with coefficients 6 to 14), or the climate that leads to it. */
  readonly from: Moisture;
  /** Moisture after, likewise. */
  readonly to: Moisture;
  /** By the shrinkage from green to ovendry (default), or by the coefficient per percent of moisture, which holds from 6 to 14 %. */
  readonly method?: "shrinkage" | "coefficient" | undefined;
}

/** How much a board moves across its grain. */
export interface SeasonalMovement {
  /** Change of the width, in its unit; positive when it swells. */
  readonly change: number;
  /** The same as a fraction of the width. */
  readonly fraction: number;
  /** The width at moisture `to`. */
  readonly width: number;
  /** Moisture content before, in percent. */
  readonly from: number;
  /** Moisture content after, in percent. */
  readonly to: number;
}

/**
 * How much a board moves across its grain from one moisture content to another.
 *
 * By shrinkage: a wood that shrinks by S percent from green to ovendry has at moisture M, below fiber saturation F, the size 1 - S (F - M) / (100 F) of its green one,
 * so the change is width (to - from) / (100 F / S - F + from). By coefficient: width C (to - from), where C goes by the size at 10 %. Between growth rings along the face
 * and square to it, the width is a line that stretches radially and tangentially at once. Along the grain wood hardly moves; that is left out. All figures are averages of
 * a species: where a board's own moisture and movement can be measured, go by them.
 *
 * @param options - the wood, the width, how the rings run, the moisture before and after, and by which method
 * @returns the change and the new width in the width's unit, and both moisture contents in percent
 * @throws {InputError} when the wood is unknown, a value is missing or out of range, or a coefficient is asked for beyond 6 to 14 %
 * @example
 * ```ts
 * import { seasonalMovement } from "miterwright/wood";
 *
 * const board = seasonalMovement({ species: "white fir", width: 232, grain: "flat-sawn", from: 8, to: 11, method: "coefficient" });
 * board.change; //=> 1.7052
 * const winter = { temperature: 21, humidity: 30 };
 * const summer = { temperature: 24, humidity: 65 };
 * seasonalMovement({ species: "white oak", width: 100, grain: "quarter-sawn", from: winter, to: summer }).change.toFixed(2); //=> "1.11"
 * ```
 * @see Forest Products Laboratory, Wood Handbook, FPL-GTR-190, 2010, eq. (13-2), p. 13-15 (the coefficient), and eq. (13-3), p. 13-17 (the shrinkage; recalled, and derived in the guide on wood)
 */
export function seasonalMovement(options: SeasonalMovementOptions): SeasonalMovement {
  const given = checkObject(options);
  const wood = readWood(given["species"]);
  const width = checkLength(given["width"], "width");
  const rings = checkGrain(given["grain"]);
  const from = checkMoisture(given["from"], "from");
  const to = checkMoisture(given["to"], "to");
  const method = checkWord(given["method"] ?? "shrinkage", "method", ["shrinkage", "coefficient"]);
  let fraction: number;
  if (method === "shrinkage") fraction = woodStrain(wood, rings, from, to);
  else {
    for (const [path, moisture] of [
      ["from", from],
      ["to", to],
    ] as const) {
      const within = "a moisture content from 6 to 14, where coefficients hold";
      checkRange(moisture, path, { min: COEFFICIENT_MIN, max: COEFFICIENT_MAX, what: within });
    }
    const { radial, tangential } = wood.coefficients;
    fraction = strainAcross(rings, radial * (to - from), tangential * (to - from)) + 0;
  }
  const change = width * fraction + 0;
  return { change, fraction, width: width + change, from, to };
}
