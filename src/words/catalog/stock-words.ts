import type { StopReason } from "../../stock/index.js";

/** What the words for a layout may tell of. Lengths come as texts. */
export interface LayoutValues {
  /** How many sticks are cut so. */
  readonly times: number;
  /** The stick's name. */
  readonly stick: string;
  /** Its length. */
  readonly length: string;
  /** The pieces that come out of it, as a text. */
  readonly pieces: string;
  /** The offcuts that are kept. */
  readonly kept: readonly string[];
  /** The longest offcut where none is kept; `null` where there is none. */
  readonly offcut: string | null;
}

/** How sticks are cut up. */
export interface StockWords {
  /** Pieces that have a name of ours. Pieces that the caller named keep their names. */
  readonly pieceNames: Readonly<Record<string, string>>;
  /** Which sticks are taken, as a text; `null` where none is. */
  readonly take: (values: { readonly sticks: string | null }) => string;
  /** What they cost, an amount, and the names of those without a cost; `null` where all have one. */
  readonly cost: (values: { readonly cost: string; readonly without: string | null }) => string;
  /** How good the fit is. */
  readonly status: {
    /** No better fit exists. */
    readonly optimal: string;
    /** A better fit may exist; `saved` is the most that it saves, a share. `stopped` says why the search ended. */
    readonly feasible: (values: { readonly saved: string; readonly stopped: StopReason | null }) => string;
    /** Pieces are missing. */
    readonly short: (values: { readonly isProven: boolean; readonly missing: string }) => string;
  };
  /** What becomes of the sticks, lengths; `kept` is `null` where no length was said from which offcuts are kept. */
  readonly sums: (values: {
    readonly sticks: string;
    readonly pieces: string;
    readonly kept: string | null;
    readonly waste: string;
  }) => string;
  /** Pieces of kinds beyond those that are told. */
  readonly otherPieces: (values: { readonly count: number }) => string;
  /** A number of pieces. */
  readonly pieces: (values: { readonly count: number }) => string;
  /** A layout. */
  readonly layout: (values: LayoutValues) => string;
  /** An offcut that is kept; its length is `null` where there is no room for it. */
  readonly keep: (values: { readonly length: string | null }) => string;
  /** The picture's title. */
  readonly title: (values: { readonly sticks: number }) => string;
  /** Sticks that are cut in ways that are not drawn, in a sentence. */
  readonly notDrawn: (values: { readonly sticks: number }) => string;
  /** All layouts that are drawn, in sentences. */
  readonly layouts: (values: { readonly layouts: readonly string[] }) => string;
  /** No stick is cut. */
  readonly none: string;
  /** Table of the layouts. */
  readonly cutList: {
    /** What it shows. */
    readonly caption: string;
    /** Heads of its columns. */
    readonly heads: Readonly<Record<"sticks" | "length" | "pieces" | "offcut", string>>;
  };
}

const STOPPED: Readonly<Record<StopReason, string>> = {
  asked: "The search was stopped. ",
  time: "The search ran out of time. ",
  steps: "The search ran out of steps. ",
};

/** In English. */
export const englishStock: StockWords = {
  pieceNames: { side: "side" },
  take: ({ sticks }) => `Take ${sticks ?? "no stick"}.`,
  cost: ({ cost, without }) => `They cost ${cost}${without === null ? " in all" : `, and ${without} without a cost`}.`,
  status: {
    optimal: "No cheaper way to cut the sticks up exists: this is proven.",
    feasible: ({ saved, stopped }) =>
      `${stopped === null ? "" : STOPPED[stopped]}A cheaper way may exist; it would save ${saved} at the most.`,
    short: ({ isProven, missing }) =>
      `${isProven ? "The sticks can't give all pieces" : "No way was found to get all pieces from the sticks"}: still missing ${missing}.`,
  },
  sums: ({ sticks, pieces, kept, waste }) =>
    `Of ${sticks} of sticks, ${pieces} become pieces${kept === null ? "" : `, ${kept} are offcuts to keep`} and ${waste} are saw cuts and waste.`,
  otherPieces: ({ count }) => `${count} other pieces`,
  pieces: ({ count }) => `${count} pieces`,
  layout: ({ times, stick, length, pieces, kept, offcut }) => {
    const left = kept.length > 0 ? `; keep ${kept.join(" and ")}` : offcut === null ? "" : `; offcut ${offcut}`;
    return `${times === 1 ? "" : `${times} times `}${stick} ${length}: ${pieces}${left}`;
  },
  keep: ({ length }) => (length === null ? "keep" : `keep ${length}`),
  title: ({ sticks }) => `How ${sticks} ${sticks === 1 ? "stick is" : "sticks are"} cut up`,
  notDrawn: ({ sticks }) => `${sticks} more ${sticks === 1 ? "stick is" : "sticks are"} cut in ways that are not drawn`,
  layouts: ({ layouts }) => layouts.map((layout) => `${layout}.`).join(" "),
  none: "No stick is cut.",
  cutList: {
    caption: "Cut list",
    heads: { sticks: "sticks", length: "length", pieces: "pieces from each", offcut: "offcut" },
  },
};
