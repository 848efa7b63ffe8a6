import { cosDeg, sinDeg } from "../core/degrees.js";

/**
 * What a straight cut across a half ring takes off each of its two ends, when all cuts share the error of an open angle: the joint line times the sine of
 * a quarter of the angle. {@link halfRings} finds the same by putting the pieces together.
 *
 * @param sides - n, even
 * @param width - joint width
 * @param angle - the open angle in degrees, 0 or more
 * @returns the depth of the wedge; the ring becomes narrower across the seam by two of them
 */
export function regularTrim(sides: number, width: number, angle: number): number {
  return (width / cosDeg(180 / sides)) * sinDeg(angle / 4);
}

/** How far a closing piece may come out differently from the other pieces. */
export interface ClosingRoom {
  /** Difference of its length, 0 or more. */
  readonly length: number;
  /** Difference of the miter of either end as seen from above, in degrees, 0 or more. */
  readonly planMiter: number;
}

/**
 * How far a closing piece differs from the other pieces, when all their cuts share the error of an open angle, opened either way. {@link closingPiece} finds the same by
 * putting the pieces together.
 *
 * The n - 1 pieces turn by 2 t a joint and reach round an arc of which the piece is the chord: length sin((n - 1) t) / sin(t). Each of its ends makes up for half of what the n - 1
 * pieces have left of the open angle.
 *
 * @param sides - n
 * @param length - planned length of a piece
 * @param angle - the open angle in degrees, 0 or more
 * @returns the largest differences
 */
export function regularClosingRoom(sides: number, length: number, angle: number): ClosingRoom {
  const half = 180 / sides;
  const share = angle / (2 * sides);
  const off = [half - share, half + share].map((t) => Math.abs(length * (sinDeg((sides - 1) * t) / sinDeg(t) - 1)));
  return { length: Math.max(...off), planMiter: share * (sides - 1) };
}
