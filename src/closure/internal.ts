/** What other modules of the library use of this one, and no entry shows. */
export { isIdle } from "./angle-change.js";
export { closingGraduations } from "./closing-graduations.js";
export { type Held, checkHold, correctionKernel, turnsAlone } from "./correct-setting.js";
export { toleranceKernel } from "./gauge-tolerance.js";
export { gapPerDegree } from "./regular-closure.js";
export { lastJoint, type LastJoint, type LastPiece, type TrimmedHalves } from "./last-joint.js";
export { liftTolerance, pieceTolerance, ringTolerances } from "./ring-tolerances.js";
export { ringCheck } from "./stored-check.js";
