import type { FilledBrief } from "../brief/brief.js";
import { isPane } from "./layer-names.js";

/** How the polygon that goes in is made: not at all, by a glazier alone, or sawn, with or without panes besides. */
export type PanelWork = "none" | "glass" | "sawn";

/**
 * How the polygon that goes into a frame is made. Glass and mirrors are never sawn; any other layer without a material is taken to be sawn.
 *
 * @param brief - the filled brief
 * @param hidden - how much of it a lip hides
 * @returns the kind of work
 */
export function panelWork(brief: FilledBrief, hidden: number): PanelWork {
  const { contents, opening } = brief;
  if (contents.length > 0) return contents.every(isPane) ? "glass" : "sawn";
  return hidden > 0 || opening.cutFrom !== undefined ? "sawn" : "none";
}
