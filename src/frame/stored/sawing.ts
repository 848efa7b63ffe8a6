import { checkDegrees, refuse } from "../../core/check.js";
import {
  count,
  finite,
  finiteOrNull,
  flag,
  list,
  orNull,
  record,
  word,
  type Fields,
  type Reader,
} from "../../core/stored.js";
import type { Lay, LayName } from "../../miter/index.js";
import { contact, cradle, cutSize, lyingSection, obstacles, placement, saw } from "../../saw/internal.js";
import type { SawPlan } from "../sawing/saw-plan-types.js";
import type { LayResult } from "../sawing/lay-result.js";
import type { RoughPiece } from "../sawing/rough-length.js";
import type { GraduationSetting, Graduations } from "../sawing/graduations.js";
import type { TestCuts, TestPair, TestProof, TestRing } from "../sawing/test-cuts.js";
import { hazards } from "./hazard.js";
import { operation } from "./operation.js";

const LAYS: Readonly<Record<LayName, true>> = {
  propped: true,
  flat: true,
  "face-down": true,
  "sight-edge-down": true,
  "outer-edge-down": true,
};
/** A lay. */
export const lay: Reader<Lay> = (value, path) =>
  typeof value === "number" ? checkDegrees(value, path ?? "", -360, 360) : word(value, path, LAYS);

const LAY_RESULT: Fields<LayResult> = {
  lay,
  rotation: finite,
  miter: finite,
  bevel: finite,
  first: placement,
  second: placement,
  lying: (value, path) => orNull(value, path, lyingSection),
  cradle: (value, path) => orNull(value, path, cradle),
  size: (value, path) => orNull(value, path, cutSize),
  bladeHeight: finiteOrNull,
  possible: flag,
  depthInDoubt: flag,
  givenUp: (value, path) =>
    list(value, path, (v, p) => word(v, p, { steady: true, "open-side": true, "showing-side-up": true })),
  obstacles,
};
/** One way to lay the stick. */
export const layResult: Reader<LayResult> = (value, path) => record(value, path, LAY_RESULT);

const SETTING: Fields<GraduationSetting> = {
  miter: finite,
  bevel: finite,
  miterMiss: finite,
  bevelMiss: finite,
  jointGap: finite,
  opens: (value, path) => word(value, path, { inside: true, outside: true, nowhere: true }),
  slopeOff: finite,
};
const graduationSetting: Reader<GraduationSetting> = (value, path) => record(value, path, SETTING);
const GRADUATIONS: Fields<Graduations> = { nearest: graduationSetting, best: graduationSetting, slopeRange: finite };

const PAIR: Fields<TestPair> = { angle: finite, dihedral: finite, legs: finite };
const RING: Fields<TestRing> = { pieces: count, accept: finite };
const testRing: Reader<TestRing> = (value, path) => record(value, path, RING);
const PROOFS: Readonly<Record<TestProof, true>> = { ring: true, "half-ring": true, "own-pieces": true };
const TEST_CUTS: Fields<TestCuts> = {
  move: (value, path) => word(value, path, { "flip-end-for-end": true, "slide-past-the-blade": true }),
  length: finite,
  proof: (value, path) => word(value, path, PROOFS),
  ringScrap: finite,
  scrap: finite,
  molding: finite,
  spare: finite,
  pair: (value, path) => record(value, path, PAIR),
  ring: testRing,
  half: (value, path) => orNull(value, path, testRing),
  perEnd: finite,
  sloped: flag,
};
/** How a setting is proved on scrap. */
export const testCuts: Reader<TestCuts> = (value, path) => {
  const read = record(value, path, TEST_CUTS);
  if (read.proof === "half-ring") testRing(read.half, path === undefined ? path : `${path}.half`);
  return read;
};

const ROUGH: Fields<RoughPiece> = {
  method: (value, path) => word(value, path, { none: true, square: true, mitered: true }),
  length: finite,
  pitch: finite,
  kerfAlong: finite,
};
const SAWING: Fields<SawPlan> = {
  saw,
  lays: (value, path) => list(value, path, layResult, 1),
  lay: (value, path) => orNull(value, path, layResult),
  graduations: (value, path) => orNull(value, path, (v, p) => record(v, p, GRADUATIONS)),
  testCuts: (value, path) => orNull(value, path, testCuts),
  operations: (value, path) => list(value, path, operation),
  order: (value, path) => word(value, path, { "step-by-step": true, "piece-by-piece": true }),
  stop: (value, path) => orNull(value, path, contact),
  cradle: (value, path) => orNull(value, path, cradle),
  rough: (value, path) => record(value, path, ROUGH),
  hazards,
};

/** How a frame's pieces are cut; the parts that come with a chosen lay are there when it is. */
export const sawPlan: Reader<SawPlan> = (value, path) => {
  const sawing = record(value, path, SAWING);
  const at = path ?? "";
  const given = sawing.lay !== null;
  if ((sawing.graduations !== null) !== given) {
    const what = given ? "given, since a lay is chosen" : "null, since no lay is chosen";
    refuse("conflict", `${at}.graduations`, sawing.graduations, what);
  }
  const { operations } = sawing;
  if (operations.length > 0 !== given) {
    const what = given ? "an array of operations, since a lay is chosen" : "empty, since no lay is chosen";
    refuse("conflict", `${at}.operations`, operations, what);
  }
  operations.forEach(({ step }, index) => {
    if (step !== index + 1) refuse("range", `${at}.operations[${index}].step`, step, `${index + 1}`);
  });
  return sawing;
};
