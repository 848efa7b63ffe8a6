/**
 * Change coefficient of a wood from its shrinkage: the change per percent of moisture, as a fraction of the size at 10 %.
 *
 * Wood shrinks from its green size G in proportion to the moisture below fiber saturation F, so at moisture M its size is
 * G (1 - s (F - M) / F), with s = S / 100. Its change per percent is G s / F; divided by the size at 10 %: s / (F - s (F - 10)).
 */
export function coefficientOf(shrinkage: number, fiberSaturation: number): number {
  const s = shrinkage / 100;
  return s / (fiberSaturation - s * (fiberSaturation - 10));
}

/** Shrinkage of a wood from its change coefficient: {@link coefficientOf} the other way round. */
export function shrinkageOf(coefficient: number, fiberSaturation: number): number {
  return (100 * coefficient * fiberSaturation) / (1 + coefficient * (fiberSaturation - 10));
}

/**
 * How much a size changes between two moisture contents, as a fraction of the size at the first.
 *
 * With sizes as in {@link coefficientOf}: s (to - from) / (F - s (F - from)). Above F nothing changes. Positive for swelling.
 */
export function moistureStrain(shrinkage: number, fiberSaturation: number, from: number, to: number): number {
  const s = shrinkage / 100;
  const before = Math.min(from, fiberSaturation);
  const after = Math.min(to, fiberSaturation);
  return (s * (after - before)) / (fiberSaturation - s * (fiberSaturation - before)) + 0;
}
