import { checkObject, refuse } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { Obstacle } from "../saw/index.js";
import { obstacle as readObstacle } from "../saw/internal.js";
import { englishObstacles } from "./obstacle-words.js";
import type { Words } from "./words.js";

/** Options of {@link describeObstacle}. */
export interface DescribeObstacleOptions {
  /** Writes an angle in degrees. Without it the sentence has no numbers. */
  readonly angle?: ((degrees: number) => string) | undefined;
  /** The words; default English. */
  readonly words?: Words | undefined;
}

/**
 * Says why a saw cannot make a cut.
 *
 * @param obstacle - of a lay of a plan, or from `placeCut`
 * @param options - how to write angles, and the words
 * @returns a sentence; of a scale that ends too soon also how far it goes and how far it would have to
 * @throws {InputError} when the obstacle is none, or the formatter is not a function
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { describeObstacle } from "miterwright/words";
 *
 * const { sawing } = planFrame({ sides: 3, slope: 80, lay: "flat", opening: { side: 400 }, measured: { levelWidth: 40 } });
 * const [obstacle] = sawing.lays.find(({ lay }) => lay === "flat")!.obstacles;
 * describeObstacle(obstacle!, { angle: (degrees) => `${degrees.toFixed(1)}°` });
 * //=> "The bevel with the blade's top to the left is more than this saw has: it goes to 45.0°, and the cut needs 58.5°."
 * ```
 */
export function describeObstacle(obstacle: Obstacle, options: DescribeObstacleOptions = {}): string {
  const { code, degrees } = readStored(obstacle, "obstacle", readObstacle);
  const { angle, words } = checkObject(options) as DescribeObstacleOptions;
  if (angle !== undefined && typeof angle !== "function")
    refuse("type", "angle", angle, "a function that writes an angle");
  const written =
    degrees === undefined || angle === undefined ? null : { reach: angle(degrees.reach), needs: angle(degrees.needs) };
  return (words?.obstacles ?? englishObstacles)[code]({ degrees: written });
}
