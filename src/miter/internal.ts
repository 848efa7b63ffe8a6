/** What other modules of the library use of this one, and no entry shows. */
export { compoundMiterKernel } from "./compound-kernel.js";
export { LAY, LAY_NAMES, checkRotation, checkTilt } from "./lay.js";
export { settingKernel } from "./saw-setting.js";
