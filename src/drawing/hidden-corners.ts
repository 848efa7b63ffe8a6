import type { PanelCorner, PanelPlan } from "../panel/index.js";
import { arrisLetters } from "./arris-letters.js";

/** A corner inside the blank and the letter that stands for it in drawings and tables. */
export interface HiddenCorner extends PanelCorner {
  /** Its number, counter-clockwise from the start of side 0. */
  readonly index: number;
  /** Its letter. */
  readonly letter: string;
}

/**
 * The corners of a panel that lie inside its blank, each with a letter.
 *
 * @param panel - from `planPanel`
 * @returns the corners in their order round the panel
 */
export function hiddenCorners(panel: PanelPlan): HiddenCorner[] {
  const hidden = panel.corners.flatMap((corner, index) => (corner.inside ? [{ ...corner, index }] : []));
  const letters = arrisLetters(hidden.map(({ index }) => String(index)));
  return hidden.map((corner) => ({ ...corner, letter: letters[String(corner.index)]! }));
}
