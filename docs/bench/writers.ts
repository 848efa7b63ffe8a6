import { formatters, type Formats, type LengthUnit } from "miterwright/units";
import type { Values } from "./fields.js";

/** How numbers are written on the page and on its sheets. */
export type Writers = Formats;

/** Parts of a millimeter, of a centimeter, and of an inch that each fineness counts. */
const PARTS: Readonly<Record<string, { readonly mm: number; readonly cm: number; readonly in: number }>> = {
  coarse: { mm: 1, cm: 10, in: 16 },
  usual: { mm: 2, cm: 20, in: 32 },
  fine: { mm: 10, cm: 100, in: 64 },
};

/**
 * Three figures: what a species or a data sheet says is no better.
 *
 * @param value - the number
 * @returns its text
 */
export function about(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/**
 * How a job writes its numbers.
 *
 * @param values - the form's answers; only `unit` and `fineness` are read
 * @returns the writers
 */
export function writersOf(values: Pick<Values, "unit" | "fineness">): Writers {
  const unit = values.unit as LengthUnit;
  const parts = PARTS[values.fineness] ?? PARTS["usual"]!;
  return formatters({ unit, denominator: unit === "cm" ? parts.cm : unit === "mm" ? parts.mm : parts.in });
}
