import { numberHazards, type FramePlan, type Operation } from "../../frame/index.js";
import type { ScaleSetting } from "../../saw/index.js";
import { operationText } from "../../words/index.js";
import { heedText } from "../../words/internal.js";
import { figureOf, sectionOf, tellWith, type Pen } from "../pen.js";
import type { Fact, ReportSection, Step } from "../report.js";

/** What is set for a step: miter, bevel, and the length where one is cut. */
function settingsOf({ placement, measure }: Operation, { words, formats }: Pen): Fact[] {
  const { settings, toSide } = words.steps;
  const scale = ({ reading, toward }: ScaleSetting): string => {
    const setting = formats.angle(reading);
    return toward === "none" ? setting : toSide({ setting, toward });
  };
  return [
    { name: settings.miter, value: scale(placement.miter) },
    { name: settings.bevel, value: scale(placement.bevel) },
    ...(measure === null ? [] : [{ name: settings.length, value: formats.length(measure.length) }]),
  ];
}

/** The steps at the saw, each with its picture; below the last one the finished piece. */
export function stepsSection(plan: FramePlan, pen: Pen): ReportSection[] {
  const { operations } = plan.sawing;
  if (operations.length === 0) return [];
  const numbered = numberHazards(plan);
  const steps = operations.map((operation, index): Step => {
    const { step, kind } = operation;
    const { title, lines } = operationText(operation, tellWith(pen));
    const [heed = null] = heedText(numbered, step, pen.words.steps);
    return {
      step,
      kind,
      title,
      hazards: numbered.filter(({ steps }) => steps.includes(step)).map(({ number }) => number),
      heed,
      settings: settingsOf(operation, pen),
      lines,
      figures: [figureOf("cut", { step }), ...(index === operations.length - 1 ? [figureOf("piece")] : [])],
    };
  });
  return sectionOf("steps", pen, [{ kind: "steps", name: "steps", steps }]);
}
