import type { Hazard } from "../../core/hazard.js";
import type { FilledBrief, LayerMaterial } from "../brief/brief.js";
import { isPane } from "../contents/layer-names.js";
import type { LayerRoom } from "../contents/contents-room.js";
import type { FrameMovement } from "../materials/frame-movement.js";
import type { RoundLength } from "./round-length.js";
import { ruleLength } from "./common-practice.js";
import { makeHazard } from "./make-hazard.js";

/** Where the movement of a wood of the table comes from. */
const HANDBOOK: string =
  "Forest Products Laboratory, Wood Handbook, FPL-GTR-190, tables 4-3 (p. 4-6) and 13-5 (p. 13-16)";
/** Where a miter's movement is described. */
const NOYES: string = "W. Noyes, Handwork in Wood, fig. 289";
/** Where figures come from that the brief gives. */
const OWN_FIGURES: string = "the brief's own figures";

function seasonGap({ inside, outside, acceptedGap, made }: FrameMovement, { species }: FilledBrief): Hazard[] {
  if (!(Math.max(inside, outside) > acceptedGap)) return [];
  const quantities = { length: { inside, outside, limit: acceptedGap }, percent: { made } };
  const source = `${typeof species === "string" ? HANDBOOK : OWN_FIGURES}; ${NOYES}`;
  return [makeHazard("season-gap", "notice", { quantities, source })];
}

function sourceOf(material: LayerMaterial | undefined): string {
  if (material === "glass") return "EN 572-1, as bulletins of the glass trade quote it";
  if (material === "acrylic") return "ASTM D696, as data sheets of acrylic sheet quote it";
  const isListed = typeof material === "object" && "species" in material && typeof material.species === "string";
  return isListed ? HANDBOOK : OWN_FIGURES;
}

/** A layer that lacks less room than this only bears on its edges; common practice, no printed source. */
const SLIGHT: RoundLength = { millimeters: 0.1, inches: 0.004 };

function panelRoom({ layer, name, needed, enough }: LayerRoom, { clearance, contents, unit }: FilledBrief): Hazard[] {
  if (enough) return [];
  const isSlight = needed - clearance < ruleLength(SLIGHT, unit);
  // A pane that is squeezed at its edges cracks; anything else bends, or opens the joints.
  const signal = isPane(contents[layer]!) && !isSlight ? "caution" : "notice";
  return [
    makeHazard("panel-room", signal, {
      quantities: { length: { clearance, needed } },
      names: { layer: name },
      facts: { lack: isSlight ? "slight" : "large" },
      source: sourceOf(contents[layer]!.material),
    }),
  ];
}

function panelLap({ layer, name, lapLeft, retreat }: LayerRoom, { contents }: FilledBrief): Hazard[] {
  if (lapLeft === null || lapLeft > 0) return [];
  const signal = isPane(contents[layer]!) ? "warning" : "caution";
  return [
    makeHazard("panel-lap", signal, {
      quantities: { length: { lapLeft, retreat } },
      names: { layer: name },
      source: sourceOf(contents[layer]!.material),
    }),
  ];
}

/**
 * The hazards that come from a year's movement of the molding and of what goes in.
 *
 * @param brief - the filled brief
 * @param movement - what the molding does; `null` where its wood is not known
 * @param room - what the layers need
 * @returns the hazards
 */
export function movementHazards(
  brief: FilledBrief,
  movement: FrameMovement | null,
  room: readonly LayerRoom[],
): Hazard[] {
  return [
    ...(movement === null ? [] : seasonGap(movement, brief)),
    ...room.flatMap((layer) => [...panelRoom(layer, brief), ...panelLap(layer, brief)]),
  ];
}
