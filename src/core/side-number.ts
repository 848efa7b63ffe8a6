/**
 * The number by which people know a side, a corner or a piece. People count from 1, data from 0; a corner and a piece have the number of the side that
 * starts there.
 */
export function sideNumber(side: number): number {
  return side + 1;
}
