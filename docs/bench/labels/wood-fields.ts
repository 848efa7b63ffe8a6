import { woodNames } from "miterwright/wood";
import type { WoodWords } from "./field-words.js";

/** Species by their names in the trade. */
function speciesNames(): Readonly<Record<string, string>> {
  return { "": "not said", ...Object.fromEntries(woodNames().map((name) => [name, name])) };
}

/** The wood and its year, what it costs, and how the frame hangs, in English. */
export const englishWoodFields: WoodWords = {
  species: {
    label: "The molding is of",
    explain: "With it the page knows what the frame weighs, and what a year does to its joints.",
    choices: /* @__PURE__ */ speciesNames(),
  },
  grain: {
    label: "The rings of growth run",
    explain: "Seen at the end of a stick, against its face. Wood moves most along them.",
    choices: {
      "flat-sawn": "along the face (flat-sawn)",
      "rift-sawn": "slanting (rift-sawn)",
      "quarter-sawn": "square to the face (quarter-sawn)",
    },
  },
  made: {
    label: "Moisture when it is made",
    explain: "The moisture of the wood in percent, as a moisture meter shows it.",
    placeholder: "8",
  },
  driest: {
    label: "At the driest",
    explain: "The moisture of the wood in percent at the end of a heated winter.",
    placeholder: "6",
  },
  dampest: {
    label: "At the dampest",
    explain: "The moisture of the wood in percent at the end of a damp summer.",
    placeholder: "12",
  },
  cost: { label: "Cost of the molding", explain: "In any money, for what it is counted by.", placeholder: "not said" },
  costPer: {
    label: "That is for a",
    explain: "A board foot is a board of a foot by a foot by an inch.",
    choices: {
      meter: "meter of length",
      foot: "foot of length",
      "board-foot": "board foot",
      "cubic-meter": "cubic meter",
    },
  },
  hangs: {
    label: "It hangs",
    explain: "On a wall, for where its hangers go and what they carry.",
    choices: { "": "not on a wall", wire: "by a wire over one hook", "two-hooks": "on two hooks" },
  },
  wireAngle: {
    label: "Angle of the wire",
    explain: "How far each half of the wire rises above level. A flat wire pulls harder.",
    placeholder: "30",
  },
  screwDepth: {
    label: "Depth of the hangers' screws",
    explain: "How deep they go into the wood, square to the back.",
    placeholder: "not said",
  },
  extraMass: {
    label: "Mass of what else hangs with it",
    explain: "In kilograms: what is in the frame and not listed as a layer.",
    placeholder: "0",
  },
};
