import { checkObject, refuse } from "../core/check.js";
import type { FramePlan } from "../frame/index.js";
import type { PanelPlan } from "../panel/index.js";
import type { StockFit, StockJob } from "../stock/index.js";
import { drawCradle } from "./cradle-view.js";
import { drawCut } from "./cut-view.js";
import type { DrawingOptions } from "./drawing-options.js";
import type { Drawing } from "./drawing.js";
import { drawPanelCut } from "./panel-cut-view.js";
import { drawPanel } from "./panel-view.js";
import { drawPiece } from "./piece-view.js";
import { drawPlanView } from "./plan-view.js";
import { drawSection } from "./section-view.js";
import type { FigureName } from "./parts.js";
import { drawStock } from "./stock-view.js";

/** A figure of a report: data until somebody draws it. */
export interface FigureBlock {
  /** What kind of block it is. */
  readonly kind: "figure";
  /** What it shows, which is also its name within its section. */
  readonly name: FigureName;
  /** The step that it shows, from 1: of the saw plan for a `cut`, of the panel for a `panel-cut`; `null` of other figures. */
  readonly step: number | null;
  /** The layouts of a stock fit that it shows, from the first to before the last; `null` of other figures. */
  readonly layouts: readonly [from: number, to: number] | null;
  /** What is written below it; `null` where it speaks for itself. */
  readonly caption: string | null;
}

/** What figures are drawn from; each needs only what it shows. */
export interface DrawnPlan extends Partial<Pick<FramePlan, "geometry" | "contents" | "sawing" | "stockJobs">> {
  /** How the panel is cut. */
  readonly panel?: PanelPlan | null | undefined;
  /** How the sticks are cut up, for the plan's stock job. */
  readonly fit?: StockFit | undefined;
  /** What the sticks are cut up for; default the plan's first stock job. */
  readonly job?: StockJob | undefined;
}

/** A part that a figure cannot be drawn without. */
function needed<T>(value: T | null | undefined, path: string, what: string): T {
  return value ?? refuse("missing", path, value, what);
}

/**
 * Draws a figure of a report.
 *
 * @param source - the plan that the report tells of, with the stock fit where that is shown; also one that was read back from JSON
 * @param block - the figure
 * @param options - formatters, words and width
 * @returns the drawing
 * @throws {InputError} when the figure is unknown, the source lacks what it shows, or an option is not sound
 * @example
 * ```ts
 * import { drawFigure } from "miterwright/drawing";
 * import { planFrame } from "miterwright/frame";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * const block = { kind: "figure", name: "cut", step: 1, layouts: null, caption: null } as const;
 * drawFigure(plan, block, { formats: formatters({ unit: "mm" }) }).title; //=> "Step 1: Cut the first end, 6 pieces"
 * ```
 */
export function drawFigure(source: DrawnPlan, block: FigureBlock, options: DrawingOptions): Drawing {
  const { geometry, contents, sawing, panel, fit, job } = checkObject(source, "source") as DrawnPlan;
  const { name, step, layouts } = checkObject(block, "block") as unknown as FigureBlock;
  const frame = (): { geometry: NonNullable<typeof geometry>; contents?: NonNullable<typeof contents> } => ({
    geometry: needed(geometry, "geometry", "the frame's geometry"),
    ...(contents === undefined ? {} : { contents }),
  });
  const sawn = (): { geometry: NonNullable<typeof geometry>; sawing: NonNullable<typeof sawing> } => ({
    geometry: frame().geometry,
    sawing: needed(sawing, "sawing", "a saw plan"),
  });
  const board = (): PanelPlan => needed(panel, "panel", "a plan for the panel");
  switch (name) {
    case "above":
      return drawPlanView(frame(), options);
    case "section":
      return drawSection(frame(), options);
    case "piece":
      return drawPiece(sawn(), options);
    case "cut":
      return drawCut(sawn(), { ...options, step: needed(step, "block.step", "the number of a step") });
    case "cradle":
      return drawCradle(sawn(), options);
    case "panel":
      return drawPanel(board(), options);
    case "panel-cut":
      return drawPanelCut(board(), { ...options, step: needed(step, "block.step", "the number of a step") });
    case "stock": {
      const { layouts: all } = needed(fit, "fit", "how the sticks are cut up");
      const [from, to] = layouts ?? [0, all.length];
      const stock = needed(job ?? source.stockJobs?.[0], "job", "a stock job");
      return drawStock(stock, { layouts: all.slice(from, to) }, options);
    }
    default:
      return refuse("unknown", "block.name", name, "the name of a figure");
  }
}
