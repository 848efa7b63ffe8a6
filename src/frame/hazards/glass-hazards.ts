import type { Hazard } from "../../core/hazard.js";
import type { ContentsLayer, FilledBrief } from "../brief.js";
import type { FrameContents } from "../contents-plan.js";
import type { FrameMaterials } from "../frame-materials.js";
import { isArt, isPane } from "../layer-names.js";
import { makeHazard } from "./make-hazard.js";

/** Glass that is wider between its farthest corners than this many times its thickness bends and breaks in the hands; common practice, no printed source. */
const THIN_GLASS: number = 400;

/** What a level pane rests on in a sloping rabbet. */
const BEARINGS: Readonly<Record<"sight-edge" | "corner", string>> = {
  "sight-edge":
    "At this slope the pane bears on the sight edge at the back alone, a line of wood against glass: take that edge off or bed the pane on a strip, and press it nowhere else.",
  corner:
    "At this slope the pane bears on the ledge with the edge of the glass alone: bed it on a strip there, and press it nowhere else.",
};

/** Art with nothing between it and a pane. */
function artOnGlass(layers: readonly ContentsLayer[]): Hazard[] {
  const touching = layers.filter((layer, index) => {
    const beside = [layers[index - 1], layers[index + 1]];
    return isArt(layer) && beside.some((other) => other !== undefined && isPane(other));
  });
  return touching.map(({ name }) => {
    const sentence = `The layer "${name}" lies against glass: damp gathers between them, and what sticks to the glass is spoiled. Keep them apart with a mat or a spacer.`;
    return makeHazard("art-on-glass", "notice", sentence);
  });
}

/**
 * The hazards of glass.
 *
 * @param brief - the filled brief
 * @param contents - what goes into the frame
 * @param materials - what it weighs
 * @returns the hazards; none without glass
 */
export function glassHazards(brief: FilledBrief, contents: FrameContents, materials: FrameMaterials): Hazard[] {
  const { seating, panel } = contents;
  const panes = brief.contents.flatMap((one, layer) => (isPane(one) ? [{ thickness: one.thickness, layer }] : []));
  if (panes.length === 0 || panel === null) return [];
  const masses = panes.map(({ layer }) => materials.parts.find((part) => part.layer === layer)?.mass ?? null);
  // A pane that is known by its name alone has no known mass.
  const mass = masses.some((one) => one === null) ? null : masses.reduce<number>((sum, one) => sum + one!, 0);
  const handling =
    "Glass cuts: wear gloves that it does not cut through and eye protection, and take its edges off. Where people can fall against it or pass under it, local codes ask for safety glazing: tempered or laminated glass, or acrylic.";
  const hazards = [makeHazard("glass-handling", "warning", handling, mass === null ? {} : { mass: { mass } })];
  if (seating?.possible === true && seating.bearsOn !== "ledge") {
    const numbers = { angle: { slope: brief.slope }, length: { lap: seating.lap } };
    hazards.push(
      makeHazard("pane-on-arris", "caution", BEARINGS[seating.bearsOn], numbers, "geometry of the tilted rabbet"),
    );
  }
  const thinnest = Math.min(...panes.map(({ thickness }) => thickness));
  if (panel.acrossCorners > THIN_GLASS * thinnest) {
    const sentence =
      "The pane is large for its thickness and bends until it breaks: carry it upright, take thicker glass or acrylic, and ask the glazier.";
    const limit = THIN_GLASS * thinnest;
    hazards.push(makeHazard("large-pane", "warning", sentence, { length: { across: panel.acrossCorners, limit } }));
  }
  return [...hazards, ...artOnGlass(brief.contents)];
}
