import fc from "fast-check";
import type { Board, CutPlane, JoinCornerOptions, Lay, LayName, SawSetting } from "miterwright/miter";

/*
 * Laws of end cuts, as helpers. They rebuild sticks from saw settings alone, the way a saw and a bench would: nothing here
 * calls the library.
 */

const RADIAN = Math.PI / 180;
const sin = (degrees: number): number => Math.sin(degrees * RADIAN);
const cos = (degrees: number): number => Math.cos(degrees * RADIAN);

/** A point or direction of space: x to the right, y away, z up. */
export type Vector3 = readonly [x: number, y: number, z: number];

/** A piece's place in the ring: it follows a heading of the plan, its inner back edge at a distance from the center. */
export interface Place {
  /** Its direction, in degrees from x. */
  readonly heading: number;
  /** Its slope in degrees. */
  readonly slope: number;
  /** Distance of its inner back edge from the center, seen from above. */
  readonly distance: number;
}

/** A point of a piece in its own axes. */
export interface StickPoint {
  readonly along: number;
  readonly across: number;
  readonly through: number;
}

export const dot3 = (a: Vector3, b: Vector3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** A direction of a piece's own axes as one of space. */
export function directionInSpace({ heading, slope }: Place, { along, across, through }: StickPoint): Vector3 {
  const out = across * cos(slope) - through * sin(slope);
  const up = across * sin(slope) + through * cos(slope);
  // Outward is to the right of the heading, as the ring goes counter-clockwise.
  return [along * cos(heading) + out * sin(heading), along * sin(heading) - out * cos(heading), up];
}

/** A point of a piece as one of space; along is counted from the middle of its side. */
export function pointInSpace(place: Place, point: StickPoint): Vector3 {
  const [x, y, z] = directionInSpace(place, point);
  return [x + place.distance * sin(place.heading), y - place.distance * cos(place.heading), z];
}

/**
 * The plane that a saw cuts when it is set to an angle and the stick lies on it in a lay.
 *
 * The blade stands upright on the miter line and leans by the bevel; then the stick is rolled back into the frame.
 *
 * @param setting - miter and bevel in degrees
 * @param rotation - how far the stick was rolled away from its place in the frame
 * @param slope - its slope there
 * @param end - which end is cut
 * @returns the plane's normal in the stick's own axes
 */
export function sawnPlane(setting: SawSetting, rotation: number, slope: number, end: "start" | "end"): CutPlane {
  const level = cos(setting.bevel);
  const along = level * cos(setting.miter) * (end === "end" ? 1 : -1);
  // The part farther out is the longer, so the cut looks inward; the higher part is the shorter, so it looks up.
  const out = -level * sin(setting.miter);
  const up = sin(setting.bevel);
  const tilt = slope - rotation;
  return { along, across: out * cos(tilt) + up * sin(tilt), through: up * cos(tilt) - out * sin(tilt) };
}

/** How far along the stick its point (across, through) is cut by a plane that holds the point `held`. */
export function sawnLength(plane: CutPlane, held: StickPoint, across: number, through: number): number {
  const drop = plane.across * (across - held.across) + plane.through * (through - held.through);
  return held.along - drop / plane.along;
}

/** Distance of two points. */
export function distance3(a: Vector3, b: Vector3): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** Every number in a result, however deep. */
export function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** How far two results of one shape are apart, in the number that differs most; infinite if their shapes differ. */
export function largestDifference(a: unknown, b: unknown): number {
  const [x, y] = [numbersIn(a), numbersIn(b)];
  return x.length === y.length ? Math.max(...x.map((value, i) => Math.abs(value - y[i]!))) : Infinity;
}

/** Whether a number may leave the library: finite, and not -0. */
export function isClean(x: number): boolean {
  return Number.isFinite(x) && !Object.is(x, -0);
}

/** Slopes: any, with the ends, zero and near misses of both. */
export const anySlope: fc.Arbitrary<number> = fc.oneof(
  fc.double({ min: -90, max: 90, noNaN: true }),
  fc.constantFrom(-90, -1e-9, 0, 1e-9, 45, 90 - 1e-9, 90),
);

/** Turns that a saw can be asked for, of either sign. */
export const anyTurn: fc.Arbitrary<number> = fc.double({ min: -179, max: 179, noNaN: true });

/** Lays by name and by number. */
export const anyLay: fc.Arbitrary<Lay> = fc.oneof(
  fc.constantFrom<LayName>("propped", "flat", "face-down", "sight-edge-down", "outer-edge-down"),
  fc.double({ min: -360, max: 360, noNaN: true }),
);

/** Boards a bench can hold, of slopes of one sign and clear of flat. */
const anyBoard: fc.Arbitrary<Board & { readonly width: number }> = fc.record({
  slope: fc.double({ min: 2, max: 89, noNaN: true }),
  thickness: fc.double({ min: 3, max: 60, noNaN: true }),
  width: fc.double({ min: 20, max: 300, noNaN: true }),
});

/** Corners of two unequal boards, of either sign of slope and turn. */
export const anyCorner: fc.Arbitrary<
  JoinCornerOptions & { first: Board & { readonly width: number }; second: Board & { readonly width: number } }
> = fc
  .record({
    turn: fc.double({ min: 3, max: 170, noNaN: true }),
    first: anyBoard,
    second: anyBoard,
    reversed: fc.boolean(),
    reflex: fc.boolean(),
  })
  .map(({ turn, first, second, reversed, reflex }) => ({
    turn: reflex ? -turn : turn,
    first: reversed ? { ...first, slope: -first.slope } : first,
    second: reversed ? { ...second, slope: -second.slope } : second,
  }));
