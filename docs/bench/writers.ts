import { formatAngle, formatLength, type LengthUnit } from "miterwright/units";
import type { Values } from "./fields.js";

/** How lengths and angles are written on the page and on its sheets. */
export interface Writers {
  /** Writes a length in the job's unit. */
  readonly length: (value: number) => string;
  /** Writes a small length, such as a gap or a tolerance, finer than any rule shows it. */
  readonly small: (value: number) => string;
  /** Writes an angle that is given in degrees. */
  readonly angle: (degrees: number) => string;
  /** Writes an angle that `angle` would write as none. */
  readonly smallAngle: (degrees: number) => string;
  /** Writes a mass that is given in kilograms. */
  readonly mass: (kilograms: number) => string;
  /** Writes a force that is given in newtons. */
  readonly force: (newtons: number) => string;
}

/** Parts of a millimeter, and of an inch, that each fineness counts. */
const PARTS: Readonly<Record<string, { readonly millimeter: number; readonly inch: number }>> = {
  coarse: { millimeter: 1, inch: 16 },
  usual: { millimeter: 2, inch: 32 },
  fine: { millimeter: 10, inch: 64 },
};

/** Decimals that show a hundredth of a millimeter, or a thousandth of an inch. */
const SMALL_DIGITS: Readonly<Record<LengthUnit, number>> = { mm: 2, cm: 3, m: 5, in: 3, ft: 4 };

/** A pound in kilograms, exactly: Refinement of Values for the Yard and the Pound, Federal Register, July 1, 1959. */
const POUND = 0.45359237;
/** A pound-force in newtons: the weight of a pound at standard gravity, 9.80665 m/s². */
const POUND_FORCE: number = POUND * 9.80665;

/**
 * Three figures: what a species or a data sheet says is no better.
 *
 * @param value - the number
 * @returns its text
 */
export function about(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/** A number, its fraction and its unit stay on one line: 92 23/32" broken behind the 92 would be misread. */
function tied(text: string): string {
  return text.replaceAll(" ", "\u00a0");
}

/** Significant digits of a small angle are lost beyond these decimals. */
const SMALL_ANGLE_DIGITS: number = 6;

/**
 * How a job writes its numbers.
 *
 * @param values - the form's answers; only `unit` and `fineness` are read
 * @returns the writers
 */
export function writersOf(values: Pick<Values, "unit" | "fineness">): Writers {
  const unit = values.unit as LengthUnit;
  const { millimeter, inch } = PARTS[values.fineness] ?? PARTS["usual"]!;
  const isInches = unit === "in" || unit === "ft";
  const parts = unit === "cm" ? 10 * millimeter : millimeter;
  const length = (value: number): string =>
    isInches
      ? formatLength(value, unit, { denominator: inch })
      : // 0.5 is no number of decimals, so the value is put on the grid first.
        formatLength(Math.round(value * parts) / parts, unit, { digits: unit === "cm" ? 2 : 1 });
  return {
    length: (value) => tied(length(value)),
    small: (value) => tied(formatLength(value, unit, { style: "decimal", digits: SMALL_DIGITS[unit] })),
    angle: (degrees) => tied(formatAngle(degrees)),
    smallAngle: (degrees) => tied(formatAngle(Number(degrees.toPrecision(1)), { digits: SMALL_ANGLE_DIGITS })),
    mass: (kilograms) => tied(isInches ? `${about(kilograms / POUND)} lb` : `${about(kilograms)} kg`),
    force: (newtons) => tied(isInches ? `${about(newtons / POUND_FORCE)} lbf` : `${about(newtons)} N`),
  };
}
