import type { Pose } from "./geometry-types.js";
import type { ObstacleCode } from "./obstacle-code.js";

/**
 * The signal word of a hazard, as ANSI Z535 and ISO 3864 use such words (value from memory). It says what can happen if the hazard is not avoided:
 * for `danger` death or serious injury is likely, for `warning` it is possible, for `caution` a minor or moderate injury is possible, and for `notice` work is spoiled
 * and nobody is hurt.
 */
export type HazardSignal = "danger" | "warning" | "caution" | "notice";

/**
 * Which rule raised a hazard. Every rule has a code of its own, and the guide on hazards lists them all.
 *
 * Codes are for programs. People read the words for them, which `describeHazard` writes.
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

/** The fence that the stick lies at: the `saw`'s own, or that of the miter `gauge`. */
export type HazardFence = "saw" | "gauge";

/** What some hazards tell besides numbers, in codes, and so that their words differ. The other hazards have no facts. */
export interface HazardFacts {
  /** The fence, and what holds the piece. */
  readonly "trapped-piece": { readonly fence: HazardFence; readonly hold: "by-hand" | "held-down" };
  /** The fence. */
  readonly "piece-under-bevel": { readonly fence: HazardFence };
  /** What falls off: a wedge between two pieces, or the end of a blank. */
  readonly "thrown-offcut": { readonly offcut: "wedge" | "blank-end" };
  /** The fence. */
  readonly "balance-not-known": { readonly fence: HazardFence };
  /** The fence. */
  readonly tip: { readonly fence: HazardFence };
  /** Where a thin edge meets the stop. */
  readonly feather: { readonly at: "table" | "fence" | "table-and-fence" };
  /**
   * Whether no lay suits the saw, or the one that was asked for does not and others do, or do not either; and the obstacles to the lay that was asked for, else
   * to the first.
   */
  readonly capacity: {
    readonly lay: "none-works" | "asked-for" | "asked-for-others-work";
    readonly obstacles: readonly ObstacleCode[];
  };
  /** How the frame stands. */
  readonly "missed-lip": { readonly pose: Pose };
  /** How the frame stands. */
  readonly "lip-not-known": { readonly pose: Pose };
  /** How the frame stands. */
  readonly "unfilled-opening": { readonly pose: Pose };
  /** Why the rabbet cannot hold the contents. */
  readonly "seating-impossible": { readonly reason: "past-mouth" | "falls-through" | "too-steep" };
  /** Whether the contents leave too little depth behind them, or stand out of the rabbet. */
  readonly "shallow-rabbet": { readonly verdict: "short" | "proud" };
  /** What the pane bears on. */
  readonly "pane-on-arris": { readonly bearsOn: "sight-edge" | "corner" };
  /** Whether the screws end too near the face, or come out of it. */
  readonly "long-screws": { readonly points: "near-face" | "through" };
  /** How much room the layer lacks. */
  readonly "panel-room": { readonly lack: "slight" | "large" };
}

/** Names of the brief's own that some hazards tell. The other hazards have none. */
export interface HazardNames {
  /** The layer that lies against glass. */
  readonly "art-on-glass": { readonly layer: string };
  /** The layer that lacks room. */
  readonly "panel-room": { readonly layer: string };
  /** The layer that loses its lap. */
  readonly "panel-lap": { readonly layer: string };
}

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
  /** The numbers that raised it, by name. */
  readonly numbers: Readonly<Record<string, number>>;
  /** What each of them is, by the same names. */
  readonly kinds: Readonly<Record<string, QuantityKind>>;
  /** Names that the brief gives, as {@link HazardNames} lists them; missing where its code has none. */
  readonly names?: Readonly<Record<string, string>>;
  /** What tells the cases of one rule apart, in codes, as {@link HazardFacts} lists them; missing where its code has none. */
  readonly facts?: Readonly<Record<string, string | readonly string[]>>;
  /** Where the rule is printed, else `common practice`. */
  readonly source: string;
}
