/** What other modules of the library use of this one, and no entry shows. */
export { lumberOf } from "./board-measure.js";
export { acrossThickness, checkGrain, GRAIN, woodStrain } from "./grain.js";
export { openMiter } from "./miter-movement.js";
export { checkMoisture, MOISTURE } from "./moisture.js";
export { readGivenWood, readWood, WOOD_FIGURES } from "./read-wood.js";
export { DENSITY, EXPANSION, sheetFigure } from "./sheet-material.js";
export { volumeIn } from "./volume-in.js";
