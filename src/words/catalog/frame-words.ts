import type { Pose } from "../../core/geometry-types.js";

/** The frame at a glance, and the lengths of its pieces. */
export interface FrameWords {
  /** Names of the frame's main measures. */
  readonly facts: Readonly<
    Record<
      | "sides"
      | "slope"
      | "openingSide"
      | "openingAcrossFlats"
      | "overallAcrossFlats"
      | "overallAcrossCorners"
      | "levelWidth"
      | "height"
      | "pieces"
      | "miter"
      | "bevel",
      string
    >
  >;
  /** How many sides, and how the frame stands. */
  readonly sides: (values: { readonly sides: number; readonly pose: Pose }) => string;
  /** The slope of a frame that lies flat. */
  readonly flat: string;
  /** How many pieces a frame has and a job of several frames takes, and how long each is. */
  readonly pieces: (values: { readonly count: number; readonly inAll: number; readonly longest: string }) => string;
  /** Caption of the section's picture. */
  readonly sectionCaption: string;
  /** Table of the lengths along every edge. */
  readonly lengths: {
    /** What it shows. */
    readonly caption: string;
    /** Heads of its columns. */
    readonly heads: Readonly<Record<"letter" | "edge" | "length" | "tape", string>>;
    /** Where the tape goes. */
    readonly measureHere: string;
  };
}

/** In English. */
export const englishFrame: FrameWords = {
  facts: {
    sides: "sides",
    slope: "slope",
    openingSide: "opening, side",
    openingAcrossFlats: "opening, across flats",
    overallAcrossFlats: "overall, across flats",
    overallAcrossCorners: "overall, across corners",
    levelWidth: "molding, width taken level",
    height: "height on the bench",
    pieces: "pieces",
    miter: "miter scale",
    bevel: "bevel scale",
  },
  sides: ({ sides, pose }) => `${sides}, ${pose === "side-down" ? "standing on a side" : "standing on a corner"}`,
  flat: "none, it lies flat",
  pieces: ({ count, inAll, longest }) =>
    `${count}${inAll > count ? ` a frame, ${inAll} in all` : ""}, longest line ${longest}`,
  sectionCaption: "A side cut across, as it stands; the frame's center is to the left.",
  lengths: {
    caption: "Finished length of every piece along every edge",
    heads: { letter: "letter", edge: "edge", length: "length", tape: "tape" },
    measureHere: "measure here",
  },
};
