import type { Field, FieldName, ListName, PlacedField, Step } from "./fields.js";
import { DRY_FIT_FIELDS } from "./form/dry-fit-fields.js";
import { MOLDING_FIELDS } from "./form/molding-fields.js";
import { RACK_FIELDS } from "./form/rack-fields.js";
import { SAW_FIELDS } from "./form/saw-fields.js";
import { SIZE_FIELDS } from "./form/size-fields.js";
import { answer } from "./form/answer.js";
import { WOOD_FIELDS } from "./form/wood-fields.js";

/** The steps of the form: a question each, and a hint where one helps. */
export const STEPS: readonly { readonly step: Step; readonly question: string; readonly hint: string }[] = [
  {
    step: "inside",
    question: "What goes in?",
    hint: "The picture, mirror or tray bottom that decides how large the frame has to be.",
  },
  { step: "shape", question: "Which shape?", hint: "A frame of equal sides and equal corners." },
  {
    step: "molding",
    question: "Which molding?",
    hint: "The strip of wood that the sides are cut from, looked at from its end.",
  },
  {
    step: "slope",
    question: "How steep?",
    hint: "A picture frame lies flat. A splayed frame, such as a tray, has sides that slope.",
  },
  { step: "saw", question: "Which saw?", hint: "Left and right are yours as you stand in front of it." },
  {
    step: "wood",
    question: "Which wood, and does it hang?",
    hint: "For what the frame weighs, what a year does to it, and how it is held on a wall. Leave it as it is and none of that is computed.",
  },
  {
    step: "rack",
    question: "What is in the rack?",
    hint: "The lengths of molding that you have or can buy. Leave it empty and only the need is computed.",
  },
  { step: "paper", question: "What stands on the sheet?", hint: "The heading of the shop sheet that you print." },
];

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
    name: {
      label: "Layer",
      explain: "What lies in the rabbet, from the front: glass, mount, picture, backing.",
      kind: "text",
      optional: true,
      placeholder: "glass",
    },
    thickness: { label: "Thickness", explain: "Of this layer.", kind: "length", optional: true },
    material: {
      label: "Made of",
      explain: "For what it weighs and how it moves.",
      kind: "choice",
      choices: [
        answer("", "not said"),
        answer("glass", "glass"),
        answer("acrylic", "acrylic"),
        answer("molding", "the wood of the molding, in one piece"),
        answer("sheet", "another sheet, of the density beside it"),
      ],
    },
    density: {
      label: "Density",
      explain: "Of another sheet, in kg/m³: its data sheet says it, or a weighed piece divided by its volume.",
      kind: "number",
      optional: true,
      placeholder: "kg/m³",
    },
    cost: {
      label: "Cost",
      explain: "Of one, in any money.",
      kind: "number",
      optional: true,
      placeholder: "not said",
    },
  },
  sticks: {
    length: {
      label: "Length",
      explain: "Of a stick, which is molding as it is bought.",
      kind: "length",
      optional: true,
    },
    count: {
      label: "How many",
      explain: "Left empty: as many as it takes.",
      kind: "count",
      optional: true,
      placeholder: "any",
    },
    cost: {
      label: "Cost",
      explain: "Of one stick, in any money. Left empty: its length, so that the least molding is used.",
      kind: "number",
      optional: true,
      placeholder: "length",
    },
    name: {
      label: "Name",
      explain: "What to call it on the sheet.",
      kind: "text",
      optional: true,
      placeholder: "stick",
    },
  },
};
