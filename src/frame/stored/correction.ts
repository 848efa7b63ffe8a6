import { finite, flag, record, word, type Fields, type Reader } from "../../core/stored.js";
import type { AngleChange, SettingCorrection } from "../../closure/index.js";
import type { SawSetting } from "../../miter/index.js";
import { placement } from "../../saw/internal.js";
import type { FrameCorrection } from "../closing/correct-from-gap.js";

const SETTING: Fields<SawSetting> = { miter: finite, bevel: finite };
const setting: Reader<SawSetting> = (value, path) => record(value, path, SETTING);

const CHANGE: Readonly<Record<AngleChange, true>> = { leave: true, more: true, less: true, "through-zero": true };
const change: Reader<AngleChange> = (value, path) => word(value, path, CHANGE);
const CHANGES: Fields<SettingCorrection["changes"]> = { miter: change, bevel: change };
const changes: Reader<SettingCorrection["changes"]> = (value, path) => record(value, path, CHANGES);

const SETTING_CORRECTION: Fields<SettingCorrection> = {
  angle: finite,
  perJoint: finite,
  cut: setting,
  wanted: setting,
  correction: setting,
  changes,
  slope: finite,
};
/** A correction of a setting by itself. */
export const settingCorrection: Reader<SettingCorrection> = (value, path) => record(value, path, SETTING_CORRECTION);

const OTHER_HAND: Fields<FrameCorrection["otherHand"]> = { miter: flag, bevel: flag };
const FRAME_CORRECTION: Fields<FrameCorrection> = {
  angle: finite,
  perJoint: finite,
  cut: setting,
  correction: setting,
  changes,
  shown: setting,
  otherHand: (value, path) => record(value, path, OTHER_HAND),
  first: placement,
  second: placement,
  slope: finite,
  slopeOff: finite,
};
/** A correction on the saw of a plan. */
export const frameCorrection: Reader<FrameCorrection> = (value, path) => record(value, path, FRAME_CORRECTION);
