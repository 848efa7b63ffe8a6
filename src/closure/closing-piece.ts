import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";
import { cross, dot, norm, scale, type Vector } from "../core/vector.js";
import type { SawSetting } from "../miter/index.js";
import { endNormal, joinChain, minus, plus, squareTo } from "./chain.js";
import { checkRing, type MeasuredRing, type MeasuredPiece } from "./measured-piece.js";

/**
 * Why no piece closes a ring. `no-room`: the two open ends lie on each other. `ends-turned-away`: the two open ends do not look toward each other, so no piece
 * can lie between them.
 */
export type ClosingReason = "no-room" | "ends-turned-away";

/** The piece that closes a ring, or why none can. */
export type ClosingPiece =
  | {
      /** A piece fits. */
      readonly possible: true;
      /** The piece to cut: its length along the line that `at` names, and the two cuts, lying flat. */
      readonly piece: MeasuredPiece;
      /** The slope it is cut for: that which was given, else the mean of the others. */
      readonly slope: number;
    }
  | {
      /** No piece fits. */
      readonly possible: false;
      /** Why not. */
      readonly reason: ClosingReason;
    };

/** The setting of a cut with a normal out of the wood, for a piece with given axes that lies flat. */
function settingOf(normal: Vector, along: Vector, inward: Vector, through: Vector): SawSetting {
  const forward = Math.abs(dot(normal, along));
  const out = dot(normal, inward);
  return { miter: atan2Deg(out, forward), bevel: atan2Deg(dot(normal, through), Math.hypot(forward, out)) };
}

/**
 * The last piece of a ring, cut to fit the others: for an odd number of sides, which has no straight halves, and for a last piece that
 * was spoiled.
 *
 * The pieces but the last are joined. The closing piece takes the line from where the last of them ends to where the first one starts. It stands at the ring's
 * slope, and its cuts lie against these two ends. In a flat frame its two miters are what the other joints leave of 360 degrees, each less what its neighbor
 * has. In a twisted ring the piece closes the joints level, but its back is flush at neither: no straight piece takes a twist out.
 *
 * @param options - the pieces as for `ringClosure` without the closing piece, 2 to 1000, in order from the one after it
 * @returns the piece, or why there is none
 * @throws {InputError} when the pieces are not sound
 * @example
 * ```ts
 * import { closingPiece } from "miterwright/closure";
 *
 * // Six of seven pieces, every miter a tenth of a degree short.
 * const cut = { miter: 180 / 7 - 0.1, bevel: 0 };
 * const piece = { length: 200, start: cut, end: cut };
 * const last = closingPiece({ pieces: Array.from({ length: 6 }, () => piece), at: "outside", width: 40 });
 * if (!last.possible) throw new Error(last.reason);
 * last.piece.length.toFixed(2); //=> "205.08"
 * last.piece.end.miter.toFixed(3); //=> "26.314"
 * ```
 */
export function closingPiece(options: MeasuredRing): ClosingPiece {
  const ring = checkRing(options, 2);
  const { pieces, up, unit } = joinChain(ring);
  const [first, last] = [pieces[0]!, pieces.at(-1)!];
  const line = minus(first.from, last.to);
  const length = norm(line);
  const level = norm(squareTo(line, up));
  if (!(level > 0)) return { possible: false, reason: "no-room" };
  const along = scale(line, 1 / length);
  const rise = pieces.reduce((sum, piece) => sum + piece.levelAt / pieces.length, 0);
  // Inward is to the left of the way the ring runs; the back rises outward by the slope.
  const left = scale(cross(up, along), 1 / norm(cross(up, along)));
  const above = cross(along, left);
  const inward = plus(scale(left, cosDeg(rise)), scale(above, -sinDeg(rise)));
  const through = plus(scale(left, sinDeg(rise)), scale(above, cosDeg(rise)));
  // A cut looks against the one it lies on.
  const startNormal = scale(endNormal(last, 1), -1);
  const endingNormal = scale(endNormal(first, -1), -1);
  if (!(dot(startNormal, along) < 0) || !(dot(endingNormal, along) > 0)) {
    return { possible: false, reason: "ends-turned-away" };
  }
  const start = settingOf(startNormal, along, inward, through);
  const end = settingOf(endingNormal, along, inward, through);
  return { possible: true, piece: { length: length * unit, start, end }, slope: rise };
}
