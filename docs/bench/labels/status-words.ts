/** A plan's first numbers, as texts. */
export interface EssenceValues {
  /** What the miter scale shows. */
  readonly miter: string;
  /** What the bevel scale shows. */
  readonly bevel: string;
  /** How long a piece is. */
  readonly length: string;
}

/** How far a plan is. */
export interface StatusWords {
  /** There is no plan yet. */
  readonly none: string;
  /** Fields are empty that are needed; their names follow. */
  readonly needed: string;
  /** Fields can't be used; their names follow. */
  readonly wrong: string;
  /** The plan is there; `isFitting` while the sticks are still being fitted. */
  readonly ready: (values: EssenceValues & { readonly pieces: number; readonly isFitting: boolean }) => string;
  /** The first numbers, in a line. */
  readonly essence: (values: EssenceValues) => string;
  /** No plan, since some number can't be written or drawn, or since the page failed. */
  readonly failed: Readonly<Record<"numbers" | "page", string>>;
  /** What a button did, or why it did not. */
  readonly done: {
    /** A window was opened. */
    readonly opened: string;
    /** The browser kept the window shut. */
    readonly shut: string;
    /** The sheet waits for the sticks. */
    readonly awaited: string;
    /** The link was copied. */
    readonly copied: string;
    /** The browser does not let the page copy. */
    readonly notCopied: string;
  };
}

/** In English. */
export const englishStatus: StatusWords = {
  none: "No plan yet",
  needed: "Still needed:",
  wrong: "Something in the form can't be used yet:",
  ready: ({ pieces, length, miter, bevel, isFitting }) =>
    `${isFitting ? "The sticks are still being fitted" : "The plan is ready"}: ${pieces} pieces of ${length}, miter scale at ${miter}, bevel scale at ${bevel}.`,
  essence: ({ miter, bevel, length }) => `miter ${miter}, bevel ${bevel}, ${length}`,
  failed: {
    numbers: "No plan: some number of this job is too large or too small to be written or drawn.",
    page: "No plan: this page failed at this job. That is a fault of the page. Change something in the form, or reload the page.",
  },
  done: {
    opened: "It is open in a window of its own.",
    shut: "Your browser kept the new window shut: allow pop-ups for this page.",
    awaited: "The sticks are still being fitted. The sheet opens as soon as that is done, or stopped.",
    copied: "The link is copied. Whoever opens it sees this job.",
    notCopied: "Your browser does not let the page copy: copy the link below.",
  },
};
