/** What other modules of the library use of this one, and no entry shows. */
export { panelPlan, pose } from "./stored-panel.js";
export { workAtGauge } from "./work-at-gauge.js";
