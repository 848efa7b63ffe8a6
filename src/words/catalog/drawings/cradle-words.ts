import type { MeasuredLabel } from "./measured-label.js";

/** The cradle, cut across. Lengths and angles come as texts. */
export interface CradleDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly angle: string }) => string;
  /** The wedge's height. */
  readonly rise: MeasuredLabel;
  /** The wedge's width, taken level. */
  readonly levelRun: MeasuredLabel;
  /** What keeps the stick from sliding. */
  readonly ledge: string;
}

/** The cradle, in English. */
export const englishCradleDrawing: CradleDrawingWords = {
  title: ({ angle }) => `Cradle of ${angle}, cut across`,
  rise: ({ value }) => `rise ${value}`,
  levelRun: ({ value }) => `run ${value}`,
  ledge: "ledge",
};
