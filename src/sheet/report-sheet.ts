import { checkFields, checkText, checkWord, refuse } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { Drawing, FigureBlock } from "../drawing/index.js";
import type { Report } from "../report/index.js";
import { english, type Words } from "../words/index.js";
import { element, storedReport } from "../report/internal.js";
import { layOut } from "./lay-out.js";
import { shapeOf, TABLES_WITH_NAMES, type FigureShape } from "./layout.js";
import { SHEET_STYLE } from "./sheet-style.js";

/** The paper that a sheet is printed on. */
export type Paper = "a4" | "letter";

/** Options of what is written on paper. */
export interface PaperOptions {
  /** The words, whose language the sheet is in; default English. */
  readonly words?: Words | undefined;
  /** The paper to ask the printer for; default its own, A4 and Letter alike. */
  readonly paper?: Paper | undefined;
  /** Heading of the sheet; default the report's title. */
  readonly title?: string | undefined;
  /** Remarks below the heading; every line becomes a paragraph. Default none. */
  readonly note?: string | undefined;
}

/** Options of {@link reportSheet}. */
export interface ReportSheetOptions extends PaperOptions {
  /** Draws a figure of the report, for a width in units of the drawing and with or without a key. */
  readonly figure: (block: FigureBlock, shape: FigureShape) => Drawing;
}

const PAGE_SIZES: Readonly<Record<Paper, string>> = { a4: "A4", letter: "letter" };

function optionalText(value: unknown, path: string): string | undefined {
  return value === undefined ? undefined : checkText(value, path);
}

/**
 * A report on paper: one self-contained, printable HTML page, which holds no script and loads nothing. All text is escaped.
 *
 * @param report - from a describer of `miterwright/report`; also one that was read back from JSON
 * @param options - how its figures are drawn, and if wanted the paper, a title, a note and the words
 * @returns an HTML document
 * @throws {InputError} when the report is none or an option is not sound
 * @example
 * ```ts
 * import { drawFigure } from "miterwright/drawing";
 * import { planPanel } from "miterwright/panel";
 * import { describePanel } from "miterwright/report";
 * import { reportSheet } from "miterwright/sheet";
 * import { formatters } from "miterwright/units";
 *
 * const panel = planPanel({ polygon: { sides: 6, apothem: 100 } });
 * const formats = formatters({ unit: "mm" });
 * const html = reportSheet(describePanel(panel, { formats }), {
 *   figure: (block, shape) => drawFigure({ panel }, block, { formats, ...shape }),
 * });
 * html.includes("<h1>Cutting the panel</h1>"); //=> true
 * ```
 */
export function reportSheet(report: Report, options: ReportSheetOptions): string {
  const { title: told, sections } = readStored(report, "report", storedReport);
  checkFields(options, "", ["figure", "words", "paper", "title", "note"]);
  const { figure, words = english, paper } = options;
  if (typeof figure !== "function") refuse("type", "figure", figure, "a function that draws a figure");
  const size = paper === undefined ? "" : `@page{size:${PAGE_SIZES[checkWord(paper, "paper", ["a4", "letter"])]}}`;
  const title = optionalText(options.title, "title") ?? told;
  const notes = (optionalText(options.note, "note") ?? "")
    .split(/\r?\n/)
    .flatMap((line) => (line.trim() === "" ? [] : [element("p", line)]));
  const body = element(
    "main",
    layOut(
      { title, sections },
      {
        draw: (block, section) => figure(block, shapeOf(section, block.name)),
        tableTag: (name) => (TABLES_WITH_NAMES.includes(name) ? 'table class="names"' : "table"),
      },
    ),
  );
  const header = element("header", element("h1", title), ...notes);
  return `<!DOCTYPE html>
<html lang="${words.reports.language}"><head><meta charset="utf-8"/><meta name="viewport" content="width=device-width,initial-scale=1"/>${element("title", title).html}<style>${SHEET_STYLE}${size}</style></head>
<body>${header.html}${body.html}</body></html>
`;
}
