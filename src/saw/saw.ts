/** Which way something leans or lies, for a person who stands in front of the saw. */
export type Hand = "left" | "right";

/** A saw's scale for the miter: how far it goes to each hand and what it shows. */
export interface MiterScale {
  /** Largest miter with the line of cut running to the left as it goes away from you, in degrees from square. */
  readonly left: number;
  /** Largest miter with the line of cut running to the right as it goes away from you, in degrees from square. */
  readonly right: number;
  /** What the scale shows at a square cut: 0 (`from-square`), or 90, the angle between blade and fence (`from-fence`). */
  readonly reads: "from-square" | "from-fence";
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
 * Write one by hand or start from `tableSaw` or `miterSaw`. Left and right are those of a person who stands in front of the saw and looks
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
  readonly depth?: number | undefined;
  /** Greatest height of work with the blade at 45 degrees; without it `depth` times the cosine of the bevel is taken. */
  readonly depthAt45?: number | undefined;
  /** Longest line of cut across the table, in the caller's length unit; unknown when absent. */
  readonly crosscut?: number | undefined;
  /**
   * How far the gauge's fence can be from the blade's front, with the table still guiding the gauge, in the caller's length unit; unknown when absent. It is
   * the deepest work that a panel's cut can begin on.
   */
  readonly gaugeReach?: number | undefined;
}
