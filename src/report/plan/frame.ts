import type { FramePlan } from "../../frame/index.js";
import { figureOf, sectionOf, tableOf, type Pen } from "../pen.js";
import type { ReportSection } from "../report.js";
import { lengthTable } from "../tables/length-table.js";

/** The frame: pictures from above and in section, and the lengths at every edge. */
export function frameSection({ geometry, sawing }: FramePlan, pen: Pen): ReportSection[] {
  return sectionOf("frame", pen, [
    figureOf("above"),
    figureOf("section", { caption: pen.words.frame.sectionCaption }),
    ...tableOf("lengths", lengthTable(geometry, sawing, pen)),
  ]);
}
