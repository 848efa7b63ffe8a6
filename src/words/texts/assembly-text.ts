import { sideNumber } from "../../core/side-number.js";
import { readStored } from "../../core/stored.js";
import type { GlueUp } from "../../closure/index.js";
import type { LastJoint } from "../../frame/index.js";
import { glueUp as readGlueUp, lastJoint as readLastJoint } from "../../frame/internal.js";
import { englishGlueStages, englishLastJoints } from "../catalog/assembly-words.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

/**
 * Says in which order a ring is glued.
 *
 * @param glueUp - from `glueUp`, or of a plan's assembly
 * @param options - the words
 * @returns a sentence for each stage, which numbers corners and pieces from 1
 * @throws {InputError} when it is no order of gluing
 * @example
 * ```ts
 * import { glueUp } from "miterwright/closure";
 * import { glueUpLines } from "miterwright/words";
 *
 * glueUpLines(glueUp({ sides: 5 }));
 * //=> [
 * //     "Glue the pieces in pairs, at corners 2 and 4.",
 * //     "Glue what lies side by side, at corner 3.",
 * //     "Cut piece 5 to fit the gap between its neighbors and glue it in, at corners 1 and 5.",
 * //   ]
 * ```
 */
export function glueUpLines(glueUp: GlueUp, options: WordsOptions = {}): readonly string[] {
  const { stages } = readStored(glueUp, "glueUp", readGlueUp);
  const words = checkWords(options);
  return stages.map(({ step, corners }) => {
    const numbers = corners.map(sideNumber);
    return (words?.glueStages ?? englishGlueStages)[step]({ corners: numbers, piece: numbers.at(-1)! });
  });
}

/**
 * Says how the last joints of a frame are made.
 *
 * @param lastJoint - of a plan's assembly
 * @param options - the words
 * @returns a sentence without numbers
 * @throws {InputError} when it is no last joint
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { lastJointText } from "miterwright/words";
 *
 * const { assembly } = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * lastJointText(assembly.lastJoint);
 * //=> "Lay each half against a straightedge; where its ends do not touch all along, plane or saw both in one line, as little as that takes."
 * ```
 */
export function lastJointText(lastJoint: LastJoint, options: WordsOptions = {}): string {
  const { made } = readStored(lastJoint, "lastJoint", readLastJoint);
  const words = checkWords(options);
  return (words?.lastJoints ?? englishLastJoints)[made]();
}
