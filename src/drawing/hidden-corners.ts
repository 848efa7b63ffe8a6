import { sideNumber } from "../core/side-number.js";
import type { PanelCorner, PanelPlan } from "../panel/index.js";

/** A corner inside the blank and its name in drawings and tables. */
export interface HiddenCorner extends PanelCorner {
  /** Its place among the panel's corners, counter-clockwise from 0 at the start of side 0. */
  readonly index: number;
  /** Its name: P for the panel, since letters alone name arrises, and the number of the side that starts there. */
  readonly name: string;
}

/** The corners of a panel that lie inside its blank, each with a name. */
export function hiddenCorners(panel: PanelPlan): HiddenCorner[] {
  return panel.corners.flatMap((corner, index) =>
    corner.inside ? [{ ...corner, index, name: `P${sideNumber(index)}` }] : [],
  );
}
