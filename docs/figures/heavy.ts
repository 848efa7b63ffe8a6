import type { Catalog } from "./catalog.js";
import { stockFigure } from "./stock.js";

/** The figures whose script would make every page heavier, and is only where they are. */
export const HEAVY_FIGURES: Catalog = new Map([[stockFigure.name, stockFigure]]);
