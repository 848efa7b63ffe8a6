import type { NumberedHazard } from "../../frame/index.js";
import type { StepWords } from "../catalog/step-words.js";

/** Which of the hazards that are listed above a step concern it, as a sentence; none where no hazard concerns it. */
export function heedText(hazards: readonly NumberedHazard[], step: number, { heed }: StepWords): readonly string[] {
  const numbers = hazards.filter(({ steps }) => steps.includes(step)).map(({ number }) => number);
  return numbers.length === 0 ? [] : [heed({ hazards: numbers })];
}
