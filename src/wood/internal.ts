/** What other modules of the library use of this one, and no entry shows. */
export { lumberOf } from "./board-measure.js";
export { acrossThickness, checkGrain, woodStrain } from "./grain.js";
export { openMiter } from "./miter-movement.js";
export { checkMoisture } from "./moisture.js";
export { readWood } from "./read-wood.js";
export { sheetFigure } from "./sheet-material.js";
export { METERS, volumeIn } from "./unit-ratio.js";
