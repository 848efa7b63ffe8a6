import type { Operation, ShopChange } from "../../frame/index.js";
import type { Hand, ScaleSetting } from "../../saw/index.js";

/** What the words for one cut of a round may tell of. Lengths and angles come as texts. */
export interface ShopCutValues {
  /** The frame's name. */
  readonly name: string;
  /** The step in that frame's own plan. */
  readonly step: number;
  /** What is cut. */
  readonly kind: Operation["kind"];
  /** How many times. */
  readonly times: number;
  /** What to call the surface at the fence. */
  readonly atFence: string;
  /** On which side of the blade the kept part lies. */
  readonly kept: Hand;
  /** How the stick comes from the operation before. */
  readonly move: Operation["move"];
  /** The length to set and the edge along which it is taken; `null` where the cut only trims an end. */
  readonly length: {
    /** The length. */
    readonly length: string;
    /** What to call the edge. */
    readonly edge: string;
  } | null;
}

/** In which order the jobs of several frames are done. */
export interface ShopWords {
  /** The saw of a round, by its number from 1. */
  readonly saw: (values: { readonly saw: number }) => string;
  /** What is set for a group. */
  readonly group: (values: {
    readonly miter: string;
    readonly miterToward: ScaleSetting["toward"];
    readonly bevel: string;
    readonly bevelToward: ScaleSetting["toward"];
    readonly down: string;
    readonly cradled: boolean;
  }) => string;
  /** What is set anew. */
  readonly changes: (values: { readonly changes: readonly ShopChange[] }) => string;
  /** A cut. */
  readonly cut: (values: ShopCutValues) => string;
  /** Groups that alternate. */
  readonly repeat: (values: { readonly times: number; readonly again: readonly ShopChange[] }) => string;
  /** How often each thing is set anew. */
  readonly sum: (values: Readonly<Record<Exclude<ShopChange, "saw">, number>>) => string;
  /** A frame that no saw of its own can cut, and why. */
  readonly left: (values: { readonly name: string; readonly reasons: string }) => string;
}

const CHANGES: Readonly<Record<ShopChange, string>> = {
  saw: "the saw",
  bevel: "the bevel",
  miter: "the miter",
  lay: "how the sticks lie",
};

const KINDS: Readonly<Record<Operation["kind"], string>> = {
  crosscut: "crosscut the blanks",
  "first-end": "cut the first end",
  "second-end": "cut the second end",
};

function changesText(changes: readonly ShopChange[]): string {
  return changes.map((change) => CHANGES[change]).join(", ");
}

function scaleText(name: string, reading: string, toward: ScaleSetting["toward"]): string {
  return toward === "none" ? `${name} ${reading}` : `${name} ${reading} to the ${toward}`;
}

/** In English. */
export const englishShop: ShopWords = {
  saw: ({ saw }) => `Saw ${saw}`,
  group: ({ miter, miterToward, bevel, bevelToward, down, cradled }) =>
    `Set the ${scaleText("miter scale to", miter, miterToward)} and the ${scaleText("bevel scale to", bevel, bevelToward)}. The sticks lie with their ${down} ${cradled ? "in the cradle" : "on the table"}.`,
  changes: ({ changes }) => (changes.length === 0 ? "Nothing is set anew." : `Set anew: ${changesText(changes)}.`),
  cut: ({ name, step, kind, times, atFence, kept, move, length }) => {
    const moved = move === null ? "" : move === "flip-end-for-end" ? ", flipped end for end" : ", slid past the blade";
    const size = length === null ? "" : `, ${length.length} along the ${length.edge}`;
    return `${name}, step ${step}: ${KINDS[kind]}, ${times} times${size}; the ${atFence} at the fence${moved}, keep the part to the ${kept}.`;
  },
  repeat: ({ times, again }) =>
    `Go through these settings ${times} times${again.length === 0 ? "" : `; set anew each time: ${changesText(again)}`}.`,
  sum: ({ bevel, miter, lay }) =>
    `After the first setting of a saw, the bevel is set ${bevel} times, the miter ${miter} times, and the sticks are laid otherwise ${lay} times.`,
  left: ({ name, reasons }) => `${name} is left out: ${reasons}`,
};
