import type { RackFieldWords } from "./field-words.js";

/** The rack, and what stands on the sheet, in English. */
export const englishRackFields: RackFieldWords = {
  frames: {
    label: "Frames to make",
    explain: "So many equal frames are cut from the rack together.",
    placeholder: "1",
  },
  keep: {
    label: "Offcuts worth keeping, from",
    explain:
      "An offcut is what is left of a stick. Longer ones than this are marked where the page shows how the sticks are cut up.",
    placeholder: "none are marked",
  },
  title: { label: "Heading", explain: "Printed above everything else.", placeholder: "sides and slope" },
  note: { label: "Remarks", explain: "Printed below the heading.", placeholder: "none" },
};
