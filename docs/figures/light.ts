import { aroundFigure } from "./around.js";
import { planesFigure, unequalFigure } from "./corner.js";
import type { Catalog } from "./catalog.js";
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

/** The figures whose script is on every page. */
export const LIGHT_FIGURES: Catalog = new Map(
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
