/* The script of every page. */
import { LIGHT_FIGURES } from "./light.js";
import { enlivenAll } from "./live.js";

enlivenAll(LIGHT_FIGURES);
