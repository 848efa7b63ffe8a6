import { convertLength } from "../../units/index.js";
import type { LengthUnit } from "../../core/geometry-types.js";

/**
 * How much thicker or thinner than its name float glass may be, in millimeters: up to which nominal thickness, and by how much.
 *
 * The standard lists 2, 3, 4, 5 and 6 mm; 8, 10 and 12 mm; 15 mm; 19 and 25 mm. A thickness between two of them is taken by the thicker.
 */
const TOLERANCES: readonly (readonly [upTo: number, tolerance: number])[] = [
  [6, 0.2],
  [12, 0.3],
  [15, 0.5],
  [25, 1],
];
/** A thickness that was converted is still the one it was, to this share. */
const SAME: number = 1e-9;

/**
 * How much thicker or thinner than its name a pane of float glass may be.
 *
 * @param thickness - its nominal thickness
 * @param unit - unit of the thickness
 * @returns the tolerance in that unit; `null` for glass thicker than 25 mm, of which nothing is known here
 * @see EN 572-2, float glass, nominal thickness tolerances (values from memory)
 */
export function glassTolerance(thickness: number, unit: LengthUnit): number | null {
  const millimeters = convertLength(thickness, unit, "mm");
  const row = TOLERANCES.find(([upTo]) => millimeters <= upTo * (1 + SAME));
  return row === undefined ? null : convertLength(row[1], "mm", unit);
}
