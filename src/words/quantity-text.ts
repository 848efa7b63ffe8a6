import type { QuantityKind } from "../core/hazard.js";
import type { DescribeOptions } from "./describe-operation.js";

/**
 * A number with its unit, for people.
 *
 * @param value - the number
 * @param kind - what it is; a bare number when it is not known
 * @param words - the formatters
 * @returns the text, never broken between the number and its unit
 */
export function quantityText(value: number, kind: QuantityKind | undefined, words: DescribeOptions): string {
  if (kind === "length") return words.length(value);
  if (kind === "angle") return words.angle(value);
  const rounded = Number(value.toPrecision(3)).toString();
  if (kind === "mass") return words.mass?.(value) ?? `${rounded}\u00a0kg`;
  if (kind === "force") return words.force?.(value) ?? `${rounded}\u00a0N`;
  return kind === "percent" ? `${rounded}\u00a0%` : rounded;
}
