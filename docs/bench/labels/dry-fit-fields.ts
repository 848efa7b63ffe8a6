import type { DryFitFieldWords } from "./field-words.js";

/** What is seen when the pieces are put together without glue, in English. */
export const englishDryFitFields: DryFitFieldWords = {
  seenGap: {
    label: "Width of the gap",
    explain:
      "Even number of pieces: lay half of them, put together without glue, on a straightedge. Both ends touch it at one edge; enter twice the sum of the gaps under the two. Otherwise put all pieces together, all joints tight but the last, that one touching at one end, and measure how wide it gapes at the other. That holds if the other joints only slide; if they open too, the gap is as little as a third.",
  },
  open: {
    label: "The gap is open",
    explain: "Toward the picture or away from it.",
    choices: { outside: "outside", inside: "inside" },
  },
  shownMiter: {
    label: "The miter scale stood at",
    explain: "What it showed while these pieces were cut, as it reads.",
    placeholder: "the best mark",
  },
  shownBevel: {
    label: "The bevel scale stood at",
    explain: "What it showed while these pieces were cut, as it reads.",
    placeholder: "the best mark",
  },
  seenSlope: {
    label: "Slope of the sides, as they stand",
    explain: "With their joints tight, measured against the bench.",
    placeholder: "as the scales stood",
  },
  hold: {
    label: "What stays",
    explain:
      "A sloping frame can be closed by both angles, keeping its slope, or by one of them, letting the slope go.",
    choices: { slope: "the planned slope", bevel: "the bevel as it is set", miter: "the miter as it is set" },
  },
};
