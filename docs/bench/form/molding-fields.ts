import type { MoldingField, PlacedField } from "../fields.js";
import { answer } from "./answer.js";

/** The molding and its slope. */
export const MOLDING_FIELDS: Readonly<Record<MoldingField, PlacedField>> = {
  known: {
    step: "molding",
    label: "The molding is known by",
    explain:
      "With its dimensions everything can be drawn. Two measures, taken level while a stick stands at its slope, are enough for lengths and angles.",
    kind: "choice",
    choices: [answer("dimensions", "its dimensions"), answer("level", "level measures")],
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
    choices: [answer("square", "square, for any slope"), answer("milled", "milled for the slope of this frame")],
    when: { known: ["dimensions"] },
  },
  levelWidth: {
    step: "molding",
    label: "Width taken level",
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
    explain: "Measured straight up on the propped stick. What goes in is held against it.",
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
    saidOtherwise: {
      by: "slopeAs",
      words: {
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
  },
  slopeAs: {
    step: "slope",
    finer: true,
    label: "The angle is given as",
    explain:
      "The slope is measured from the bench. Off plumb counts from upright. The spring angle lies between the molding's back and a wall.",
    kind: "choice",
    choices: [
      answer("slope", "slope from the bench"),
      answer("plumb", "degrees off plumb"),
      answer("spring", "spring angle"),
    ],
  },
};
