import { checkObject, checkRange } from "../core/check.js";
import type { EitherField, Field, Fields, NumberField } from "../core/field.js";

/** The air that wood or a sheet is in. */
export interface Climate {
  /** Temperature in degrees Celsius, -20 to 100. */
  readonly temperature: number;
  /** Relative humidity in percent, 0 to 100. */
  readonly humidity: number;
}

/**
 * How moist wood is: its moisture content in percent of its ovendry mass, 0 to 300, or the climate with which it is in
 * balance.
 */
export type Moisture = number | Climate;

/** How a climate's fields are read. */
const CLIMATE: Fields<Climate> & Readonly<Record<keyof Climate, NumberField>> = {
  temperature: { kind: "number", min: -20, max: 100, what: "degrees Celsius from -20 to 100" },
  humidity: { kind: "number", min: 0, max: 100, what: "percent from 0 to 100" },
};
const CONTENT: NumberField = {
  kind: "number",
  min: 0,
  max: 300,
  what: "a moisture content in percent (0 to 300) or a climate",
};
/** How a moisture is read. */
export const MOISTURE: EitherField<Field<Moisture>> = {
  kind: "either",
  of: [CONTENT, { kind: "record", fields: CLIMATE }],
  which: (value) => (typeof value === "object" ? 1 : 0),
};

/** Equilibrium moisture content, unchecked: the model of the Wood Handbook's eq. (4-5), in degrees Celsius. */
function equilibriumKernel(t: number, humidity: number): number {
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = (k * humidity) / 100;
  const one = k1 * kh;
  const two = one * k2 * kh;
  return (1800 / w) * (kh / (1 - kh) + (one + 2 * two) / (1 + one + two));
}

/** A climate. The path is empty for a function's own options. */
function checkClimate(value: unknown, path: string): Climate {
  const given = checkObject(value, path === "" ? "options" : path);
  const at = path === "" ? "" : `${path}.`;
  return {
    temperature: checkRange(given["temperature"], `${at}temperature`, CLIMATE.temperature),
    humidity: checkRange(given["humidity"], `${at}humidity`, CLIMATE.humidity),
  };
}

/** A moisture content, given as it is or by a climate. */
export function checkMoisture(value: unknown, path: string): number {
  if (typeof value !== "object") return checkRange(value, path, CONTENT);
  const { temperature, humidity } = checkClimate(value, path);
  return equilibriumKernel(temperature, humidity);
}

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
