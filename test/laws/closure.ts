import fc from "fast-check";
import { compoundMiter, type SawSetting } from "miterwright/miter";
import type { MeasuredRing, MeasuredPiece } from "miterwright/closure";

/*
 * Laws of closing rings, as helpers: rings cut with known errors, and the same ring seen otherwise.
 */

/** Errors of one piece: of its two cuts in degrees, and of its length as a share of it. */
export interface StickErrors {
  readonly start: SawSetting;
  readonly end: SawSetting;
  readonly length: number;
}

/** What a ring was meant to be, and what went wrong. */
export interface FlawedRing {
  readonly sides: number;
  readonly slope: number;
  readonly length: number;
  readonly width: number;
  readonly at: "inside" | "outside" | number;
  readonly errors: readonly StickErrors[];
}

const degrees = (most: number): fc.Arbitrary<number> => fc.double({ min: -most, max: most, noNaN: true });
const cutErrors: fc.Arbitrary<SawSetting> = fc.record({ miter: degrees(0.5), bevel: degrees(0.5) });

/** Slopes of real frames and boxes, of both signs, flat and upright among them. */
export const workableSlope: fc.Arbitrary<number> = fc.oneof(
  fc.double({ min: -88, max: 88, noNaN: true }),
  fc.constantFrom(0, 30, 45, -45, 90, -90),
);

const shape = {
  sides: fc.integer({ min: 3, max: 14 }),
  slope: workableSlope,
  length: fc.double({ min: 80, max: 900, noNaN: true }),
  width: fc.double({ min: 5, max: 70, noNaN: true }),
  at: fc.oneof(fc.constantFrom("inside" as const, "outside" as const), fc.double({ min: -20, max: 60, noNaN: true })),
};

/** Rings whose pieces and ends are all alike. */
export const evenlyFlawed: fc.Arbitrary<FlawedRing> = fc
  .record({ ...shape, error: cutErrors })
  .map(({ error, ...ring }) => ({
    ...ring,
    errors: Array.from({ length: ring.sides }, () => ({ start: error, end: error, length: 0 })),
  }));

/** Rings whose cuts and lengths are each off by their own. */
export const unevenlyFlawed: fc.Arbitrary<FlawedRing> = fc.record(shape).chain((ring) =>
  fc
    .array(fc.record({ start: cutErrors, end: cutErrors, length: degrees(0.004) }), {
      minLength: ring.sides,
      maxLength: ring.sides,
    })
    .map((errors) => ({ ...ring, errors })),
);

/** The pieces of a ring as they come off the saw, every error multiplied by `share`. */
export function sticksOf({ sides, slope, length, errors }: FlawedRing, share = 1): MeasuredPiece[] {
  const { miter, bevel } = compoundMiter({ sides, slope });
  const cut = (error: SawSetting): SawSetting => ({
    miter: miter + share * error.miter,
    bevel: bevel + share * error.bevel,
  });
  return errors.map((error) => ({
    length: length * (1 + share * error.length),
    start: cut(error.start),
    end: cut(error.end),
  }));
}

/** The ring as `ringClosure` takes it, level at its planned slope. */
export function measuredRing(ring: FlawedRing, share = 1): MeasuredRing & { readonly slope: number } {
  return { pieces: sticksOf(ring, share), at: ring.at, width: ring.width, slope: ring.slope };
}

/** The ring in a mirror that stands upright: read clockwise, every start an end. */
export function inMirror(pieces: readonly MeasuredPiece[]): MeasuredPiece[] {
  return pieces.map(({ length, start, end }) => ({ length, start: end, end: start })).reverse();
}

/** The same ring with the numbers moved on. */
export function renumbered(pieces: readonly MeasuredPiece[], by: number): MeasuredPiece[] {
  return [...pieces.slice(by), ...pieces.slice(0, by)];
}

/** Moves some of an angle from one end of a joint to the other, so that the joint's sum stays. */
export function shifted(
  pieces: readonly MeasuredPiece[],
  joint: number,
  angle: "miter" | "bevel",
  by: number,
): MeasuredPiece[] {
  const next = (joint + 1) % pieces.length;
  const change = (cut: SawSetting, amount: number): SawSetting => ({ ...cut, [angle]: cut[angle] + amount });
  return pieces.map((piece, index) => ({
    ...piece,
    end: index === joint ? change(piece.end, by) : piece.end,
    start: index === next ? change(piece.start, -by) : piece.start,
  }));
}

/** Freezes a value and all it holds, so that a function which writes to it throws. */
export function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null) {
    Object.values(value).forEach(frozen);
    Object.freeze(value);
  }
  return value;
}
