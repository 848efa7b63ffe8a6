import type { Operation } from "../../frame/index.js";
import type { CutPlacement, Hand, ScaleSetting } from "../../saw/index.js";

/** What the words for the lying stick may tell of. */
export interface LyingValues {
  /** How the stick came to lie so since the step before; `null` at the first step. */
  readonly move: Operation["move"];
  /** What to call the surface that lies down. */
  readonly down: string;
  /** Whether it lies in a cradle. */
  readonly cradled: boolean;
  /** What to call the surface at the fence. */
  readonly atFence: string;
}

/** What the words for a scale may tell of. */
export interface ScaleValues {
  /** To which side the cut or the blade goes. */
  readonly toward: ScaleSetting["toward"];
  /** By how much, an angle. */
  readonly degrees: string;
  /** What the scale shows exactly, an angle. */
  readonly reading: string;
  /** The best mark of the scale, an angle; `null` where it is written alike. */
  readonly graduation: string | null;
}

/** What the words for the stop's place may tell of. */
export interface StopValues {
  /** On which side of the blade it stands. */
  readonly side: Hand;
  /** What to call the edge that touches it; `null` for the longest point. */
  readonly edge: string | null;
  /** From and to which height above the table the end touches it, lengths; `null` down on the table; alike where it is a point. */
  readonly height: {
    /** From this height. */
    readonly from: string;
    /** To this height. */
    readonly to: string;
    /** Whether both are one. */
    readonly isPoint: boolean;
  } | null;
}

/** What the words for where a stop may stand may tell of. */
export interface StopRuleValues {
  /** The side on which a stop may stand. */
  readonly side: Hand;
  /** The side on which none may ever stand. */
  readonly never: Hand;
  /** Whether a stop sets the length at this cut at all. */
  readonly isUsed: boolean;
  /** Whether this step sets one. */
  readonly isSet: boolean;
  /** Whether it is moved away before the cut. */
  readonly moveAway: boolean;
  /** Whether the piece comes free between blade and stop. */
  readonly comesFree: boolean;
  /** How far out from the fence the end's point meets it, a length; `null` where it meets it at the fence. */
  readonly fromFence: string | null;
}

/** What the words for a place of tear-out may tell of. */
export interface TearOutValues {
  /** What to call the surface. */
  readonly surface: string;
  /** Where the teeth leave the wood. */
  readonly at: CutPlacement["tearOut"][number]["at"];
  /** Whether it shows in the frame. */
  readonly shows: boolean;
}

/** What the words for the length may tell of. */
export interface MeasureValues {
  /** The kind of cut. */
  readonly kind: Operation["kind"];
  /** The length. */
  readonly length: string;
  /** What to call the edge along which it is taken. */
  readonly edge: string;
  /** Whether the tape hooks over the long point. */
  readonly hook: boolean;
}

/** What is done at the saw, step by step. */
export interface StepWords {
  /** What each kind of cut is called, and for how many pieces it is done. */
  readonly titles: Readonly<Record<Operation["kind"], (values: { readonly times: number }) => string>>;
  /** How the stick is laid. */
  readonly lying: (values: LyingValues) => string;
  /** How the gauge or table is set. */
  readonly miter: (values: ScaleValues) => string;
  /** How the blade leans. */
  readonly bevel: (values: ScaleValues) => string;
  /** Which part is kept. */
  readonly keep: (values: { readonly side: Hand }) => string;
  /** How high the blade stands or how deep it cuts, and how high the work is, lengths. */
  readonly blade: (values: {
    readonly bladeHeight: string | null;
    readonly depth: string;
    readonly height: string;
  }) => string;
  /** Where the finished end touches the stop. */
  readonly stop: (values: StopValues) => string;
  /** Where a stop may stand and where never. */
  readonly stopRule: (values: StopRuleValues) => string;
  /** Which length is cut, and how it is measured. */
  readonly measure: (values: MeasureValues) => string;
  /** Where the teeth leave the wood. */
  readonly tearOut: (values: { readonly places: readonly TearOutValues[] }) => string;
  /** Which of the numbered hazards concern a step. */
  readonly heed: (values: { readonly hazards: readonly number[] }) => string;
  /** In which order steps and pieces follow each other. */
  readonly order: Readonly<Record<"step-by-step" | "piece-by-piece", string>>;
  /** The settings of a step, each by a word: what stands beside its number. */
  readonly settings: Readonly<Record<"miter" | "bevel" | "length", string>>;
  /** A setting to one side. */
  readonly toSide: (values: { readonly setting: string; readonly toward: Hand }) => string;
}

function settingText({ reading, graduation }: ScaleValues): string {
  return graduation === null ? `scale at ${reading}` : `scale at ${reading}, best mark ${graduation}`;
}

function heightText(height: StopValues["height"]): string {
  if (height === null) return "down on the table";
  return height.isPoint ? `${height.from} above the table` : `from ${height.from} to ${height.to} above the table`;
}

function stopRuleText({ side, never, isUsed, isSet, moveAway, comesFree, fromFence }: StopRuleValues): string {
  if (!isUsed) return "No stop on either side of the blade at this cut.";
  const none = `No stop to the ${never} of the blade`;
  // Only where a line before this one sets the stop is there one to speak of.
  if (moveAway)
    return isSet
      ? `${none}; move the one to the ${side} away before the cut, since the piece comes free.`
      : `${none}; one to the ${side} only sets the length: move it away before the cut.`;
  const at = fromFence === null ? "" : ` The point meets it ${fromFence} out from the fence`;
  if (!comesFree)
    return `${none}: what is there must come free.${at === "" ? "" : `${at}: press the stick to the fence.`}`;
  const one = isSet ? `The one to the ${side}` : `One to the ${side} that sets the length`;
  return `${none}. ${one} sits on the gauge's own fence and travels with the piece, which comes free: hold the piece itself against fence and stop until the blade is behind it.${at === "" ? "" : `${at}.`}`;
}

/** In English. */
export const englishSteps: StepWords = {
  titles: {
    crosscut: ({ times }) => `Crosscut the blanks, ${times} pieces`,
    "first-end": ({ times }) => `Cut the first end, ${times} pieces`,
    "second-end": ({ times }) => `Cut the second end to length, ${times} pieces`,
  },
  lying: ({ move, down, cradled, atFence }) => {
    const lying = `its ${down} ${cradled ? "in the cradle" : "on the table"}`;
    if (move === "flip-end-for-end") {
      const what = cradled ? "the stick end for end, and its cradle with it" : "the stick end for end";
      return `Flip ${what}, still with ${lying}: now its ${atFence} is at the fence.`;
    }
    if (move === "slide-past-the-blade")
      return `Slide the stick past the blade, still with ${lying} and its ${atFence} at the fence.`;
    return `Lay the stick with ${lying} and its ${atFence} at the fence.`;
  },
  miter: (values) =>
    values.toward === "none"
      ? `Miter: square (${settingText(values)}).`
      : `Miter ${values.degrees} (${settingText(values)}): the line of cut runs to the ${values.toward} as it goes away from you.`,
  bevel: (values) =>
    values.toward === "none"
      ? `Bevel: blade upright (${settingText(values)}).`
      : `Bevel ${values.degrees} (${settingText(values)}): the top of the blade leans to the ${values.toward}.`,
  keep: ({ side }) => `Keep the part to the ${side} of the blade.`,
  blade: ({ bladeHeight, depth, height }) =>
    `Blade: ${bladeHeight === null ? `cuts ${depth} deep` : `${bladeHeight} above the table`}; the work stands ${height} high.`,
  stop: ({ side, edge, height }) =>
    `Stop to the ${side} of the blade: the finished end touches it with ${edge === null ? "its longest point" : `the ${edge}`}, ${heightText(height)}.`,
  stopRule: stopRuleText,
  measure: ({ kind, length, edge, hook }) => {
    if (kind === "crosscut") return `Length of the blank: ${length}.`;
    if (kind === "first-end") return `Mark ${length} along the ${edge} and part the piece off there.`;
    const how = hook
      ? "hook the tape over the long point"
      : "square a pencil line to the length and measure between the marks";
    return `Length of the finished piece: ${length} along the ${edge}, from end to end (${how}).`;
  },
  tearOut: ({ places }) =>
    `Tear-out: ${places.map(({ surface, at, shows }) => `${surface} (${at}${shows ? ", shows" : ""})`).join(" and ")}.`,
  heed: ({ hazards }) =>
    hazards.length === 1
      ? `Heed hazard ${hazards[0]!} above.`
      : `Heed hazards ${hazards.slice(0, -1).join(", ")} and ${hazards.at(-1)!} above.`,
  order: {
    "step-by-step": "Do every step for all pieces before the next step.",
    "piece-by-piece": "Do all steps for one piece before the next piece, since every piece is cut on the stick itself.",
  },
  settings: { miter: "miter scale", bevel: "bevel scale", length: "length" },
  toSide: ({ setting, toward }) => `${setting} to the ${toward}`,
};
