import { checkObject, refuse } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { LayResult } from "../frame/index.js";
import { layResult } from "../frame/internal.js";
import type { DescribeOptions } from "./describe-operation.js";
import { layLabel } from "./lay-label.js";
import { englishLays, type GivenUpValues } from "./lay-words.js";
import type { WordsOptions } from "./words.js";

/** What holds a stick that is not steady. */
function holdOf({ first, cradle }: LayResult): GivenUpValues["hold"] {
  if (!first.cradled) return "clamp";
  return cradle === null || cradle.steady ? "cradle" : "widened-cradle";
}

/** Where the showing side tears out. */
function tearsAt({ first }: LayResult): GivenUpValues["tearsAt"] {
  const [below] = first.tearOut;
  return below?.shows === true && (first.down === "face" || first.down === "back") ? "table" : "fence";
}

/**
 * Says how the stick lies, and which wishes this lay does not meet.
 *
 * @param lay - one of a saw plan's lays
 * @param options - how to write angles, and the words
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
export function describeLay(lay: LayResult, options: Pick<DescribeOptions, "angle"> & WordsOptions): readonly string[] {
  const read = readStored(lay, "lay", layResult);
  const { angle, words } = checkObject(options) as unknown as Pick<DescribeOptions, "angle"> & WordsOptions;
  if (typeof angle !== "function") refuse("type", "angle", angle, "a function that writes an angle");
  const { lies, givenUp } = words?.lays ?? englishLays;
  const values = { hold: holdOf(read), tearsAt: tearsAt(read) };
  return [lies({ lay: layLabel(read.lay, angle) }), ...read.givenUp.map((wish) => givenUp[wish](values))];
}
