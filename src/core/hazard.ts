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
 * Codes are for programs. People read the words for them, which `hazardText` writes.
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
  /** A piece that is caught between blade and stop. */
  readonly "trapped-piece": {
    /** The fence that the stick lies at. */
    readonly fence: HazardFence;
    /** What holds the piece. */
    readonly hold: "by-hand" | "held-down";
  };
  /** A piece under the leaning blade. */
  readonly "piece-under-bevel": {
    /** The fence that the stick lies at. */
    readonly fence: HazardFence;
  };
  /** A small offcut. */
  readonly "thrown-offcut": {
    /** What falls off: a wedge between two pieces, or the end of a blank. */
    readonly offcut: "wedge" | "blank-end";
  };
  /** A stick that may tip in its cradle. */
  readonly "balance-not-known": {
    /** The fence that the stick lies at. */
    readonly fence: HazardFence;
  };
  /** A stick that tips in its cradle. */
  readonly tip: {
    /** The fence that the stick lies at. */
    readonly fence: HazardFence;
  };
  /** A thin edge at the stop. */
  readonly feather: {
    /** Where it meets the stop. */
    readonly at: "table" | "fence" | "table-and-fence";
  };
  /** A cut that the saw cannot make. */
  readonly capacity: {
    /** Whether no lay suits the saw, or the one that was asked for does not, and whether others do. */
    readonly lay: "none-works" | "asked-for" | "asked-for-others-work";
    /** The obstacles to the lay that was asked for, else to the first. */
    readonly obstacles: readonly ObstacleCode[];
  };
  /** Contents that miss the lip. */
  readonly "missed-lip": {
    /** How the frame stands. */
    readonly pose: Pose;
  };
  /** Contents that may miss the lip. */
  readonly "lip-not-known": {
    /** How the frame stands. */
    readonly pose: Pose;
  };
  /** Contents that do not fill the opening. */
  readonly "unfilled-opening": {
    /** How the frame stands. */
    readonly pose: Pose;
  };
  /** A rabbet that cannot hold the contents. */
  readonly "seating-impossible": {
    /** Why it cannot. */
    readonly reason: "past-mouth" | "falls-through" | "too-steep";
  };
  /** Contents that are too thick for the rabbet. */
  readonly "shallow-rabbet": {
    /** Whether they leave too little depth behind them, or stand out of the rabbet. */
    readonly verdict: "short" | "proud";
  };
  /** A pane that bears on a line. */
  readonly "pane-on-arris": {
    /** What it bears on. */
    readonly bearsOn: "sight-edge" | "corner";
  };
  /** Screws that are too long. */
  readonly "long-screws": {
    /** Whether they end too near the face, or come out of it. */
    readonly points: "near-face" | "through";
  };
  /** A layer that has too little room. */
  readonly "panel-room": {
    /** How much room it lacks. */
    readonly lack: "slight" | "large";
  };
}

/** Names of the brief's own that some hazards tell. The other hazards have none. */
export interface HazardNames {
  /** Art that lies against glass. */
  readonly "art-on-glass": {
    /** The layer, as the brief calls it. */
    readonly layer: string;
  };
  /** A layer that has too little room. */
  readonly "panel-room": {
    /** The layer, as the brief calls it. */
    readonly layer: string;
  };
  /** A layer that loses its lap. */
  readonly "panel-lap": {
    /** The layer, as the brief calls it. */
    readonly layer: string;
  };
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
  /** Where the rule is printed; else `common practice`, or `computed` where it follows from the plan's own geometry and forces. */
  readonly source: string;
}
