import type { PanelCut } from "../panel/index.js";

const SWINGS: Readonly<Record<PanelCut["swing"], string>> = {
  closed: "less than square",
  open: "more than square",
};

/**
 * What to call the way a miter gauge is swung on paper: by the angle between gauge and blade on the side of the kept part.
 *
 * @param swing - of a panel's cut
 * @returns words for people
 */
export function swingLabel(swing: PanelCut["swing"]): string {
  return SWINGS[swing];
}
