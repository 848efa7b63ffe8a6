import type { PanelCut } from "../../../panel/index.js";
import type { MeasuredLabel } from "./measured-label.js";

/** A cut of the panel. The gauge's angle comes as a text. */
export interface PanelCutDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly step: number }) => string;
  /** What is done, in sentences; sides are numbered from 1. */
  readonly done: (values: {
    readonly against: number;
    readonly side: number;
    readonly up: PanelCut["up"];
    readonly setting: string;
    readonly swing: PanelCut["swing"];
  }) => string;
  /** Which face of the panel is up. */
  readonly up: Readonly<Record<PanelCut["up"], string>>;
  /** What angle gauge and blade make on the side of the kept part. */
  readonly swing: Readonly<Record<PanelCut["swing"], string>>;
  /** The gauge's angle from square. */
  readonly setting: MeasuredLabel;
}

/** A cut of the panel, in English. */
export const englishPanelCutDrawing: PanelCutDrawingWords = {
  title: ({ step }) => `Cut ${step} of the panel at the miter gauge`,
  done: ({ against, side, up, setting, swing }) =>
    `Side ${against} of the panel lies against the gauge, ${up} up. The gauge is swung ${setting} from square, so that the kept part between gauge and blade has ${swing === "closed" ? "less" : "more"} than a right angle. The blade makes side ${side}.`,
  up: { front: "front up", back: "back up" },
  swing: { closed: "less than square", open: "more than square" },
  setting: ({ value }) => `gauge ${value}`,
};
