import type { FrameCheck } from "../../frame/index.js";

/** What the errors of a tenth of a degree may do, as texts; `null` where it is not seen. */
export interface FaultEffectValues {
  /** What the fault is, a sentence. */
  readonly fault: string;
  /** The error, an angle. */
  readonly error: string;
  /** The gap that it opens, a length. */
  readonly gap: string | null;
  /** By how much it changes the slope, an angle. */
  readonly slope: string | null;
  /** The step that it leaves, a length. */
  readonly step: string | null;
}

/** Checks, gluing, and how true the saw must be. Lengths and angles come as texts. */
export interface ClosingWords {
  /** Table of the checks. */
  readonly checks: {
    /** What it shows. */
    readonly caption: string;
    /** Heads of its columns. */
    readonly heads: Readonly<Record<"what" | "when" | "mustBe" | "within" | "is" | "glued", string>>;
    /** When a check is made. */
    readonly when: Readonly<Record<FrameCheck["when"], string>>;
    /** A tolerance, a length or an angle. */
    readonly within: (values: { readonly tolerance: string }) => string;
    /** A tolerance too small to be measured. */
    readonly feel: string;
  };
  /** What is not written. */
  readonly nothing: string;
  /** The bevel block under every piece. */
  readonly bevelBlocks: (values: { readonly angle: string; readonly high: string }) => string;
  /** The cauls of the clamps. */
  readonly cauls: (values: { readonly angle: string }) => string;
  /** Where corner 1 is. */
  readonly corners: string;
  /** What trimmed halves lose at the accepted gap. */
  readonly trimmed: (values: { readonly gap: string; readonly trim: string; readonly loss: string }) => string;
  /** How the closing piece may come out at the accepted gap. */
  readonly closing: (values: { readonly gap: string; readonly length: string; readonly angle: string }) => string;
  /** How true the settings must be; `each` is `null` where it is not known. */
  readonly tolerance: (values: {
    readonly gap: string;
    readonly settings: readonly {
      readonly name: "miter" | "bevel";
      readonly alike: string;
      readonly each: string | null;
    }[];
  }) => string;
  /** What the best marks of the scales do; `slope` is `null` where they leave it, `nearestGap` where the nearest marks are the best. */
  readonly bestGraduations: (values: {
    readonly miter: string;
    readonly bevel: string;
    readonly gap: string;
    readonly slope: string | null;
    readonly nearestGap: string | null;
  }) => string;
  /** What a fault of the saw does. */
  readonly faultEffect: (values: FaultEffectValues) => string;
}

/** In English. */
export const englishClosing: ClosingWords = {
  checks: {
    caption: "Measure on the loose pieces, dry without glue, and again once glued",
    heads: { what: "what", when: "when", mustBe: "must be", within: "within", is: "is", glued: "glued" },
    when: { pieces: "loose", dry: "dry", glued: "glued" },
    within: ({ tolerance }) => `±\u00a0${tolerance}`,
    feel: "a hair",
  },
  nothing: "–",
  bevelBlocks: ({ angle, high }) => `Prop every piece on a bevel block of ${angle}, its ${high} the higher.`,
  cauls: ({ angle }) =>
    `Clamp against cauls of ${angle} fixed to the outside, so that the pull is square to the joint.`,
  corners: "Corner 1 starts side 1.",
  trimmed: ({ gap, trim, loss }) =>
    `For a gap of ${gap} that is ${trim} at each end, and the frame becomes ${loss} narrower there.`,
  closing: ({ gap, length, angle }) =>
    `Instead of a gap of ${gap}, it comes out ${length} longer or shorter than the others, and each end ${angle} off, seen from above.`,
  tolerance: ({ gap, settings }) => {
    const parts = settings.map(
      ({ name, alike, each }) =>
        `the ${name} to ${alike} where all cuts are off alike${each === null ? "" : `, ${each} where each is off by its own`}`,
    );
    return `For a last joint within ${gap}, cut ${parts.join("; ")}.`;
  },
  bestGraduations: ({ miter, bevel, gap, slope, nearestGap }) =>
    `On the best marks, miter ${miter} with bevel ${bevel}, the last joint opens ${gap}${slope === null ? "" : ` and the sides slope ${slope}`}.${nearestGap === null ? "" : ` The nearest mark of each would open it ${nearestGap}.`}`,
  faultEffect: ({ fault, error, gap, slope, step }) => {
    const does = [
      gap === null ? "" : `gap ${gap}`,
      slope === null ? "" : `slope ${slope}`,
      step === null ? "" : `step ${step}`,
    ].filter((text) => text !== "");
    return `${fault} (${error}: ${does.join(", ")})`;
  },
};
