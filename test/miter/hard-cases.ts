/** A corner of equal boards that has caught, or would catch, a careless formula. */
export interface HardMiter {
  readonly turn: number;
  readonly slope: number;
  readonly why: string;
}

const EPSILON = Number.EPSILON;

/** Hard cases of compound miters. Every one is compared with 60 digits. */
export const HARD_MITERS: readonly HardMiter[] = [
  { turn: 90, slope: 1e-9, why: "nearly flat: the dihedral is 180 less a hair, the bevel a hair" },
  { turn: 90, slope: -1e-9, why: "the same, with the sight edge the higher" },
  { turn: 120, slope: 1e-15, why: "a bevel under the last place of 180" },
  { turn: 72, slope: 1e-300, why: "a bevel near the bottom of the number range" },
  { turn: 72, slope: 5e-324, why: "the smallest slope there is: its sine rounds to nothing" },
  { turn: 90, slope: 90 - 1e-9, why: "nearly upright: cos s by way of radians would keep 7 digits" },
  { turn: 90, slope: 90 - 64 * EPSILON, why: "the last slope below upright" },
  { turn: 90, slope: -90 + 64 * EPSILON, why: "the same, reversed" },
  { turn: 179.999, slope: 89.999, why: "both near a right angle: the arc sine loses half of its digits" },
  { turn: 180 - 1e-9, slope: 90 - 1e-9, why: "a dihedral near 0, which 180 - 2 bevel would lose" },
  { turn: 180 - 128 * EPSILON, slope: 45, why: "the last turn below 180" },
  { turn: 180 - 128 * EPSILON, slope: 90 - 64 * EPSILON, why: "the last turn and the last slope at once" },
  { turn: 180 - 1e-9, slope: 1e-9, why: "folded back and flat: miter near 90, bevel tiny" },
  { turn: 1e-9, slope: 45, why: "hardly a corner: the dihedral is 180 less a hair" },
  {
    turn: 1e-9,
    slope: 90 - 1e-9,
    why: "hardly a corner, hardly off upright: the miter is the product of two small numbers",
  },
  { turn: 1e-300, slope: 30, why: "a turn near the bottom of the number range" },
  { turn: 1e-200, slope: 1e-200, why: "a bevel below the number range, which is 0" },
  { turn: 360 / 1e6, slope: 37, why: "the most sides there may be" },
  { turn: 120, slope: 70.52877936550931, why: "the regular tetrahedron: dihedral and slope are the same angle" },
  { turn: 90, slope: 45, why: "sin s sin h is one half: the bevel is 30" },
  { turn: -90, slope: 45, why: "a reflex corner: every sign is the other" },
  { turn: -1e-9, slope: -90 + 1e-9, why: "a reflex corner, hardly one, nearly upright and reversed" },
];

/** A corner of unequal boards that would catch a careless formula. */
export interface HardCorner {
  readonly turn: number;
  readonly first: { readonly slope: number; readonly thickness: number };
  readonly second: { readonly slope: number; readonly thickness: number };
  readonly why: string;
}

/** Hard cases of corners that meet at faces. Every one is compared with 60 digits. */
export const HARD_CORNERS: readonly HardCorner[] = [
  {
    turn: 90,
    first: { slope: 45, thickness: 18 },
    second: { slope: 45 + 64 * EPSILON, thickness: 18 },
    why: "slopes one double apart: sin a cos b - cos a sin b would be noise",
  },
  {
    turn: 1,
    first: { slope: 45, thickness: 18 },
    second: { slope: 45.000001, thickness: 18 },
    why: "a small turn between nearly equal slopes: all three components are small differences",
  },
  {
    turn: 90,
    first: { slope: 60, thickness: 18 },
    second: { slope: 60, thickness: 18 * (1 + EPSILON) },
    why: "thicknesses one double apart",
  },
  {
    turn: 1,
    first: { slope: 30, thickness: 18 },
    second: { slope: 30, thickness: 18.001 },
    why: "t2 - t1 and t1 (1 - n1.n2) of like size",
  },
  {
    turn: 90,
    first: { slope: 1e-9, thickness: 18 },
    second: { slope: 2e-9, thickness: 18 },
    why: "nearly flat: the faces cross at a billionth of a degree",
  },
  {
    turn: 90,
    first: { slope: 1e-9, thickness: 18 },
    second: { slope: 2e-9, thickness: 19 },
    why: "nearly flat and of two thicknesses: the joint plane lies all but flat in both boards",
  },
  {
    turn: 90,
    first: { slope: 90 - 1e-9, thickness: 18 },
    second: { slope: 90, thickness: 12 },
    why: "nearly upright beside upright",
  },
  {
    turn: 60,
    first: { slope: 40.8933946491309, thickness: 18 },
    second: { slope: 60, thickness: 18 },
    why: "tan s1 = tan s2 cos T: the first board's miter is 0 by cancellation",
  },
  {
    turn: 90,
    first: { slope: 60, thickness: 20 },
    second: { slope: 60, thickness: 5 },
    why: "t2 = t1 n1.n2: the first board's bevel is 0 by cancellation",
  },
  {
    turn: 179.999999,
    first: { slope: 89, thickness: 18 },
    second: { slope: 88, thickness: 18 },
    why: "folded back: along is tiny, the faces are nearly opposite",
  },
  {
    turn: 150,
    first: { slope: 89.9999, thickness: 18 },
    second: { slope: 45, thickness: 18 },
    why: "a wide turn, where the form for small ones would cancel",
  },
  {
    turn: 72,
    first: { slope: 50, thickness: 1e-10 },
    second: { slope: 60, thickness: 1e10 },
    why: "a veneer of 1e-20 of the other board's thickness",
  },
  {
    turn: -75,
    first: { slope: -50, thickness: 3 },
    second: { slope: -65, thickness: 2 },
    why: "a reflex corner of reversed boards",
  },
  {
    turn: 75,
    first: { slope: -50, thickness: 3 },
    second: { slope: -65, thickness: 2 },
    why: "reversed boards: the joint plane's normal points the other way",
  },
];
