import { numberHazards, type FramePlan } from "../../frame/index.js";
import { hazardText } from "../../words/index.js";
import { paragraph, sectionOf, tellWith, type Pen } from "../pen.js";
import type { ReportSection, ToldHazard } from "../report.js";

/** What to heed: the plan's own hazards, numbered, the gravest first, and what always holds. */
export function hazardSection(plan: FramePlan, pen: Pen): ReportSection[] {
  const hazards = numberHazards(plan).map(({ hazard, number }): ToldHazard => {
    const { title, sentence, numbers, source } = hazardText(hazard, tellWith(pen));
    const behind = [numbers, source].filter((part) => part !== "").join("; ");
    return { number, signal: hazard.signal, title, sentence, behind };
  });
  return sectionOf("hazards", pen, [
    ...paragraph("always", [pen.words.reports.hazards]),
    { kind: "hazards", name: "hazards", hazards },
  ]);
}
