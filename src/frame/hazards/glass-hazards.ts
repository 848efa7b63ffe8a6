import { isArt, isPane } from "../contents/layer-names.js";
import { COMPUTED, raise, type HazardRule, type PlanFacts } from "./hazard-rule.js";

/** Glass that is wider between its farthest corners than this many times its thickness bends and breaks in the hands; common practice, no printed source. */
const THIN_GLASS: number = 400;

/** The panes, where anything fits into the frame. */
function panesOf({ brief, contents }: PlanFacts): readonly { readonly thickness: number; readonly layer: number }[] {
  if (contents.panel === null) return [];
  return brief.contents.flatMap((one, layer) => (isPane(one) ? [{ thickness: one.thickness, layer }] : []));
}

/** Glass, which cuts whoever carries it. */
export const glassHandling: HazardRule = (facts) => {
  const panes = panesOf(facts);
  if (panes.length === 0) return [];
  const { parts } = facts.materials;
  const masses = panes.map(({ layer }) => parts.find((part) => part.layer === layer)?.mass ?? null);
  // A pane that is known by its name alone has no known mass.
  const mass = masses.some((one) => one === null) ? null : masses.reduce<number>((sum, one) => sum + one!, 0);
  return raise("glass-handling", "warning", { quantities: mass === null ? {} : { mass: { mass } } });
};

/** A pane that bears on a line, where it can crack. */
export const paneOnArris: HazardRule = (facts) => {
  const { seating } = facts.contents;
  if (panesOf(facts).length === 0 || seating?.possible !== true || seating.bearsOn === "ledge") return [];
  const { bearsOn, lap } = seating;
  return raise("pane-on-arris", "caution", {
    quantities: { angle: { slope: facts.brief.slope }, length: { lap } },
    facts: { bearsOn },
    source: COMPUTED,
  });
};

/** A pane so thin for its size that it bends and breaks in the hands. */
export const largePane: HazardRule = (facts) => {
  const across = facts.contents.panel?.acrossCorners ?? 0;
  const limit = THIN_GLASS * Math.min(...panesOf(facts).map(({ thickness }) => thickness));
  return across > limit ? raise("large-pane", "warning", { quantities: { length: { across, limit } } }) : [];
};

/** Art with nothing between it and a pane. */
export const artOnGlass: HazardRule = (facts) => {
  if (panesOf(facts).length === 0) return [];
  const layers = facts.brief.contents;
  const touching = layers.filter((layer, index) => {
    const beside = [layers[index - 1], layers[index + 1]];
    return isArt(layer) && beside.some((other) => other !== undefined && isPane(other));
  });
  return touching.flatMap(({ name }) => raise("art-on-glass", "notice", { names: { layer: name } }));
};
