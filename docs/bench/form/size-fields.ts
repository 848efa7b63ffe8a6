import type { SizeField, PlacedField } from "../fields.js";
import { answer } from "./answer.js";

/** What goes in, the shape, and the units. */
export const SIZE_FIELDS: Readonly<Record<SizeField, PlacedField>> = {
  unit: {
    step: "units",
    label: "Lengths are in",
    explain:
      "A number without a unit is taken in this one. You can always type another: 5 7/16 in, 1' 2 1/2\", 90.5 mm.",
    kind: "choice",
    choices: [
      answer("mm", "millimeters"),
      answer("cm", "centimeters"),
      answer("in", "inches"),
      answer("ft", "feet and inches"),
    ],
  },
  fineness: {
    step: "units",
    label: "and are written to",
    explain: "Only what is printed is rounded. The page computes with the exact lengths.",
    kind: "choice",
    choices: [
      answer("usual", "0.5 mm or 1/32 in"),
      answer("fine", "0.1 mm or 1/64 in"),
      answer("coarse", "1 mm or 1/16 in"),
    ],
  },
  holds: {
    step: "inside",
    label: "The frame's size follows from",
    explain:
      "The opening is the space inside the frame where the contents lie. It is made round a rectangle, or round the largest piece of this shape that a sheet gives, or it is what you say.",
    kind: "choice",
    choices: [
      answer("contains", "a rectangle that must fit in"),
      answer("cutFrom", "a sheet that the contents are cut from"),
      answer("measure", "a measure of the opening"),
    ],
  },
  width: {
    step: "inside",
    label: "Width",
    explain: "Of the rectangle or sheet, from left to right as it will hang.",
    kind: "length",
    when: { holds: ["contains", "cutFrom"] },
  },
  height: {
    step: "inside",
    label: "Height",
    explain: "Of the rectangle or sheet, from bottom to top.",
    kind: "length",
    when: { holds: ["contains", "cutFrom"] },
  },
  measure: {
    step: "inside",
    label: "Measure that is known",
    explain:
      "A side runs from corner to corner. Across flats is the narrowest the shape can be, across corners the widest distance between two corners. The apothem goes from the center to the middle of a side, the circumradius from the center to a corner.",
    kind: "choice",
    choices: [
      answer("side", "one side"),
      answer("acrossFlats", "across flats"),
      answer("acrossCorners", "across corners"),
      answer("apothem", "apothem"),
      answer("circumradius", "circumradius"),
      answer("perimeter", "all sides together"),
    ],
    when: { holds: ["measure"] },
  },
  size: {
    step: "inside",
    label: "Its length",
    explain: "The measure chosen above.",
    kind: "length",
    when: { holds: ["measure"] },
  },
  at: {
    step: "inside",
    label: "Measured",
    explain:
      "Where on the molding the measure is taken. Where the contents touch is the wall of the rabbet; without a rabbet it is the innermost edge.",
    kind: "choice",
    choices: [
      answer("opening", "where the contents touch"),
      answer("innermost", "at the innermost edge, what is seen"),
      answer("outermost", "at the outermost edge, the whole frame"),
    ],
    when: { holds: ["measure"] },
  },
  allowance: {
    step: "inside",
    finer: true,
    label: "Allowance",
    explain: "Added once to the width and once to the height, for a picture that is not quite square.",
    kind: "room",
    optional: true,
    placeholder: "none",
    when: { holds: ["contains"] },
  },
  clearance: {
    step: "inside",
    finer: true,
    label: "Clearance",
    explain: "Kept free between the contents and the rabbet at every side, so that wood and glass can move.",
    kind: "room",
    optional: true,
    placeholder: "none",
  },
  fastenerRoom: {
    step: "inside",
    finer: true,
    label: "Room for fasteners",
    explain: "Kept free behind the contents, for the points or clips that hold them.",
    kind: "room",
    optional: true,
    placeholder: "3 mm (1/8 in)",
  },
  sides: {
    step: "shape",
    label: "Number of sides",
    explain: "3 or more: 4 is a square, 6 a hexagon, 8 an octagon.",
    kind: "count",
  },
  pose: {
    step: "shape",
    label: "It hangs or stands",
    explain: "It decides which way up the rectangle lies in the shape.",
    kind: "choice",
    choices: [answer("side-down", "on a side"), answer("corner-down", "on a corner")],
  },
};
