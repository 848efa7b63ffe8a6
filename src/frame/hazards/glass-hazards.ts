import type { Hazard } from "../../core/hazard.js";
import type { ContentsLayer, FilledBrief } from "../brief/brief.js";
import type { FrameContents } from "../contents/contents-plan.js";
import type { FrameMaterials } from "../materials/frame-materials.js";
import { isArt, isPane } from "../contents/layer-names.js";
import { makeHazard } from "./make-hazard.js";

/** Glass that is wider between its farthest corners than this many times its thickness bends and breaks in the hands; common practice, no printed source. */
const THIN_GLASS: number = 400;

/** Art with nothing between it and a pane. */
function artOnGlass(layers: readonly ContentsLayer[]): Hazard[] {
  const touching = layers.filter((layer, index) => {
    const beside = [layers[index - 1], layers[index + 1]];
    return isArt(layer) && beside.some((other) => other !== undefined && isPane(other));
  });
  return touching.map(({ name }) => makeHazard("art-on-glass", "notice", { names: { layer: name } }));
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
  const hazards = [makeHazard("glass-handling", "warning", { quantities: mass === null ? {} : { mass: { mass } } })];
  if (seating?.possible === true && seating.bearsOn !== "ledge") {
    const { bearsOn, lap } = seating;
    hazards.push(
      makeHazard("pane-on-arris", "caution", {
        quantities: { angle: { slope: brief.slope }, length: { lap } },
        facts: { bearsOn },
        source: "geometry of the tilted rabbet",
      }),
    );
  }
  const thinnest = Math.min(...panes.map(({ thickness }) => thickness));
  if (panel.acrossCorners > THIN_GLASS * thinnest) {
    const length = { across: panel.acrossCorners, limit: THIN_GLASS * thinnest };
    hazards.push(makeHazard("large-pane", "warning", { quantities: { length } }));
  }
  return [...hazards, ...artOnGlass(brief.contents)];
}
