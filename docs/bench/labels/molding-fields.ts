import type { MoldingWords } from "./field-words.js";

/** The molding and its slope, in English. */
export const englishMoldingFields: MoldingWords = {
  known: {
    label: "The molding is known by",
    explain:
      "With its dimensions everything can be drawn. Two measures, taken level while a stick stands at its slope, are enough for lengths and angles.",
    choices: { dimensions: "its dimensions", level: "level measures" },
  },
  moldingWidth: {
    label: "Width of the molding",
    explain: "Across the flat stick, from the sight edge (next to the picture) to the outer edge.",
  },
  thickness: { label: "Thickness of the molding", explain: "From the back to the face, the side that shows." },
  rabbetWidth: {
    label: "Width of the rabbet",
    explain:
      "The rabbet is the step in the back that holds the picture. Its width is how far the lip laps over the picture.",
    placeholder: "no rabbet",
  },
  rabbetDepth: {
    label: "Depth of the rabbet",
    explain: "From the back to the ledge that the picture rests on.",
    placeholder: "no rabbet",
  },
  milled: {
    label: "The stick is",
    explain:
      "A molding can be milled for one slope, so that in the finished frame its outer edge and the rabbet's wall stand plumb. Its width is then taken level.",
    choices: { square: "square, for any slope", milled: "milled for the slope of this frame" },
  },
  levelWidth: {
    label: "Width taken level",
    explain:
      "Prop a stick at its slope and measure level, from the wall of the rabbet (without one: from the inner edge) to the outermost point.",
  },
  lap: {
    label: "Lap",
    explain: "How far the lip laps over the picture, measured level on the propped stick.",
    placeholder: "no lip",
  },
  depth: {
    label: "Depth of the rabbet, plumb",
    explain: "Measured straight up on the propped stick. What goes in is held against it.",
    placeholder: "not known",
  },
  slope: {
    label: "Angle of the sides",
    explain:
      "0 lies flat, 90 stands upright like a box. Above 0 the outer edge is the higher, as in a tray; below 0 the sight edge.",
    placeholder: "0, it lies flat",
    otherwise: {
      plumb: {
        explain:
          "Degrees off plumb: 0 stands upright like a box, 90 lies flat. In between the sides lean outward at their top, as in a tray.",
        placeholder: "90, it lies flat",
      },
      spring: {
        explain:
          "The spring angle, between the molding's back and a wall: at 0 the back lies against the wall, at 90 the frame lies flat.",
        placeholder: "90, it lies flat",
      },
    },
  },
  slopeAs: {
    label: "The angle is given as",
    explain:
      "The slope is measured from the bench. Off plumb counts from upright. The spring angle lies between the molding's back and a wall.",
    choices: { slope: "slope from the bench", plumb: "degrees off plumb", spring: "spring angle" },
  },
};
