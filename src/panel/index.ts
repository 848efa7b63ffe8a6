/**
 * The panel that goes into a frame, cut from a squared blank: which sides from which, at what setting, and where its corners lie.
 *
 * @module
 */
export type { EdgeDistance, LocatedPoint, PanelCorner, PanelCut, PanelPlan } from "./panel-plan.js";
export { planPanel, type PlanPanelOptions } from "./plan-panel.js";
export { simulatePanel, type SimulatePanelOptions } from "./simulate-panel.js";
