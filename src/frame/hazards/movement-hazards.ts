import type { FilledBrief, LayerMaterial } from "../brief/brief.js";
import { isPane } from "../contents/layer-names.js";
import type { LayerRoom } from "../contents/contents-room.js";
import { roundLength, type RoundLength } from "../round-length.js";
import { raise, type HazardRule, type RaisedHazard } from "./hazard-rule.js";

/** Where the movement of a wood of the table comes from. */
const HANDBOOK: string =
  "Forest Products Laboratory, Wood Handbook, FPL-GTR-190, tables 4-3 (p. 4-6) and 13-5 (p. 13-16)";
/** Where a miter's movement is described. */
const NOYES: string = "W. Noyes, Handwork in Wood, fig. 289";
/** Where figures come from that the brief gives. */
const OWN_FIGURES: string = "the brief's own figures";

/** A year's movement opens the joints by more than the accepted gap. */
export const seasonGap: HazardRule = ({ movement, brief: { species } }) => {
  if (movement === null) return [];
  const { inside, outside, acceptedGap, made } = movement;
  if (!(Math.max(inside, outside) > acceptedGap)) return [];
  const quantities = { length: { inside, outside, limit: acceptedGap }, percent: { made } };
  const source = `${typeof species === "string" ? HANDBOOK : OWN_FIGURES}; ${NOYES}`;
  return raise("season-gap", "notice", { quantities, source });
};

function sourceOf(material: LayerMaterial | undefined): string {
  if (material === "glass") return "EN 572-1, as bulletins of the glass trade quote it";
  if (material === "acrylic") return "ASTM D696, as data sheets of acrylic sheet quote it";
  const isListed = typeof material === "object" && "species" in material && typeof material.species === "string";
  return isListed ? HANDBOOK : OWN_FIGURES;
}

/** A layer that lacks less room than this only bears on its edges; common practice, no printed source. */
const SLIGHT: RoundLength = { millimeters: 0.1, inches: 0.004 };

function panelRoom(
  { layer, name, needed, enough }: LayerRoom,
  { clearance, contents, unit }: FilledBrief,
): RaisedHazard[] {
  if (enough) return [];
  const isSlight = needed - clearance < roundLength(SLIGHT, unit);
  // A pane that is squeezed at its edges cracks; anything else bends, or opens the joints.
  const signal = isPane(contents[layer]!) && !isSlight ? "caution" : "notice";
  return raise("panel-room", signal, {
    quantities: { length: { clearance, needed } },
    names: { layer: name },
    facts: { lack: isSlight ? "slight" : "large" },
    source: sourceOf(contents[layer]!.material),
  });
}

function panelLap({ layer, name, lapLeft, retreat }: LayerRoom, { contents }: FilledBrief): RaisedHazard[] {
  if (lapLeft === null || lapLeft > 0) return [];
  return raise("panel-lap", isPane(contents[layer]!) ? "warning" : "caution", {
    quantities: { length: { lapLeft, retreat } },
    names: { layer: name },
    source: sourceOf(contents[layer]!.material),
  });
}

/** What each layer needs over the year: room beside it, and a lap that is left when it has shrunk. */
export const layerRoom: HazardRule = ({ brief, contents }) =>
  contents.room.flatMap((layer) => [...panelRoom(layer, brief), ...panelLap(layer, brief)]);
