import type { SawFieldWords } from "./field-words.js";

/** The saw and how it is used, in English. */
export const englishSawFields: SawFieldWords = {
  saw: {
    label: "The saw is",
    explain:
      "A table saw's gauge pushes the stick from your side, and its blade leans one way. A miter saw's fence is behind the stick, and its blade leans both ways.",
    choices: { table: "a table saw with a miter gauge", miter: "a miter saw" },
  },
  kerf: { label: "Kerf", explain: "The width of the cut that the blade makes.", placeholder: "1/8 in (3.2 mm)" },
  shows: {
    label: "The side that shows is",
    explain:
      "It is best kept up at the saw, since the teeth tear the wood where they leave it, below and at the fence.",
    choices: { face: "the face, as of a picture frame", back: "the back, as of a box or a planter" },
  },
  lay: {
    label: "The stick lies",
    explain:
      "Every way to lay the stick on the saw needs its own miter and bevel. Propped, it stands in a cradle (a wedge) as it will in the frame and needs no bevel.",
    choices: {
      "": "in the way that is steadiest and safest",
      flat: "flat on its back",
      propped: "propped at its slope",
      "sight-edge-down": "standing on its sight edge",
      "outer-edge-down": "standing on its outer edge",
      "face-down": "face down",
    },
  },
  rough: {
    label: "Pieces are parted",
    explain: "A blank is parted from the stick a little too long; its ends are finished later.",
    choices: {
      none: "with their finished cuts, straight from the stick",
      square: "as blanks, cut square",
      mitered: "as blanks, one end finished",
    },
  },
  roughAllowance: { label: "Spare length of a blank", explain: "At each end that is cut again." },
  miterReach: {
    label: "Largest miter",
    explain: "How far from a square cut the gauge or turntable goes, to either hand.",
    placeholder: "60, a miter saw 50",
  },
  bevelLeft: {
    label: "Largest bevel to the left",
    explain: "How far the blade's top leans to the left, from upright.",
    placeholder: "45",
  },
  bevelRight: {
    label: "Largest bevel to the right",
    explain: "How far the blade's top leans to the right, from upright.",
    placeholder: "0, a miter saw 45",
  },
  miterReads: {
    label: "At a square cut the miter scale shows",
    explain: "Some gauges are marked from square, others with the angle between blade and fence.",
    choices: { "from-square": "0", "from-fence": "90" },
  },
  bevelReads: {
    label: "With the blade upright the bevel scale shows",
    explain: "Most are marked from upright, some with the angle between blade and table.",
    choices: { "from-vertical": "0", "from-table": "90" },
  },
  scaleStep: {
    label: "Smallest step of the scales",
    explain: "What you can set by eye, in degrees.",
    placeholder: "0.5",
  },
  sawDepth: {
    label: "Greatest height the blade cuts",
    explain:
      "With the blade upright. Ways to lay the stick that stand higher are ruled out. Where it is not given, those are marked that usual saws do not cut.",
    placeholder: "75 mm (3 in) is usual",
  },
  crosscut: { label: "Longest line of cut", explain: "Across the table, in one pass.", placeholder: "not checked" },
  gaugeReach: {
    label: "Deepest panel at the gauge",
    explain:
      "From the gauge's fence, drawn back as far as the table still guides it, to the front of the blade. A deeper panel needs another way to be cut.",
    placeholder: "300 mm (12 in)",
  },
  acceptedGap: {
    label: "Gap that you accept",
    explain: "How far the last joint may stand open at one end. Every tolerance in the plan follows from it.",
    placeholder: "0.25 mm (0.01 in)",
  },
};
