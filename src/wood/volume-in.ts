import type { LengthUnit } from "../core/geometry-types.js";
import { UNIT_SIZES } from "../core/unit-sizes.js";

/**
 * A volume in the cube of another unit: by one product or quotient, which is exact where the result has few digits and cannot overflow on its way. `cubes` of the
 * other unit make one of the result.
 */
export function volumeIn(volume: number, from: LengthUnit, to: LengthUnit, cubes = 1): number {
  const [above, below] = [UNIT_SIZES[from] ** 3, cubes * UNIT_SIZES[to] ** 3];
  return above >= below ? volume * (above / below) : volume / (below / above);
}
