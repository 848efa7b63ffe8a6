import type { FrameGeometry } from "./frame-geometry.js";

/**
 * Joint width: level, from the innermost point of the molding to the outermost, its lip included. The gap of the last joint is seen across it.
 *
 * @param geometry - the frame
 * @returns the width
 */
export function jointWidth(geometry: Pick<FrameGeometry, "pieces">): number {
  const { longest, shortest } = geometry.pieces[0];
  return longest.out - shortest.out;
}
