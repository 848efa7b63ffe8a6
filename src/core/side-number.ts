/**
 * The number by which people know a side, a corner or a piece. People count from 1, data from 0; a corner and a piece have the number of the side that
 * starts there.
 *
 * @param side - its place in the data, from 0
 * @returns its number in texts and drawings, from 1
 */
export function sideNumber(side: number): number {
  return side + 1;
}
