import type { Obstacle } from "../saw/index.js";

/**
 * An obstacle to a lay in words, with its numbers.
 *
 * @param obstacle - from a lay of a plan
 * @param angle - writes an angle
 * @returns its sentence, and for a scale that does not go so far how far it goes and how far it would have to
 */
export function obstacleText(
  obstacle: Pick<Obstacle, "sentence" | "degrees">,
  angle: (degrees: number) => string,
): string {
  const { sentence, degrees } = obstacle;
  if (degrees === undefined) return sentence;
  return `${sentence.replace(/\.$/, "")}: it goes to ${angle(degrees.reach)}, and the cut needs ${angle(degrees.needs)}.`;
}
