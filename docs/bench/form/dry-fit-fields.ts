import type { DryFitField, PlacedField } from "../fields.js";
import { answer } from "./answer.js";

/** What is seen when the pieces are put together without glue. */
export const DRY_FIT_FIELDS: Readonly<Record<DryFitField, PlacedField>> = {
  seenGap: {
    step: "dry-fit",
    label: "Width of the gap",
    explain:
      "Even number of pieces: lay half of them, put together without glue, on a straightedge. Both ends touch it at one edge; enter twice the sum of the gaps under the two. Otherwise put all pieces together, all joints tight but the last, that one touching at one end, and measure how wide it gapes at the other. That holds if the other joints only slide; if they open too, the gap is as little as a third.",
    kind: "room",
    optional: true,
  },
  open: {
    step: "dry-fit",
    label: "The gap is open",
    explain: "Toward the picture or away from it.",
    kind: "choice",
    choices: [answer("outside", "outside"), answer("inside", "inside")],
  },
  shownMiter: {
    step: "dry-fit",
    label: "The miter scale stood at",
    explain: "What it showed while these pieces were cut, as it reads.",
    kind: "angle",
    optional: true,
    placeholder: "the best mark",
  },
  shownBevel: {
    step: "dry-fit",
    label: "The bevel scale stood at",
    explain: "What it showed while these pieces were cut, as it reads.",
    kind: "angle",
    optional: true,
    placeholder: "the best mark",
  },
  seenSlope: {
    step: "dry-fit",
    label: "Slope of the sides, as they stand",
    explain: "With their joints tight, measured against the bench.",
    kind: "angle",
    optional: true,
    placeholder: "as the scales stood",
  },
  hold: {
    step: "dry-fit",
    label: "What stays",
    explain:
      "A sloping frame can be closed by both angles, keeping its slope, or by one of them, letting the slope go.",
    kind: "choice",
    choices: [
      answer("slope", "the planned slope"),
      answer("bevel", "the bevel as it is set"),
      answer("miter", "the miter as it is set"),
    ],
  },
};
