import type { Caution, CautionSeverity, QuantityKind } from "../../core/caution.js";
import { COMMON_PRACTICE } from "./common-practice.js";

/** The numbers of a caution by what they are. */
export type CautionNumbers = { readonly [K in QuantityKind]?: Readonly<Record<string, number>> };

/**
 * A caution.
 *
 * @param code - which rule raised it
 * @param severity - how much it weighs
 * @param sentence - one or two sentences for people
 * @param quantities - the numbers that raised it, by what they are
 * @param source - where the rule is printed; by default common practice
 * @returns the caution
 */
export function makeCaution(
  code: string,
  severity: CautionSeverity,
  sentence: string,
  quantities: CautionNumbers = {},
  source: string = COMMON_PRACTICE,
): Caution {
  const numbers: Record<string, number> = {};
  const kinds: Record<string, QuantityKind> = {};
  for (const [kind, values] of Object.entries(quantities)) {
    for (const [name, value] of Object.entries(values)) {
      numbers[name] = value;
      kinds[name] = kind as QuantityKind;
    }
  }
  return { code, severity, sentence, numbers, kinds, source };
}
