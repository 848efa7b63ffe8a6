import { regularClosingRoom, regularTrim } from "../../closure/internal.js";

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
 * How the last joints are made, and what that takes when the cuts share the error which just gives the accepted gap.
 *
 * @param sides - number of sides
 * @param width - joint width
 * @param length - length of a piece along its longest line
 * @param angle - the open angle that makes the accepted gap, in degrees; `null` where none does
 * @returns two halves for an even number, a closing piece for an odd one
 */
export function lastJoint(sides: number, width: number, length: number, angle: number | null): LastJoint {
  if (sides % 2 === 0) {
    const trim = angle === null ? null : regularTrim(sides, width, angle);
    return {
      made: "trimmed-halves",
      trim,
      loss: trim === null ? null : 2 * trim,
    };
  }
  const room = angle === null ? null : regularClosingRoom(sides, length, angle);
  return {
    made: "closing-piece",
    length: room?.length ?? null,
    planMiter: room?.planMiter ?? null,
  };
}
