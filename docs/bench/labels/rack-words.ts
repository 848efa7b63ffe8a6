/** How the search for the cheapest way to cut the sticks up goes. */
export interface RackWords {
  /** It has begun. */
  readonly begun: string;
  /** Some pieces have no room yet. */
  readonly looking: (values: { readonly pieces: number }) => string;
  /** A way was found, proven to a share of its cost. */
  readonly found: (values: { readonly proven: string }) => string;
  /** The sticks can't be cut up. */
  readonly refused: {
    /** A piece is longer than every stick. */
    readonly tooLong: string;
    /** Some number of the job is out of range. */
    readonly numbers: string;
    /** The search itself failed. */
    readonly failed: string;
  };
}

/** In English. */
export const englishRack: RackWords = {
  begun: "Looking for the cheapest way to cut the sticks up.",
  looking: ({ pieces }) => `Looking for room: ${pieces} pieces have none yet.`,
  found: ({ proven }) => `A stick plan is found; it is proven to ${proven} of its cost. Looking for a cheaper one.`,
  refused: {
    tooLong: "The sticks don't suit: a piece is longer than every stick in the rack.",
    numbers: "The sticks don't suit: their lengths or costs lie too far apart to be computed together.",
    failed: "How the sticks are cut up is not known: the search failed. That is a fault of the page.",
  },
};
