/** How much a hazard weighs: a remark, a thing to arrange for first, or a thing that hurts people. */
export type HazardSignal = "note" | "care" | "danger";

/** What a number is, and so how it is written: a length in the caller's unit, an angle in degrees, a mass in kilograms, a force in newtons, a share in percent. */
export type QuantityKind = "length" | "angle" | "mass" | "force" | "percent";

/**
 * A warning that a plan carries, computed from its own numbers.
 *
 * It never replaces the saw's manual, local codes for glazing and hanging, or qualified advice.
 */
export interface Hazard {
  /** Which rule raised it, e.g. `short-piece`. */
  readonly code: string;
  /** How much it weighs. */
  readonly signal: HazardSignal;
  /** One or two sentences for people. Lengths are in `numbers`, so that the reader's own units can be shown. */
  readonly sentence: string;
  /** The numbers that raised it, by name. */
  readonly numbers: Readonly<Record<string, number>>;
  /** What each of them is, by the same names. */
  readonly kinds: Readonly<Record<string, QuantityKind>>;
  /** Where the rule is printed, else `common practice`. */
  readonly source: string;
}
