import { checkNumber, checkObject, refuse } from "../core/check.js";

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

/** Bounds of the figures, and what to call them. */
const BOUNDS: Readonly<Record<keyof SheetFigures, readonly [min: number, max: number, what: string]>> = {
  density: [1, 1e5, "kilograms per cubic meter from 1 to 100000"],
  expansion: [0, 1e-3, "a fraction per kelvin from 0 to 0.001"],
};

/**
 * One figure of a sheet.
 *
 * @param value - the unchecked sheet
 * @param path - its name in error texts
 * @param figure - which figure
 * @returns the figure
 */
export function sheetFigure(value: unknown, path: string, figure: keyof SheetFigures): number {
  if (typeof value === "string") {
    if (value === "glass" || value === "acrylic") return SHEETS[value][figure];
    return refuse("unknown", path, value, `"glass", "acrylic" or an object with \`${figure}\``);
  }
  return checkNumber(checkObject(value, path)[figure], `${path}.${figure}`, ...BOUNDS[figure]);
}
