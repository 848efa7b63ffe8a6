import { cosDeg, sinDeg } from "../core/degrees.js";

/** An even ring: two halves, trimmed straight before they are joined. */
export interface TrimmedHalves {
  /** How it is made. */
  readonly made: "trimmed-halves";
  /** The most that is taken off either end of a half when every cut has the error that just gives the accepted gap; `null` where the gap is as wide as the joint. */
  readonly trim: number | null;
  /** How much narrower the ring then becomes across the seam. */
  readonly loss: number | null;
}

/** An odd ring: its last piece is cut to fit. */
export interface LastPiece {
  /** How it is made. */
  readonly made: "closing-piece";
  /** By how much its length may come out longer or shorter than the others' when every cut has the error that just gives the accepted gap; `null` where the gap is as wide as the joint. */
  readonly length: number | null;
  /** By how many degrees the miter of either of its ends, seen from above, may come out differently. */
  readonly planMiter: number | null;
}

/** How the last joints of a frame are made. */
export type LastJoint = TrimmedHalves | LastPiece;

/**
 * What a straight cut across a half ring takes off each of its two ends, when all cuts share the error of an open angle: the joint line times the sine of
 * a quarter of the angle. {@link halfRings} finds the same by putting the pieces together.
 */
function trimmedHalves(sides: number, width: number, angle: number | null): TrimmedHalves {
  const trim = angle === null ? null : (width / cosDeg(180 / sides)) * sinDeg(angle / 4);
  return { made: "trimmed-halves", trim, loss: trim === null ? null : 2 * trim };
}

/**
 * How far a closing piece differs from the other pieces, when all their cuts share the error of an open angle, opened either way. {@link closingPiece} finds the
 * same by putting the pieces together.
 *
 * The n - 1 pieces turn by 2 t a joint and reach round an arc of which the piece is the chord: length sin((n - 1) t) / sin(t). Each of its ends makes up for half of what the n - 1
 * pieces have left of the open angle.
 */
function lastPiece(sides: number, length: number, angle: number | null): LastPiece {
  if (angle === null) return { made: "closing-piece", length: null, planMiter: null };
  const half = 180 / sides;
  const share = angle / (2 * sides);
  const off = [half - share, half + share].map((t) => Math.abs(length * (sinDeg((sides - 1) * t) / sinDeg(t) - 1)));
  return { made: "closing-piece", length: Math.max(...off), planMiter: share * (sides - 1) };
}

/**
 * How the last joints are made, two halves for an even number of sides and a closing piece for an odd one, and what that takes when the cuts share an open angle,
 * the one that just gives the accepted gap; `null` where none does. `length` is that of a piece along its longest line.
 */
export function lastJoint(sides: number, width: number, length: number, angle: number | null): LastJoint {
  return sides % 2 === 0 ? trimmedHalves(sides, width, angle) : lastPiece(sides, length, angle);
}
