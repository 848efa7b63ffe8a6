import type { SizeWords } from "./field-words.js";

/** What goes in, the shape, and the units, in English. */
export const englishSizeFields: SizeWords = {
  unit: {
    label: "Lengths are in",
    explain:
      "A number without a unit is taken in this one. You can always type another: 5 7/16 in, 1' 2 1/2\", 90.5 mm.",
    choices: { mm: "millimeters", cm: "centimeters", in: "inches", ft: "feet and inches" },
  },
  fineness: {
    label: "and are written to",
    explain: "Only what is printed is rounded. The page computes with the exact lengths.",
    choices: { usual: "0.5 mm or 1/32 in", fine: "0.1 mm or 1/64 in", coarse: "1 mm or 1/16 in" },
  },
  holds: {
    label: "The frame's size follows from",
    explain:
      "The opening is the space inside the frame where the contents lie. It is made round a rectangle, or round the largest piece of this shape that a sheet gives, or it is what you say.",
    choices: {
      contains: "a rectangle that must fit in",
      cutFrom: "a sheet that the contents are cut from",
      measure: "a measure of the opening",
    },
  },
  width: { label: "Width", explain: "Of the rectangle or sheet, from left to right as it will hang." },
  height: { label: "Height", explain: "Of the rectangle or sheet, from bottom to top." },
  measure: {
    label: "Measure that is known",
    explain:
      "A side runs from corner to corner. Across flats is the narrowest the shape can be, across corners the widest distance between two corners. The apothem goes from the center to the middle of a side, the circumradius from the center to a corner.",
    choices: {
      side: "one side",
      acrossFlats: "across flats",
      acrossCorners: "across corners",
      apothem: "apothem",
      circumradius: "circumradius",
      perimeter: "all sides together",
    },
  },
  size: { label: "Its length", explain: "The measure chosen above." },
  at: {
    label: "Measured",
    explain:
      "Where on the molding the measure is taken. Where the contents touch is the wall of the rabbet; without a rabbet it is the innermost edge.",
    choices: {
      opening: "where the contents touch",
      innermost: "at the innermost edge, what is seen",
      outermost: "at the outermost edge, the whole frame",
    },
  },
  allowance: {
    label: "Allowance",
    explain: "Added once to the width and once to the height, for a picture that is not quite square.",
    placeholder: "none",
  },
  clearance: {
    label: "Clearance",
    explain: "Kept free between the contents and the rabbet at every side, so that wood and glass can move.",
    placeholder: "none",
  },
  fastenerRoom: {
    label: "Room for fasteners",
    explain: "Kept free behind the contents, for the points or clips that hold them.",
    placeholder: "3 mm (1/8 in)",
  },
  sides: { label: "Number of sides", explain: "3 or more: 4 is a square, 6 a hexagon, 8 an octagon." },
  pose: {
    label: "It hangs or stands",
    explain: "It decides which way up the rectangle lies in the shape.",
    choices: { "side-down": "on a side", "corner-down": "on a corner" },
  },
};
