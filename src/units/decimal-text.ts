import type { CheckedFormat } from "./format-options.js";

/** What decimals look like. */
type DecimalFormat = Pick<CheckedFormat, "trailingZeros" | "decimalMarker">;

/**
 * A number of decimal parts as text: 905 tenths as `90.5`.
 *
 * @param parts - how many, 0 or more
 * @param digits - number of decimals: 1 for tenths
 * @param format - whether zeros at the end of the decimals are written, and what stands before them
 * @returns the text, without a marker when no decimals are left
 */
export function decimalText(parts: bigint, digits: number, format: DecimalFormat): string {
  const { trailingZeros, decimalMarker } = format;
  const text = parts.toString().padStart(digits + 1, "0");
  const point = text.length - digits;
  const decimals = text.slice(point);
  const shown = trailingZeros ? decimals : decimals.replace(/0+$/, "");
  return text.slice(0, point) + (shown === "" ? "" : decimalMarker + shown);
}
