import { checkObject } from "../core/check.js";
import { parseSaw } from "./parse-saw.js";
import type { Saw } from "./saw.js";

/** A usual saw with some of its fields changed. */
function changed(changes: Partial<Saw>, usual: Saw): Saw {
  return parseSaw({ ...usual, ...checkObject(changes, "changes") }, "changes");
}

/**
 * A table saw with a miter gauge, as most are: gauge to 60 degrees either way, blade to 45 degrees one way.
 *
 * Ranges are common practice, no printed source; give what your own saw's manual says.
 *
 * @param changes - fields that differ from these
 * @returns the saw
 * @throws {InputError} when a changed field is not sound
 * @example
 * ```ts
 * import { tableSaw } from "miterwright/saw";
 *
 * tableSaw({ depth: 75 }).bevel.left; //=> 45
 * ```
 */
export function tableSaw(changes: Partial<Saw> = {}): Saw {
  return changed(changes, {
    fence: "near",
    miter: { left: 60, right: 60, reads: "from-square", step: 0.5 },
    bevel: { left: 45, right: 0, reads: "from-vertical", step: 0.5 },
  });
}

/**
 * A miter saw with a turntable: to 50 degrees either way, blade to 45 degrees to either side.
 *
 * Ranges are common practice, no printed source; give what your own saw's manual says.
 *
 * @param changes - fields that differ from these
 * @returns the saw
 * @throws {InputError} when a changed field is not sound
 * @example
 * ```ts
 * import { miterSaw } from "miterwright/saw";
 *
 * miterSaw().fence; //=> "far"
 * ```
 */
export function miterSaw(changes: Partial<Saw> = {}): Saw {
  return changed(changes, {
    fence: "far",
    miter: { left: 50, right: 50, reads: "from-square", step: 0.5 },
    bevel: { left: 45, right: 45, reads: "from-vertical", step: 0.5 },
  });
}
