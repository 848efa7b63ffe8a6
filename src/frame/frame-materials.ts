import type { FrameGeometry } from "./frame-geometry.js";
import type { RoughPiece } from "./rough-length.js";

/** How much molding a frame takes. */
export interface FrameMaterials {
  /** Number of pieces. */
  readonly pieces: number;
  /** Finished length of all pieces along their longest arris. */
  readonly finishedLength: number;
  /** Length of stick that all pieces use up, cuts included, before trims and offcuts. */
  readonly stickLength: number;
}

/**
 * Adds up the molding of a frame.
 *
 * @param geometry - the frame
 * @param rough - what one piece takes of its stick
 * @returns pieces and lengths
 */
export function frameMaterials(geometry: FrameGeometry, rough: RoughPiece): FrameMaterials {
  const stick = geometry.sticks[0]!;
  return {
    pieces: stick.count,
    finishedLength: stick.count * stick.longest.length,
    stickLength: stick.count * rough.pitch,
  };
}
