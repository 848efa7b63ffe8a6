import { Decimal } from "decimal.js";
import { checkObject, refuse, reject } from "../errors/internal.js";
import { checkDigits, checkPrecise, SLOPE } from "./check.js";
import type { PreciseNumber, PreciseOptions, Range } from "./check.js";
import { evaluate } from "./evaluate.js";
import type { Real, RealField } from "./real-field.js";
import { space } from "./space.js";
import { firstPiece } from "./piece.js";

/** Normal of a cut in the stick's own axes, of any length, its components from -1 to 1. */
export interface PreciseCutPlane<N = PreciseNumber> {
  /** Component along the stick: positive where the stick ends, negative where it starts; never 0. */
  readonly along: N;
  /** Component across the stick, from the sight edge to the outer edge. */
  readonly across: N;
  /** Component through the stick, from its back to its face. */
  readonly through: N;
}

/** A named way for a stick to lie on the saw. */
export type PreciseLayName = "propped" | "flat" | "face-down" | "sight-edge-down" | "outer-edge-down";

/** How a stick lies on the saw: by name, or as degrees (-360 to 360) by which it is rolled away from its place in the frame. */
export type PreciseLay = PreciseLayName | number | `${number}`;

/** Where a plane's stick stands in the frame, and how it lies on the saw. */
export interface PreciseSawSettingOptions extends PreciseOptions {
  /** Slope of the stick in the finished frame, in degrees, -90 to 90. */
  readonly slope: PreciseNumber;
  /** How the stick lies: a name, or degrees (-360 to 360) by which it is rolled away from its place in the frame. */
  readonly lay: PreciseLay;
}

/** The two angles of a cut in degrees. */
export interface PreciseSawSetting {
  /** Miter, -90 to 90. Positive: the part that lies farther from the frame's center is the longer. */
  readonly miter: string;
  /** Bevel, -90 to 90. Positive: the higher part is the shorter. */
  readonly bevel: string;
}

/** Angle of the back to the table in the lays in which it does not hang on the slope, in the order of error texts. */
const TILTS: Readonly<Record<Exclude<PreciseLayName, "propped">, number>> = {
  flat: 0,
  "face-down": 180,
  "sight-edge-down": 90,
  "outer-edge-down": -90,
};
const COMPONENT: Range = { what: "a number from -1 to 1", low: "-1", high: "1" };
const ROTATION: Range = { what: "degrees from -360 to 360", low: "-360", high: "360" };

/** The angle of the back to the table as a number of degrees, or the rotation that it is the slope less. */
function checkLay(lay: unknown): number | Decimal {
  if (lay === "propped") return new Decimal(0);
  if (typeof lay === "string" && Object.hasOwn(TILTS, lay)) return TILTS[lay as keyof typeof TILTS];
  if (typeof lay === "string" && /^[a-z-]*$/iu.test(lay)) {
    const names = ["propped", ...Object.keys(TILTS)].map((name) => `"${name}"`).join(", ");
    return refuse("unknown", "lay", lay, `one of ${names}, or degrees from -360 to 360`);
  }
  return checkPrecise(lay, "lay", ROTATION);
}

/**
 * A saw setting on real numbers.
 *
 * The stick lies with its back at an angle to the table; the cut's normal is carried along. The line in which the cut
 * meets the table shows the miter, against a line square across the stick; the angle between the cut and the upright
 * plane through that line is the bevel.
 */
export function deriveSawSetting(
  field: RealField,
  plane: PreciseCutPlane<Real>,
  tilt: Real,
): Record<keyof PreciseSawSetting, Real> {
  const { vec, add, scale, dot, cross, norm } = space(field);
  const piece = firstPiece(field, tilt);
  const normal = add(
    add(scale(plane.along, piece.along), scale(plane.across, piece.across)),
    scale(plane.through, piece.through),
  );
  // The end that is cut looks ahead; at a start that is against the stick's direction.
  const sign = field.choose(plane.along, field.exact(1), field.exact(-1));
  const ahead = scale(sign, piece.along);
  const line = scale(sign, cross(normal, vec(0, 0, 1)));
  return {
    miter: field.atan2(dot(line, ahead), dot(line, piece.out)),
    bevel: field.atan2(normal[2], norm(line)),
  };
}

/**
 * Miter and bevel of a cut known by its plane, for a stick that lies on the saw in a given way, to up to 1000 digits.
 *
 * Derived by laying the plane's normal down with the stick. Only the direction of the normal counts.
 *
 * @param plane - normal of the cut in the stick's own axes, components from -1 to 1
 * @param options - `slope` of the stick in the frame, degrees from -90 to 90; `lay`, a name or degrees from -360 to 360 (a
 * text like `"22.5"` counts as degrees); `digits` from 1 to 1000, by default 50
 * @returns miter and bevel in degrees, correctly rounded to `digits` significant digits, half away from zero, without
 * trailing zeros
 * @throws {InputError} when a field is missing, malformed or out of range, or the plane never crosses the stick
 * @example
 * ```ts
 * import { preciseCorner, preciseSawSetting } from "miterwright/precise";
 *
 * const board = { slope: 45, thickness: 18 };
 * const { first } = preciseCorner({ turn: 90, first: board, second: board });
 * preciseSawSetting(first.plane, { slope: 45, lay: "flat", digits: 30 }); //=> { miter: "35.26438968275465431537700033", bevel: "30" }
 * ```
 */
export function preciseSawSetting(plane: PreciseCutPlane, options: PreciseSawSettingOptions): PreciseSawSetting {
  const normal = checkObject(plane, "plane");
  const given = checkObject(options);
  const digits = checkDigits(given["digits"]);
  const along = checkPrecise(normal["along"], "along", COMPONENT);
  if (along.isZero()) {
    return reject(
      "range",
      "along",
      normal["along"],
      "Expected `along` not to be 0: such a plane never crosses the stick",
    );
  }
  const across = checkPrecise(normal["across"], "across", COMPONENT);
  const through = checkPrecise(normal["through"], "through", COMPONENT);
  const slope = checkPrecise(given["slope"], "slope", SLOPE);
  const lying = checkLay(given["lay"]);
  const inputs = typeof lying === "number" ? [along, across, through] : [along, across, through, slope, lying];
  return evaluate(digits, inputs, (field) => {
    const { exact, sub } = field;
    const tilt = typeof lying === "number" ? exact(lying) : sub(exact(slope), exact(lying));
    return deriveSawSetting(field, { along: exact(along), across: exact(across), through: exact(through) }, tilt);
  });
}
