/** Which way something leans or lies, for a person who stands in front of the saw. */
export type Hand = "left" | "right";

/** A saw's scale for the miter: how far it goes to each hand and what it shows. */
export interface MiterScale {
  /** Largest miter with the line of cut running to the left as it goes away from you, in degrees from square. */
  readonly left: number;
  /** Largest miter with the line of cut running to the right as it goes away from you, in degrees from square. */
  readonly right: number;
  /** What the scale shows at a square cut: 0 (`from-square`), or 90, the angle between blade and fence (`from-blade`). */
  readonly reads: "from-square" | "from-blade";
  /** Smallest step that can be set by eye, in degrees. */
  readonly step: number;
}

/** A saw's scale for the bevel: how far the blade's top leans to each hand and what the scale shows. */
export interface BevelScale {
  /** Largest lean of the blade's top to the left, in degrees from vertical; 0 where it does not lean that way. */
  readonly left: number;
  /** Largest lean of the blade's top to the right, in degrees from vertical; 0 where it does not lean that way. */
  readonly right: number;
  /** What the scale shows with the blade upright: 0 (`from-vertical`), or 90, the angle between blade and table. */
  readonly reads: "from-vertical" | "from-table";
  /** Smallest step that can be set by eye, in degrees. */
  readonly step: number;
}

/**
 * A saw as data.
 *
 * Write one by hand or start from {@link tableSaw} or {@link miterSaw}. Left and right are those of a person who stands in front of the saw and looks
 * away from themselves.
 */
export interface Saw {
  /** Where the fence is: the gauge of a table saw pushes the stick from your side (`near`); a miter saw's fence is behind it (`far`). */
  readonly fence: "near" | "far";
  /** The scale of the gauge or of the turntable. */
  readonly miter: MiterScale;
  /** The scale of the tilting blade. */
  readonly bevel: BevelScale;
  /** Greatest height of work that the upright blade cuts through, in the caller's length unit; unknown when absent. */
  readonly depth?: number;
  /** Greatest height of work with the blade at 45 degrees; without it `depth` times the cosine of the bevel is taken. */
  readonly depthAt45?: number;
  /** Longest line of cut across the table, in the caller's length unit; unknown when absent. */
  readonly crosscut?: number;
}

/**
 * A table saw with a miter gauge, as most are: gauge to 60 degrees either way, blade to 45 degrees one way.
 *
 * Ranges are common practice, no printed source; give what your own saw's manual says.
 *
 * @param changes - fields that differ from these
 * @returns the saw
 * @example
 * ```ts
 * import { tableSaw } from "miterwright/saw";
 *
 * tableSaw({ depth: 75 }).bevel.left; //=> 45
 * ```
 */
export function tableSaw(changes: Partial<Saw> = {}): Saw {
  return {
    fence: "near",
    miter: { left: 60, right: 60, reads: "from-square", step: 0.5 },
    bevel: { left: 45, right: 0, reads: "from-vertical", step: 0.5 },
    ...changes,
  };
}

/**
 * A miter saw with a turntable: to 50 degrees either way, blade to 45 degrees to either side.
 *
 * Ranges are common practice, no printed source; give what your own saw's manual says.
 *
 * @param changes - fields that differ from these
 * @returns the saw
 * @example
 * ```ts
 * import { miterSaw } from "miterwright/saw";
 *
 * miterSaw().fence; //=> "far"
 * ```
 */
export function miterSaw(changes: Partial<Saw> = {}): Saw {
  return {
    fence: "far",
    miter: { left: 50, right: 50, reads: "from-square", step: 0.5 },
    bevel: { left: 45, right: 45, reads: "from-vertical", step: 0.5 },
    ...changes,
  };
}
