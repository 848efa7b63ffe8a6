import type { Notation } from "./read-quantity.js";

/** A degree in seconds, the unit in which sizes of angles are counted. */
export const DEGREE_SIZE: number = 3600;
/** A minute in seconds. */
export const MINUTE_SIZE: number = 60;

/** The unit of angle that a word or sign names. */
function sizeOf(word: string): number | undefined {
  switch (word) {
    case "°":
    case "deg":
    case "degree":
    case "degrees":
      return DEGREE_SIZE;
    case "'":
    case "min":
    case "minute":
    case "minutes":
      return MINUTE_SIZE;
    case '"':
    case "sec":
    case "second":
    case "seconds":
      return 1;
    default:
      return undefined;
  }
}

/** How angles are written. */
export const ANGLE_NOTATION: Notation = {
  noun: "an angle",
  units: "° (deg), ' (min) or \" (sec)",
  sizeOf,
  // `22°30` is 22 degrees and 30 minutes, `22°30'15` has 15 seconds more.
  sizeAfter: (size) => (size === 1 ? undefined : size / 60),
};
