import { isRecord, refuse } from "../../core/check.js";
import type { Drawing, FigureBlock } from "../../drawing/index.js";
import type { SectionName } from "../../words/index.js";
import type { Block, FactsBlock, HazardsBlock, ListBlock, StepsBlock, TableBlock } from "../report.js";
import { element, join, list, type Content, type Markup } from "./html.js";

/** What a writer of blocks has to be told. */
export interface BlockStyle {
  /** Draws a figure of a section. */
  readonly draw: (block: FigureBlock, section: SectionName) => Drawing;
  /** The opening tag of a table, by its name. */
  readonly tableTag: (name: string) => string;
}

function writeFacts({ facts }: FactsBlock): Markup {
  return element("dl", ...facts.map(({ name, value }) => element("div", element("dt", name), element("dd", value))));
}

function writeTable({ name, caption, columns, cells }: TableBlock, { tableTag }: BlockStyle): Markup {
  const rows = cells.map(([first, ...others]) =>
    element("tr", element('th scope="row"', first!), ...others.map((cell) => element("td", cell))),
  );
  const heads = columns.map(({ label }) => element('th scope="col"', label));
  return element(
    tableTag(name),
    element("caption", caption),
    element("thead", element("tr", ...heads)),
    element("tbody", ...rows),
  );
}

function writeList({ marker, isStrong, items }: ListBlock): Markup {
  const told = items.map((item): Content => (isStrong ? element("strong", item) : item));
  if (marker === "none") return join(told.map((item) => element("p", item)));
  return list(marker === "bullet" ? "ul" : "ol", told);
}

function writeHazards({ hazards }: HazardsBlock): Markup {
  const items = hazards.map(({ title, sentence, behind }) =>
    element("li", element("strong", `${title}.`), ` ${sentence}${behind === "" ? "" : ` (${behind})`}`),
  );
  return element('ol class="columns"', ...items);
}

function writeFigure(block: FigureBlock, section: SectionName, style: BlockStyle): Markup {
  const drawing: unknown = style.draw(block, section);
  const svg = isRecord(drawing) ? drawing["svg"] : undefined;
  if (typeof svg !== "string") {
    return refuse("type", "figure", drawing, "a function that draws a figure, but its result was no drawing");
  }
  const { caption } = block;
  return element("figure", { html: svg }, ...(caption === null ? [] : [element("figcaption", caption)]));
}

/** The steps, each beside its pictures. */
function writeSteps({ steps }: StepsBlock, section: SectionName, style: BlockStyle): Markup {
  return join(
    steps.map(({ step, title, heed, lines, figures }) =>
      element(
        'article class="step"',
        element("div", element("h3", `${step}. ${title}`), list("ul", heed === null ? lines : [heed, ...lines])),
        element("div", ...figures.map((figure) => writeFigure(figure, section, style))),
      ),
    ),
  );
}

/** Writes a block of a report. */
export function writeBlock(block: Block, section: SectionName, style: BlockStyle): Markup {
  switch (block.kind) {
    case "facts":
      return writeFacts(block);
    case "table":
      return writeTable(block, style);
    case "list":
      return writeList(block);
    case "hazards":
      return writeHazards(block);
    case "steps":
      return writeSteps(block, section, style);
    case "figure":
      return writeFigure(block, section, style);
  }
}
