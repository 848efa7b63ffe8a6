import type { SectionName } from "miterwright/words";

/** A card of the page: a section of a plan's report. */
export interface Card {
  /** The section. */
  readonly section: SectionName;
  /** In which of the two columns it stands on a wide page. */
  readonly column: "frame" | "work";
}

/** The cards of a plan in the order of reading. How the sticks are cut up follows the first column, once it is known. */
export const CARDS: readonly Card[] = [
  { section: "glance", column: "work" },
  { section: "hazards", column: "work" },
  { section: "saw", column: "work" },
  { section: "cradle", column: "work" },
  { section: "proof", column: "work" },
  { section: "steps", column: "work" },
  { section: "materials", column: "work" },
  { section: "hangers", column: "work" },
  { section: "year", column: "work" },
  { section: "frame", column: "frame" },
  { section: "contents", column: "frame" },
  { section: "panel", column: "frame" },
  { section: "pane", column: "frame" },
  { section: "checks", column: "frame" },
  { section: "gluing", column: "frame" },
  { section: "trueness", column: "frame" },
];
