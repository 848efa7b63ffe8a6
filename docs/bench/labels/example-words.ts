/** Names in the example, as a user would have typed them. */
export interface ExampleWords {
  /** The heading of its sheet. */
  readonly title: string;
  /** Its layers. */
  readonly layers: Readonly<Record<"glass" | "model", string>>;
  /** Its sticks. */
  readonly sticks: Readonly<Record<"full" | "offcut", string>>;
}

/** In English. */
export const englishExample: ExampleWords = {
  title: "Nine-sided tray for the relief model",
  layers: { glass: "glass", model: "relief model" },
  sticks: { full: "ash, full stick", offcut: "ash, offcut in the rack" },
};
