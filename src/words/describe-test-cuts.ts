import { readStored } from "../core/stored.js";
import { checkDescribeOptions, type DescribeOptions, type OperationText } from "./describe-operation.js";
import { testCuts as readTestCuts } from "../frame/internal.js";
import type { TestCuts } from "../frame/index.js";

const MOVES: Readonly<Record<TestCuts["move"], string>> = {
  "flip-end-for-end": "flipped and with the gauge swung over",
  "slide-past-the-blade": "slid past the blade and with both scales set over",
};

/**
 * Writes how a setting is proved on scrap, as instructions for a person at the saw. Cut two pieces and try the corner, close a ring, read the gap, correct the
 * setting and begin again. Once the gap is within the accepted one, cut the molding.
 *
 * @param testCuts - of a saw plan
 * @param options - how to write lengths and angles
 * @returns a title and sentences, as plain text, in the order in which they are followed
 * @throws {InputError} when there are no test cuts, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { describeTestCuts } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 * import { formatAngle, formatLength } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 8, opening: { side: 300 }, profile: molding({ width: 40, thickness: 20 }) });
 * const text = describeTestCuts(plan.sawing.testCuts!, {
 *   length: (value) => formatLength(value, "mm", { digits: 2 }),
 *   angle: (degrees) => formatAngle(degrees, { digits: 1 }),
 * });
 * text.lines[2]; //=> "So close a ring of 8 such pieces of 150 mm (1231.17 mm of scrap). First lay half of it on a straightedge, one end tight: the outer corner of the other may stand off by 0.57 mm, however the joints give. The last joint shows its gap in full where the others only slide; where they open too, as little as a third of it."
 * ```
 */
export function describeTestCuts(testCuts: TestCuts, options: DescribeOptions): OperationText {
  const { pair, ring, half, move, sloped, proof } = readStored(testCuts, "testCuts", readTestCuts);
  const { length, angle, small = length } = checkDescribeOptions(options);
  const faces = sloped ? `, and ${angle(pair.dihedral)} between the faces` : "";
  const accept = small(ring.accept);
  const slope = sloped ? "; note its slope with the joints tight" : "";
  const halves =
    half === null
      ? ""
      : ` First lay half of it on a straightedge, one end tight: the outer corner of the other may stand off by ${small(half.accept)}, however the joints give.`;
  const sliding = ` The last joint shows its gap in full where the others only slide; where they open too, as little as a third of it.`;
  const perEnd = angle(testCuts.perEnd);
  // Written coarsely it may read as nothing at all.
  const share = perEnd === angle(0) ? "" : `, seen from above ${perEnd} for each ${accept}`;
  const quick = `Legs under ${length(pair.legs)} do not show there what opens the last joint by ${accept}.`;
  const pieces = `${ring.pieces} such pieces of ${length(testCuts.length)}`;
  const tooMuch = `A ring of ${pieces} would take ${length(testCuts.ringScrap)} of scrap, much for a frame that takes ${length(testCuts.molding)} of molding`;
  const standsOff = half === null ? "" : `the outer corner of the other stands off by ${small(half.accept)}`;
  const angles = `more angle at every end${share}`;
  const again = "Cut new pieces and read again.";
  const [close, read, end] = {
    ring: [
      `So close a ring of ${pieces} (${length(testCuts.scrap)} of scrap)${slope}.${halves}${sliding}`,
      `Open outside by more than ${accept}: ${angles}; inside: less. ${again}`,
      `Within ${accept}: leave the setting and cut the molding.`,
    ],
    "half-ring": [
      `${tooMuch}. So put ${ring.pieces / 2} of them together (${length(testCuts.scrap)} of scrap), one end tight on a straightedge${slope}: what opens the last joint by ${accept} shows where ${standsOff}.`,
      `Off the straightedge by more than that: ${angles}; past it by more: less. ${again}`,
      "Within that: leave the setting and cut the molding.",
    ],
    "own-pieces": [
      `${tooMuch}. So prove the setting on the frame's own pieces: cut them ${length(testCuts.spare)} longer than planned and close them without glue${slope}.${sliding}`,
      `Open outside by more than ${accept}: ${angles}; inside: less. Cut both ends again with the new setting.`,
      `Within ${accept}: leave the setting and cut the pieces to their length.`,
    ],
  }[proof] as [string, string, string];
  return {
    title: "Prove the setting on scrap",
    lines: [
      `Cut scrap of the molding's profile as in the steps, in a hold-down: one first end and, ${MOVES[move]}, one second end.`,
      `Together they make ${angle(pair.angle)} from above, inside${faces}. ${quick}`,
      close,
      read,
      end,
    ],
  };
}
