import type { LengthUnit } from "../../core/geometry-types.js";
import { convertLength } from "../../units/index.js";
import type { Cost, CostUnit } from "../brief/brief.js";
import { finiteOrNull } from "./partial-sum.js";

/** What a part costs, by the `cost` that the brief gives for it. */
export interface PartCost {
  /** How many pieces or units of that `cost` the part takes; `null` where it is not known. */
  readonly quantity: number | null;
  /** What they cost together; `null` where the quantity is not known. */
  readonly total: number | null;
}

/** What a part takes, as far as it is known. */
export interface PartQuantities {
  /** Number of pieces. */
  readonly pieces: number;
  /** Length of molding, in the brief's unit. */
  readonly length?: number | null;
  /** Area of the sheet that it is cut from, in the square of that unit. */
  readonly area?: number | null;
  /** Cubic meters of the lumber that it is milled from. */
  readonly cubicMeters?: number | null;
  /** Board feet of it. */
  readonly boardFeet?: number | null;
}

/** How many units of length, area or volume; `null` or nothing where it is not known. */
function quantityOf(
  per: CostUnit,
  { length, area, cubicMeters, boardFeet }: PartQuantities,
  unit: LengthUnit,
): number | null | undefined {
  const meter = convertLength(1, "m", unit);
  const foot = convertLength(1, "ft", unit);
  switch (per) {
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

/** What a part costs. `null` without a cost. */
export function partCost(cost: Cost | undefined, quantities: PartQuantities, unit: LengthUnit): PartCost | null {
  if (cost === undefined) return null;
  if (typeof cost === "number") return { quantity: quantities.pieces, total: quantities.pieces * cost };
  const quantity = finiteOrNull(quantityOf(cost.per, quantities, unit) ?? Infinity);
  return { quantity, total: quantity === null ? null : finiteOrNull(quantity * cost.amount) };
}
