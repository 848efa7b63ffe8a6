import { checkNumber, checkObject } from "../core/check.js";

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

/**
 * Equilibrium moisture content, unchecked: the model of the Wood Handbook's eq. (4-5), in degrees Celsius.
 *
 * @param t - temperature, degrees Celsius
 * @param humidity - relative humidity, percent
 * @returns moisture content in percent
 */
export function equilibriumKernel(t: number, humidity: number): number {
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = (k * humidity) / 100;
  const one = k1 * kh;
  const two = one * k2 * kh;
  return (1800 / w) * (kh / (1 - kh) + (one + 2 * two) / (1 + one + two));
}

/**
 * A climate.
 *
 * @param value - the unchecked climate
 * @param path - its name in error texts; empty for a function's options
 * @returns the climate
 */
export function checkClimate(value: unknown, path: string): Climate {
  const given = checkObject(value, path === "" ? "options" : path);
  const at = path === "" ? "" : `${path}.`;
  return {
    temperature: checkNumber(given["temperature"], `${at}temperature`, -20, 100, "degrees Celsius from -20 to 100"),
    humidity: checkNumber(given["humidity"], `${at}humidity`, 0, 100, "percent from 0 to 100"),
  };
}

/**
 * A moisture content, given as it is or by a climate.
 *
 * @param value - the unchecked moisture
 * @param path - its name in error texts
 * @returns moisture content in percent
 */
export function checkMoisture(value: unknown, path: string): number {
  if (typeof value !== "object") {
    return checkNumber(value, path, 0, 300, "a moisture content in percent (0 to 300) or a climate");
  }
  const { temperature, humidity } = checkClimate(value, path);
  return equilibriumKernel(temperature, humidity);
}
