/**
 * Saws as data, how a stick lies and is held on them, what their scales must show, and where a stop touches.
 *
 * @module
 */
export type { BevelScale, Hand, MiterScale, Saw } from "./saw.js";
export { miterSaw, tableSaw } from "./usual-saws.js";
export { parseSaw, tryParseSaw } from "./parse-saw.js";
export type { ScaleSetting } from "./scale-setting.js";
export type { ObstacleCode } from "../core/obstacle-code.js";
export { placeCut, type CutPlacement, type Obstacle, type PlaceCutOptions } from "./place-cut.js";
export type { ShowingSide, StickSurface } from "./stick-surface.js";
export type { TearOut } from "./tear-out.js";
export { cutSize, type CutSize } from "./cut-size.js";
export { lieSection, type LieSectionOptions, type LyingPoint, type LyingSection, type Support } from "./lie-section.js";
export { stopContact, type StopContact } from "./stop-contact.js";
export { cradleFor, type Cradle } from "./cradle.js";
