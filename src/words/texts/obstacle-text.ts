import { readStored } from "../../core/stored.js";
import type { Obstacle } from "../../saw/index.js";
import { obstacle as readObstacle } from "../../saw/internal.js";
import { englishObstacles } from "../catalog/obstacle-words.js";
import { checkFormats } from "../../units/internal.js";
import type { Formats } from "../../units/index.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

/** Options of {@link obstacleText}. */
export interface ObstacleTextOptions extends WordsOptions {
  /** Writes the angles, as `formatters` makes it. Without it the sentence has no numbers. */
  readonly formats?: Formats | undefined;
}

/**
 * Says why a saw cannot make a cut.
 *
 * @param obstacle - of a lay of a plan, or from `placeCut`
 * @param options - formatters and words
 * @returns a sentence; of a scale that ends too soon also how far it goes and how far it would have to
 * @throws {InputError} when the obstacle is none, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { formatters } from "miterwright/units";
 * import { obstacleText } from "miterwright/words";
 *
 * const { sawing } = planFrame({ sides: 3, slope: 80, lay: "flat", opening: { side: 400 }, measured: { levelWidth: 40 } });
 * const [obstacle] = sawing.lays.find(({ lay }) => lay === "flat")!.obstacles;
 * obstacleText(obstacle!, { formats: formatters({ unit: "mm" }) });
 * //=> "The bevel with the blade's top to the left is more than this saw has: it goes to 45°, and the cut needs 58.53°."
 * ```
 */
export function obstacleText(obstacle: Obstacle, options: ObstacleTextOptions = {}): string {
  const { code, degrees } = readStored(obstacle, "obstacle", readObstacle);
  const words = checkWords(options);
  const formats = options.formats === undefined ? undefined : checkFormats(options.formats);
  const written =
    degrees === undefined || formats === undefined
      ? null
      : { reach: formats.angle(degrees.reach), needs: formats.angle(degrees.needs) };
  return (words?.obstacles ?? englishObstacles)[code]({ degrees: written });
}
