import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";
import { cross, dot, norm, scale, type Vector } from "../core/vector.js";
import type { CheckedRing, MeasuredPiece } from "./measured-piece.js";
import { compose, cutNormal, jointRotation, rotate, UNTURNED, type Rotation } from "./rotation.js";

/** One piece of a chain, where it came to stand. */
export interface ChainPiece {
  /** The piece itself. */
  readonly piece: MeasuredPiece;
  /** Its axes in space. */
  readonly rotation: Rotation;
  /** Where the line of its length starts, in units of the chain's `unit`. */
  readonly from: Vector;
  /** Where that line ends. */
  readonly to: Vector;
  /** Its slope, as the chain stands. */
  readonly slope: number;
  /** Slope at which its level distances are taken: the one that was given, else its own. */
  readonly levelAt: number;
}

/** Pieces joined one after the other, each joint pressed tight. */
export interface Chain {
  /** The pieces in order. The first one's axes are those of space. */
  readonly pieces: readonly ChainPiece[];
  /** Length that counts as 1 in the chain's coordinates. */
  readonly unit: number;
  /** The chain's upward direction. */
  readonly up: Vector;
}

/** An area this small, as a share of the square of the lengths, has no direction that can be told. */
const NO_AREA: number = 1e-12;

/** a + b. */
export function plus(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** a - b. */
export function minus(a: Vector, b: Vector): Vector {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

/** Sides may stand past upright by less than this cosine says, before a ring counts as one that was cut the wrong way round. */
const PAST_UPRIGHT: number = -0.5;

/**
 * Upward: the normal of the polygon that the measured lines make, closed by a straight line. It is taken on the side that `toward` looks to: the planned upward
 * direction, or the direction of the faces where no slope is planned. Faces may look down a little in sides that lean past upright. Pieces in one straight line
 * have no polygon; there it is the mean of `toward` itself.
 */
function upwardOf(corners: readonly Vector[], toward: Vector, least: number): Vector {
  let area: Vector = [0, 0, 0];
  for (const [index, corner] of corners.entries()) {
    // Twice the area of the triangle to the first corner.
    const next = corners[index + 1] ?? corners[0]!;
    area = plus(area, cross(minus(corner, corners[0]!), minus(next, corners[0]!)));
  }
  const size = norm(area);
  if (size < NO_AREA) {
    const length = norm(toward);
    return length < NO_AREA ? [0, 0, 1] : scale(toward, 1 / length);
  }
  return scale(area, (dot(area, toward) < least * size ? -1 : 1) / size);
}

/**
 * Joins pieces one after the other.
 *
 * Each start is pressed face to face against the end before it. The measured lines then meet in one point, and the backs in one line across the joint, as on a
 * bench or a caul, or under a finger.
 */
export function joinChain(ring: Pick<CheckedRing, "pieces" | "width" | "slope">): Chain {
  const { pieces, width, slope } = ring;
  const unit = Math.max(width, ...pieces.map((piece) => piece.length));
  const placed: { piece: MeasuredPiece; rotation: Rotation; from: Vector; to: Vector }[] = [];
  const planned: Vector = [0, -sinDeg(slope ?? 0), cosDeg(slope ?? 0)];
  let toward: Vector = [0, 0, 0];
  for (const piece of pieces) {
    const before = placed.at(-1);
    const rotation =
      before === undefined ? UNTURNED : compose(before.rotation, jointRotation(before.piece.end, piece.start));
    const from: Vector = before?.to ?? [0, 0, 0];
    placed.push({ piece, rotation, from, to: plus(from, rotate(rotation, [piece.length / unit, 0, 0])) });
    toward = plus(toward, scale(rotate(rotation, planned), 1 / pieces.length));
  }
  const up = upwardOf(
    [...placed.map(({ from }) => from), placed.at(-1)!.to],
    toward,
    slope === undefined ? PAST_UPRIGHT : 0,
  );
  return {
    unit,
    up,
    pieces: placed.map(({ piece, rotation, from, to }) => {
      const own = atan2Deg(-dot(up, rotate(rotation, [0, 1, 0])), dot(up, rotate(rotation, [0, 0, 1])));
      return { piece, rotation, from, to, slope: own, levelAt: slope ?? own };
    }),
  };
}

/**
 * A point of a cut end, a level distance outward from the line of the lengths.
 *
 * Level outward by t, the cut lies t (tan m cos s + tan b sin s / cos m) farther along the piece: t times the tangent of its plan miter. `end` is 1 where the
 * piece ends, -1 where it starts; the distance is in the chain's unit.
 */
export function endPoint(placed: ChainPiece, end: 1 | -1, outward: number): Vector {
  const { levelAt, piece } = placed;
  const { miter, bevel } = end === 1 ? piece.end : piece.start;
  const [cosine, sine] = [cosDeg(levelAt), sinDeg(levelAt)];
  const slant = (sinDeg(miter) * cosine + (sinDeg(bevel) / cosDeg(bevel)) * sine) / cosDeg(miter);
  const offset: Vector = [end * outward * slant, -outward * cosine, -outward * sine];
  return plus(end === 1 ? placed.to : placed.from, rotate(placed.rotation, offset));
}

/**
 * The normal of a placed piece's cut, out of the wood, in space. A unit vector; `end` is 1 where the piece ends, -1 where it starts.
 */
export function endNormal(placed: ChainPiece, end: 1 | -1): Vector {
  const { rotation, piece } = placed;
  return rotate(rotation, cutNormal(end === 1 ? piece.end : piece.start, end));
}

/** A vector without its part along a unit vector. */
export function squareTo(v: Vector, axis: Vector): Vector {
  return minus(v, scale(axis, dot(v, axis)));
}
