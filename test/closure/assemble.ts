/**
 * A bench in space: pieces as rows of corner points, cut by the vector saw of test/laws/saw.ts, and put together by matching those
 * points. It shares no formula with the library: a joint is where two sets of points come to lie on each other.
 */
import type { MeasuredPiece } from "miterwright/closure";
import { planeFromWords } from "../laws/saw.js";

export type Point3 = readonly [number, number, number];
/** Three rows of a matrix that moves a piece's own points (along, inward, through) into space, and where its origin goes. */
export interface Pose3 {
  readonly rows: readonly [Point3, Point3, Point3];
  readonly origin: Point3;
}

export const RADIAN: number = Math.PI / 180;
export const add = (a: Point3, b: Point3): Point3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const times = (a: Point3, k: number): Point3 => [a[0] * k, a[1] * k, a[2] * k];
export const less = (a: Point3, b: Point3): Point3 => add(a, times(b, -1));
export const inner = (a: Point3, b: Point3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const outer = (a: Point3, b: Point3): Point3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const size = (a: Point3): number => Math.sqrt(inner(a, a));
export const unit = (a: Point3): Point3 => times(a, 1 / size(a));
const turnOnly = ({ rows }: Pose3, v: Point3): Point3 => [inner(rows[0], v), inner(rows[1], v), inner(rows[2], v)];
export const moved = (pose: Pose3, v: Point3): Point3 => add(turnOnly(pose, v), pose.origin);

/** Where on the section things are measured: level distances from the inside at the slope, and the size of the wood. */
export interface Section {
  readonly slope: number;
  readonly at: number;
  readonly width: number;
  readonly wood: { readonly width: number; readonly thickness: number };
}

/** The points of one cut end: the four corners of the wood, and the three points of its level line. */
export interface CutEnd {
  readonly corners: readonly [Point3, Point3, Point3, Point3];
  readonly measured: Point3;
  readonly inside: Point3;
  readonly outside: Point3;
}

/** A piece in its own axes: along, inward, through. */
export interface Blank {
  readonly start: CutEnd;
  readonly end: CutEnd;
}

/** Hand of a signed angle. */
const hand = (angle: number, positive: "left" | "right"): string =>
  angle >= 0 ? positive : positive === "left" ? "right" : "left";

/** The plane of a cut on the piece lying on its back: made by the vector saw, from words. */
export function sawnNormal(cut: { miter: number; bevel: number }, end: "start" | "end"): Point3 {
  const kept = end === "end" ? "left" : "right";
  const { along, across, through } = planeFromWords({
    down: "back",
    cradled: false,
    atFence: "outer-edge",
    fence: "near",
    slope: 0,
    kept,
    miter: { degrees: Math.abs(cut.miter), toward: hand(cut.miter, end === "end" ? "left" : "right") },
    bevel: { degrees: Math.abs(cut.bevel), toward: hand(cut.bevel, kept) },
  });
  return [along, -across, through];
}

/** Cuts one end: every line along the piece is followed to the plane, which holds the end of the measured line. */
function cutEnd(piece: MeasuredPiece, which: "start" | "end", section: Section): CutEnd {
  const normal = sawnNormal(piece[which], which);
  const level = (out: number): Point3 => [
    0,
    -out * Math.cos(section.slope * RADIAN),
    -out * Math.sin(section.slope * RADIAN),
  ];
  const held = add(level(section.at), [which === "end" ? piece.length : 0, 0, 0]);
  const reach = ([, y, z]: Point3): Point3 => [
    held[0] - (normal[1] * (y - held[1]) + normal[2] * (z - held[2])) / normal[0],
    y,
    z,
  ];
  const { width, thickness } = section.wood;
  return {
    corners: [reach([0, 0, 0]), reach([0, -width, 0]), reach([0, -width, thickness]), reach([0, 0, thickness])],
    measured: held,
    inside: reach(level(0)),
    outside: reach(level(section.width)),
  };
}

export function cutPiece(piece: MeasuredPiece, section: Section): Blank {
  return { start: cutEnd(piece, "start", section), end: cutEnd(piece, "end", section) };
}

/** Axes of a cut end by three of its corners: along the line of the back, square to the cut toward `out`, and the third. */
function endAxes({ corners }: CutEnd, out: 1 | -1): [Point3, Point3, Point3] {
  const back = unit(less(corners[1], corners[0]));
  const square = unit(outer(less(corners[1], corners[0]), less(corners[3], corners[0])));
  const normal = times(square, out * Math.sign(square[0]));
  return [back, normal, outer(back, normal)];
}

/** Lays a start against an end so that the measured points meet, the cuts are flush, and the lines of the backs run the same way. */
export function mateByBacks(placed: Pose3, end: CutEnd, start: CutEnd): Pose3 {
  const [u, n, w] = endAxes(end, 1).map((axis) => turnOnly(placed, axis)) as [Point3, Point3, Point3];
  const [p, q, r] = endAxes(start, 1);
  // The start's normal out of its wood is -q, and comes to lie against n; so q comes to lie on n.
  const row = (k: 0 | 1 | 2): Point3 => add(add(times(p, u[k]), times(q, n[k])), times(r, w[k]));
  const rows = [row(0), row(1), row(2)] as const;
  return { rows, origin: less(moved(placed, end.measured), turnOnly({ rows, origin: [0, 0, 0] }, start.measured)) };
}

/** Inverse of the transpose, for the polar decomposition. */
function inverseTranspose(m: readonly Point3[]): [Point3, Point3, Point3] {
  const [a, b, c] = m as [Point3, Point3, Point3];
  const determinant = inner(a, outer(b, c));
  return [
    times(outer(b, c), 1 / determinant),
    times(outer(c, a), 1 / determinant),
    times(outer(a, b), 1 / determinant),
  ];
}

/**
 * Lays a start against an end by registering all four corners of the one on those of the other, least squares, as hands do that feel for flush faces. A
 * peg square to each cut keeps the cuts from facing the wrong way.
 */
export function mateByCorners(placed: Pose3, end: CutEnd, start: CutEnd): Pose3 {
  const [, n] = endAxes(end, 1);
  const [, q] = endAxes(start, 1);
  const scale = size(less(end.corners[2], end.corners[0]));
  const middle = (points: readonly Point3[]): Point3 =>
    times(
      points.reduce<Point3>((sum, point) => add(sum, point), [0, 0, 0]),
      1 / points.length,
    );
  const [targets, sources] = [end.corners.map((point) => moved(placed, point)), start.corners];
  const [targetMiddle, sourceMiddle] = [middle(targets), middle(sources)];
  const pairs: [Point3, Point3][] = targets.map((point, index) => [
    less(point, targetMiddle),
    less(sources[index]!, sourceMiddle),
  ]);
  pairs.push([times(turnOnly(placed, n), scale), times(q, scale)]);
  let m: readonly Point3[] = [0, 1, 2].map((row) =>
    pairs.reduce<Point3>((sum, [target, source]) => add(sum, times(source, target[row]!)), [0, 0, 0]),
  );
  for (let round = 0; round < 60; round += 1) {
    const other = inverseTranspose(m);
    m = m.map((row, index) => times(add(row, other[index]!), 0.5));
  }
  const rows = m as unknown as Pose3["rows"];
  return { rows, origin: less(moved(placed, end.measured), turnOnly({ rows, origin: [0, 0, 0] }, start.measured)) };
}

/** Where a ring stands open. */
export interface OpenRing {
  readonly poses: readonly Pose3[];
  readonly blanks: readonly Blank[];
  /** Upward, square to the sides' lines as they follow each other. */
  readonly up: Point3;
  /** Open angle, -180 to 180. */
  readonly angle: number;
  /** Gaps at the inside and outside of the last joint, square to it. */
  readonly inside: number;
  readonly outside: number;
  /** From the last measured end to the first measured start. */
  readonly vector: { readonly along: number; readonly out: number; readonly up: number };
  /** Length of the last joint's level line, on the last piece. */
  readonly jointLine: number;
  /** Slope of every piece. */
  readonly slopes: readonly number[];
  /** Rotation from where the first piece would be mated to where it is, about along, out and up, in degrees, to first order. */
  readonly twist: { readonly along: number; readonly out: number; readonly up: number };
}

/** Assembles a ring, all joints but the last one tight. */
export function assemble(
  pieces: readonly MeasuredPiece[],
  sections: readonly Section[],
  mate: typeof mateByBacks = mateByBacks,
): OpenRing {
  const blanks = pieces.map((piece, index) => cutPiece(piece, sections[index]!));
  const identity: Pose3 = {
    rows: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
    origin: [0, 0, 0],
  };
  const poses: Pose3[] = [identity];
  for (let index = 1; index < blanks.length; index += 1) {
    poses.push(mate(poses[index - 1]!, blanks[index - 1]!.end, blanks[index]!.start));
  }
  const starts = blanks.map(({ start }, index) => moved(poses[index]!, start.measured));
  const lastEnd = moved(poses.at(-1)!, blanks.at(-1)!.end.measured);
  const corners = [...starts, lastEnd];
  const up = unit(
    corners
      .map((corner, index) => outer(corner, corners[(index + 1) % corners.length]!))
      .reduce<Point3>((sum, area) => add(sum, area), [0, 0, 0]),
  );
  const ending = turnOnly(poses.at(-1)!, endAxes(blanks.at(-1)!.end, 1)[1]);
  const beginning = endAxes(blanks[0]!.start, 1)[1];
  const level = (v: Point3): Point3 => less(v, times(up, inner(v, up)));
  const angle =
    Math.atan2(inner(up, outer(level(ending), level(beginning))), inner(level(ending), level(beginning))) / RADIAN;
  const along = unit(level(add(ending, beginning)));
  const out = outer(along, up);
  const last = blanks.at(-1)!.end;
  const first = blanks[0]!.start;
  const apart = (point: "inside" | "outside" | "measured"): Point3 =>
    less(first[point], moved(poses.at(-1)!, last[point]));
  const slopeOf = (pose: Pose3): number => {
    const [outward, face] = [turnOnly(pose, [0, -1, 0]), turnOnly(pose, [0, 0, 1])];
    return Math.atan2(inner(outward, up), inner(face, up)) / RADIAN;
  };
  const mated = mate(poses.at(-1)!, last, first);
  // The first piece stands as space does; seen from where it would be mated it is rotated by the transpose of that pose.
  const { rows } = mated;
  const half: Point3 = [rows[1][2] - rows[2][1], rows[2][0] - rows[0][2], rows[0][1] - rows[1][0]];
  const vector = times(half, 0.5 / RADIAN);
  const open = apart("measured");
  return {
    poses,
    blanks,
    up,
    angle,
    inside: inner(apart("inside"), along),
    outside: inner(apart("outside"), along),
    vector: { along: inner(open, along), out: inner(open, out), up: inner(open, up) },
    jointLine: size(less(last.outside, last.inside)),
    slopes: poses.map(slopeOf),
    twist: { along: inner(vector, along), out: inner(vector, out), up: inner(vector, up) },
  };
}
