import { checkRange, checkWord } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Field, NumberField } from "../core/field.js";
import { moistureStrain } from "./shrinkage.js";
import type { WoodSpecies } from "./wood-species.js";

/** How a board is sawn from the log, by the direction of the growth rings at its end. */
export type GrainName = "flat-sawn" | "rift-sawn" | "quarter-sawn";

/**
 * How the growth rings run at the end of a board: by name, or as the angle in degrees that they make with its face (0 to 90).
 *
 * `flat-sawn` 0: the width moves tangentially and the thickness radially. `quarter-sawn` 90: the other way round. `rift-sawn` 45.
 */
export type Grain = GrainName | number;

/** The names, in the order of error texts. */
const GRAIN_NAMES: readonly GrainName[] = ["flat-sawn", "rift-sawn", "quarter-sawn"];

const RING_ANGLE: NumberField = { kind: "number", min: 0, max: 90, what: "degrees from 0 to 90" };
/** How a grain is read. */
export const GRAIN: Field<Grain> = {
  kind: "either",
  of: [RING_ANGLE, { kind: "word", words: GRAIN_NAMES }],
  which: (value) => (typeof value === "number" ? 0 : 1),
};

/** Sine and cosine of the angle between the growth rings and a board's face. */
export interface RingDirection {
  /** Sine of the angle. */
  readonly sine: number;
  /** Cosine of the angle. */
  readonly cosine: number;
}

/** The direction of the growth rings. */
export function checkGrain(value: unknown, path = "grain"): RingDirection {
  const angle =
    typeof value === "number"
      ? checkRange(value, path, RING_ANGLE)
      : { "flat-sawn": 0, "rift-sawn": 45, "quarter-sawn": 90 }[checkWord(value, path, GRAIN_NAMES)];
  return { sine: sinDeg(angle), cosine: cosDeg(angle) };
}

/** The same for the thickness, which lies square to the width. */
export function acrossThickness(rings: RingDirection): RingDirection {
  return { sine: rings.cosine, cosine: rings.sine };
}

/**
 * How much a line across the grain stretches, as a fraction of its length.
 *
 * Its part along the rings stretches by 1 + t, its part square to them by 1 + r, so its length by
 * f = sqrt((1 + t)² cos² + (1 + r)² sin²); f - 1 is taken as (f² - 1) / (f + 1), which loses nothing when it is small.
 */
export function strainAcross(rings: RingDirection, radial: number, tangential: number): number {
  const { sine, cosine } = rings;
  // Exact where the line runs along or square to the rings.
  if (sine === 0) return tangential;
  if (cosine === 0) return radial;
  const excess = tangential * (2 + tangential) * cosine * cosine + radial * (2 + radial) * sine * sine;
  return excess / (Math.sqrt(1 + excess) + 1) + 0;
}

/** How much a board's width changes between two moisture contents, as a fraction. Positive for swelling. */
export function woodStrain(wood: WoodSpecies, rings: RingDirection, from: number, to: number): number {
  return strainAcross(
    rings,
    moistureStrain(wood.radial, wood.fiberSaturation, from, to),
    moistureStrain(wood.tangential, wood.fiberSaturation, from, to),
  );
}
