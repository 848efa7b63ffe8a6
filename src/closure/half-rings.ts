import { refuse } from "../core/check.js";
import { cross, dot, norm, scale, type Vector } from "../core/vector.js";
import { endPoint, joinChain, minus, squareTo, type Chain, type ChainPiece } from "./chain.js";
import { checkRing, type CheckedRing, type MeasuredRing } from "./measured-piece.js";
import { rotate } from "./rotation.js";

/** What a straight cut across both ends of a half ring takes off one end. */
export interface EndTrim {
  /** At the inner end of the joint line, 0 or more, square to the straight cut. */
  readonly inside: number;
  /** At its outer end. */
  readonly outside: number;
}

/** One half of a ring, joined and waiting for its straight cut. */
export interface HalfRing {
  /** Number of its first piece. */
  readonly from: number;
  /** Number of its last piece. */
  readonly to: number;
  /** What is taken off where its first piece starts. */
  readonly start: EndTrim;
  /** What is taken off where its last piece ends. */
  readonly end: EndTrim;
  /** The most that is taken off anywhere: how much nearer this half comes to the other one. */
  readonly depth: number;
}

/** Two half rings, trimmed straight. */
export interface HalfRings {
  /** The halves. */
  readonly halves: readonly [HalfRing, HalfRing];
  /** How much narrower the ring becomes across the seam by trimming: the depths of both halves. */
  readonly loss: number;
  /**
   * By how much the two trimmed halves differ along the seam, from end to end, at the inner or the outer arris, whichever is more. A step of that size is left,
   * in both joints together. 0 for halves that are alike.
   */
  readonly mismatch: number;
}

/** A half, and how far apart its two ends are along the seam once they are trimmed, at the inner and the outer arris. */
interface SpacedHalf {
  readonly half: HalfRing;
  readonly apart: readonly [number, number];
}

/** A point on the bench: level along a half's straight side, and into its wood. */
type BenchPoint = readonly [along: number, into: number];

/** The ends of a half on the bench. */
interface BenchEnds {
  /** The inner and the outer point of its start, and of its end. */
  readonly points: readonly BenchPoint[];
  /** The directions of its first and its last piece. */
  readonly directions: readonly [BenchPoint, BenchPoint];
}

/** How far points lie below a line through two of them; `null` when one lies above it. */
function below(points: readonly BenchPoint[], a: number, b: number): number[] | null {
  const [ax, ay] = points[a]!;
  const [bx, by] = points[b]!;
  const length = Math.hypot(bx - ax, by - ay);
  const distances = points.map(([x, y], index) =>
    index === a || index === b ? 0 : ((bx - ax) * (ay - y) - (by - ay) * (ax - x)) / length,
  );
  return distances.every((distance) => distance >= 0) ? distances : null;
}

/** Where the ends of a half lie on the bench. */
function endsOnBench({ pieces, up, unit }: Chain, ring: CheckedRing): BenchEnds {
  const ends = ([0, -1] as const).flatMap((index) =>
    [-ring.at, ring.width - ring.at].map((t) => endPoint(pieces.at(index)!, index === 0 ? -1 : 1, t / unit)),
  );
  const chord = squareTo(minus(ends[2]!, ends[0]!), up);
  const size = norm(chord);
  const along: Vector = size > 0 ? scale(chord, 1 / size) : [1, 0, 0];
  // The ring goes counter-clockwise, so the wood lies to the right of the way from its start to its end.
  const into = cross(along, up);
  const onBench = (vector: Vector): BenchPoint => [dot(vector, along), dot(vector, into)];
  const directionOf = ({ rotation }: ChainPiece): BenchPoint => onBench(rotate(rotation, [1, 0, 0]));
  return { points: ends.map(onBench), directions: [directionOf(pieces[0]!), directionOf(pieces.at(-1)!)] };
}

/** How far apart the cuts of one arris at both ends are along a line through two points: at 0 the inner, at 1 the outer arris. */
function apartOn({ points, directions }: BenchEnds, a: number, b: number, arris: 0 | 1): number {
  const [from, to] = [points[a]!, points[b]!];
  const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const line: BenchPoint = size > 0 ? [(to[0] - from[0]) / size, (to[1] - from[1]) / size] : [1, 0];
  const cutAt = (end: 0 | 1): number => {
    const point = points[2 * end + arris]!;
    const direction = directions[end];
    const [x, y] = [point[0] - from[0], point[1] - from[1]];
    const slant = line[0] * direction[1] - line[1] * direction[0];
    // Along the arris until it meets the line; one that lies along it stays.
    const way = slant === 0 ? 0 : -(line[0] * y - line[1] * x) / slant;
    return line[0] * (x + way * direction[0]) + line[1] * (y + way * direction[1]);
  };
  return Math.abs(cutAt(1) - cutAt(0));
}

function trimmed(ring: CheckedRing, from: number, to: number): SpacedHalf {
  const chain = joinChain({ ...ring, pieces: ring.pieces.slice(from, to + 1) });
  const ends = endsOnBench(chain, ring);
  // The straight cut that takes the least leaves one point of each end standing and passes behind the others.
  const lines = [0, 1].flatMap((a) => [2, 3].map((b) => ({ a, b, distances: below(ends.points, a, b) })));
  const { a, b, distances } = lines.find((line) => line.distances !== null) ?? { a: 0, b: 2, distances: null };
  const [startInside, startOutside, endInside, endOutside] = (distances ?? [0, 0, 0, 0]).map(
    (distance) => distance * chain.unit,
  ) as [number, number, number, number];
  return {
    half: {
      from,
      to,
      start: { inside: startInside, outside: startOutside },
      end: { inside: endInside, outside: endOutside },
      depth: Math.max(startInside, startOutside, endInside, endOutside),
    },
    apart: [apartOn(ends, a, b, 0) * chain.unit, apartOn(ends, a, b, 1) * chain.unit],
  };
}

/**
 * The last two joints of a ring of an even number of sides, made straight: each half is joined, then its two ends are cut or planed in one
 * line.
 *
 * A half ring of equal pieces that lacks half of the open angle has two ends of which each stands a quarter of it off the straight line. The line that takes
 * least leaves one point of each end standing and takes a wedge of (width / cos h) sin(angle / 4) off the rest. The ring becomes narrower across the seam by
 * two of these, about half of the gap. Angles along the seam are then right whatever the saw did.
 *
 * @param options - the pieces as for `ringClosure`, an even number of them, 4 to 1000
 * @returns what is taken off every end of both halves, what the ring loses across the seam, and how far the halves do not match along it
 * @throws {InputError} when the pieces are not sound, or their number is odd
 * @example
 * ```ts
 * import { halfRings, ringClosure } from "miterwright/closure";
 *
 * const cut = { miter: 22.4, bevel: 0 };
 * const piece = { length: 200, start: cut, end: cut };
 * const ring = { pieces: Array.from({ length: 8 }, () => piece), at: "outside", width: 40 } as const;
 * ringClosure(ring).jointGap.toFixed(3); //=> "1.209"
 * halfRings(ring).halves[0].start.inside.toFixed(3); //=> "0.302"
 * halfRings(ring).loss.toFixed(3); //=> "0.604"
 * ```
 */
export function halfRings(options: MeasuredRing): HalfRings {
  const ring = checkRing(options, 4);
  const count = ring.pieces.length;
  if (count % 2 === 1) {
    refuse(
      "impossible",
      "pieces",
      ring.pieces,
      `an even number of pieces: ${count} have no straight halves, see \`closingPiece\``,
    );
  }
  const [one, other] = [trimmed(ring, 0, count / 2 - 1), trimmed(ring, count / 2, count - 1)];
  return {
    halves: [one.half, other.half],
    loss: one.half.depth + other.half.depth,
    mismatch: Math.max(...[0, 1].map((arris) => Math.abs(one.apart[arris]! - other.apart[arris]!))),
  };
}
