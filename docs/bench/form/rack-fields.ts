import type { RackField, PlacedField } from "../fields.js";

/** The rack, and what stands on the sheet. */
export const RACK_FIELDS: Readonly<Record<RackField, PlacedField>> = {
  frames: { step: "rack", finer: true, kind: "count", optional: true },
  keep: { step: "rack", finer: true, kind: "room", optional: true },
  title: { step: "paper", kind: "text", optional: true },
  note: { step: "paper", kind: "lines", optional: true },
};
