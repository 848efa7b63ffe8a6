import type { ContentsLayer } from "../brief/brief.js";

/** Names of what a glazier cuts. */
const PANE: RegExp = /\b(?:glass|glazing|mirror|mirrors|pane|panes)\b/i;
/** Names of what looks like glass and can be sawn. */
const SAWN_PANE: RegExp = /acryl|plexi|plastic|polycarb|perspex|styrene/i;
/** Names of what is looked at through glass, and spoiled by it. */
const ART: RegExp =
  /\b(?:art|artwork|print|photo|photograph|picture|painting|canvas|drawing|watercolor|pastel|poster|map|chart|paper|document|certificate|etching|engraving|lithograph|sketch|needlework|embroidery|textile)s?\b/i;
/** Names of what keeps it apart, or stiffens it from behind. */
const APART: RegExp = /\b(?:mat|mats|mount|mounts|spacer|spacers|fillet|fillets|backing|back|board|boards)\b/i;

/**
 * Whether a layer is a pane of glass, which is never sawn: it says so by its material or, where it says nothing of that, by its name.
 */
export function isPane(layer: ContentsLayer): boolean {
  const { name, material } = layer;
  if (material === "glass") return true;
  if (material === "acrylic" || (typeof material === "object" && "species" in material)) return false;
  return PANE.test(name) && !SAWN_PANE.test(name);
}

/** Whether a layer is art: a print, a photograph, a canvas and the like, by its name. */
export function isArt(layer: ContentsLayer): boolean {
  return !isPane(layer) && ART.test(layer.name) && !APART.test(layer.name);
}
