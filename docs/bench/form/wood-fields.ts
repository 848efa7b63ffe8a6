import { woodNames } from "miterwright/wood";
import type { WoodField, PlacedField } from "../fields.js";

const WOODS: readonly string[] = woodNames();

/** The wood and its year, what it costs, and how the frame hangs. */
export const WOOD_FIELDS: Readonly<Record<WoodField, PlacedField>> = {
  species: { step: "wood", kind: "choice", choices: ["", ...WOODS] },
  grain: {
    step: "wood",
    finer: true,
    kind: "choice",
    choices: ["flat-sawn", "rift-sawn", "quarter-sawn"],
    when: { species: WOODS },
  },
  made: { step: "wood", finer: true, kind: "number", quantity: "percent", optional: true, when: { species: WOODS } },
  driest: { step: "wood", finer: true, kind: "number", quantity: "percent", optional: true, when: { species: WOODS } },
  dampest: { step: "wood", finer: true, kind: "number", quantity: "percent", optional: true, when: { species: WOODS } },
  cost: { step: "wood", finer: true, kind: "number", quantity: "amount", optional: true },
  costPer: { step: "wood", finer: true, kind: "choice", choices: ["meter", "foot", "board-foot", "cubic-meter"] },
  hangs: { step: "wood", kind: "choice", choices: ["", "wire", "two-hooks"] },
  wireAngle: { step: "wood", finer: true, kind: "angle", optional: true, when: { hangs: ["wire"] } },
  screwDepth: { step: "wood", finer: true, kind: "length", optional: true, when: { hangs: ["wire", "two-hooks"] } },
  extraMass: {
    step: "wood",
    finer: true,
    kind: "number",
    quantity: "kilograms",
    optional: true,
    when: { hangs: ["wire", "two-hooks"] },
  },
};
