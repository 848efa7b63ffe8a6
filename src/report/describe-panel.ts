import { checkWord } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { FrameContents } from "../frame/index.js";
import type { PanelPlan } from "../panel/index.js";
import { panelPlan } from "../panel/internal.js";
import type { TellOptions } from "../words/index.js";
import { panelSection } from "./panel/panel-section.js";
import { penOf } from "./pen.js";
import type { Report } from "./report.js";

/** Options of {@link describePanel}. */
export interface DescribePanelOptions extends TellOptions {
  /** Whether it is sawn, or a pane that a glazier cuts; default sawn. */
  readonly work?: Exclude<FrameContents["work"], "none"> | undefined;
}

/**
 * Tells how a panel is cut from its squared blank, or what a glazier has to know of a pane.
 *
 * @param panel - from `planPanel`, or of a plan; also one that was read back from JSON
 * @param options - formatters, words, and whether it is sawn
 * @returns the report; its figures are drawn from `{ panel }`
 * @throws {InputError} when the panel is none, or an option is not sound
 * @example
 * ```ts
 * import { planPanel } from "miterwright/panel";
 * import { describePanel } from "miterwright/report";
 * import { formatters } from "miterwright/units";
 *
 * const panel = planPanel({ polygon: { sides: 6, apothem: 100 } });
 * describePanel(panel, { formats: formatters({ unit: "mm" }) }).sections[0]!.title; //=> "The panel"
 * ```
 */
export function describePanel(panel: PanelPlan, options: DescribePanelOptions): Report {
  const read = readStored(panel, "panel", panelPlan);
  const pen = penOf(options, ["work"]);
  const work = checkWord(options.work ?? "sawn", "work", ["sawn", "glass"]);
  return { title: pen.words.reports.titles.panel, sections: panelSection(read, { work, panes: false }, pen) };
}
