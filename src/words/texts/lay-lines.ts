import { readStored } from "../../core/stored.js";
import type { LayResult } from "../../frame/index.js";
import { layResult } from "../../frame/internal.js";
import { layLabel } from "./lay-label.js";
import { englishLays, type GivenUpValues } from "../catalog/lay-words.js";
import { englishLabels } from "../catalog/label-words.js";
import { checkTellOptions, type TellOptions } from "../tell-options.js";

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
 * @param options - formatters and words
 * @returns sentences, as plain text; the first says how the stick lies
 * @throws {InputError} when the lay is none, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { formatters } from "miterwright/units";
 * import { layLines } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 40, thickness: 20 });
 * const { sawing } = planFrame({ sides: 8, slope: 60, opening: { side: 300 }, profile, lay: "flat" });
 * layLines(sawing.lay!, { formats: formatters({ unit: "mm" }) }).at(-1); //=> "The piece lies under the leaning blade: clamp it."
 * ```
 */
export function layLines(lay: LayResult, options: TellOptions): readonly string[] {
  const read = readStored(lay, "lay", layResult);
  const { words, formats } = checkTellOptions(options);
  const { lies, givenUp } = words?.lays ?? englishLays;
  const label = layLabel(read.lay, { words, formats });
  const { inCradle } = words?.labels ?? englishLabels;
  const name = read.lay === "propped" && read.first.cradled ? inCradle({ lay: label }) : label;
  const values = { hold: holdOf(read), tearsAt: tearsAt(read) };
  return [lies({ lay: name }), ...read.givenUp.map((wish) => givenUp[wish](values))];
}
