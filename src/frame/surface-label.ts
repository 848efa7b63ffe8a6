import type { StickSurface } from "../saw/index.js";

const LABELS: Readonly<Record<StickSurface, string>> = {
  back: "back",
  face: "face",
  "sight-edge": "sight edge",
  "outer-edge": "outer edge",
};

/**
 * What to call a surface of the stick on paper.
 *
 * @param surface - the surface
 * @returns words for people
 * @example
 * ```ts
 * import { surfaceLabel } from "miterwright/frame";
 *
 * surfaceLabel("outer-edge"); //=> "outer edge"
 * ```
 */
export function surfaceLabel(surface: StickSurface): string {
  return LABELS[surface];
}
