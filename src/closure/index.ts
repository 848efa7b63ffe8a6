/**
 * What happens between the numbers and a frame that closes: how really cut pieces close, what an error costs at the last joint,
 * how a setting is corrected, how the last joint is made, and what to measure.
 *
 * @module
 */
export type { AngleChange } from "./angle-change.js";
export { closingPiece, type ClosingPiece, type ClosingReason } from "./closing-piece.js";
export { correctSetting, type CorrectSettingOptions, type SettingCorrection } from "./correct-setting.js";
export {
  gaugeTolerance,
  type AngleScatter,
  type AngleTolerance,
  type GaugeTolerance,
  type GaugeToleranceOptions,
} from "./gauge-tolerance.js";
export { glueUp, type GlueStage, type GlueStep, type GlueUp, type GlueUpOptions } from "./glue-up.js";
export { halfRings, type EndTrim, type HalfRing, type HalfRings } from "./half-rings.js";
export { machineErrors, type MachineErrors, type MachineErrorsOptions, type StickMove } from "./machine-errors.js";
export {
  measuredOpening,
  type MeasuredOpening,
  type MeasuredOpeningOptions,
  type OpeningMeasures,
} from "./measured-opening.js";
export type { MeasuredRing, MeasuredPiece } from "./measured-piece.js";
export type { OpenEnd } from "./regular-closure.js";
export { ringChecks, type RingCheck, type RingChecksOptions } from "./ring-checks.js";
export { ringClosure, type RingClosure } from "./ring-closure.js";
export type { SettingChoice } from "./setting-choices.js";
export { settingCost, type LengthCost, type SettingCost, type SettingCostOptions } from "./setting-cost.js";
