import { aroundFigure } from "./around.js";
import { planesFigure, unequalFigure } from "./corner.js";
import type { Figure } from "./figure.js";
import { flatCutFigure } from "./flat-cut.js";
import { laysFigure } from "./lays.js";
import { levelWidthFigure } from "./level-width.js";
import { measuresFigure } from "./measures.js";
import { panelFigure } from "./panel.js";
import { polygonFigure } from "./polygon.js";
import { rabbetFigure } from "./rabbet.js";
import { ringFigure } from "./ring.js";
import { rulerFigure } from "./ruler.js";
import { widthsFigure } from "./widths.js";

/** Every figure, by the name that stands in `data-figure`. */
export const FIGURES: ReadonlyMap<string, Figure> = new Map(
  [
    aroundFigure,
    flatCutFigure,
    laysFigure,
    levelWidthFigure,
    measuresFigure,
    panelFigure,
    planesFigure,
    polygonFigure,
    rabbetFigure,
    ringFigure,
    rulerFigure,
    unequalFigure,
    widthsFigure,
  ].map((figure) => [figure.name, figure]),
);
