import type { Point } from "../core/geometry-types.js";
import { writeNumber, type Canvas } from "./canvas.js";
import { lookAttributes } from "./looks.js";
import { meaningAttributes, type Meaning } from "./parts.js";

/** From one line of the hatching to the next, measured level. */
const PITCH: number = 8;

/**
 * Hatches a shape with lines that rise at 45 degrees. They keep no label away.
 *
 * On such lines x + y is constant, y running down: each is cut where the outline crosses it, and every second stretch between crossings lies inside.
 */
export function drawHatch(canvas: Canvas, is: Meaning, outline: readonly Point[]): void {
  const sums = outline.map(({ x, y }) => x + y);
  const data: string[] = [];
  for (let sum = Math.ceil(Math.min(...sums) / PITCH) * PITCH + PITCH / 3; sum < Math.max(...sums); sum += PITCH) {
    const crossings: number[] = [];
    outline.forEach((from, index) => {
      const to = outline[(index + 1) % outline.length]!;
      const [a, b] = [from.x + from.y - sum, to.x + to.y - sum];
      if (a < 0 !== b < 0) crossings.push(from.x + (a / (a - b)) * (to.x - from.x));
    });
    crossings.sort((a, b) => a - b);
    for (let index = 0; index + 1 < crossings.length; index += 2) {
      const [x0, x1] = [crossings[index]!, crossings[index + 1]!];
      data.push(`M${writeNumber(x0)} ${writeNumber(sum - x0)}L${writeNumber(x1)} ${writeNumber(sum - x1)}`);
    }
  }
  if (data.length > 0)
    canvas.parts.push(`<path${meaningAttributes(is)}${lookAttributes("thin")} d="${data.join("")}"/>`);
}
