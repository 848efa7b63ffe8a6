import { drawFigure, type FigureName } from "miterwright/drawing";
import type { FramePlan } from "miterwright/frame";
import type { StockFit } from "miterwright/stock";
import type { DrawFigure } from "./write-section.js";
import type { Pen } from "./writers.js";

/** Widths that figures in a column may take, in pixels. */
const WIDEST: Readonly<Record<FigureName, number>> = {
  above: 460,
  section: 460,
  piece: 400,
  cut: 400,
  cradle: 360,
  panel: 340,
  "panel-cut": 340,
  stock: 700,
};

/**
 * What draws the figures of a plan's report.
 *
 * @param plan - the plan
 * @param fit - how its sticks are cut up; `null` where that is not known
 * @param pen - what the page writes with
 * @param room - the width of a column, in pixels
 * @returns a function that draws a figure
 */
export function figuresOf(plan: FramePlan, fit: StockFit | null, { formats, words }: Pen, room: number): DrawFigure {
  const source = fit === null ? plan : { ...plan, fit };
  return (block) => {
    // The letters of the section are explained by the table of the lengths below it.
    const key = block.name !== "section";
    return drawFigure(source, block, { formats, words, key, width: Math.min(room, WIDEST[block.name]) }).svg;
  };
}
