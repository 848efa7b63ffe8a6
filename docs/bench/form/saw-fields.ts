import type { SawField, PlacedField } from "../fields.js";

/** The saw and how it is used. */
export const SAW_FIELDS: Readonly<Record<SawField, PlacedField>> = {
  saw: { step: "saw", kind: "choice", choices: ["table", "miter"] },
  kerf: { step: "saw", kind: "room", optional: true },
  shows: { step: "saw", finer: true, kind: "choice", choices: ["face", "back"] },
  lay: {
    step: "saw",
    finer: true,
    kind: "choice",
    choices: ["", "flat", "propped", "sight-edge-down", "outer-edge-down", "face-down"],
  },
  rough: { step: "saw", finer: true, kind: "choice", choices: ["none", "square", "mitered"] },
  roughAllowance: { step: "saw", finer: true, kind: "length", when: { rough: ["square", "mitered"] } },
  miterReach: { step: "saw", finer: true, kind: "angle", optional: true },
  bevelLeft: { step: "saw", finer: true, kind: "angle", optional: true },
  bevelRight: { step: "saw", finer: true, kind: "angle", optional: true },
  miterReads: { step: "saw", finer: true, kind: "choice", choices: ["from-square", "from-fence"] },
  bevelReads: { step: "saw", finer: true, kind: "choice", choices: ["from-vertical", "from-table"] },
  scaleStep: { step: "saw", finer: true, kind: "angle", optional: true },
  sawDepth: { step: "saw", finer: true, kind: "length", optional: true },
  crosscut: { step: "saw", finer: true, kind: "length", optional: true },
  gaugeReach: { step: "saw", finer: true, kind: "length", optional: true },
  acceptedGap: { step: "saw", finer: true, kind: "length", optional: true },
};
