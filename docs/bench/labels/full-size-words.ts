/** The page on which the profile is printed at full size. Lengths and angles come as texts. */
export interface FullSizeWords {
  /** Its title. */
  readonly title: string;
  /** The drawing, for whoever does not see it. */
  readonly drawing: string;
  /** The rulers, for whoever does not see them, by their lengths. */
  readonly rulers: (values: { readonly millimeters: string; readonly inches: string }) => string;
  /** What is drawn; `slope` is `null` where the frame lies flat. */
  readonly shown: (values: {
    readonly slope: string | null;
    readonly width: string;
    readonly height: string;
  }) => string;
  /** How long every piece is along its edges, which have letters in the drawing. */
  readonly lengths: (values: {
    readonly edges: readonly { readonly letter: string; readonly edge: string; readonly length: string }[];
  }) => string;
  /** How to print it, at a scale in percent. */
  readonly print: (values: { readonly scale: string }) => string;
  /** The molding is not known by its dimensions. */
  readonly notKnown: string;
  /** It is larger than the paper. */
  readonly tooLarge: (values: {
    readonly width: string;
    readonly height: string;
    readonly paperWidth: string;
    readonly paperHeight: string;
  }) => string;
}

/** In English. */
export const englishFullSize: FullSizeWords = {
  title: "Profile of a side, full size",
  drawing: "Profile of a side at full size",
  rulers: ({ millimeters, inches }) => `Check rulers of ${millimeters} and of ${inches}`,
  shown: ({ slope, width, height }) =>
    `A side cut straight across, on the bench; the frame's center is to the left. ${slope === null ? "It lies flat." : `It stands at its slope of ${slope}.`} Level from its innermost to its outermost point it is ${width} wide, and ${height} high.`,
  lengths: ({ edges }) =>
    `Length of every piece along its edges: ${edges.map(({ letter, edge, length }) => `${letter} ${edge} ${length}`).join("; ")}.`,
  print: ({ scale }) =>
    `Print at ${scale}, without fitting to the page. Then lay a rule on the lines below: where they are not true, neither is the profile.`,
  notKnown: "The profile can be drawn when the molding is known by its dimensions.",
  tooLarge: ({ width, height, paperWidth, paperHeight }) =>
    `At its full size the profile is ${width} wide and ${height} high; a sheet of A4 or Letter holds ${paperWidth} by ${paperHeight}.`,
};
