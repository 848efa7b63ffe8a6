/** What is said of a gap at the dry fit. */
export interface DryFitWords {
  /** What the scales stood at, where that was only taken for granted; `null` where it was said. */
  readonly taken: (values: { readonly miter: string | null; readonly bevel: string | null }) => string;
  /** There is no gap. */
  readonly good: string;
  /** What to do with the new setting. */
  readonly again: string;
  /** Why there is no new setting. */
  readonly refused: Readonly<Record<"tooWide" | "noCorner" | "held" | "shown", string>>;
}

/** In English. */
export const englishDryFit: DryFitWords = {
  taken: ({ miter, bevel }) => {
    const marks = [
      miter === null ? "" : `${miter} on the miter scale`,
      bevel === null ? "" : `${bevel} on the bevel scale`,
    ].filter((mark) => mark !== "");
    return `It is taken that the pieces were cut at the best mark, ${marks.join(" and ")}. If not, say above where it stood.`;
  },
  good: "The setting is good: cut and glue with it.",
  again: "Cut all pieces anew from blanks, or a ring of scrap first, and look again.",
  refused: {
    tooWide: "The gap can't be as wide as the molding.",
    noCorner: "So wide a gap leaves no corner at all.",
    held: "What is held alone can't close this frame: hold the slope.",
    shown: "From there no setting of this saw closes the frame.",
  },
};
