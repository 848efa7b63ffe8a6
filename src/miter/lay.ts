import { checkRange, checkSlope, checkWord } from "../core/check.js";
import type { Field, NumberField } from "../core/field.js";

/** A named way for a stick to lie on the saw. */
export type LayName = "propped" | "flat" | "face-down" | "sight-edge-down" | "outer-edge-down";

/**
 * How a stick lies on the saw: by name, or as the angle in degrees by which it is rolled about its length away from its
 * place in the finished frame (-360 to 360; positive lowers the outer edge).
 *
 * `propped` stands as in the frame, `flat` lies on its back, `face-down` on its face, `sight-edge-down` stands on its sight edge,
 * `outer-edge-down` on its outer edge.
 */
export type Lay = LayName | number;

/** The names, in the order of error texts. */
export const LAY_NAMES: readonly LayName[] = ["propped", "flat", "face-down", "sight-edge-down", "outer-edge-down"];

const ROTATION: NumberField = { kind: "number", min: -360, max: 360, what: "degrees from -360 to 360" };
/** How a lay is read. */
export const LAY: Field<Lay> = {
  kind: "either",
  of: [ROTATION, { kind: "word", words: LAY_NAMES }],
  which: (value) => (typeof value === "number" ? 0 : 1),
};

/** A rotation given as a number. */
export function checkRotation(lay: number): number {
  return checkRange(lay, "lay", ROTATION);
}

/**
 * The angle of the stick's back to the table, as it lies: slope - rotation.
 *
 * Named lays have it exactly, where the difference of slope and rotation would round a small slope away.
 */
export function checkTilt(lay: unknown, slope: number): number {
  if (typeof lay === "number") return slope - checkRotation(lay);
  switch (checkWord(lay, "lay", LAY_NAMES)) {
    case "propped":
      return slope;
    case "flat":
      return 0;
    case "face-down":
      return 180;
    case "sight-edge-down":
      return 90;
    case "outer-edge-down":
      return -90;
  }
}

/**
 * The rotation that a lay stands for: how far a stick is rolled about its length, away from its place in the finished frame.
 *
 * `propped` 0, `flat` = slope, `face-down` = slope - 180, `sight-edge-down` = slope - 90, `outer-edge-down` = slope + 90; a number is
 * its own rotation. Rolled by r, the end of a regular frame's stick needs tan(miter) = cos r tan h and
 * sin(bevel) = sin r sin h, with h half the turn.
 *
 * @param lay - a name, or degrees from -360 to 360
 * @param slope - slope of the stick in the frame, degrees from -90 to 90
 * @returns the rotation in degrees, -360 to 360; positive lowers the outer edge
 * @throws {InputError} when `lay` is no such name or angle, or `slope` is out of range
 * @example
 * ```ts
 * import { layRotation } from "miterwright/miter";
 *
 * layRotation("flat", 30); //=> 30
 * layRotation("sight-edge-down", 30); //=> -60
 * ```
 */
export function layRotation(lay: Lay, slope: number): number {
  const checked = checkSlope(slope);
  return typeof lay === "number" ? checkRotation(lay) : checked - checkTilt(lay, checked);
}
