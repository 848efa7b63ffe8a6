import type { RackField, PlacedField } from "../fields.js";

/** The rack, and what stands on the sheet. */
export const RACK_FIELDS: Readonly<Record<RackField, PlacedField>> = {
  frames: {
    step: "rack",
    finer: true,
    label: "Frames to make",
    explain: "So many equal frames are cut from the rack together.",
    kind: "count",
    optional: true,
    placeholder: "1",
  },
  keep: {
    step: "rack",
    finer: true,
    label: "Offcuts worth keeping, from",
    explain:
      "An offcut is what is left of a stick. Longer ones than this are marked where the page shows how the sticks are cut up.",
    kind: "room",
    optional: true,
    placeholder: "none are marked",
  },
  title: {
    step: "paper",
    label: "Heading",
    explain: "Printed above everything else.",
    kind: "text",
    optional: true,
    placeholder: "sides and slope",
  },
  note: {
    step: "paper",
    label: "Remarks",
    explain: "Printed below the heading.",
    kind: "lines",
    optional: true,
    placeholder: "none",
  },
};
