import {
  count,
  finite,
  finiteOrNull,
  list,
  orNull,
  record,
  word,
  type Fields,
  type Reader,
  textOrNull,
} from "../../core/stored.js";
import type { AngleScatter, AngleTolerance, GaugeTolerance, GlueStage, GlueStep, GlueUp } from "../../closure/index.js";
import type { FrameAssembly } from "../closing/frame-assembly.js";
import type { FrameCheck } from "../closing/frame-checks.js";
import type { LastPiece, LastJoint, TrimmedHalves } from "../../closure/internal.js";
import type { SawErrors, SawFaultEffect, SawFaultOutcome } from "../closing/saw-errors.js";

const STEPS: Readonly<Record<GlueStep, true>> = {
  pairs: true,
  neighbors: true,
  "trimmed-halves": true,
  "closing-piece": true,
};
const STAGE: Fields<GlueStage> = {
  step: (value, path) => word(value, path, STEPS),
  corners: (value, path) => list(value, path, count, 1),
  assemblies: (value, path) => list(value, path, (row, at) => list(row, at, count)),
};
const BEVEL_BLOCKS: Fields<GlueUp["bevelBlocks"]> = {
  angle: finite,
  high: (value, path) => word(value, path, { "outer-edge": true, "sight-edge": true, neither: true }),
};
const CAULS: Fields<GlueUp["cauls"]> = { angle: finite };
const GLUE_UP: Fields<GlueUp> = {
  stages: (value, path) => list(value, path, (stage, at) => record(stage, at, STAGE)),
  last: (value, path) => word(value, path, { "trimmed-halves": true, "closing-piece": true }),
  bevelBlocks: (value, path) => record(value, path, BEVEL_BLOCKS),
  cauls: (value, path) => record(value, path, CAULS),
};

/** In which order a ring is glued. */
export const glueUp: Reader<GlueUp> = (value, path) => record(value, path, GLUE_UP);

const HALVES: Fields<TrimmedHalves> = {
  made: (value, path) => word(value, path, { "trimmed-halves": true }),
  trim: finiteOrNull,
  loss: finiteOrNull,
};
const CLOSING: Fields<LastPiece> = {
  made: (value, path) => word(value, path, { "closing-piece": true }),
  length: finiteOrNull,
  planMiter: finiteOrNull,
};
const MADE: Fields<{ made: LastJoint["made"] }> = {
  made: (value, path) => word(value, path, { "trimmed-halves": true, "closing-piece": true }),
};
/** How the last joints are made. */
export const lastJoint: Reader<LastJoint> = (value, path) =>
  record(value, path, MADE).made === "trimmed-halves" ? record(value, path, HALVES) : record(value, path, CLOSING);

const SHARED: Fields<AngleTolerance> = { miter: finiteOrNull, bevel: finiteOrNull, each: finite };
const RANDOM: Fields<AngleScatter> = { each: finiteOrNull, miter: finiteOrNull, bevel: finiteOrNull };
const TOLERANCE: Fields<GaugeTolerance> = {
  angle: finite,
  shared: (value, path) => record(value, path, SHARED),
  random: (value, path) => record(value, path, RANDOM),
};

const OUTCOMES: Readonly<Record<SawFaultOutcome, true>> = {
  "opens-last-joint": true,
  "dishes-frame": true,
  "changes-slope": true,
  "leaves-step": true,
};
const FAULT: Fields<SawFaultEffect> = {
  fault: (value, path) => word(value, path, { square: true, swing: true, upright: true, lean: true }),
  effect: (value, path) => word(value, path, { adds: true, cancels: true, idle: true }),
  jointGap: finite,
  slopeOff: finite,
  step: finite,
  outcomes: (value, path) => list(value, path, (v, p) => word(v, p, OUTCOMES)),
};
/** What one fault of a saw does. */
export const sawFaultEffect: Reader<SawFaultEffect> = (value, path) => record(value, path, FAULT);
const ERRORS: Fields<SawErrors> = {
  move: (value, path) => word(value, path, { "flip-end-for-end": true, "slide-past-the-blade": true }),
  faults: (value, path) => list(value, path, sawFaultEffect),
};

const ASSEMBLY: Fields<FrameAssembly> = {
  jointWidth: finite,
  glueUp,
  lastJoint,
  tolerance: (value, path) => orNull(value, path, (v, p) => record(v, p, TOLERANCE)),
  sawErrors: (value, path) => orNull(value, path, (v, p) => record(v, p, ERRORS)),
};
/** How a frame is put together. */
export const frameAssembly: Reader<FrameAssembly> = (value, path) => record(value, path, ASSEMBLY);

const CODES: Readonly<Record<FrameCheck["code"], true>> = {
  "piece-length": true,
  "level-width": true,
  "miter-sum": true,
  "corner-angle": true,
  "last-joint": true,
  "opening-across-flats": true,
  "opening-across-corners": true,
  "overall-across-flats": true,
  "overall-across-corners": true,
  flatness: true,
  slope: true,
  "glued-across-flats": true,
  "glued-across-corners": true,
  "glued-flatness": true,
};
const CHECK: Fields<FrameCheck> = {
  code: (value, path) => word(value, path, CODES),
  when: (value, path) => word(value, path, { pieces: true, dry: true, glued: true }),
  arris: textOrNull,
  place: (value, path) => orNull(value, path, (v, p) => word(v, p, { inside: true, rabbet: true, arris: true })),
  kind: (value, path) => word(value, path, { length: true, angle: true }),
  value: finite,
  tolerance: finiteOrNull,
};
/** One thing to measure. */
export const frameCheck: Reader<FrameCheck> = (value, path) => record(value, path, CHECK);

/** What to measure. */
export const frameChecks: Reader<readonly FrameCheck[]> = (value, path) => list(value, path, frameCheck);
