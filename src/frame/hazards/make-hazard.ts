import type { Hazard, HazardCode, HazardFacts, HazardNames, HazardSignal, QuantityKind } from "../../core/hazard.js";
import { COMMON_PRACTICE } from "./common-practice.js";

/** The numbers of a hazard by what they are. */
export type HazardNumbers = { readonly [K in QuantityKind]?: Readonly<Record<string, number>> };

/** The rest of a hazard. The compiler asks for the facts and names of a code that has them, and refuses them of any other. */
export type HazardParts<C extends HazardCode> = {
  /** The numbers that raised it, by what they are; by default none. */
  readonly quantities?: HazardNumbers;
  /** Where the rule is printed; by default common practice. */
  readonly source?: string;
} & (C extends keyof HazardFacts ? { readonly facts: HazardFacts[C] } : { readonly facts?: never }) &
  (C extends keyof HazardNames ? { readonly names: HazardNames[C] } : { readonly names?: never });

/**
 * A hazard.
 *
 * @param code - which rule raised it
 * @param signal - how grave it is
 * @param parts - its numbers, facts, names and source
 * @returns the hazard
 */
export function makeHazard<C extends HazardCode>(code: C, signal: HazardSignal, parts: HazardParts<C>): Hazard {
  const { quantities = {}, facts, names, source = COMMON_PRACTICE } = parts;
  const numbers: Record<string, number> = {};
  const kinds: Record<string, QuantityKind> = {};
  for (const [kind, values] of Object.entries(quantities)) {
    for (const [name, value] of Object.entries(values)) {
      numbers[name] = value;
      kinds[name] = kind as QuantityKind;
    }
  }
  return {
    code,
    signal,
    numbers,
    kinds,
    ...(names === undefined ? {} : { names }),
    ...(facts === undefined ? {} : { facts }),
    source,
  };
}
