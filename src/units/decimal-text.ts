import type { CheckedFormat } from "./format-options.js";

/** What decimals look like. */
type DecimalFormat = Pick<CheckedFormat, "trailingZeros" | "decimalMarker">;

/** A number of decimal parts as text: 905 tenths as `90.5`. */
export function decimalText(parts: bigint, digits: number, format: DecimalFormat): string {
  const { trailingZeros, decimalMarker } = format;
  const text = parts.toString().padStart(digits + 1, "0");
  const point = text.length - digits;
  const decimals = text.slice(point);
  const shown = trailingZeros ? decimals : decimals.replace(/0+$/, "");
  return text.slice(0, point) + (shown === "" ? "" : decimalMarker + shown);
}
