import { assertSound } from "../core/bug.js";

/** One cut of a chain: which side is made, from which, and how many settings its direction has gone through. */
export interface ChainLink {
  /** The side that is cut. */
  readonly side: number;
  /** The side at the fence, which exists by then. */
  readonly against: number;
  /** Whether the new side comes after the one at the fence going counter-clockwise, or before it. */
  readonly toward: "next" | "previous";
  /** How many cuts lie between it and a side of the blank, this one included: an error of the setting counts so many times. */
  readonly errorMultiple: number;
}

/** A chain of cuts that all use one setting. */
export interface CutChain {
  /** How many sides on the new side lies from the one at the fence: j. */
  readonly step: number;
  /** The cuts, in an order in which every fence side exists by then. */
  readonly links: readonly ChainLink[];
}

/**
 * The angle that a gauge is swung from square to cut side k + j with side k at the fence: |360 j / n - 90|, as a fraction of one rounding.
 */
export function chainSetting(sides: number, step: number): number {
  return (Math.abs(4 * step - sides) * 90) / sides;
}

/**
 * The sides of a polygon that its bounding box already has, by their numbers.
 *
 * Side-down: side 0 at the bottom; for even n the top; for n = 4k left and right too. Corner-down: nothing for n = 4k, left and right for n = 4k + 2, the top
 * for odd n.
 */
export function sidesOnBlank(sides: number, pose: "side-down" | "corner-down"): number[] {
  if (pose === "side-down") {
    if (sides % 2 === 1) return [0];
    return sides % 4 === 0 ? [0, sides / 4, sides / 2, (3 * sides) / 4] : [0, sides / 2];
  }
  if (sides % 2 === 1) return [(sides - 1) / 2];
  return sides % 4 === 0 ? [] : [(sides - 2) / 4, (3 * sides - 2) / 4];
}

/** Goes round the sides from those that exist, j on and j back, nearest first. */
function reach(sides: number, existing: readonly number[], step: number, onlyNext: boolean): CutChain | null {
  const multiples = new Map(existing.map((side) => [side, 0]));
  const links: ChainLink[] = [];
  // The queue grows while it is gone through.
  const queue = [...existing];
  for (const against of queue) {
    const errorMultiple = multiples.get(against)! + 1;
    for (const toward of onlyNext ? (["next"] as const) : (["next", "previous"] as const)) {
      const side = (against + (toward === "next" ? step : sides - step)) % sides;
      if (multiples.has(side)) continue;
      multiples.set(side, errorMultiple);
      links.push({ side, against, toward, errorMultiple });
      queue.push(side);
    }
  }
  if (multiples.size < sides) return null;
  return { step, links };
}

/**
 * Chooses the step whose setting is the smallest and whose chain reaches every side.
 *
 * Two steps can have the same setting only where n is even, j and n/2 - j. The blank's sides then come in opposite pairs, so that the two chains are each
 * other's mirror image and equally long; the smaller step is taken.
 */
export function bestChain(sides: number, existing: readonly number[], onlyNext: boolean): CutChain {
  if (existing.length === sides) return { step: sides / 4, links: [] };
  const quarter = sides / 4;
  const steps = Array.from({ length: Math.ceil(sides / 2) - 1 }, (_, index) => index + 1).sort(
    (a, b) => Math.abs(a - quarter) - Math.abs(b - quarter) || a - b,
  );
  for (const step of steps) {
    const chain = reach(sides, existing, step, onlyNext);
    if (chain !== null) return chain;
  }
  assertSound(false, "step 1 reaches every side");
}
