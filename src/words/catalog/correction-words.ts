import type { AngleChange, OpenEnd } from "../../closure/index.js";

/** What the words for the change of an angle may tell of. */
export interface AngleChangeValues {
  /** The size of the change. */
  readonly by: string;
}

/** What the words for a scale may tell of. */
export interface ReadingValues {
  /** What the scale shows then. */
  readonly to: string;
  /** What it showed before. */
  readonly from: string;
  /** Whether gauge or blade goes to the other hand. */
  readonly otherHand: boolean;
}

/** How a setting of the saw is corrected. */
export interface CorrectionWords {
  /** What was wrong, by which end of the last joint is open. */
  readonly gap: Readonly<Record<OpenEnd, () => string>>;
  /** How the miter is changed. */
  readonly miter: Readonly<Record<AngleChange, (values: AngleChangeValues) => string>>;
  /** How the bevel is changed. */
  readonly bevel: Readonly<Record<AngleChange, (values: AngleChangeValues) => string>>;
  /** What each scale then shows. */
  readonly reading: Readonly<Record<"miter" | "bevel", (values: ReadingValues) => string>>;
  /** At which slope the frame then closes, where that is not the planned one. */
  readonly slope: (values: { readonly slope: string }) => string;
}

/** What a scale then shows. */
function readingText(name: "miter" | "bevel", { to, from, otherHand }: ReadingValues): string {
  return `The ${name} scale then shows ${to} instead of ${from}${otherHand ? ", to the other hand" : ""}.`;
}

/** In English. */
export const englishCorrections: CorrectionWords = {
  gap: {
    outside: () => "Open outside: the inside angles of the corners are too large, so the ring does not come round.",
    inside: () => "Open inside: the inside angles of the corners are too small, so the ring comes round too soon.",
    nowhere: () => "No gap: the inside angles of the corners are right.",
  },
  miter: {
    leave: () => "Miter: leave it.",
    more: ({ by }) => `Miter: ${by} more, further from a square cut.`,
    less: ({ by }) => `Miter: ${by} less, nearer to a square cut.`,
    "through-zero": ({ by }) => `Miter: ${by} in all, through 0 and to the other hand.`,
  },
  bevel: {
    leave: () => "Bevel: leave it.",
    more: ({ by }) => `Bevel: ${by} more, the blade leaning further over.`,
    less: ({ by }) => `Bevel: ${by} less, the blade more upright.`,
    "through-zero": ({ by }) => `Bevel: ${by} in all, through 0 and to the other hand.`,
  },
  reading: {
    miter: (values) => readingText("miter", values),
    bevel: (values) => readingText("bevel", values),
  },
  slope: ({ slope }) => `The frame then closes at a slope of ${slope}.`,
};
