import { checkNumber, checkOneOf, isRecord, refuse, reject } from "../../core/check.js";
import { box, count, finite, list, maybe, record, text, word, type Fields, type Reader } from "../../core/stored.js";
import { pose } from "../../panel/internal.js";
import { saw } from "../../saw/internal.js";
import type { StockStick, Stretch } from "../../stock/index.js";
import { checkGrain, checkMoisture, readWood } from "../../wood/internal.js";
import type { Climate, Grain, Moisture, OwnSheetMaterial, Wood } from "../../wood/index.js";
import type {
  Contained,
  ContentsLayer,
  Cost,
  CostRate,
  CostUnit,
  FilledBrief,
  FrameMoisture,
  Hanging,
  LayerMaterial,
  Opening,
  OpeningValues,
  RoughCut,
  RoughMethod,
  SolidWoodLayer,
} from "../brief/brief.js";
import { lay } from "./sawing.js";
import { frameSides, measured, profile, slope } from "./geometry.js";

const optional: Reader<number | undefined> = (value, path) => maybe(value, path, finite);

const CONTAINED: Fields<Contained> = { width: finite, height: finite, allowance: optional };
const OPENING: Fields<OpeningValues> = {
  contains: (value, path) => record(value, path, CONTAINED),
  cutFrom: box,
  side: finite,
  apothem: finite,
  circumradius: finite,
  acrossFlats: finite,
  acrossCorners: finite,
  perimeter: finite,
  area: finite,
};
const opening: Reader<Opening> = (value, path) => {
  const at = path ?? "";
  const given = record<object>(value, path, {}) as Readonly<Record<string, unknown>>;
  const key = checkOneOf(given, at, Object.keys(OPENING) as (keyof OpeningValues)[]);
  OPENING[key](given[key], path === undefined ? path : `${at}.${key}`);
  return value as Opening;
};

const wood: Reader<Wood> = (value, path) => {
  readWood(value, path ?? "species");
  return value as Wood;
};
const grain: Reader<Grain> = (value, path) => {
  checkGrain(value, path ?? "grain");
  return value as Grain;
};
const moisture: Reader<Moisture> = (value, path) => {
  checkMoisture(value, path ?? "moisture");
  return value as number | Climate;
};
const MOISTURE: Fields<FrameMoisture> = {
  made: moisture,
  seasons: (value, path) => list(value, path, moisture, 1),
};

const COST_UNITS: Readonly<Record<CostUnit, true>> = {
  meter: true,
  foot: true,
  "square-meter": true,
  "square-foot": true,
  "cubic-meter": true,
  "board-foot": true,
};
const COST_RATE: Fields<CostRate> = { amount: finite, per: (value, path) => word(value, path, COST_UNITS) };
const cost: Reader<Cost> = (value, path) => {
  if (typeof value === "number") return finite(value, path);
  if (isRecord(value)) return record(value, path, COST_RATE);
  return refuse("type", path ?? "", value, "a number or an object with `amount` and `per`");
};

const SHEET: Fields<OwnSheetMaterial> = { density: optional, expansion: optional };
const SOLID: Fields<SolidWoodLayer> = {
  species: wood,
  grain: (value, path) => maybe(value, path, grain),
  grainDirection: optional,
};
const material: Reader<LayerMaterial> = (value, path) => {
  if (!isRecord(value)) return word(value, path, { glass: true, acrylic: true });
  return "species" in value ? record(value, path, SOLID) : record(value, path, SHEET);
};
const LAYER: Fields<ContentsLayer> = {
  name: text,
  thickness: finite,
  material: (value, path) => maybe(value, path, material),
  cost: (value, path) => maybe(value, path, cost),
};

const ROUGH: Fields<RoughCut> = {
  method: (value, path) => word(value, path, { square: true, mitered: true }),
  allowance: finite,
};
const rough: Reader<RoughMethod> = (value, path) => {
  const { method } = record<Pick<RoughMethod, "method">>(value, path, {
    method: (v, p) => word(v, p, { none: true, square: true, mitered: true }),
  });
  return method === "none" ? { method } : record(value, path, ROUGH);
};

const STRETCH: Fields<Stretch> = { start: finite, end: finite };
const STICK: Fields<StockStick> = {
  id: text,
  length: finite,
  count: (value, path) => maybe(value, path, count),
  cost: optional,
  defects: (value, path) => maybe(value, path, (v, p) => list(v, p, (one, at) => record(one, at, STRETCH))),
};
/** A stick on offer. */
export const stockStick: Reader<StockStick> = (value, path) => record(value, path, STICK);

/** How a frame is hung. */
export const by: Reader<Hanging["by"]> = (value, path) => word(value, path, { wire: true, "two-hooks": true });
const HANGING: Fields<Hanging> = { by, wireAngle: optional, screwDepth: optional, extraMass: optional };

/** What a filled brief says besides its molding. */
type Rest = Omit<FilledBrief, "profile" | "measured">;
const UNITS: Readonly<Record<FilledBrief["unit"], true>> = { mm: true, cm: true, m: true, in: true, ft: true };
const BRIEF: Fields<Rest> = {
  sides: frameSides,
  slope,
  pose,
  opening,
  at: text,
  contents: (value, path) => list(value, path, (layer, at) => record(layer, at, LAYER)),
  clearance: (value, path) => checkNumber(value, path ?? "", 0, Number.MAX_VALUE),
  unit: (value, path) => word(value, path, UNITS),
  saw,
  kerf: finite,
  rough,
  shows: (value, path) => word(value, path, { face: true, back: true }),
  lay: (value, path) => maybe(value, path, lay),
  sticks: (value, path) => maybe(value, path, (v, p) => list(v, p, stockStick)),
  acceptedGap: finite,
  fastenerRoom: finite,
  species: (value, path) => maybe(value, path, wood),
  grain: (value, path) => maybe(value, path, grain),
  moisture: (value, path) => maybe(value, path, (v, p) => record(v, p, MOISTURE)),
  cost: (value, path) => maybe(value, path, cost),
  hanging: (value, path) => maybe(value, path, (v, p) => record(v, p, HANGING)),
};

/** A brief with its defaults filled in. */
export const filledBrief: Reader<FilledBrief> = (value, path) => {
  record<Rest>(value, path, BRIEF);
  const given = value as { readonly profile?: unknown; readonly measured?: unknown };
  const at = path ?? "";
  if ((given.profile === undefined) === (given.measured === undefined)) {
    const message = `Expected exactly one of \`${at}.profile\` and \`${at}.measured\``;
    reject("conflict", `${at}.profile`, given.profile, message);
  }
  if (given.profile === undefined) measured(given.measured, path === undefined ? path : `${at}.measured`);
  else profile(given.profile, path === undefined ? path : `${at}.profile`);
  return value as FilledBrief;
};
