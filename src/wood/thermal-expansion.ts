import { checkLength, checkObject, checkRange } from "../core/check.js";
import { sheetFigure, type SheetMaterial } from "./sheet-material.js";

/** Options of {@link thermalExpansion}. */
export interface ThermalExpansionOptions {
  /** `"glass"`, `"acrylic"`, or an object with the `expansion` of another sheet as a fraction per kelvin. */
  readonly sheet: SheetMaterial;
  /** Size at temperature `from`, in any unit, 1e-100 to 1e100. */
  readonly length: number;
  /** Temperature before, in degrees Celsius, -60 to 200. */
  readonly from: number;
  /** Temperature after, likewise. */
  readonly to: number;
}

/** How much a sheet grows or shrinks with its temperature. */
export interface ThermalExpansion {
  /** Change of the length, in its unit; positive when it grows. */
  readonly change: number;
  /** The same as a fraction of the length. */
  readonly fraction: number;
  /** The length at temperature `to`. */
  readonly length: number;
}

/** A temperature of a sheet. */
export function checkTemperature(value: unknown, path: string): number {
  return checkRange(value, path, { min: -60, max: 200, what: "degrees Celsius from -60 to 200" });
}

/**
 * How much a sheet of glass or acrylic grows when it warms, in every direction of its plane.
 *
 * Expansion times the difference of temperatures. Acrylic grows eight times as much as glass, and takes up some water besides; that is left out.
 *
 * @param options - the sheet, its length, and the temperatures before and after in degrees Celsius
 * @returns the change and the new length in the length's unit
 * @throws {InputError} when the sheet is unknown and has no expansion, or a value is missing or out of range
 * @example
 * ```ts
 * import { thermalExpansion } from "miterwright/wood";
 *
 * thermalExpansion({ sheet: "acrylic", length: 1000, from: 15, to: 35 }).change; //=> 1.44
 * thermalExpansion({ sheet: "glass", length: 1000, from: 15, to: 35 }).change; //=> 0.18
 * ```
 * @see EN 572-1 (glass) and ASTM D696 (acrylic), as data sheets quote them
 */
export function thermalExpansion(options: ThermalExpansionOptions): ThermalExpansion {
  const given = checkObject(options);
  const expansion = sheetFigure(given["sheet"], "sheet", "expansion");
  const length = checkLength(given["length"], "length");
  const from = checkTemperature(given["from"], "from");
  const to = checkTemperature(given["to"], "to");
  const fraction = expansion * (to - from) + 0;
  const change = length * fraction + 0;
  return { change, fraction, length: length + change };
}
