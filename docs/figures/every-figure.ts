import type { Catalog } from "./catalog.js";
import { HEAVY_FIGURES } from "./heavy.js";
import { LIGHT_FIGURES } from "./light.js";

/** Every figure. */
export const FIGURES: Catalog = new Map([...LIGHT_FIGURES, ...HEAVY_FIGURES]);
