import {
  count,
  finite,
  finiteOrNull,
  flag,
  list,
  orNull,
  record,
  text,
  word,
  type Fields,
  type Reader,
} from "../../core/stored.js";
import type { FrameMaterials, MaterialPart } from "../materials/frame-materials.js";
import type { FrameMovement, MovementUnknown, SeasonMovement } from "../materials/frame-movement.js";
import type { MoldingLumber } from "../materials/molding-volume.js";
import type { PartCost } from "../materials/part-cost.js";
import type { PartialSum } from "../materials/partial-sum.js";

const BLANK: Fields<MoldingLumber> = {
  width: finite,
  thickness: finite,
  length: finite,
  boardFeet: finite,
  cubicMeters: finite,
};
const COST: Fields<PartCost> = { quantity: finiteOrNull, total: finiteOrNull };
const PART: Fields<MaterialPart> = {
  name: text,
  layer: (value, path) => orNull(value, path, count),
  volume: finiteOrNull,
  density: finiteOrNull,
  mass: finiteOrNull,
  cost: (value, path) => orNull(value, path, (v, p) => record(v, p, COST)),
};
const SUM: Fields<PartialSum> = {
  total: finiteOrNull,
  complete: flag,
  missing: (value, path) => list(value, path, text),
};
const sum: Reader<PartialSum> = (value, path) => record(value, path, SUM);
const MATERIALS: Fields<FrameMaterials> = {
  pieces: count,
  finishedLength: finite,
  moldingLength: finite,
  lumber: (value, path) => orNull(value, path, (v, p) => record(v, p, BLANK)),
  parts: (value, path) => list(value, path, (part, at) => record(part, at, PART), 1),
  mass: sum,
  cost: (value, path) => orNull(value, path, sum),
};
/** What a frame takes, weighs and costs. */
export const frameMaterials: Reader<FrameMaterials> = (value, path) => record(value, path, MATERIALS);

const SEASON: Fields<SeasonMovement> = {
  moisture: finite,
  levelWidthChange: finite,
  lipChange: finite,
  sightOpens: finite,
  sightArrises: (value, path) => list(value, path, text),
  openingGrows: finite,
  opens: (value, path) => word(value, path, { inside: true, outside: true, nowhere: true }),
  jointGap: finite,
  angle: finite,
  miter: finite,
};
const UNKNOWN: Readonly<Record<MovementUnknown, true>> = { section: true, "lip-width": true };
const MOVEMENT: Fields<FrameMovement> = {
  made: finite,
  seasons: (value, path) => list(value, path, (season, at) => record(season, at, SEASON)),
  inside: finite,
  outside: finite,
  acceptedGap: finite,
  sightOpens: finite,
  unknown: (value, path) => list(value, path, (one, at) => word(one, at, UNKNOWN)),
};
/** What the seasons do to the molding. */
export const frameMovement: Reader<FrameMovement> = (value, path) => record(value, path, MOVEMENT);
