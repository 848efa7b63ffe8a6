import { refuse } from "../../core/check.js";
import {
  count,
  finite,
  finiteOrNull,
  flag,
  list,
  orNull,
  point,
  record,
  word,
  type Fields,
  type Reader,
} from "../../core/stored.js";
import type { Fixing } from "../hanging/fixing-points.js";
import type {
  FrameHanging,
  HangerSeat,
  HangingLoad,
  HangingReason,
  HangingWire,
  HungFrame,
  UnhungFrame,
} from "../hanging/frame-hanging.js";
import { no, possibleOrNot } from "./geometry.js";

const by: Reader<FrameHanging["by"]> = (value, path) => word(value, path, { wire: true, "two-hooks": true });
const SEAT: Fields<HangerSeat> = {
  width: finite,
  leanAngle: finite,
  opens: (value, path) => word(value, path, { nowhere: true, outward: true, inward: true }),
  standoff: finite,
  wood: finite,
  deepest: finite,
  screwDepth: finiteOrNull,
  screwFits: (value, path) => orNull(value, path, flag),
};
const WIRE: Fields<HangingWire> = { angle: finite, length: finite, rise: finite, belowTop: finite };
const LOAD: Fields<HangingLoad> = {
  mass: finiteOrNull,
  complete: flag,
  weight: finiteOrNull,
  share: finite,
  pull: finiteOrNull,
  factor: finite,
  strength: finiteOrNull,
};
const FIXING: Fields<Fixing> = { side: count, point, fromCorner: finite };
const fixings: Reader<HungFrame["fixings"]> = (value, path) => {
  const pair = list(value, path, (fixing, at) => record(fixing, at, FIXING));
  if (pair.length !== 2) refuse("range", path ?? "", value, "an array of two fixings");
  return pair as HungFrame["fixings"];
};
const HUNG: Fields<HungFrame> = {
  possible: (value, path) => flag(value, path) as true,
  by,
  seat: (value, path) => orNull(value, path, (v, p) => record(v, p, SEAT)),
  wire: (value, path) => orNull(value, path, (v, p) => record(v, p, WIRE)),
  load: (value, path) => record(value, path, LOAD),
  fixings,
  below: finite,
  above: finite,
  apart: finite,
};
const REASONS: Readonly<Record<HangingReason, true>> = { "no-wall-surface": true };
const reason: Reader<HangingReason> = (value, path) => word(value, path, REASONS);
const UNHUNG: Fields<UnhungFrame> = { possible: no, by, reason };

/** How a frame hangs. */
export const frameHanging: Reader<FrameHanging> = (value, path) => possibleOrNot(value, path, HUNG, UNHUNG);
