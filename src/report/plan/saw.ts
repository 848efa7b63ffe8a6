import type { FramePlan, LayResult } from "../../frame/index.js";
import type { Saw, ScaleSetting } from "../../saw/index.js";
import { layLines, surfaceLabel, testCutsText, type CradleValues } from "../../words/index.js";
import { figureOf, listOf, paragraph, sectionOf, tableOf, tellWith, type Pen } from "../pen.js";
import type { ReportSection } from "../report.js";
import { layTable } from "../tables/lay-table.js";
import { column, plainTable } from "../tables/plain-table.js";
import type { TableData } from "../tables/table-data.js";

/** For which saw the plan is. */
function sawLine({ fence, miter, bevel }: Saw, { words, formats: { angle } }: Pen): string {
  const leans = (degrees: number): string | null => (degrees > 0 ? angle(degrees) : null);
  return words.saws.plannedFor({
    fence,
    miter: { left: angle(miter.left), right: angle(miter.right) },
    bevel: { left: leans(bevel.left), right: leans(bevel.right) },
  });
}

/** What a scale must show, with its best mark where that is another. */
function readingText(setting: ScaleSetting, mark: number, step: number, { words, formats: { angle } }: Pen): string {
  const [exact, best] = [angle(setting.reading), angle(mark)];
  return exact === best ? exact : words.saws.reading({ exact, graduation: best, step: angle(step) });
}

/** The settings of the chosen lay. */
function settingsTable({ sawing }: FramePlan, { first }: LayResult, pen: Pen): TableData {
  const { saw, operations } = sawing;
  const { caption, heads, scales } = pen.words.reports.settings;
  const { miterReads, bevelReads } = pen.words.saws;
  const { graduations } = operations.at(-1)!;
  const rows = [
    [scales.miter, readingText(first.miter, graduations.miter, saw.miter.step, pen), miterReads[saw.miter.reads]],
    [scales.bevel, readingText(first.bevel, graduations.bevel, saw.bevel.step, pen), bevelReads[saw.bevel.reads]],
  ];
  return plainTable(caption, [column(heads.scale), column(heads.mustShow), column(heads.reads)], rows);
}

/** The saw, what its scales must show, and every way to lay the stick. */
export function sawSection(plan: FramePlan, pen: Pen): ReportSection[] {
  const { sawing } = plan;
  const { words } = pen;
  const lays = tableOf("lays", layTable(sawing, pen));
  const saw = paragraph("saw", [sawLine(sawing.saw, pen)]);
  if (sawing.lay === null) {
    const none = listOf("no-lay", [words.saws.noLay], { marker: "none", isStrong: true });
    return sectionOf("saw", pen, [...saw, ...none, ...lays, figureOf("piece")]);
  }
  const [lies, ...givenUp] = layLines(sawing.lay, tellWith(pen));
  return sectionOf("saw", pen, [
    ...saw,
    ...listOf("lies", [lies!], { marker: "none", isStrong: true }),
    ...paragraph("order", [...givenUp, words.steps.order[sawing.order], words.saws.backTearOut]),
    ...tableOf("settings", settingsTable(plan, sawing.lay, pen)),
    ...lays,
  ]);
}

/** How the setting is proved before the molding is cut. */
export function proofSection({ sawing }: FramePlan, pen: Pen): ReportSection[] {
  if (sawing.testCuts === null) return [];
  const { lines } = testCutsText(sawing.testCuts, tellWith(pen));
  return sectionOf("proof", pen, listOf("proof", lines, { marker: "number" }));
}

/** The cradle that props the stick. */
export function cradleSection({ sawing, geometry }: FramePlan, pen: Pen): ReportSection[] {
  const { words, formats } = pen;
  const { length, angle } = formats;
  const { cradle, lay } = sawing;
  if (cradle === null) {
    if (lay?.first.cradled !== true) return [];
    const { slope } = geometry;
    const high = surfaceLabel(slope > 0 ? "outer-edge" : "sight-edge", pen);
    return sectionOf(
      "cradle",
      pen,
      listOf("make", [words.saws.cradle.sizeNotKnown({ angle: angle(Math.abs(slope)), high })]),
    );
  }
  const values: CradleValues = {
    angle: angle(cradle.angle),
    levelRun: length(cradle.levelRun),
    rise: length(cradle.rise),
    top: length(cradle.top),
    high: surfaceLabel(cradle.high, pen),
    base: cradle.base > 0 ? length(cradle.base) : null,
    widenBy: cradle.steady ? null : length(cradle.widenBy),
  };
  const own = words.saws.cradle;
  const lines = [
    own.make(values),
    own.place(values),
    ...(values.base === null ? [] : [own.base({ base: values.base })]),
    own.balance(values),
    own.clear,
  ];
  return sectionOf("cradle", pen, [...listOf("make", lines), figureOf("cradle")]);
}
