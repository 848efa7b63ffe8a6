import { inOrder } from "../core/check.js";
import { readField } from "../core/field.js";
import { finite, flag, list, maybe, point, record, textOrNull, word } from "../core/stored.js";
import type { Fields, Reader } from "../core/stored.js";
import type { ObstacleCode } from "../core/obstacle-code.js";
import { SAW } from "./parse-saw.js";
import type { Cradle } from "./cradle.js";
import type { CutSize } from "./cut-size.js";
import type { LyingPoint, LyingSection, Support } from "./lie-section.js";
import type { CutPlacement, Obstacle } from "./place-cut.js";
import type { Hand, Saw } from "./saw.js";
import type { ScaleSetting } from "./scale-setting.js";
import type { StickSurface } from "./stick-surface.js";
import type { StopContact } from "./stop-contact.js";
import type { TearOut } from "./tear-out.js";

const HANDS: Readonly<Record<Hand, true>> = { left: true, right: true };
/** A hand. */
export const hand: Reader<Hand> = (value, path) => word(value, path, HANDS);

const SURFACES: Readonly<Record<StickSurface, true>> = {
  back: true,
  face: true,
  "sight-edge": true,
  "outer-edge": true,
};
/** A surface of the stick. */
export const surface: Reader<StickSurface> = (value, path) => word(value, path, SURFACES);

/** A saw. */
export const saw: Reader<Saw> = (value, path) => readField<Saw>(SAW, value, path ?? "", inOrder);

const TOWARD: Readonly<Record<ScaleSetting["toward"], true>> = { left: true, right: true, none: true };
const SETTING: Fields<ScaleSetting> = {
  degrees: finite,
  toward: (value, path) => word(value, path, TOWARD),
  reading: finite,
  nearest: finite,
  miss: finite,
};
/** What a scale must show. */
export const scale: Reader<ScaleSetting> = (value, path) => record(value, path, SETTING);

const BESIDE: Readonly<Record<TearOut["at"], true>> = { table: true, cradle: true, fence: true };
const TEAR_OUT: Fields<TearOut> = {
  surface,
  at: (value, path) => word(value, path, BESIDE),
  shows: flag,
  edgeAngle: finite,
};

const OBSTACLES: Readonly<Record<ObstacleCode, true>> = {
  "miter-range-left": true,
  "miter-range-right": true,
  "bevel-range-left": true,
  "bevel-range-right": true,
  depth: true,
  crosscut: true,
  "no-flat-back": true,
  rocks: true,
  "tips-over": true,
  "needs-cradle": true,
};
/** The code of an obstacle. */
export const obstacleCode: Reader<ObstacleCode> = (value, path) => word(value, path, OBSTACLES);
const REACH: Fields<NonNullable<Obstacle["degrees"]>> = { reach: finite, needs: finite };
const OBSTACLE: Fields<Obstacle> = {
  code: obstacleCode,
  degrees: (value, path) => maybe(value, path, (v, p) => record(v, p, REACH)),
};
/** Why a cut cannot be made. */
export const obstacle: Reader<Obstacle> = (value, path) => record(value, path, OBSTACLE);
/** All that is in the way of a cut. */
export const obstacles: Reader<readonly Obstacle[]> = (value, path) => list(value, path, obstacle);

const ENDS: Readonly<Record<"start" | "end", true>> = { start: true, end: true };
/** An end of a stick. */
export const stickEnd: Reader<"start" | "end"> = (value, path) => word(value, path, ENDS);

const PLACEMENT: Fields<CutPlacement> = {
  end: stickEnd,
  rotation: finite,
  down: surface,
  cradled: flag,
  atFence: surface,
  along: hand,
  kept: hand,
  miter: scale,
  bevel: scale,
  underBlade: (value, path) => word(value, path, { kept: true, offcut: true, none: true }),
  tearOut: (value, path) => list(value, path, (one, at) => record(one, at, TEAR_OUT)),
  obstacles,
};
/** How a stick lies on a saw for one cut. */
export const placement: Reader<CutPlacement> = (value, path) => record(value, path, PLACEMENT);

const LYING_POINT: Fields<LyingPoint> = { across: finite, up: finite };
const lyingPoint: Reader<LyingPoint> = (value, path) => record(value, path, LYING_POINT);
const SUPPORT: Fields<Support> = { from: finite, to: finite };
const LYING: Fields<LyingSection> = {
  tilt: finite,
  outline: (value, path) => list(value, path, lyingPoint, 3),
  width: finite,
  height: finite,
  support: (value, path) => record(value, path, SUPPORT),
  center: lyingPoint,
  steady: flag,
};
/** How a section lies. */
export const lyingSection: Reader<LyingSection> = (value, path) => record(value, path, LYING);

const CRADLE: Fields<Cradle> = {
  angle: finite,
  high: (value, path) => word(value, path, { "outer-edge": true, "sight-edge": true }),
  levelRun: finite,
  rise: finite,
  top: finite,
  outline: (value, path) => list(value, path, point, 3),
  stick: (value, path) => list(value, path, point, 3),
  base: finite,
  height: finite,
  centerFromThinEnd: finite,
  steady: flag,
  widenBy: finite,
};
/** A cradle. */
export const cradle: Reader<Cradle> = (value, path) => record(value, path, CRADLE);

const SIZE: Fields<CutSize> = { height: finite, depth: finite, line: finite };
/** How much of the blade and of the table a cut takes. */
export const cutSize: Reader<CutSize> = (value, path) => record(value, path, SIZE);

const CONTACT: Fields<StopContact> = {
  arris: textOrNull,
  from: finite,
  to: finite,
  leanLength: finite,
  across: finite,
  acrossTo: finite,
};
/** Where a stop touches. */
export const contact: Reader<StopContact> = (value, path) => record(value, path, CONTACT);
