import { checkArray, checkObject, reject } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { FramePlan } from "../frame/index.js";
import { framePlan } from "../frame/internal.js";
import type { StockFit } from "../stock/index.js";
import { panelSection } from "./panel/panel-section.js";
import { penFor, type ReportOptions } from "./pen.js";
import { checksSection, gluingSection, truenessSection } from "./plan/closing.js";
import { contentsSection } from "./plan/contents.js";
import { frameSection } from "./plan/frame.js";
import { glanceSection } from "./plan/glance.js";
import { hazardSection } from "./plan/hazards.js";
import { hangingSection, materialsSection, yearSection } from "./plan/materials.js";
import { cradleSection, proofSection, sawSection } from "./plan/saw.js";
import { stepsSection } from "./plan/steps.js";
import type { Report } from "./report.js";
import { fitSection } from "./stock/fit-section.js";
import { readFit } from "./stock/read-fit.js";

/** Options of {@link describePlan}. */
export interface DescribePlanOptions extends ReportOptions {
  /** How the sticks are cut up: what `fitStock` made of the plan's stock jobs, in their order. Default: the report only says how much molding is needed. */
  readonly fits?: readonly StockFit[] | undefined;
}

/** Reads the fits of a plan's stock jobs. */
function readFits({ stockJobs }: FramePlan, fits: unknown): readonly StockFit[] {
  if (fits === undefined) return [];
  const given = checkArray(fits, "fits", "an array of stock fits");
  if (given.length <= stockJobs.length)
    return given.map((fit, index) => readFit(stockJobs[index]!, fit, `fits[${index}]`));
  const message = `Expected \`fits\` to be at most as many as the plan has stock jobs, ${stockJobs.length}, got ${given.length}; it has some when its brief offers sticks`;
  return reject("conflict", "fits", fits, message);
}

/**
 * Tells a plan in order, as data: what is needed at a glance, hazards, the frame, what goes in, the molding and how to cut it up, the work at the saw step by step,
 * what to check, how to glue, and the panel.
 *
 * A page, a sheet or a notebook only lays it out. Its figures are drawn by `drawFigure` of `miterwright/drawing`, from the same plan.
 *
 * @param plan - from `planFrame`; also one that was read back from JSON
 * @param options - stock fits, formatters (default those of the brief's unit) and words (default English)
 * @returns the report; every text in it is plain text, not yet escaped
 * @throws {InputError} when the plan is not one, an option is not sound, or a fit is given that is not one for the plan's stock job
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { describePlan } from "miterwright/report";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 }, unit: "mm" });
 * const { title, sections } = describePlan(plan);
 * title; //=> "Shop sheet: frame of 6 sides, lying flat"
 * sections.map(({ name }) => name).slice(0, 3); //=> ["glance", "hazards", "frame"]
 * ```
 */
export function describePlan(plan: FramePlan, options: DescribePlanOptions = {}): Report {
  const read = readStored(checkObject(plan, "plan"), "", framePlan);
  const fits = readFits(read, checkObject(options)["fits"]);
  const pen = penFor(options, read.brief.unit, ["fits"]);
  const { sides, slope } = read.geometry;
  return {
    title: pen.words.reports.planTitle({ sides, slope: slope === 0 ? null : pen.formats.angle(slope) }),
    sections: [
      ...glanceSection(read, fits, pen),
      ...hazardSection(read, pen),
      ...frameSection(read, pen),
      ...contentsSection(read, pen),
      ...materialsSection(read, pen),
      ...hangingSection(read, pen),
      ...fits.flatMap((fit, index) => fitSection(read.stockJobs[index]!, fit, pen)),
      ...sawSection(read, pen),
      ...cradleSection(read, pen),
      ...proofSection(read, pen),
      ...stepsSection(read, pen),
      ...checksSection(read, pen),
      ...gluingSection(read, pen),
      ...truenessSection(read, pen),
      ...yearSection(read, pen),
      ...(read.panel === null ? [] : panelSection(read.panel, read.contents, pen)),
    ],
  };
}
