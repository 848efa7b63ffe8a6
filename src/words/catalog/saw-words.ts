import type { ObstacleCode, Saw } from "../../saw/index.js";

/** What the words for a saw may tell of. */
export interface SawValues {
  /** Where its fence is. */
  readonly fence: Saw["fence"];
  /** How far its miter goes to either side, angles. */
  readonly miter: {
    /** To the left. */
    readonly left: string;
    /** To the right. */
    readonly right: string;
  };
  /** How far the top of its blade leans to either side, angles; `null` where it does not lean to that side. */
  readonly bevel: {
    /** To the left. */
    readonly left: string | null;
    /** To the right. */
    readonly right: string | null;
  };
}

/** What the words for a cradle may tell of. Lengths and angles come as texts. */
export interface CradleValues {
  /** The wedge's angle. */
  readonly angle: string;
  /** The wedge's width, taken level. */
  readonly levelRun: string;
  /** The wedge's height. */
  readonly rise: string;
  /** The width of its sloping top. */
  readonly top: string;
  /** What to call the surface of the stick at the wedge's high side. */
  readonly high: string;
  /** How far the stick reaches below the wedge's thin end; `null` where it does not. */
  readonly base: string | null;
  /** By how much the wedge's base is too narrow; `null` where the stick lies steady. */
  readonly widenBy: string | null;
}

/** The saw, how the stick may lie on it, and what props the stick. */
export interface SawWords {
  /** For which saw the plan is. */
  readonly plannedFor: (values: SawValues) => string;
  /** No lay suits the saw. */
  readonly noLay: string;
  /** What to do where a step names tear-out. */
  readonly backTearOut: string;
  /** A scale's reading with the best mark of it, and how far its marks are apart. */
  readonly reading: (values: { readonly exact: string; readonly graduation: string; readonly step: string }) => string;
  /** What a miter scale counts from. */
  readonly miterReads: Readonly<Record<Saw["miter"]["reads"], string>>;
  /** What a bevel scale counts from. */
  readonly bevelReads: Readonly<Record<Saw["bevel"]["reads"], string>>;
  /** Why a lay is not used, in a word or two. */
  readonly obstaclesInShort: Readonly<Record<ObstacleCode, string>>;
  /** The lay that is used. */
  readonly used: (values: { readonly isInDoubt: boolean }) => string;
  /** A lay that works too. */
  readonly works: (values: { readonly isInDoubt: boolean }) => string;
  /** How the cradle is made. */
  readonly cradle: Readonly<Record<"make" | "place" | "balance", (values: CradleValues) => string>> & {
    /** Where the stick reaches below the wedge's thin end. */
    readonly base: (values: { readonly base: string }) => string;
    /** What to keep out of the blade's path. */
    readonly clear: string;
    /** A cradle whose size is not known. */
    readonly sizeNotKnown: (values: { readonly angle: string; readonly high: string }) => string;
  };
}

const TIPS: string = "tips over";

/** In English. */
export const englishSaws: SawWords = {
  plannedFor: ({ fence, miter, bevel }) => {
    const where = fence === "near" ? "pushes the stick from your side" : "is behind the stick";
    const tilts = [
      bevel.left === null ? "" : `${bevel.left} to the left`,
      bevel.right === null ? "" : `${bevel.right} to the right`,
    ].filter((text) => text !== "");
    const blade = tilts.length === 0 ? "whose blade does not lean" : `whose blade's top leans ${tilts.join(" and ")}`;
    return `Planned for a saw whose fence ${where}, whose miter goes to ${miter.left} left and ${miter.right} right, and ${blade}. Left and right are yours as you stand in front of it and look away from yourself. Another saw needs another sheet.`;
  },
  noLay: "No way to lay the stick suits this saw; the table says why.",
  backTearOut: "Where a step names tear-out, back the wood with scrap or score the line.",
  reading: ({ exact, graduation, step }) => `${exact} (best mark ${graduation}, marks every ${step})`,
  miterReads: {
    "from-square": "degrees from a square cut",
    "from-fence": "degrees between blade and fence",
  },
  bevelReads: {
    "from-vertical": "degrees from an upright blade",
    "from-table": "degrees between blade and table",
  },
  obstaclesInShort: {
    "miter-range-left": "miter too far",
    "miter-range-right": "miter too far",
    "bevel-range-left": "bevel too far",
    "bevel-range-right": "bevel too far",
    depth: "too high for the blade",
    crosscut: "too wide for the saw",
    "no-flat-back": TIPS,
    rocks: TIPS,
    "tips-over": TIPS,
    "needs-cradle": "needs a wedge",
  },
  used: ({ isInDoubt }) => (isInDoubt ? "used, depth not known" : "used"),
  works: ({ isInDoubt }) => (isInDoubt ? "yes, depth not known" : "yes"),
  cradle: {
    make: ({ angle, levelRun, rise, top }) =>
      `Make a cradle as long as the saw's table allows: a wedge of ${angle}, ${levelRun} wide and ${rise} high, its sloping top ${top}.`,
    place: ({ high }) =>
      `The stick's ${high} lies at its high side. Fix a ledge at the thin end that keeps the stick from sliding.`,
    base: ({ base }) =>
      `The stick reaches ${base} below the wedge's thin end: set the wedge on a base as high, with the stick's edge free beside it.`,
    balance: ({ widenBy }) =>
      widenBy === null
        ? "The dash-dotted line goes through the stick's center of gravity, which is above the wedge."
        : `The stick's center of gravity (dash-dotted line) is not above the wedge: widen its base by ${widenBy} at least, or clamp the stick.`,
    clear: "Keep screws, nails and clamps out of the blade's path. Prove the angle on a piece of scrap.",
    sizeNotKnown: ({ angle, high }) =>
      `The stick lies in a cradle: a wedge of ${angle} under its back, its ${high} the higher. Its size follows from the back's width, which was not given.`,
  },
};
