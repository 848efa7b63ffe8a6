import type { Field, FieldName, ListName, PlacedField, Step } from "./fields.js";

/** The steps of the form: a question each, and a hint where one helps. */
export const STEPS: readonly { readonly step: Step; readonly question: string; readonly hint: string }[] = [
  {
    step: "inside",
    question: "What goes in?",
    hint: "The picture, mirror or tray bottom that decides how large the frame has to be.",
  },
  { step: "shape", question: "Which shape?", hint: "A frame of equal sides and equal corners." },
  {
    step: "molding",
    question: "Which molding?",
    hint: "The strip of wood that the sides are cut from, looked at from its end.",
  },
  {
    step: "slope",
    question: "How steep?",
    hint: "A picture frame lies flat. A splayed frame, such as a tray, has sides that slope.",
  },
  { step: "saw", question: "Which saw?", hint: "Left and right are yours as you stand in front of it." },
  {
    step: "rack",
    question: "What is in the rack?",
    hint: "The lengths of molding that you have or can buy. Leave it empty and only the need is computed.",
  },
  { step: "paper", question: "What stands on the sheet?", hint: "The heading of the shop sheet that you print." },
];

const yes = (value: string, label: string): { value: string; label: string } => ({ value, label });

/** Every field that stands alone, in the order of the form. */
export const FIELDS: Readonly<Record<FieldName, PlacedField>> = {
  unit: {
    step: "units",
    label: "Lengths are in",
    explain:
      "A number without a unit is taken in this one. You can always type another: 5 7/16 in, 1' 2 1/2\", 90.5 mm.",
    kind: "choice",
    choices: [yes("mm", "millimeters"), yes("cm", "centimeters"), yes("in", "inches"), yes("ft", "feet and inches")],
  },
  fineness: {
    step: "units",
    label: "and are written to",
    explain: "Only what is printed is rounded. The page computes with the exact lengths.",
    kind: "choice",
    choices: [yes("usual", "0.5 mm or 1/32 in"), yes("fine", "0.1 mm or 1/64 in"), yes("coarse", "1 mm or 1/16 in")],
  },

  holds: {
    step: "inside",
    label: "The frame's size follows from",
    explain:
      "The opening is the space inside the frame where the contents lie. It is made round a rectangle, or round the largest piece of this shape that a sheet gives, or it is what you say.",
    kind: "choice",
    choices: [
      yes("contains", "a rectangle that must fit in"),
      yes("cutFrom", "a sheet that the contents are cut from"),
      yes("measure", "a measure of the opening"),
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
      yes("side", "one side"),
      yes("acrossFlats", "across flats"),
      yes("acrossCorners", "across corners"),
      yes("apothem", "apothem"),
      yes("circumradius", "circumradius"),
      yes("perimeter", "all sides together"),
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
      yes("contents", "where the contents touch"),
      yes("innermost", "at the innermost edge, what is seen"),
      yes("outermost", "at the outermost edge, the whole frame"),
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
    choices: [yes("side-down", "on a side"), yes("corner-down", "on a corner")],
  },

  known: {
    step: "molding",
    label: "The molding is known by",
    explain:
      "With its dimensions everything can be drawn. Two measures, taken level while a stick stands at its slope, are enough for lengths and angles.",
    kind: "choice",
    choices: [yes("dimensions", "its dimensions"), yes("level", "level measures")],
  },
  moldingWidth: {
    step: "molding",
    label: "Width of the molding",
    explain: "Across the flat stick, from the sight edge (next to the picture) to the outer edge.",
    kind: "length",
    when: { known: ["dimensions"] },
  },
  thickness: {
    step: "molding",
    label: "Thickness of the molding",
    explain: "From the back to the face, the side that shows.",
    kind: "length",
    when: { known: ["dimensions"] },
  },
  rabbetWidth: {
    step: "molding",
    label: "Width of the rabbet",
    explain:
      "The rabbet is the step in the back that holds the picture. Its width is how far the lip laps over the picture.",
    kind: "room",
    optional: true,
    placeholder: "no rabbet",
    when: { known: ["dimensions"] },
  },
  rabbetDepth: {
    step: "molding",
    label: "Depth of the rabbet",
    explain: "From the back to the ledge that the picture rests on.",
    kind: "room",
    optional: true,
    placeholder: "no rabbet",
    when: { known: ["dimensions"] },
  },
  milled: {
    step: "molding",
    finer: true,
    label: "The stick is",
    explain:
      "A molding can be milled for one slope, so that in the finished frame its outer edge and the rabbet's wall stand plumb. Its width is then taken level.",
    kind: "choice",
    choices: [yes("square", "square, for any slope"), yes("milled", "milled for the slope of this frame")],
    when: { known: ["dimensions"] },
  },
  levelWidth: {
    step: "molding",
    label: "Level width",
    explain:
      "Prop a stick at its slope and measure level, from the wall of the rabbet (without one: from the inner edge) to the outermost point.",
    kind: "length",
    when: { known: ["level"] },
  },
  lap: {
    step: "molding",
    label: "Lap",
    explain: "How far the lip laps over the picture, measured level on the propped stick.",
    kind: "room",
    optional: true,
    placeholder: "no lip",
    when: { known: ["level"] },
  },
  depth: {
    step: "molding",
    finer: true,
    label: "Depth of the rabbet, plumb",
    explain: "Measured straight up on the propped stick. It is only written on the sheet.",
    kind: "length",
    optional: true,
    placeholder: "not known",
    when: { known: ["level"] },
  },

  slope: {
    step: "slope",
    label: "Angle of the sides",
    explain:
      "0 lies flat, 90 stands upright like a box. Above 0 the outer edge is the higher, as in a tray; below 0 the sight edge.",
    kind: "angle",
    optional: true,
    placeholder: "0, it lies flat",
  },
  slopeAs: {
    step: "slope",
    finer: true,
    label: "The angle is given as",
    explain:
      "The slope is measured from the bench. Off plumb counts from upright. The spring angle lies between the molding's back and a wall.",
    kind: "choice",
    choices: [yes("slope", "slope from the bench"), yes("plumb", "degrees off plumb"), yes("spring", "spring angle")],
  },

  saw: {
    step: "saw",
    label: "The saw is",
    explain:
      "A table saw's gauge pushes the stick from your side, and its blade leans one way. A miter saw's fence is behind the stick, and its blade leans both ways.",
    kind: "choice",
    choices: [yes("table", "a table saw with a miter gauge"), yes("miter", "a miter saw")],
  },
  kerf: {
    step: "saw",
    label: "Kerf",
    explain: "The width of the cut that the blade makes.",
    kind: "room",
    optional: true,
    placeholder: "1/8 in (3.2 mm)",
  },
  lay: {
    step: "saw",
    finer: true,
    label: "The stick lies",
    explain:
      "Every way to lay the stick on the saw needs its own miter and bevel. Propped, it stands in a cradle (a wedge) as it will in the frame and needs no bevel.",
    kind: "choice",
    choices: [
      yes("", "in the first way that works"),
      yes("flat", "flat on its back"),
      yes("propped", "propped at its slope"),
      yes("inner-down", "standing on its sight edge"),
      yes("outer-down", "standing on its outer edge"),
      yes("face-down", "face down"),
    ],
  },
  rough: {
    step: "saw",
    finer: true,
    label: "Pieces are parted",
    explain: "A rough is a piece cut a little too long, whose ends are finished later.",
    kind: "choice",
    choices: [
      yes("none", "with their finished cuts, straight from the stick"),
      yes("square", "as roughs, cut square"),
      yes("mitered", "as roughs, one end finished"),
    ],
  },
  roughAllowance: {
    step: "saw",
    finer: true,
    label: "Spare length of a rough",
    explain: "At each end that is cut again.",
    kind: "length",
    when: { rough: ["square", "mitered"] },
  },
  miterReach: {
    step: "saw",
    finer: true,
    label: "Largest miter",
    explain: "How far from a square cut the gauge or turntable goes, to either hand.",
    kind: "angle",
    optional: true,
    placeholder: "60, a miter saw 50",
  },
  bevelLeft: {
    step: "saw",
    finer: true,
    label: "Largest bevel to the left",
    explain: "How far the blade's top leans to the left, from upright.",
    kind: "angle",
    optional: true,
    placeholder: "45",
  },
  bevelRight: {
    step: "saw",
    finer: true,
    label: "Largest bevel to the right",
    explain: "How far the blade's top leans to the right, from upright.",
    kind: "angle",
    optional: true,
    placeholder: "0, a miter saw 45",
  },
  miterReads: {
    step: "saw",
    finer: true,
    label: "At a square cut the miter scale shows",
    explain: "Some gauges are marked from square, others with the angle between blade and fence.",
    kind: "choice",
    choices: [yes("from-square", "0"), yes("from-blade", "90")],
  },
  bevelReads: {
    step: "saw",
    finer: true,
    label: "With the blade upright the bevel scale shows",
    explain: "Most are marked from upright, some with the angle between blade and table.",
    kind: "choice",
    choices: [yes("from-vertical", "0"), yes("from-table", "90")],
  },
  scaleStep: {
    step: "saw",
    finer: true,
    label: "Smallest step of the scales",
    explain: "What you can set by eye, in degrees.",
    kind: "angle",
    optional: true,
    placeholder: "0.5",
  },
  sawDepth: {
    step: "saw",
    finer: true,
    label: "Greatest height the blade cuts",
    explain: "With the blade upright. Ways to lay the stick that stand higher are ruled out.",
    kind: "length",
    optional: true,
    placeholder: "not checked",
  },
  crosscut: {
    step: "saw",
    finer: true,
    label: "Longest line of cut",
    explain: "Across the table, in one pass.",
    kind: "length",
    optional: true,
    placeholder: "not checked",
  },

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
    explain: "An offcut is what is left of a stick. Longer ones than this are marked in the cut plan.",
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

  gap: {
    step: "dry-fit",
    label: "Width of the gap",
    explain:
      "Put all pieces together without glue, all joints tight but the last, that one touching at one end. Measure how wide it gapes at the other.",
    kind: "length",
    optional: true,
  },
  open: {
    step: "dry-fit",
    label: "The gap is open",
    explain: "Toward the picture or away from it.",
    kind: "choice",
    choices: [yes("outside", "outside"), yes("inside", "inside")],
  },
  seenSlope: {
    step: "dry-fit",
    label: "Slope of the sides, as they stand",
    explain: "With their joints tight, measured against the bench.",
    kind: "angle",
    optional: true,
    placeholder: "as planned",
  },
  hold: {
    step: "dry-fit",
    label: "What stays",
    explain:
      "A sloping frame can be closed by both angles, keeping its slope, or by one of them, letting the slope go.",
    kind: "choice",
    choices: [
      yes("slope", "the planned slope"),
      yes("bevel", "the bevel as it is set"),
      yes("miter", "the miter as it is set"),
    ],
  },
};

/** The columns of the lists. */
export const LISTS: Readonly<Record<ListName, Readonly<Record<string, Field>>>> = {
  layers: {
    name: {
      label: "Layer",
      explain: "What lies in the rabbet, from the front: glass, mount, picture, backing.",
      kind: "text",
      optional: true,
      placeholder: "glass",
    },
    thickness: { label: "Thickness", explain: "Of this layer.", kind: "length", optional: true },
  },
  sticks: {
    length: {
      label: "Length",
      explain: "Of a stick, which is molding as it is bought.",
      kind: "length",
      optional: true,
    },
    count: {
      label: "How many",
      explain: "Left empty: as many as it takes.",
      kind: "count",
      optional: true,
      placeholder: "any",
    },
    cost: {
      label: "Price",
      explain: "Of one stick, in any money. Left empty: its length, so that the least molding is used.",
      kind: "number",
      optional: true,
      placeholder: "length",
    },
    name: {
      label: "Name",
      explain: "What to call it on the sheet.",
      kind: "text",
      optional: true,
      placeholder: "stick",
    },
  },
};
