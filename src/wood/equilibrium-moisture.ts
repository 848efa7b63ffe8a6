import { checkClimate, equilibriumKernel, type Climate } from "./moisture.js";

/**
 * The moisture content that wood comes to in a climate, if it is left there long enough.
 *
 * With h = humidity / 100 and the temperature T in degrees Celsius,
 * M = 1800 / W [K h / (1 - K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 K² h²)], where
 * W = 349 + 1.29 T + 0.0135 T², K = 0.805 + 0.000736 T - 0.00000273 T², K1 = 6.27 - 0.00938 T - 0.000303 T² and
 * K2 = 1.91 + 0.0407 T - 0.000293 T². It rises with the humidity throughout. The handbook's table goes from 30 °F (-1.1 °C) up and from
 * 5 to 95 % humidity; what lies colder, drier or damper is the same equation carried on. It is an average for softwoods and hardwoods alike:
 * a moisture meter at the board knows better.
 *
 * @param options - `temperature` in degrees Celsius from -20 to 100, and relative `humidity` in percent from 0 to 100
 * @returns moisture content in percent of the ovendry mass, 0 to 29.1
 * @throws {InputError} when a value is missing or out of range
 * @example
 * ```ts
 * import { equilibriumMoisture } from "miterwright/wood";
 *
 * equilibriumMoisture({ temperature: 21, humidity: 35 }).toFixed(1); //=> "6.9"
 * equilibriumMoisture({ temperature: 21, humidity: 65 }).toFixed(1); //=> "12.0"
 * ```
 * @see Forest Products Laboratory, Wood Handbook, FPL-GTR-282, 2021, chapter 4 (Glass and Zelinka), eq. (4-5), p. 4-3, and table 4-2, p. 4-4
 */
export function equilibriumMoisture(options: Climate): number {
  const { temperature, humidity } = checkClimate(options, "");
  return equilibriumKernel(temperature, humidity);
}
