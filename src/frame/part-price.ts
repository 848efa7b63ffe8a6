import type { LengthUnit } from "../core/geometry-types.js";
import { convertLength } from "../units/index.js";
import type { Price } from "./brief.js";
import { finiteOrNull } from "./partial-sum.js";

/** What a part costs. */
export interface PartPrice extends Price {
  /** How many of what the price is counted by the part takes; `null` where it is not known. */
  readonly quantity: number | null;
  /** The amount for all of it; `null` where the quantity is not known. */
  readonly cost: number | null;
}

/** What a part takes, as far as it is known. */
export interface PartQuantities {
  /** Length of molding, in the brief's unit. */
  readonly length?: number | null;
  /** Area of the sheet that it is cut from, in the square of that unit. */
  readonly area?: number | null;
  /** Cubic meters of the lumber that it is milled from. */
  readonly cubicMeters?: number | null;
  /** Board feet of it. */
  readonly boardFeet?: number | null;
}

/** How many of what a price is counted by; `null` or nothing where it is not known. */
function quantityOf(
  per: Price["per"],
  { length, area, cubicMeters, boardFeet }: PartQuantities,
  unit: LengthUnit,
): number | null | undefined {
  const meter = convertLength(1, "m", unit);
  const foot = convertLength(1, "ft", unit);
  switch (per) {
    case "piece":
      return 1;
    case "meter":
      return length && length / meter;
    case "foot":
      return length && length / foot;
    case "square-meter":
      return area && area / meter ** 2;
    case "square-foot":
      return area && area / foot ** 2;
    case "cubic-meter":
      return cubicMeters;
    case "board-foot":
      return boardFeet;
  }
}

/**
 * What a part costs by its price.
 *
 * @param price - what the brief says
 * @param quantities - what the part takes
 * @param unit - the brief's unit
 * @returns the quantity and the cost; `null` without a price
 */
export function partPrice(price: Price | undefined, quantities: PartQuantities, unit: LengthUnit): PartPrice | null {
  if (price === undefined) return null;
  const quantity = finiteOrNull(quantityOf(price.per, quantities, unit) ?? Infinity);
  return { ...price, quantity, cost: quantity === null ? null : finiteOrNull(quantity * price.amount) };
}
