import type { Caution } from "../../core/caution.js";
import type { FilledBrief } from "../brief.js";
import type { FrameContents } from "../contents-plan.js";
import type { FrameMaterials } from "../frame-materials.js";
import { makeCaution } from "./make-caution.js";

/** Glass that is wider between its farthest corners than this many times its thickness bends and breaks in the hands; common practice, no printed source. */
const THIN_GLASS: number = 400;

/** What a level pane rests on in a sloping rabbet. */
const BEARINGS: Readonly<Record<"sight-edge" | "corner", string>> = {
  "sight-edge":
    "At this slope the pane bears on the sight edge's back arris alone, a line of wood against glass: take the arris off or bed the pane on a strip, and press it nowhere else.",
  corner:
    "At this slope the pane bears with its outer arris alone, on the ledge: bed it on a strip there, and press it nowhere else.",
};

/**
 * The cautions of glass.
 *
 * @param brief - the filled brief
 * @param contents - what goes into the frame
 * @param materials - what it weighs
 * @returns the cautions; none without glass
 */
export function glassCautions(brief: FilledBrief, contents: FrameContents, materials: FrameMaterials): Caution[] {
  const { stack, fit, panel } = contents;
  const panes = (stack?.layers ?? []).flatMap(({ kind, thickness }, layer) =>
    kind === "glass" ? [{ thickness, layer }] : [],
  );
  if (panes.length === 0 || panel === null) return [];
  const mass = panes.reduce(
    (sum, { layer }) => sum + (materials.parts.find((part) => part.layer === layer)?.mass ?? 0),
    0,
  );
  const handling =
    "Glass cuts: wear gloves that it does not cut through and eye protection, and take its edges off. Where people can fall against it or pass under it, local codes ask for safety glazing: tempered or laminated glass, or acrylic.";
  const cautions = [makeCaution("glass", "care", handling, { mass: { mass } })];
  if (fit?.possible === true && fit.bearsOn !== "ledge") {
    const numbers = { angle: { slope: brief.slope }, length: { lap: fit.lap } };
    cautions.push(makeCaution("glass", "care", BEARINGS[fit.bearsOn], numbers, "geometry of the tilted rabbet"));
  }
  const thinnest = Math.min(...panes.map(({ thickness }) => thickness));
  if (panel.acrossCorners > THIN_GLASS * thinnest) {
    const sentence =
      "The pane is large for its thickness and bends until it breaks: carry it upright, take thicker glass or acrylic, and ask the glazier.";
    const limit = THIN_GLASS * thinnest;
    cautions.push(makeCaution("glass", "care", sentence, { length: { across: panel.acrossCorners, limit } }));
  }
  return cautions;
}
