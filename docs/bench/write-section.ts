import type { FigureBlock } from "miterwright/drawing";
import type {
  Block,
  FactsBlock,
  HazardsBlock,
  ListBlock,
  ReportSection,
  StepsBlock,
  TableBlock,
} from "miterwright/report";
import { html, trusted, type Markup } from "./html.js";

/** Draws a figure of a report, as markup of its own. */
export type DrawFigure = (block: FigureBlock) => string;

/** From so many columns on, a narrow page shows a row as a list. */
const MANY_COLUMNS: number = 5;
/** What a cell says has letters or digits. */
const SAYS_SOMETHING: RegExp = /[\p{L}\p{N}]/u;

function writeFacts({ facts }: Pick<FactsBlock, "facts">): Markup {
  return html`<dl class="facts">
    ${facts.map(
      ({ name, value }) =>
        html`<div>
          <dt>${name}</dt>
          <dd>${value}</dd>
        </div>`,
    )}
  </dl>`;
}

/** The columns that say something: one that is filled in with a pencil has no use on a screen. */
function saidColumns({ columns, cells }: TableBlock): readonly number[] {
  return columns.map((_, index) => index).filter((index) => cells.some((row) => SAYS_SOMETHING.test(row[index] ?? "")));
}

/**
 * A table whose first column heads its rows. It scrolls by itself where the page is narrow; one of many columns shows each row as a list there, whose roles tell
 * programs that read the page aloud that it is a table all the same.
 */
function writeTable(block: TableBlock): Markup {
  const { caption, columns, cells } = block;
  const [first = 0, ...others] = saidColumns(block);
  const heads = [first, ...others].map((index) => columns[index]!.label);
  const rows = cells.map(
    (row) =>
      html`<tr role="row">
        <th scope="row" role="rowheader" data-head="${columns[first]!.label}">${row[first]!}</th>
        ${others.map((index) => {
          const { label, kind } = columns[index]!;
          return html`<td role="cell" class="${kind === "text" ? "text" : "number"}" data-head="${label}">
            ${row[index]!}
          </td>`;
        })}
      </tr>`,
  );
  return html`<div class="scroll" tabindex="0" role="region" aria-label="${caption}">
    <table role="table" class="${heads.length < MANY_COLUMNS ? "few" : "many"}">
      <caption>
        ${caption}
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          ${heads.map((head) => html`<th scope="col" role="columnheader">${head}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${rows}
      </tbody>
    </table>
  </div>`;
}

function writeList({ marker, isStrong, items }: Pick<ListBlock, "marker" | "isStrong" | "items">): Markup {
  const told = items.map((item) => (isStrong ? html`<strong>${item}</strong>` : item));
  if (marker === "none") return html`${told.map((item) => html`<p>${item}</p>`)}`;
  const list = html`${told.map((item) => html`<li>${item}</li>`)}`;
  return marker === "bullet"
    ? html`<ul>
        ${list}
      </ul>`
    : html`<ol class="steps">
        ${list}
      </ol>`;
}

function writeHazards({ hazards }: HazardsBlock): Markup {
  return html`<ol class="hazards">
    ${hazards.map(
      ({ number, signal, title, sentence, behind }) =>
        html`<li value="${number}" class="signal-${signal}">
          <strong>${title}.</strong> ${sentence}${behind === "" ? null : html` <small>(${behind})</small>`}
        </li>`,
    )}
  </ol>`;
}

function writeFigure(block: FigureBlock, draw: DrawFigure): Markup {
  const { caption } = block;
  return html`<figure>
    ${trusted(draw(block))}${caption === null ? null : html`<figcaption>${caption}</figcaption>`}
  </figure>`;
}

/** The steps, what is set for each in large figures before what is done. */
function writeSteps({ steps }: StepsBlock, draw: DrawFigure): Markup {
  return html`<ol class="steps">
    ${steps.map(
      ({ step, title, settings, heed, lines, figures }) =>
        html`<li value="${step}">
          <h3>${title}</h3>
          ${writeFacts({ facts: settings })}${writeList({
            marker: "bullet",
            isStrong: false,
            items: heed === null ? lines : [heed, ...lines],
          })}${figures.map((figure) => writeFigure(figure, draw))}
        </li>`,
    )}
  </ol>`;
}

function writeBlock(block: Block, draw: DrawFigure): Markup {
  switch (block.kind) {
    case "facts":
      return writeFacts(block);
    case "table":
      return writeTable(block);
    case "list":
      return writeList(block);
    case "hazards":
      return writeHazards(block);
    case "steps":
      return writeSteps(block, draw);
    case "figure":
      return writeFigure(block, draw);
  }
}

/** What has to be mended stands in the page's status, where "ready" would stand. */
const IN_STATUS: string = "not-ready";

/**
 * Writes a section of a report as the body of a card. Every text is escaped.
 *
 * @param section - the section
 * @param draw - draws its figures
 * @returns the markup
 */
export function writeSection({ blocks }: ReportSection, draw: DrawFigure): Markup {
  return html`${blocks.filter(({ name }) => name !== IN_STATUS).map((block) => writeBlock(block, draw))}`;
}

/**
 * What has to be mended before a plan is one to cut by.
 *
 * @param sections - of a plan's report
 * @returns sentences; none where the plan is ready
 */
export function notReadyLines(sections: readonly ReportSection[]): readonly string[] {
  return sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === "list" && block.name === IN_STATUS ? block.items : [])),
  );
}
