import { checkObject, checkRange, refuse } from "../core/check.js";
import type { NumberField } from "../core/field.js";

/** A sheet whose figures are known here. */
export type SheetMaterialName = "glass" | "acrylic";

/** Figures of a sheet of one's own, from its data sheet; each is needed only where it counts. */
export interface OwnSheetMaterial {
  /** Kilograms per cubic meter, 1 to 100000. */
  readonly density?: number | undefined;
  /** Linear thermal expansion, as a fraction per kelvin, 0 to 0.001. */
  readonly expansion?: number | undefined;
}

/** A sheet: glass or acrylic, or one with figures of its own. */
export type SheetMaterial = SheetMaterialName | OwnSheetMaterial;

/** What is known of a sheet. */
type SheetFigures = Readonly<Record<"density" | "expansion", number>>;

/**
 * Glass: soda-lime float glass by EN 572-1 as bulletins of the glass trade quote it, 2500 kg/m³ (2.5 kg per square meter and millimeter) and
 * 9e-6 per kelvin; bulletin ATS-129 (2013) has 8.3e-6. Acrylic: 1.19 g/cm³ (ASTM D792) and 7.2e-5 per kelvin (ASTM D696, 0.000040 per °F), as data sheets
 * of acrylic sheet quote them.
 */
const SHEETS: Readonly<Record<SheetMaterialName, SheetFigures>> = {
  glass: { density: 2500, expansion: 9e-6 },
  acrylic: { density: 1190, expansion: 7.2e-5 },
};

/** How a density is read. */
export const DENSITY: NumberField = {
  kind: "number",
  min: 1,
  max: 1e5,
  what: "kilograms per cubic meter from 1 to 100000",
};
/** How an expansion is read. */
export const EXPANSION: NumberField = {
  kind: "number",
  min: 0,
  max: 1e-3,
  what: "a fraction per kelvin from 0 to 0.001",
};

/** One figure of a sheet. */
export function sheetFigure(value: unknown, path: string, figure: keyof SheetFigures): number {
  if (typeof value === "string") {
    if (value === "glass" || value === "acrylic") return SHEETS[value][figure];
    return refuse("unknown", path, value, `"glass", "acrylic" or an object with \`${figure}\``);
  }
  return checkRange(checkObject(value, path)[figure], `${path}.${figure}`, figure === "density" ? DENSITY : EXPANSION);
}
