import type { TestCuts } from "../../frame/index.js";

/** What the words for proving a setting may tell of. Lengths and angles come as texts. */
export interface TestCutValues {
  /** How the setting is proved. */
  readonly proof: TestCuts["proof"];
  /** How the stick comes from the cut of one end to that of the other. */
  readonly move: TestCuts["move"];
  /** The corner that a pair makes, seen from above. */
  readonly pairAngle: string;
  /** The angle between the faces of a pair; `null` where the sides do not slope. */
  readonly dihedral: string | null;
  /** Legs shorter than this do not show what opens the last joint. */
  readonly legs: string;
  /** How many pieces a ring has. */
  readonly pieces: number;
  /** The length of each. */
  readonly length: string;
  /** The scrap that the proof takes. */
  readonly scrap: string;
  /** The scrap that a whole ring would take. */
  readonly ringScrap: string;
  /** The molding that the frame takes. */
  readonly molding: string;
  /** By how much the frame's own pieces are cut longer. */
  readonly spare: string;
  /** The gap that is accepted. */
  readonly accept: string;
  /** How far half a ring may stand off a straightedge; `null` where there are no halves. */
  readonly standOff: string | null;
  /** How much more angle at each end one accepted gap asks for; `null` where it is too small to be written. */
  readonly perEnd: string | null;
}

/** How a setting is proved before the molding is cut. */
export interface TestCutWords {
  /** The heading. */
  readonly title: string;
  /** What is cut from scrap. */
  readonly cut: (values: TestCutValues) => string;
  /** What two pieces show. */
  readonly pair: (values: TestCutValues) => string;
  /** What is put together. */
  readonly close: (values: TestCutValues) => string;
  /** How the gap is read. */
  readonly read: (values: TestCutValues) => string;
  /** What is good enough. */
  readonly accept: (values: TestCutValues) => string;
}

const MOVES: Readonly<Record<TestCuts["move"], string>> = {
  "flip-end-for-end": "flipped and with the gauge swung over",
  "slide-past-the-blade": "slid past the blade and with both scales set over",
};

const SLIDING: string =
  "The last joint shows its gap in full where the others only slide; where they open too, as little as a third of it.";

function slopeText({ dihedral }: TestCutValues): string {
  return dihedral === null ? "" : "; note its slope with the joints tight";
}

function tooMuchText({ pieces, length, ringScrap, molding }: TestCutValues): string {
  return `A ring of ${pieces} such pieces of ${length} would take ${ringScrap} of scrap, much for a frame that takes ${molding} of molding`;
}

/** In English. */
export const englishTestCuts: TestCutWords = {
  title: "Prove the setting on scrap",
  cut: ({ move }) =>
    `Cut scrap of the molding's profile as in the steps, in a hold-down: one first end and, ${MOVES[move]}, one second end.`,
  pair: ({ pairAngle, dihedral, legs, accept }) =>
    `Together they make ${pairAngle} from above, inside${dihedral === null ? "" : `, and ${dihedral} between the faces`}. Legs under ${legs} do not show there what opens the last joint by ${accept}.`,
  close: (values) => {
    const { proof, pieces, length, scrap, accept, standOff, spare } = values;
    if (proof === "half-ring")
      return `${tooMuchText(values)}. So put ${pieces / 2} of them together (${scrap} of scrap), one end tight on a straightedge${slopeText(values)}: what opens the last joint by ${accept} shows where the outer corner of the other stands off by ${standOff ?? ""}.`;
    if (proof === "own-pieces")
      return `${tooMuchText(values)}. So prove the setting on the frame's own pieces: cut them ${spare} longer than planned and close them without glue${slopeText(values)}. ${SLIDING}`;
    const halves =
      standOff === null
        ? ""
        : ` First lay half of it on a straightedge, one end tight: the outer corner of the other may stand off by ${standOff}, however the joints give.`;
    return `So close a ring of ${pieces} such pieces of ${length} (${scrap} of scrap)${slopeText(values)}.${halves} ${SLIDING}`;
  },
  read: ({ proof, accept, perEnd }) => {
    const angles = `more angle at every end${perEnd === null ? "" : `, seen from above ${perEnd} for each ${accept}`}`;
    if (proof === "half-ring")
      return `Off the straightedge by more than that: ${angles}; past it by more: less. Cut new pieces and read again.`;
    const again = proof === "ring" ? "Cut new pieces and read again." : "Cut both ends again with the new setting.";
    return `Open outside by more than ${accept}: ${angles}; inside: less. ${again}`;
  },
  accept: ({ proof, accept }) =>
    ({
      ring: `Within ${accept}: leave the setting and cut the molding.`,
      "half-ring": "Within that: leave the setting and cut the molding.",
      "own-pieces": `Within ${accept}: leave the setting and cut the pieces to their length.`,
    })[proof],
};
