import type { MoldingField, PlacedField } from "../fields.js";

/** The molding and its slope. */
export const MOLDING_FIELDS: Readonly<Record<MoldingField, PlacedField>> = {
  known: { step: "molding", kind: "choice", choices: ["dimensions", "level"] },
  moldingWidth: { step: "molding", kind: "length", when: { known: ["dimensions"] } },
  thickness: { step: "molding", kind: "length", when: { known: ["dimensions"] } },
  rabbetWidth: { step: "molding", kind: "room", optional: true, when: { known: ["dimensions"] } },
  rabbetDepth: { step: "molding", kind: "room", optional: true, when: { known: ["dimensions"] } },
  milled: {
    step: "molding",
    finer: true,
    kind: "choice",
    choices: ["square", "milled"],
    when: { known: ["dimensions"] },
  },
  levelWidth: { step: "molding", kind: "length", when: { known: ["level"] } },
  lap: { step: "molding", kind: "room", optional: true, when: { known: ["level"] } },
  depth: { step: "molding", finer: true, kind: "length", optional: true, when: { known: ["level"] } },
  slope: { step: "slope", kind: "angle", optional: true, otherwiseBy: "slopeAs" },
  slopeAs: { step: "slope", finer: true, kind: "choice", choices: ["slope", "plumb", "spring"] },
};
