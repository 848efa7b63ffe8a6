/**
 * The signal word of a hazard, as ANSI Z535 and ISO 3864 use such words (value from memory). It says what can happen if the hazard is not avoided:
 * for `danger` death or serious injury is likely, for `warning` it is possible, for `caution` a minor or moderate injury is possible, and for `notice` work is spoiled
 * and nobody is hurt.
 */
export type HazardSignal = "danger" | "warning" | "caution" | "notice";

/**
 * Which rule raised a hazard. Every rule has a code of its own, and the guide on hazards lists them all.
 *
 * Codes are for programs. People read the sentence of the hazard.
 */
export type HazardCode =
  // At the saw.
  | "short-piece"
  | "short-rest"
  | "trapped-piece"
  | "rip-fence"
  | "piece-under-bevel"
  | "offcut-under-bevel"
  | "depth-not-known"
  | "thrown-offcut"
  | "tip"
  | "balance-not-known"
  | "fasteners"
  | "feather"
  | "flip-error"
  | "capacity"
  | "long-stick"
  | "short-stick"
  | "deep-panel"
  | "short-panel-edge"
  | "narrow-rip"
  | "dust"
  // In the joint and the rabbet.
  | "reach"
  | "end-grain"
  | "missed-lip"
  | "lip-not-known"
  | "unfilled-opening"
  | "no-contents-left"
  | "seating-impossible"
  | "seating-not-known"
  | "narrow-lip"
  | "shallow-rabbet"
  | "glass-tolerance"
  // Glass, weight and the wall.
  | "glass-handling"
  | "pane-on-arris"
  | "large-pane"
  | "art-on-glass"
  | "heavy"
  | "long-screws"
  | "narrow-hanger-seat"
  | "leaning-hanger-seat"
  | "no-hanger-seat"
  | "flat-wire"
  | "hook-shows"
  | "mass-not-known"
  // Over the year.
  | "season-gap"
  | "panel-room"
  | "panel-lap";

/** What a number is, and so how it is written: a length in the caller's unit, an angle in degrees, a mass in kilograms, a force in newtons, a share in percent. */
export type QuantityKind = "length" | "angle" | "mass" | "force" | "percent";

/**
 * A hazard that a plan carries, computed from its own numbers.
 *
 * It never replaces the saw's manual, local codes for glazing and hanging, or qualified advice.
 */
export interface Hazard {
  /** Which rule raised it, e.g. `short-piece`. */
  readonly code: HazardCode;
  /** How grave it is. */
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
