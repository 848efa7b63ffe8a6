import { checkFields } from "../core/check.js";
import { isolate } from "../core/isolate.js";
import type { FigureBlock, FigureName } from "../drawing/index.js";
import { formatters, type Formats, type LengthUnit } from "../units/index.js";
import { finely } from "../units/internal.js";
import { english, type TellOptions, type Words, type WordsOptions } from "../words/index.js";
import { checkTellOptions } from "../words/internal.js";
import type { Block, Fact, ListBlock, ReportSection, TableBlock } from "./report.js";
import type { TableData } from "./tables/table-data.js";

/** Options of what tells a result in order. */
export interface ReportOptions extends WordsOptions {
  /** Writes the numbers, as `formatters` makes it; default in the unit of the brief. */
  readonly formats?: Formats | undefined;
}

/** What writes a report: the words, the formatters, and formatters for what is small. */
export interface Pen {
  readonly words: Words;
  readonly formats: Formats;
  /** For gaps, tolerances and movements, for which the marks of a rule are too coarse. */
  readonly fine: Formats;
}

/** A pen from options, which may have some keys besides; by default it writes English. */
export function penOf(options: TellOptions, keys: readonly string[] = []): Pen {
  const { formats, words = english } = checkTellOptions(checkFields(options, "", [...keys, "formats", "words"]));
  return { words, formats, fine: finely(formats) };
}

/** The same, which by default writes numbers in the unit that is given. */
export function penFor(options: ReportOptions, unit: LengthUnit, keys: readonly string[]): Pen {
  return penOf({ ...options, formats: options.formats ?? formatters({ unit }) }, keys);
}

/** Options for what tells of a part. */
export function tellWith({ words, formats }: Pick<Pen, "words" | "formats">): TellOptions {
  return { words, formats };
}

/** Sentences under bullets. */
export function listOf(name: string, items: readonly string[], shape: Partial<ListBlock> = {}): ListBlock[] {
  if (items.length === 0) return [];
  return [{ kind: "list", name, marker: shape.marker ?? "bullet", isStrong: shape.isStrong ?? false, items }];
}

/** Sentences that follow one another in a paragraph. */
export function paragraph(name: string, sentences: readonly string[]): ListBlock[] {
  return listOf(name, sentences.length === 0 ? [] : [sentences.join(" ")], { marker: "none" });
}

/** Names and what they stand for. */
export function factsOf(name: string, facts: readonly Fact[]): Block[] {
  return facts.length === 0 ? [] : [{ kind: "facts", name, facts }];
}

/** A table of a section; none without rows. */
export function tableOf(name: string, table: TableData): TableBlock[] {
  return table.rows.length === 0 ? [] : [{ kind: "table", name, ...table }];
}

/** A figure of a section. */
export function figureOf(name: FigureName, parts: Partial<Omit<FigureBlock, "kind" | "name">> = {}): FigureBlock {
  return {
    kind: "figure",
    name,
    step: parts.step ?? null,
    layouts: parts.layouts ?? null,
    caption: parts.caption ?? null,
  };
}

/** A section; none without blocks. */
export function sectionOf(name: ReportSection["name"], { words }: Pen, blocks: readonly Block[]): ReportSection[] {
  return blocks.length === 0 ? [] : [{ name, title: words.reports.sections[name], blocks }];
}

/** Names of the caller, one after another. */
export function namesText(names: readonly string[]): string {
  return names.map(isolate).join(", ");
}
