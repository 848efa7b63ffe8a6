import type { MeasuredLabel } from "./measured-label.js";

/** A side cut across. Lengths and angles come as texts. */
export interface SectionDrawingWords {
  /** The drawing's title. */
  readonly title: string;
  /** What is seen, in a sentence; `slope` is `null` where the side lies flat. */
  readonly seen: (values: { readonly slope: string | null }) => string;
  /** The level width, in a sentence. */
  readonly width: (values: { readonly levelWidth: string }) => string;
  /** What lies in the rabbet, in a sentence. */
  readonly layers: (values: {
    readonly layers: readonly { readonly name: string; readonly thickness: string }[];
  }) => string;
  /** The level width. */
  readonly levelWidth: MeasuredLabel;
  /** The lap. */
  readonly lap: MeasuredLabel;
  /** From the innermost to the outermost point. */
  readonly jointWidth: MeasuredLabel;
  /** The height on the bench. */
  readonly height: MeasuredLabel;
  /** The rabbet's depth. */
  readonly depth: MeasuredLabel;
  /** The slope. */
  readonly slope: MeasuredLabel;
  /** What stands above a section that is not known. */
  readonly notKnown: string;
  /** What is to scale where the section is not known. */
  readonly onlyLevel: (values: { readonly slope: string }) => string;
  /** How deep the rabbet is along its wall, whose ends have letters in the drawing, and what its contents leave; `left` and `proud` are `null` where they do not. */
  readonly rabbet: (values: {
    readonly depth: string;
    readonly wall: readonly [ledge: string, mouth: string];
    readonly left: string | null;
    readonly proud: string | null;
  }) => string;
}

/** A side cut across, in English. */
export const englishSectionDrawing: SectionDrawingWords = {
  title: "Profile of a side, as it stands in the frame",
  seen: ({ slope }) =>
    `A side of the frame cut across, ${slope === null ? "lying flat" : `sloping ${slope}`}; the frame's center is to the left.`,
  width: ({ levelWidth }) => `Width taken level ${levelWidth}.`,
  layers: ({ layers }) =>
    `In its rabbet, from the front: ${layers.map(({ name, thickness }) => `${name} ${thickness}`).join(", ")}.`,
  levelWidth: ({ value }) => `width taken level ${value}`,
  lap: ({ value }) => `lap ${value}`,
  jointWidth: ({ value }) => `overall ${value}`,
  height: ({ value }) => `height ${value}`,
  depth: ({ value }) => `depth ${value}`,
  slope: ({ value }) => `slope ${value}`,
  notKnown: "profile not known",
  onlyLevel: ({ slope }) => `The profile is not known: only its level measures are to scale. Slope ${slope}.`,
  rabbet: ({ depth, wall: [ledge, mouth], left, proud }) => {
    const deep = `Rabbet ${depth} deep along its wall (${ledge}–${mouth})`;
    if (proud !== null) return `${deep}: its contents stand ${proud} proud of it.`;
    return left === null ? `${deep}.` : `${deep}, ${left} of it left behind its contents.`;
  },
};
