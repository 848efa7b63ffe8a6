import { isRecord, LENGTH, refuse } from "../../core/check.js";
import type { Field, FieldCheck, Fields, NumberField } from "../../core/field.js";
import { checkVersion } from "../../core/schema-version.js";
import { LAY } from "../../miter/internal.js";
import { SAW } from "../../saw/internal.js";
import { readSticks } from "../../stock/internal.js";
import { DENSITY, EXPANSION, GRAIN, MOISTURE, readGivenWood, sheetFigure } from "../../wood/internal.js";
import type { OwnSheetMaterial, SheetMaterialName } from "../../wood/index.js";
import type {
  ContentsLayer,
  Cost,
  CostRate,
  CostUnit,
  FrameMoisture,
  GivenBrief,
  Hanging,
  LayerMaterial,
  SolidWoodLayer,
} from "./brief.js";
import { readRough } from "./read-rough.js";
import { AT, MAYBE_LENGTH, MAYBE_ZERO, MEASURED, OPENING, POSE, PROFILE, SIDES, SLOPE } from "./geometry-fields.js";

const AMOUNT: NumberField = { kind: "number", min: 0, max: 1e12, what: "an amount from 0 to 1e12" };
/** A number is an amount, an object one per unit, and what is neither has no form of its own. */
function costForm(value: unknown, path: string): number {
  if (typeof value === "number") return 0;
  return isRecord(value) ? 1 : refuse("type", path, value, `${AMOUNT.what!} or an object with \`amount\` and \`per\``);
}
const MOLDING_UNITS: readonly CostUnit[] = ["meter", "foot", "cubic-meter", "board-foot"];
const LAYER_UNITS: readonly CostUnit[] = ["square-meter", "square-foot"];
const MOLDING_RATE: Fields<CostRate> = { amount: AMOUNT, per: { kind: "word", words: MOLDING_UNITS } };
const LAYER_RATE: Fields<CostRate> = { amount: AMOUNT, per: { kind: "word", words: LAYER_UNITS } };
const COST: Field<Cost> = { kind: "either", of: [AMOUNT, { kind: "record", fields: MOLDING_RATE }], which: costForm };
const LAYER_COST: Field<Cost> = {
  kind: "either",
  of: [AMOUNT, { kind: "record", fields: LAYER_RATE }],
  which: costForm,
};

const OWN_SHEET: Fields<OwnSheetMaterial> = {
  density: { kind: "optional", of: DENSITY },
  expansion: { kind: "optional", of: EXPANSION },
};
const SOLID_WOOD: Fields<SolidWoodLayer> = {
  species: readGivenWood,
  grain: { kind: "optional", of: GRAIN },
  grainDirection: { kind: "optional", of: { kind: "number", min: -360, max: 360, what: "degrees from -360 to 360" } },
};
const SHEET_NAMES: Field<SheetMaterialName> = { kind: "word", words: ["glass", "acrylic"] };
const MATERIAL: Field<LayerMaterial> = {
  kind: "either",
  of: [SHEET_NAMES, { kind: "record", fields: OWN_SHEET }, { kind: "record", fields: SOLID_WOOD }],
  which: (value, path) => {
    if (typeof value !== "string") return isRecord(value) && "species" in value ? 2 : 1;
    sheetFigure(value, path, "density");
    return 0;
  },
};
const LAYER: Fields<ContentsLayer> = {
  name: { kind: "text" },
  thickness: LENGTH,
  material: { kind: "optional", of: MATERIAL },
  cost: { kind: "optional", of: LAYER_COST },
};

const MOISTURES: Fields<FrameMoisture> = {
  made: MOISTURE,
  seasons: { kind: "list", of: MOISTURE, what: "an array of one or more moistures", least: 1, most: 1000 },
};
const HANGING: Fields<Hanging> = {
  by: { kind: "word", words: ["wire", "two-hooks"] },
  wireAngle: { kind: "optional", of: { kind: "number", min: 5, max: 85, what: "degrees from 5 to 85" } },
  screwDepth: MAYBE_LENGTH,
  extraMass: { kind: "optional", of: { kind: "number", min: 0, max: 1000, what: "kilograms from 0 to 1000" } },
};

/** The form of brief that is known here. */
export const readVersion: FieldCheck<1> = (value, path) => checkVersion(value, path, "brief");

/** How every field of a brief is read. */
export const BRIEF_FIELDS: Fields<GivenBrief> = {
  sides: SIDES,
  slope: SLOPE,
  pose: POSE,
  opening: OPENING,
  profile: PROFILE,
  measured: MEASURED,
  at: AT,
  contents: {
    kind: "optional",
    of: {
      kind: "list",
      of: { kind: "record", fields: LAYER },
      what: "an array of layers, each with a name and a thickness",
    },
  },
  clearance: MAYBE_ZERO,
  unit: { kind: "optional", of: { kind: "word", words: ["mm", "cm", "m", "in", "ft"] } },
  saw: { kind: "optional", of: SAW },
  kerf: MAYBE_ZERO,
  rough: { kind: "optional", of: readRough },
  shows: { kind: "optional", of: { kind: "word", words: ["face", "back"] } },
  lay: { kind: "optional", of: LAY },
  sticks: { kind: "optional", of: readSticks },
  acceptedGap: MAYBE_LENGTH,
  fastenerRoom: MAYBE_ZERO,
  species: { kind: "optional", of: readGivenWood },
  grain: { kind: "optional", of: GRAIN },
  moisture: { kind: "optional", of: { kind: "record", fields: MOISTURES } },
  cost: { kind: "optional", of: COST },
  hanging: { kind: "optional", of: { kind: "record", fields: HANGING } },
  schemaVersion: { kind: "optional", of: readVersion },
};
