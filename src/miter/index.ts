/**
 * The angles of end cuts: compound miters of regular frames, corners between boards of any slope and thickness, and the
 * setting of the saw for every way that a stick can lie on it.
 *
 * @module
 */
export type { Board } from "./board.js";
export type { CompoundMiter } from "./compound-kernel.js";
export { compoundMiter, type CompoundMiterOptions, type CornerMeasure } from "./compound-miter.js";
export { compoundMiterTable, type CompoundMiterRow, type CompoundMiterTableOptions } from "./compound-table.js";
export type { Joint, MeetingAt } from "./corner-limits.js";
export type { CutPlane, EndCut, SawSetting, StickEnd } from "./cut-plane.js";
export { joinCorner, type Corner, type JoinCornerOptions } from "./join-corner.js";
export { layRotation, type Lay, type LayName } from "./lay.js";
export { sawSetting, type SawSettingOptions } from "./saw-setting.js";
export { slopeFromPlumb, slopeFromRiseAndRun, slopeFromSpring, type RiseAndRun } from "./slope.js";
