import type { Figure } from "./figure.js";

/** Figures by the names that stand in `data-figure`. */
export type Catalog = ReadonlyMap<string, Figure>;
