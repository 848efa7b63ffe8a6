import type { MeasuredRing, MeasuredPiece } from "miterwright/closure";

/** A ring that has caught, or would catch, a careless formula. */
export interface HardRing {
  readonly why: string;
  readonly ring: MeasuredRing;
  /** The open angle, where it is known without reckoning. */
  readonly angle?: number;
  /** The slope, where it is known. */
  readonly slope?: number;
}

function equal(count: number, miter: number, bevel: number, length = 100): MeasuredPiece[] {
  const cut = { miter, bevel };
  return Array.from({ length: count }, () => ({ length, start: cut, end: cut }));
}

const MIXED: readonly MeasuredPiece[] = [
  { length: 1e100, start: { miter: 60, bevel: 0 }, end: { miter: 60, bevel: 0 } },
  { length: 1e-100, start: { miter: 60, bevel: 0 }, end: { miter: 60, bevel: 0 } },
  { length: 1, start: { miter: 60, bevel: 0 }, end: { miter: 60, bevel: 0 } },
];

/** Hard cases of closing rings. */
export const HARD_RINGS: readonly HardRing[] = [
  {
    why: "all cuts square: a straight piece, which has no up",
    ring: { pieces: equal(6, 0, 0), at: 0, width: 20 },
    angle: 360,
    slope: 0,
  },
  {
    why: "round twice: the rotation alone would say that it closes",
    ring: { pieces: equal(8, 45, 0), at: 0, width: 20 },
    angle: -360,
    slope: 0,
  },
  { why: "round ten times", ring: { pieces: equal(40, 45, 0), at: 0, width: 20 }, angle: -3240, slope: 0 },
  {
    why: "cut the wrong way: the turns run backward",
    ring: { pieces: equal(4, -45, 0), at: 0, width: 20 },
    angle: 720,
    slope: 0,
  },
  {
    why: "half of a ring: the closing vector is a diameter",
    ring: { pieces: equal(4, 22.5, 0), at: "inside", width: 20 },
    angle: 180,
    slope: 0,
  },
  {
    why: "an upright box: its miters are 0, and faces look level",
    ring: { pieces: equal(5, 0, 36), at: 0, width: 20 },
    angle: 0,
    slope: 90,
  },
  { why: "an upright box, reversed", ring: { pieces: equal(5, 0, -36), at: 0, width: 20 }, angle: 0, slope: -90 },
  {
    why: "a zigzag: every turn undoes the one before",
    ring: {
      pieces: [...equal(1, 20, 0), ...equal(1, -20, 0), ...equal(1, 20, 0), ...equal(1, -20, 0)],
      at: 0,
      width: 20,
    },
    angle: 360,
    slope: 0,
  },
  { why: "three pieces, the fewest", ring: { pieces: equal(3, 60, 0), at: "outside", width: 20 }, angle: 0, slope: 0 },
  {
    why: "a thousand pieces, the most",
    ring: { pieces: equal(1000, 0.18, 0), at: "outside", width: 20 },
    angle: 0,
    slope: 0,
  },
  { why: "lengths at both ends of their range", ring: { pieces: MIXED, at: "inside", width: 1 }, angle: 0, slope: 0 },
  { why: "all as small as can be", ring: { pieces: equal(3, 60, 0, 1e-100), at: "outside", width: 1e-100 }, angle: 0 },
  { why: "all as large as can be", ring: { pieces: equal(3, 60, 0, 1e100), at: 1e100, width: 1e100 }, angle: 0 },
  {
    why: "miters a hair from 90, whose ends run away",
    ring: { pieces: equal(3, 90 - 1e-13, 0, 1e100), at: "outside", width: 1e100 },
  },
  {
    why: "miter and bevel a hair from 90",
    ring: { pieces: equal(3, 90 - 1e-13, 90 - 1e-13), at: "outside", width: 1e100 },
  },
  {
    why: "ends that look the same way",
    ring: {
      pieces: [...equal(2, 60, 0), { length: 100, start: { miter: 60, bevel: 0 }, end: { miter: -60, bevel: 0 } }],
      at: 0,
      width: 20,
    },
  },
  {
    why: "bevels of the smallest double",
    ring: { pieces: equal(4, 45, 5e-324), at: 0, width: 20 },
    angle: 0,
    slope: 0,
  },
  {
    why: "hardly splayed: a slope of a billionth",
    ring: { pieces: equal(4, 45, 1e-9 * Math.SQRT1_2), at: 0, width: 20 },
    angle: 0,
    slope: 1e-9,
  },
];
