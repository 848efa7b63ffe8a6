/* The script of the pages that have a heavy figure: it takes along the engine that fits sticks. */
import { HEAVY_FIGURES } from "./heavy.js";
import { enlivenAll } from "./live.js";

enlivenAll(HEAVY_FIGURES);
