/** What other modules of the library use of this one, and no entry shows. */
export { isIdle } from "./angle-change.js";
export { closingGraduations } from "./closing-graduations.js";
export { type Held, checkHold, correctionKernel, turnsAlone } from "./correct-setting.js";
export { toleranceKernel } from "./gauge-tolerance.js";
export { DEGREES, gapPerDegree } from "./regular-closure.js";
export { regularClosingRoom, regularTrim } from "./regular-last-joint.js";
export { acrossTolerance, liftTolerance, pieceTolerance, slopeTolerance } from "./ring-tolerances.js";
export { ringCheck } from "./stored-check.js";
