import type { DryFitField, PlacedField } from "../fields.js";

/** What is seen when the pieces are put together without glue. */
export const DRY_FIT_FIELDS: Readonly<Record<DryFitField, PlacedField>> = {
  seenGap: { step: "dry-fit", kind: "room", optional: true },
  open: { step: "dry-fit", kind: "choice", choices: ["outside", "inside"] },
  shownMiter: { step: "dry-fit", kind: "angle", optional: true },
  shownBevel: { step: "dry-fit", kind: "angle", optional: true },
  seenSlope: { step: "dry-fit", kind: "angle", optional: true },
  hold: { step: "dry-fit", kind: "choice", choices: ["slope", "bevel", "miter"] },
};
