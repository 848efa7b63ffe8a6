import { D, exact, type Exact } from "../exact.js";
import { cosine, direction, sine } from "./exact-angles.js";

/*
 * Corners built in space from the words alone: no formula of the library is used. Sides go counter-clockwise, so "outward"
 * is to the right of the way a stick runs.
 */

/** A vector of space: x to the right, y away, z up. */
export type Space = readonly [Exact, Exact, Exact];

export const plus = (a: Space, b: Space): Space => [a[0].plus(b[0]), a[1].plus(b[1]), a[2].plus(b[2])];
export const times = (a: Space, k: Exact): Space => [a[0].times(k), a[1].times(k), a[2].times(k)];
export const inner = (a: Space, b: Space): Exact => a[0].times(b[0]).plus(a[1].times(b[1])).plus(a[2].times(b[2]));
export const length = (a: Space): Exact => inner(a, a).sqrt();
export const outer = (a: Space, b: Space): Space => [
  a[1].times(b[2]).minus(a[2].times(b[1])),
  a[2].times(b[0]).minus(a[0].times(b[2])),
  a[0].times(b[1]).minus(a[1].times(b[0])),
];

/** A board's axes as vectors of space. */
export interface Axes {
  readonly along: Space;
  readonly across: Space;
  readonly through: Space;
}

/** A board as a slab: the planes of its back and of its face, at distances from the origin along the face's normal. */
export interface Slab {
  readonly axes: Axes;
  readonly back: Exact;
  readonly face: Exact;
  readonly outward: Space;
}

const UP: Space = [new D(0), new D(0), new D(1)];

/** A board that lies in the given direction of the plan, sloping up outward. */
export function axesAt(heading: Exact, slope: Exact): Axes & { readonly outward: Space } {
  const along: Space = [cosine(heading), sine(heading), new D(0)];
  const outward = outer(along, UP);
  const across = plus(times(outward, cosine(slope)), times(UP, sine(slope)));
  // (along, across, through) is left-handed.
  return { along, across, through: outer(across, along), outward };
}

/** A slab whose back's inner edge runs level, at a height of 0, at a distance from the origin. */
export function slabAt(heading: Exact, slope: Exact, thickness: Exact, distance: Exact): Slab {
  const { outward, ...axes } = axesAt(heading, slope);
  const back = inner(axes.through, times(outward, distance));
  return { axes, back, face: back.plus(thickness), outward };
}

/** The point that lies on three planes n.p = d. */
export function commonPoint(planes: readonly (readonly [normal: Space, distance: Exact])[]): Space {
  const [[a, da], [b, db], [c, dc]] = planes as [[Space, Exact], [Space, Exact], [Space, Exact]];
  const bc = outer(b, c);
  const sum = plus(plus(times(bc, da), times(outer(c, a), db)), times(outer(a, b), dc));
  return times(sum, new D(1).div(inner(a, bc)));
}

/** The plane through three points, as a normal of length 1 that points along a given direction. */
export function planeThrough(p: Space, q: Space, r: Space, toward: Space): Space {
  const minus = (a: Space, b: Space): Space => plus(a, times(b, new D(-1)));
  const normal = outer(minus(q, p), minus(r, p));
  return times(normal, new D(inner(normal, toward).isNegative() ? -1 : 1).div(length(normal)));
}

/** A vector by its components in a board's axes. */
export function componentsIn(axes: Axes, vector: Space): { along: Exact; across: Exact; through: Exact } {
  return {
    along: inner(vector, axes.along),
    across: inner(vector, axes.across),
    through: inner(vector, axes.through),
  };
}

/**
 * Miter and bevel as they are defined, for a board that lies on its back: the cut's trace on the table against a square
 * cut, and the cut against a blade that stands upright on that trace.
 */
export function settingFlat(axes: Axes, normal: Space, end: "start" | "end"): { miter: Exact; bevel: Exact } {
  const table = axes.through;
  const trace = outer(normal, table);
  const outwardTrace = times(trace, new D(inner(trace, axes.across).isNegative() ? -1 : 1));
  // How far the cut has come along the board, toward its end, when it has gone out across by 1: the outer part is longer by it.
  const longer = inner(outwardTrace, axes.along).times(end === "end" ? 1 : -1);
  const upright = outer(table, trace);
  const level = times(upright, new D(inner(upright, normal).isNegative() ? -1 : 1));
  return {
    miter: direction(longer, inner(outwardTrace, axes.across)),
    bevel: direction(inner(normal, table), inner(normal, level).div(length(level))),
  };
}

/** The angle in front of two faces that meet, measured square to the line in which they do. */
export function dihedralOf(first: Axes, second: Axes): Exact {
  const line = outer(first.through, second.through);
  if (length(line).isZero()) return new D(180);
  // In each face, the direction away from the joint: back along the first board, on along the second.
  const into = (axes: Axes, sign: number): Space => {
    const square = outer(line, axes.through);
    return times(square, new D(inner(square, axes.along).times(sign).isNegative() ? -1 : 1).div(length(square)));
  };
  const [a, b] = [into(first, -1), into(second, 1)];
  const between = direction(length(outer(a, b)), inner(a, b));
  // The second face rises in front of the first one, or falls away behind it.
  return inner(b, first.through).isNegative() ? new D(360).minus(between) : between;
}

/** A number as a decimal: every bit of a double, or a text's decimal places. */
export const dec = (x: number | string): Exact => (typeof x === "number" ? exact(x) : new D(x));
