import { readdirSync } from "node:fs";
import { join } from "node:path";

/** The guides in the order in which they are best read; others follow by name. */
const READING_ORDER: readonly string[] = [
  "words-and-conventions.md",
  "from-a-brief-to-a-sheet.md",
  "telling-a-plan.md",
  "regular-polygons.md",
  "level-width.md",
  "sections-and-rabbets.md",
  "compound-miters.md",
  "corners-that-differ.md",
  "panels.md",
  "fitting-stock.md",
  "when-the-last-joint-gapes.md",
  "wood.md",
  "materials-and-hanging.md",
  "units.md",
  "drawings.md",
  "in-a-notebook.md",
  "accuracy-and-limits.md",
  "sources.md",
  "hazards.md",
];

/**
 * The guides' files in reading order.
 *
 * @param folder - where they are
 * @returns their paths
 */
export function listGuides(folder: string): string[] {
  const rank = (name: string): number => {
    const index = READING_ORDER.indexOf(name);
    return index < 0 ? READING_ORDER.length : index;
  };
  const names = readdirSync(folder).filter((name) => name.endsWith(".md"));
  return names.sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1)).map((name) => join(folder, name));
}
