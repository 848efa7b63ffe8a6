/** What other modules of the library use of this one, and no entry shows. */
export { COMMON_PRACTICE, COMPUTED } from "./hazards/hazard-rule.js";
export { rangeOf } from "./materials/range-of.js";
export { frameCheck, frameChecks, glueUp, lastJoint, sawFaultEffect } from "./stored/assembly.js";
export { filledBrief } from "./stored/brief.js";
export { frameContents } from "./stored/contents.js";
export { frameCorrection, settingCorrection } from "./stored/correction.js";
export { frameGeometry } from "./stored/geometry.js";
export { frameHanging } from "./stored/hanging.js";
export { hazard } from "./stored/hazard.js";
export { frameMovement } from "./stored/materials.js";
export { operation } from "./stored/operation.js";
export { framePlan } from "./stored/plan.js";
export { storedShopOrder } from "./stored/shop-order.js";
export { layResult, sawPlan, testCuts } from "./stored/sawing.js";
