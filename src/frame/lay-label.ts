import type { Lay } from "../miter/index.js";

/**
 * What to call a lay on paper.
 *
 * @param lay - its name or rotation
 * @param angle - writes an angle
 * @returns words that say how the stick lies
 */
export function layLabel(lay: Lay, angle: (degrees: number) => string): string {
  switch (lay) {
    case "flat":
      return "flat on its back";
    case "propped":
      return "propped at its slope";
    case "face-down":
      return "face down";
    case "sight-edge-down":
      return "standing on its sight edge";
    case "outer-edge-down":
      return "standing on its outer edge";
    default:
      return `rolled by ${angle(lay)}`;
  }
}
