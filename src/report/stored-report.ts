import { checkObject, checkWord } from "../core/check.js";
import {
  count,
  finite,
  flag,
  list,
  orNull,
  record,
  text,
  textOrNull,
  word,
  type Fields,
  type Reader,
} from "../core/stored.js";
import type { FigureBlock } from "../drawing/index.js";
import { english } from "../words/index.js";
import type {
  Block,
  Fact,
  FactsBlock,
  HazardsBlock,
  ListBlock,
  Report,
  ReportSection,
  Step,
  StepsBlock,
  TableBlock,
  ToldHazard,
} from "./report.js";
import type { TableColumn } from "./tables/table-data.js";

/** A reader of lists, each item of which has these fields. */
function listOf<T extends object>(fields: Fields<T>): Reader<readonly T[]> {
  return (value, path) => list(value, path, (item, at) => record(item, at, fields));
}

/** A reader of one word, the only one that may stand there. */
function only<W extends string>(wanted: W): Reader<W> {
  return (value, path) => checkWord(value, path ?? "", [wanted]);
}

const texts: Reader<readonly string[]> = (value, path) => list(value, path, text);

const FACT: Fields<Fact> = { name: text, value: text };
const FIGURE: Fields<FigureBlock> = {
  kind: /* @__PURE__ */ only("figure"),
  name: (value, path) =>
    word(value, path, {
      above: true,
      section: true,
      piece: true,
      cut: true,
      cradle: true,
      panel: true,
      "panel-cut": true,
      stock: true,
    }),
  step: (value, path) => orNull(value, path, count),
  layouts: (value, path) =>
    orNull(value, path, (pair, at) => list(pair, at, count, 2) as unknown as readonly [number, number]),
  caption: textOrNull,
};
const STEP: Fields<Step> = {
  step: count,
  kind: (value, path) => word(value, path, { crosscut: true, "first-end": true, "second-end": true }),
  title: text,
  hazards: (value, path) => list(value, path, count),
  heed: textOrNull,
  settings: /* @__PURE__ */ listOf(FACT),
  lines: texts,
  figures: /* @__PURE__ */ listOf(FIGURE),
};
const HAZARD: Fields<ToldHazard> = {
  number: count,
  signal: (value, path) => word(value, path, { danger: true, warning: true, caution: true, notice: true }),
  title: text,
  sentence: text,
  behind: text,
};
const COLUMN: Fields<TableColumn> = {
  label: text,
  kind: (value, path) => word(value, path, { text: true, number: true, length: true, area: true, angle: true }),
};
const value: Reader<number | string> = (given, path) =>
  typeof given === "number" ? finite(given, path) : text(given, path);

const FACTS: Fields<FactsBlock> = {
  kind: /* @__PURE__ */ only("facts"),
  name: text,
  facts: /* @__PURE__ */ listOf(FACT),
};
const TABLE: Fields<TableBlock> = {
  kind: /* @__PURE__ */ only("table"),
  name: text,
  caption: text,
  columns: /* @__PURE__ */ listOf(COLUMN),
  rows: (rows, path) => list(rows, path, (row, at) => list(row, at, value)),
  cells: (rows, path) => list(rows, path, (row, at) => list(row, at, text, 1)),
};
const LIST: Fields<ListBlock> = {
  kind: /* @__PURE__ */ only("list"),
  name: text,
  marker: (given, path) => word(given, path, { none: true, bullet: true, number: true }),
  isStrong: flag,
  items: texts,
};
const STEPS: Fields<StepsBlock> = {
  kind: /* @__PURE__ */ only("steps"),
  name: text,
  steps: /* @__PURE__ */ listOf(STEP),
};
const HAZARDS: Fields<HazardsBlock> = {
  kind: /* @__PURE__ */ only("hazards"),
  name: text,
  hazards: /* @__PURE__ */ listOf(HAZARD),
};

const BLOCKS: { readonly [K in Block["kind"]]: Reader<Extract<Block, { kind: K }>> } = {
  facts: (given, path) => record(given, path, FACTS),
  table: (given, path) => record(given, path, TABLE),
  list: (given, path) => record(given, path, LIST),
  steps: (given, path) => record(given, path, STEPS),
  hazards: (given, path) => record(given, path, HAZARDS),
  figure: (given, path) => record(given, path, FIGURE),
};
const KINDS: Readonly<Record<Block["kind"], true>> = {
  facts: true,
  table: true,
  list: true,
  steps: true,
  hazards: true,
  figure: true,
};

const block: Reader<Block> = (given, path) => {
  const { kind } = checkObject(given, path ?? "");
  return BLOCKS[word(kind, path === undefined ? path : `${path}.kind`, KINDS)](given, path);
};

const SECTION: Fields<ReportSection> = {
  name: (given, path) => checkWord(given, path ?? "", Object.keys(english.reports.sections) as ReportSection["name"][]),
  title: text,
  blocks: (given, path) => list(given, path, block),
};
const REPORT: Fields<Report> = { title: text, sections: /* @__PURE__ */ listOf(SECTION) };

/** A report, as a describer made it or as it came back from JSON. */
export const storedReport: Reader<Report> = (given, path) => record(given, path, REPORT);
