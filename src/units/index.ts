/**
 * Lengths and angles as people type and write them: feet, inches and fractions, millimeters, degrees, minutes and seconds.
 * Everything is computed as exact ratios of integers, and rounded once.
 *
 * @module
 */
export type { LengthUnit } from "../core/geometry-types.js";
export { convertLength } from "./convert-length.js";
export { formatters, type Formats, type FormattersOptions } from "./formatters.js";
export { type AngleStyle, formatAngle, type FormatAngleOptions } from "./format-angle.js";
export { formatLength, type FormatLengthOptions, type LengthStyle } from "./format-length.js";
export type { FormatOptions, UnitLabel } from "./format-options.js";
export { type NearestFraction, nearestFraction, type NearestFractionOptions } from "./nearest-fraction.js";
export { parseAngle, tryParseAngle } from "./parse-angle.js";
export { parseLength, tryParseLength } from "./parse-length.js";
export type { ParseOutcome } from "./parse-outcome.js";
export type { Rounding } from "./rounding.js";
