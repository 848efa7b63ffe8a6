import type { NumberedHazard } from "../frame/index.js";

/**
 * Which of the hazards that are listed above a step concern it.
 *
 * @param hazards - the numbered hazards of the plan
 * @param step - the step's number
 * @returns a sentence for people; none where no hazard concerns the step
 */
export function heedText(hazards: readonly NumberedHazard[], step: number): readonly string[] {
  const numbers = hazards.filter(({ steps }) => steps.includes(step)).map(({ number }) => number);
  if (numbers.length === 0) return [];
  if (numbers.length === 1) return [`Heed hazard ${numbers[0]!} above.`];
  return [`Heed hazards ${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)!} above.`];
}
