import { checkArray, checkObject, refuse } from "../core/check.js";
import type { DescribeOptions } from "./describe-operation.js";
import { layLabel } from "./lay-label.js";
import type { LayResult } from "../frame/lay-result.js";
import type { LayWish } from "../frame/lay-preference.js";

function steadyText({ first, cradle }: LayResult): string {
  if (!first.cradled) return "It stands high on a narrow surface: clamp it upright.";
  return cradle === null || cradle.steady
    ? "It does not lie there by itself: a cradle holds it."
    : "It does not lie there by itself: a cradle holds it, which has to be widened or clamped.";
}

function showingText({ first }: LayResult): string {
  const [below] = first.tearOut;
  const remedy = "back it with scrap, or score the line.";
  return below?.shows === true && (first.down === "face" || first.down === "back")
    ? `Its showing side lies on the table, where the teeth leave the wood: ${remedy}`
    : `Its showing side does not lie up, so it can tear out where it meets the fence: ${remedy}`;
}

/** The sentence for each wish that is given up. */
const GIVEN_UP: { readonly [K in LayWish]: (lay: LayResult) => string } = {
  steady: steadyText,
  "open-side": () => "The piece lies under the leaning blade: clamp it.",
  "showing-side-up": showingText,
};

/**
 * Says how the stick lies, and which wishes this lay does not meet.
 *
 * @param lay - one of a saw plan's lays
 * @param options - how to write angles
 * @returns sentences, as plain text; the first says how the stick lies
 * @throws {InputError} when the lay is none, or the formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { describeLay } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 40, thickness: 20 });
 * const { sawing } = planFrame({ sides: 8, slope: 60, opening: { side: 300 }, profile, lay: "flat" });
 * describeLay(sawing.lay!, { angle: (degrees) => `${degrees}°` }).at(-1); //=> "The piece lies under the leaning blade: clamp it."
 * ```
 */
export function describeLay(lay: LayResult, options: Pick<DescribeOptions, "angle">): readonly string[] {
  const given = checkObject(lay, "lay");
  checkArray(given["givenUp"], "lay.givenUp");
  checkArray(checkObject(given["first"], "lay.first")["tearOut"], "lay.first.tearOut");
  const { angle } = checkObject(options) as unknown as Pick<DescribeOptions, "angle">;
  if (typeof angle !== "function") refuse("type", "angle", angle, "a function that writes an angle");
  return [`The stick lies ${layLabel(lay.lay, angle)}.`, ...lay.givenUp.map((wish) => GIVEN_UP[wish](lay))];
}
