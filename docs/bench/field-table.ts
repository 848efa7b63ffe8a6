import type { Field, FieldName, ListName, PlacedField, Step } from "./fields.js";
import { DRY_FIT_FIELDS } from "./form/dry-fit-fields.js";
import { MOLDING_FIELDS } from "./form/molding-fields.js";
import { RACK_FIELDS } from "./form/rack-fields.js";
import { SAW_FIELDS } from "./form/saw-fields.js";
import { SIZE_FIELDS } from "./form/size-fields.js";
import { WOOD_FIELDS } from "./form/wood-fields.js";

/** A step that asks a question. Units stand above them all, and the dry fit beside the plan. */
export type AskedStep = Exclude<Step, "units" | "dry-fit">;

/** The steps that ask a question, in their order. */
export const STEPS: readonly AskedStep[] = ["inside", "shape", "molding", "slope", "saw", "wood", "rack", "paper"];

/** Every field that stands alone, in the order of the form. */
export const FIELDS: Readonly<Record<FieldName, PlacedField>> = {
  ...SIZE_FIELDS,
  ...MOLDING_FIELDS,
  ...SAW_FIELDS,
  ...WOOD_FIELDS,
  ...RACK_FIELDS,
  ...DRY_FIT_FIELDS,
};

/** The columns of the lists. */
export const LISTS: Readonly<Record<ListName, Readonly<Record<string, Field>>>> = {
  layers: {
    name: { kind: "text", optional: true },
    thickness: { kind: "length", optional: true },
    material: { kind: "choice", choices: ["", "glass", "acrylic", "molding", "sheet"] },
    density: { kind: "number", quantity: "density", optional: true },
    cost: { kind: "number", quantity: "amount", optional: true },
  },
  sticks: {
    length: { kind: "length", optional: true },
    count: { kind: "count", optional: true },
    cost: { kind: "number", quantity: "amount", optional: true },
    name: { kind: "text", optional: true },
  },
};
