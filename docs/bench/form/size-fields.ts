import type { SizeField, PlacedField } from "../fields.js";

/** What goes in, the shape, and the units. */
export const SIZE_FIELDS: Readonly<Record<SizeField, PlacedField>> = {
  unit: { step: "units", kind: "choice", choices: ["mm", "cm", "in", "ft"] },
  fineness: { step: "units", kind: "choice", choices: ["usual", "fine", "coarse"] },
  holds: { step: "inside", kind: "choice", choices: ["contains", "cutFrom", "measure"] },
  width: { step: "inside", kind: "length", when: { holds: ["contains", "cutFrom"] } },
  height: { step: "inside", kind: "length", when: { holds: ["contains", "cutFrom"] } },
  measure: {
    step: "inside",
    kind: "choice",
    choices: ["side", "acrossFlats", "acrossCorners", "apothem", "circumradius", "perimeter"],
    when: { holds: ["measure"] },
  },
  size: { step: "inside", kind: "length", when: { holds: ["measure"] } },
  at: { step: "inside", kind: "choice", choices: ["opening", "innermost", "outermost"], when: { holds: ["measure"] } },
  allowance: { step: "inside", finer: true, kind: "room", optional: true, when: { holds: ["contains"] } },
  clearance: { step: "inside", finer: true, kind: "room", optional: true },
  fastenerRoom: { step: "inside", finer: true, kind: "room", optional: true },
  sides: { step: "shape", kind: "count" },
  pose: { step: "shape", kind: "choice", choices: ["side-down", "corner-down"] },
};
