import type { Hazard, HazardCode, HazardSignal, QuantityKind } from "../../core/hazard.js";
import { COMMON_PRACTICE } from "./common-practice.js";

/** The numbers of a hazard by what they are. */
export type HazardNumbers = { readonly [K in QuantityKind]?: Readonly<Record<string, number>> };

/**
 * A hazard.
 *
 * @param code - which rule raised it
 * @param signal - how grave it is
 * @param sentence - one or two sentences for people
 * @param quantities - the numbers that raised it, by what they are
 * @param source - where the rule is printed; by default common practice
 * @returns the hazard
 */
export function makeHazard(
  code: HazardCode,
  signal: HazardSignal,
  sentence: string,
  quantities: HazardNumbers = {},
  source: string = COMMON_PRACTICE,
): Hazard {
  const numbers: Record<string, number> = {};
  const kinds: Record<string, QuantityKind> = {};
  for (const [kind, values] of Object.entries(quantities)) {
    for (const [name, value] of Object.entries(values)) {
      numbers[name] = value;
      kinds[name] = kind as QuantityKind;
    }
  }
  return { code, signal, sentence, numbers, kinds, source };
}
