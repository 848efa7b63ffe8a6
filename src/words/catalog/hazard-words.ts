import type { HazardCode, HazardFacts, HazardNames, HazardSignal } from "../../core/hazard.js";

/** What the words for every hazard may tell of. */
export interface HazardValue {
  /** How grave it is. */
  readonly signal: HazardSignal;
  /** The numbers that raised it, by their names in the hazard, as the reader's formatters write them. */
  readonly numbers: Readonly<Record<string, string>>;
  /** What the words for obstacles, reasons and stacks say of the codes among its facts; empty where there is none. */
  readonly because: readonly string[];
}

/** What the words for a hazard may tell of, by its code: the numbers, and the facts and names that a hazard of this code has. */
export type HazardValues = {
  readonly [C in HazardCode]: HazardValue &
    (C extends keyof HazardFacts ? HazardFacts[C] : unknown) &
    (C extends keyof HazardNames ? HazardNames[C] : unknown);
};

/** What to heed, for every hazard. */
export type HazardWords = { readonly [C in HazardCode]: (values: HazardValues[C]) => string };
