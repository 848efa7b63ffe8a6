/**
 * The same geometry to up to 1000 digits, as an oracle and for teaching.
 *
 * Numbers are doubles, which count with their exact values, or decimal texts; results are texts. Everything is derived by
 * vectors and planes, not by the closed forms of the other modules, so that one slip cannot hide in both.
 *
 * @module
 */
export type { PreciseNumber, PreciseOptions } from "./check.js";
export {
  preciseCompoundMiter,
  type PreciseCompoundMiter,
  type PreciseCompoundMiterOptions,
  type PreciseCornerMeasure,
} from "./compound-miter.js";
export {
  preciseCorner,
  type PreciseBoard,
  type PreciseCorner,
  type PreciseCornerOptions,
  type PreciseEndCut,
} from "./corner.js";
export type { PreciseJoint, PreciseMeetingAt } from "./derive-corner.js";
export {
  precisePolygon,
  type PreciseMeasure,
  type PreciseMeasures,
  type PrecisePolygon,
  type PrecisePolygonOptions,
} from "./polygon.js";
export {
  preciseSawSetting,
  type PreciseCutPlane,
  type PreciseLay,
  type PreciseLayName,
  type PreciseSawSetting,
  type PreciseSawSettingOptions,
} from "./saw-setting.js";
export { preciseSection, type PrecisePoint, type PreciseSectionOptions, type PreciseSectionPoint } from "./section.js";
export { precisePieceLength, type PrecisePieceLengthOptions } from "./piece-length.js";
