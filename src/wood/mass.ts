import { checkArea, checkLength, checkObject, checkRange } from "../core/check.js";
import type { LengthUnit } from "../core/geometry-types.js";
import { sheetFigure, type SheetMaterial } from "./sheet-material.js";
import { checkUnit } from "../core/unit-sizes.js";
import { volumeIn } from "./volume-in.js";
import { woodDensity, type WoodDensityOptions } from "./wood-density.js";

/** Options of {@link woodMass}. */
export interface WoodMassOptions extends WoodDensityOptions {
  /** Volume in the cube of `unit`, 1e-300 to 1e300. */
  readonly volume: number;
  /** Unit of length whose cube the volume is in. */
  readonly unit: LengthUnit;
}

/** Options of {@link sheetMass}. */
export interface SheetMassOptions {
  /** `"glass"`, `"acrylic"`, or an object with the `density` of another sheet (a backing board, say) in kilograms per cubic meter. */
  readonly sheet: SheetMaterial;
  /** Area in the square of `unit`, 1e-200 to 1e200. */
  readonly area: number;
  /** Thickness in `unit`, 1e-100 to 1e100. */
  readonly thickness: number;
  /** Unit of the thickness and, squared, of the area. */
  readonly unit: LengthUnit;
}

/**
 * Mass of a piece of wood.
 *
 * Volume times `woodDensity`. The volume of a mitered piece is the area of its section times its length along the section's centroid.
 *
 * @param options - the wood, its moisture, the volume and its unit
 * @returns kilograms
 * @throws {InputError} when the wood is unknown or its specific gravity is, or a value is missing or out of range
 * @example
 * ```ts
 * import { woodMass } from "miterwright/wood";
 *
 * woodMass({ species: "black cherry", volume: 45 * 18 * 2400, unit: "mm" }).toFixed(2); //=> "1.09"
 * ```
 */
export function woodMass(options: WoodMassOptions): number {
  const given = checkObject(options);
  const density = woodDensity(options);
  const volume = checkRange(given["volume"], "volume", {
    min: 1e-300,
    max: 1e300,
    what: "a positive volume (1e-300 to 1e300)",
  });
  return volumeIn(volume * density, checkUnit(given["unit"]), "m");
}

/**
 * Mass of a sheet of glass, acrylic or backing.
 *
 * Area times thickness times density: glass weighs 2.5 kg per square meter and millimeter.
 *
 * @param options - the sheet, its area and thickness, and their unit
 * @returns kilograms
 * @throws {InputError} when the sheet is unknown and has no density, or a value is missing or out of range
 * @example
 * ```ts
 * import { sheetMass } from "miterwright/wood";
 *
 * sheetMass({ sheet: "glass", area: 1e6, thickness: 1, unit: "mm" }); //=> 2.5
 * sheetMass({ sheet: { density: 800 }, area: 500 * 400, thickness: 3, unit: "mm" }); //=> 0.48
 * ```
 * @see EN 572-1, general properties of soda-lime silicate glass, as quoted by bulletins of the glass trade
 */
export function sheetMass(options: SheetMassOptions): number {
  const given = checkObject(options);
  const density = sheetFigure(given["sheet"], "sheet", "density");
  const area = checkArea(given["area"], "area");
  const thickness = checkLength(given["thickness"], "thickness");
  return volumeIn(area * thickness * density, checkUnit(given["unit"]), "m");
}
