import { checkInteger } from "../../core/check.js";
import {
  count,
  type Fields,
  finite,
  finiteOrNull,
  flag,
  list,
  orNull,
  type Reader,
  record,
  textOrNull,
  word,
} from "../../core/stored.js";
import { contact, cutSize, hand, placement, stickEnd } from "../../saw/internal.js";
import type { MeasureAlong } from "../sawing/measure-along.js";
import type { Operation, OperationKind, StopRule } from "../sawing/operation.js";
import { hazardCode } from "./hazard.js";

const STOP_RULE: Fields<StopRule> = {
  side: hand,
  never: hand,
  touches: (value, path) => orNull(value, path, (v, p) => word(v, p, { "long-point": true, "square-end": true })),
  end: (value, path) => orNull(value, path, stickEnd),
  fromFence: finiteOrNull,
  comesFree: flag,
  travels: flag,
  moveAway: flag,
};
const MEASURE: Fields<MeasureAlong> = { arris: textOrNull, length: finite, hook: flag, pointAngle: finiteOrNull };
const GRADUATIONS: Fields<Operation["graduations"]> = { miter: finite, bevel: finite };
const KINDS: Readonly<Record<OperationKind, true>> = { crosscut: true, "first-end": true, "second-end": true };
const MOVES: Readonly<Record<NonNullable<Operation["move"]>, true>> = {
  "flip-end-for-end": true,
  "slide-past-the-blade": true,
};
/** What an operation does. */
export const kind: Reader<OperationKind> = (value, path) => word(value, path, KINDS);
/** How the stick comes from the operation before. */
export const move: Reader<Operation["move"]> = (value, path) => orNull(value, path, (v, p) => word(v, p, MOVES));
const OPERATION: Fields<Operation> = {
  step: count,
  kind,
  times: (value, path) => checkInteger(value, path ?? "", 1, 1e6),
  placement,
  graduations: (value, path) => record(value, path, GRADUATIONS),
  move,
  stop: (value, path) => orNull(value, path, contact),
  stopRule: (value, path) => record(value, path, STOP_RULE),
  size: (value, path) => orNull(value, path, cutSize),
  bladeHeight: finiteOrNull,
  measure: (value, path) => orNull(value, path, (v, p) => record(v, p, MEASURE)),
  hazards: (value, path) => list(value, path, hazardCode),
};

/** One instruction for a person at the saw. */
export const operation: Reader<Operation> = (value, path) => {
  const read = record(value, path, OPERATION);
  if (read.kind === "crosscut") {
    for (const scale of ["miter", "bevel"] as const) {
      word(read.placement[scale].toward, `${path ?? ""}.placement.${scale}.toward`, { none: true });
    }
  }
  return read;
};
