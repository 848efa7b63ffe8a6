import { readStored } from "../../core/stored.js";
import type { TestCuts } from "../../frame/index.js";
import { testCuts as readTestCuts } from "../../frame/internal.js";
import { englishTestCuts, type TestCutValues } from "../catalog/test-cut-words.js";
import { checkTellOptions, type TellOptions } from "../tell-options.js";
import type { OperationText } from "./operation-text.js";

/**
 * Writes how a setting is proved on scrap, as instructions for a person at the saw. Cut two pieces and try the corner, close a ring, read the gap, correct the
 * setting and begin again. Once the gap is within the accepted one, cut the molding.
 *
 * @param testCuts - of a saw plan
 * @param options - formatters and words
 * @returns a title and sentences, as plain text, in the order in which they are followed
 * @throws {InputError} when there are no test cuts, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { testCutsText } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 8, opening: { side: 300 }, profile: molding({ width: 40, thickness: 20 }) });
 * const text = testCutsText(plan.sawing.testCuts!, { formats: formatters({ unit: "mm", digits: 2 }) });
 * text.lines[2]; //=> "So close a ring of 8 such pieces of 150 mm (1231.17 mm of scrap). First lay half of it on a straightedge, one end tight: the outer corner of the other may stand off by 0.57 mm, however the joints give. The last joint shows its gap in full where the others only slide; where they open too, as little as a third of it."
 * ```
 */
export function testCutsText(testCuts: TestCuts, options: TellOptions): OperationText {
  const { pair, ring, half, move, sloped, proof, ...rest } = readStored(testCuts, "testCuts", readTestCuts);
  const { words, formats } = checkTellOptions(options);
  const { length, small, angle } = formats;
  const own = words?.testCuts ?? englishTestCuts;
  const perEnd = angle(rest.perEnd);
  const values: TestCutValues = {
    proof,
    move,
    pairAngle: angle(pair.angle),
    dihedral: sloped ? angle(pair.dihedral) : null,
    legs: length(pair.legs),
    pieces: ring.pieces,
    length: length(rest.length),
    scrap: length(rest.scrap),
    ringScrap: length(rest.ringScrap),
    molding: length(rest.molding),
    spare: length(rest.spare),
    accept: small(ring.accept),
    standOff: half === null ? null : small(half.accept),
    // Written coarsely it may read as nothing at all.
    perEnd: perEnd === angle(0) ? null : perEnd,
  };
  return {
    title: own.title,
    lines: [own.cut(values), own.pair(values), own.close(values), own.read(values), own.accept(values)],
  };
}
