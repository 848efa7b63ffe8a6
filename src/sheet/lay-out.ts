import type { Block, Report, ReportSection } from "../report/index.js";
import type { SectionName } from "../words/index.js";
import { element, join, writeBlock, type BlockStyle, type Markup } from "../report/internal.js";
import { HEADING, LAYOUT, type Group, type Item, type Row } from "./layout.js";

/** A report that is being laid out: every block is written once, at its place or behind it. */
interface Pile {
  readonly sections: ReadonlyMap<SectionName, ReportSection>;
  readonly taken: Set<Block>;
  readonly style: BlockStyle;
}

/** Writes blocks of a section that are not written yet. */
function take({ taken, style }: Pile, section: ReportSection, names: string | null): Markup[] {
  const blocks = section.blocks.filter((block) => (names === null || block.name === names) && !taken.has(block));
  for (const block of blocks) taken.add(block);
  return blocks.map((block) => writeBlock(block, section.name, style));
}

/** Writes a block by its name, the small heading of a section, or the whole section under it. */
function writeItem(pile: Pile, item: Item): Markup[] {
  const [name, block] = item.split(".", 2) as [SectionName, string?];
  const section = pile.sections.get(name);
  if (section === undefined) return [];
  if (block === HEADING) return [element("h3", section.title)];
  if (block !== undefined) return take(pile, section, block);
  const body = take(pile, section, null);
  return body.length === 0 ? [] : [element('div class="keep"', element("h3", section.title), ...body)];
}

function writeRow(pile: Pile, { style, columns }: Row): Markup[] {
  const written = columns
    .map((items) => items.flatMap((item) => writeItem(pile, item)))
    .filter(({ length }) => length > 0);
  if (written.length === 0) return [];
  if (written.length === 1) return written[0]!;
  return [element(`div class="${style}"`, ...written.map((column) => element("div", ...column)))];
}

/** What stands under a heading, and behind it whatever its section has besides. */
function writeGroup(pile: Pile, { heading, rows }: Group): Markup[] {
  const section = heading === null ? undefined : pile.sections.get(heading);
  const body = rows.flatMap((row) => writeRow(pile, row));
  if (section === undefined) return body;
  const rest = take(pile, section, null);
  return body.length + rest.length === 0 ? [] : [element("section", element("h2", section.title), ...body, ...rest)];
}

/** Lays a report out on paper. */
export function layOut({ sections }: Report, style: BlockStyle): Markup {
  const pile: Pile = { sections: new Map(sections.map((section) => [section.name, section])), taken: new Set(), style };
  const placed = LAYOUT.flatMap((group) => writeGroup(pile, group));
  const others = sections.flatMap(({ name }) => writeGroup(pile, { heading: name, rows: [] }));
  return join([...placed, ...others]);
}
