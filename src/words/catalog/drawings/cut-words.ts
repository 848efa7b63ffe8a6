import type { Hand } from "../../../saw/index.js";

/** A step at the saw. Angles come as texts. */
export interface CutDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly step: number; readonly title: string }) => string;
  /** The fence. */
  readonly fence: string;
  /** The stop. */
  readonly stop: string;
  /** The part that is kept. */
  readonly kept: string;
  /** The other part. */
  readonly offcut: string;
  /** Where the person at the saw stands. */
  readonly youStandHere: string;
  /** Which way one looks at the leaning blade. */
  readonly lookingAway: string;
  /** The line of cut. */
  readonly miter: (values: { readonly toward: Hand | "none"; readonly value: string }) => string;
  /** How the blade leans, in short lines one below the other. */
  readonly bevel: (values: { readonly toward: Hand | "none"; readonly value: string }) => readonly string[];
}

/** A step at the saw, in English. */
export const englishCutDrawing: CutDrawingWords = {
  title: ({ step, title }) => `Step ${step}: ${title}`,
  fence: "fence",
  stop: "stop",
  kept: "kept",
  offcut: "offcut",
  youStandHere: "you stand here",
  lookingAway: "looking away from you",
  miter: ({ toward, value }) => (toward === "none" ? "square" : `miter ${value} to the ${toward}`),
  bevel: ({ toward, value }) => (toward === "none" ? ["blade upright"] : [`bevel ${value}`, `top to the ${toward}`]),
};
