import type { FramePlan } from "miterwright/frame";
import { describePlan } from "miterwright/report";
import type { StockFit } from "miterwright/stock";
import { CARDS } from "../../docs/bench/cards.js";
import { figuresOf } from "../../docs/bench/draw-figures.js";
import { LANGUAGE, type Language } from "../../docs/bench/language.js";
import type { JobState } from "../../docs/bench/job-state.js";
import { planJob } from "../../docs/bench/plan-job.js";
import { notReadyLines, writeSection } from "../../docs/bench/write-section.js";
import { penOf, type Pen } from "../../docs/bench/writers.js";

/** The cards of a plan by the names of their sections, and what its status says first. */
export interface PageCards {
  readonly cards: Readonly<Record<string, string | null>>;
  readonly notReady: readonly string[];
}

/** Tells a plan as the page does. */
export function tellPage(plan: FramePlan, pen: Pen, fit: StockFit | null = null): PageCards {
  const { formats, words } = pen;
  const { sections } = describePlan(plan, { formats, words, ...(fit === null ? {} : { fits: [fit] }) });
  const draw = figuresOf(plan, fit, pen, 400);
  const names = [...CARDS.map(({ section }) => section), "stock"];
  const cards = names.map((name) => {
    const section = sections.find((candidate) => candidate.name === name);
    return [name, section === undefined ? null : writeSection(section, draw).html] as const;
  });
  return { cards: Object.fromEntries(cards), notReady: notReadyLines(sections) };
}

/** Every card of a job, by the name of its section. */
export function cardsOf(
  state: JobState,
  language: Language = LANGUAGE,
  fit: StockFit | null = null,
): PageCards["cards"] {
  return tellPage(planJob(state, language).plan!, penOf(state.values, language), fit).cards;
}

/** What a reader sees of markup, drawings included; ties between numbers and units become plain spaces. */
export function textOf(markup: string | null): string {
  return (markup ?? "")
    .replace(/<(title|desc)>.*?<\/\1>/gs, " ")
    .replace(/<[^>]*>/g, " ")
    .replace(/&quot;|&#39;/g, (entity) => (entity === "&quot;" ? '"' : "'"))
    .replace(/\s+/g, " ");
}
