/**
 * The plane of an end cut: its unit normal, pointing out of the wood, in the stick's own axes.
 *
 * `along` runs counter-clockwise round the frame, `across` outward from the sight edge, `through` from the back to the
 * face. In this order the three axes are left-handed: `along` x `through` = `across`. A saw of kerf k takes k / |along| of
 * the stick's length.
 *
 * Between equal boards every part is within 6 units in the last place. Between others a part is a sum of terms of both signs, and within 6 units of the sum of their
 * magnitudes; where edges meet, the errors of the other parts come in by way of the length.
 */
export interface CutPlane {
  /** Component along the stick: positive where the stick ends, negative where it starts; never 0. */
  readonly along: number;
  /** Component across the stick, from the sight edge to the outer edge. */
  readonly across: number;
  /** Component through the stick, from its back to its face. */
  readonly through: number;
}

/** Which end of a piece, going counter-clockwise round the frame as seen from above. */
export type StickEnd = "start" | "end";

/** The two angles of a cut, as a saw is set to them. */
export interface SawSetting {
  /** Angle across the surface on the table, from a square cut, in degrees, -90 to 90. Positive: the part that lies farther from the frame's center is the longer. */
  readonly miter: number;
  /** Angle of the blade from vertical, in degrees, -90 to 90. Positive: the higher part is the shorter. */
  readonly bevel: number;
}

/** A cut at one end of a piece: its plane, and the setting for the stick lying flat. */
export interface EndCut extends SawSetting {
  /** Slope of the piece in the finished frame, in degrees, -90 to 90. */
  readonly slope: number;
  /** Which end is cut. */
  readonly end: StickEnd;
  /** The plane of the cut. */
  readonly plane: CutPlane;
  /**
   * Half the corner's turn in degrees, -90 to 90, where the cut halves the corner, as between equal boards; absent where it does not. From it the setting in
   * every lay follows to the last bit: propped, the miter is this angle and the bevel 0, which the rounded plane cannot give back.
   */
  readonly planMiter?: number;
}
