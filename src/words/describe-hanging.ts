import { checkObject } from "../core/check.js";
import { sideNumber } from "../core/side-number.js";
import { orNull, readStored } from "../core/stored.js";
import { frameHanging } from "../frame/stored/hanging.js";
import { describeReason } from "./describe-reason.js";
import { checkDescribeOptions, type DescribeOptions } from "./describe-operation.js";
import type { FramePlan } from "../frame/plan-frame.js";
import { quantityText } from "./quantity-text.js";
import type { HungFrame } from "../frame/hanging/frame-hanging.js";

/** Where the hangers go, in the words of somebody with a tape who has the frame's back before them. */
function placeText({ by, fixings, below, apart }: HungFrame, { length }: DescribeOptions): string {
  const [one, other] = fixings;
  const kind = by === "wire" ? "By a wire between two hangers" : "On two hooks, by two hangers";
  return `${kind}, on sides ${sideNumber(one.side)} and ${sideNumber(other.side)} (counted counter-clockwise from 1 at the bottom, as in the view from above): ${length(below)} below the top, ${length(apart)} apart, which is ${length(one.fromCorner)} from the upper corner along the outermost line.`;
}

function seatTexts({ seat }: HungFrame, { length, angle }: DescribeOptions): string[] {
  if (seat === null) return [];
  const { width, leanAngle, opens, standoff, wood, deepest, screwDepth } = seat;
  const lies =
    opens === "nowhere"
      ? `lie flat to the wall on a surface ${length(width)} wide`
      : `lie on a surface ${length(width)} wide that leans ${angle(Math.abs(leanAngle))} from the wall, opening ${opens}, its middle ${length(standoff)} off the wall`;
  const screws = screwDepth === null ? "" : `; these go in ${length(screwDepth)}`;
  return [
    `The hangers ${lies}. Behind it is ${length(wood)} of wood: screws ${length(deepest)} deep at the most${screws}.`,
  ];
}

function wireTexts({ wire }: HungFrame, { length, angle }: DescribeOptions): string[] {
  if (wire === null) return [];
  const hook =
    wire.belowTop < 0
      ? `${length(-wire.belowTop)} above the frame's top, where it shows`
      : `${length(wire.belowTop)} below the frame's top`;
  return [
    `The wire is ${length(wire.length)} from hanger to hanger, knots besides; at ${angle(wire.angle)} its hook is ${hook}.`,
  ];
}

function loadText({ by, load }: HungFrame, words: DescribeOptions): string {
  const { mass, complete, weight, share, pull, factor, strength } = load;
  const each = by === "wire" ? "Each half of the wire and each hanger" : "Each hook and hanger";
  if (mass === null || weight === null || pull === null || strength === null) {
    return `${each} carries ${quantityText(100 * share, "percent", words)} of the weight, which is not known: weigh the frame.`;
  }
  const least = complete ? "" : "at least ";
  const kg = quantityText(mass, "mass", words);
  const newtons = (force: number): string => quantityText(force, "force", words);
  return `It weighs ${least}${kg} (${newtons(weight)}). ${each} carries ${newtons(pull)}; common practice, which is no advice, takes what holds ${factor} times that, ${newtons(strength)}.`;
}

/**
 * How a frame hangs, in sentences: where its hangers go, what they lie on, the wire and the load.
 *
 * @param plan - from `planFrame`; no more of it is read than `hanging`
 * @param options - how to write lengths and angles
 * @returns the sentences; the reason alone where it cannot hang, none where it is not to
 * @throws {InputError} when the plan is none, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { describeHanging } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 * import { formatAngle, formatLength } from "miterwright/units";
 *
 * const plan = planFrame({
 *   sides: 6,
 *   opening: { acrossFlats: 400 },
 *   profile: molding({ width: 50, thickness: 20 }),
 *   species: "black cherry",
 *   hanging: { by: "two-hooks" },
 * });
 * const words = { length: (value: number) => formatLength(value, "mm"), angle: (degrees: number) => formatAngle(degrees) };
 * describeHanging(plan, words)[1]; //=> "The hangers lie flat to the wall on a surface 50 mm wide. Behind it is 20 mm of wood: screws 17 mm deep at the most."
 * ```
 */
export function describeHanging(plan: Pick<FramePlan, "hanging">, options: DescribeOptions): string[] {
  const hanging = readStored(checkObject(plan, "plan")["hanging"], "plan.hanging", (value, path) =>
    orNull(value, path, frameHanging),
  );
  const words = checkDescribeOptions(options);
  if (hanging === null) return [];
  if (!hanging.possible) return [describeReason(hanging.reason)];
  return [
    placeText(hanging, words),
    ...seatTexts(hanging, words),
    ...wireTexts(hanging, words),
    loadText(hanging, words),
  ];
}
