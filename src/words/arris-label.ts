import { refuse } from "../core/check.js";
import { isolate } from "../core/isolate.js";

const LABELS: Readonly<Record<string, string>> = {
  sightFace: "sight edge at the face",
  sightBack: "sight edge at the back",
  outerFace: "outer edge at the face",
  outerBack: "outer edge at the back",
  wallLedge: "rabbet wall at the ledge",
  wallMouth: "rabbet wall at the back",
  sightCut: "sight edge where its cut ends",
  outerCut: "outer edge where its cut ends",
  wall: "rabbet wall",
  outer: "outermost point",
  sight: "sight edge",
  opening: "edge of the opening",
};

/**
 * What to call an arris on paper.
 *
 * @param arris - the name of an arris, or `null` for a line without one
 * @returns words for people; a name that is not ours is returned as it is, but for signs that set the direction of text, and between U+2068 and U+2069 where it
 * runs from right to left
 * @throws {InputError} when it is neither text nor `null`
 * @example
 * ```ts
 * import { arrisLabel } from "miterwright/words";
 *
 * arrisLabel("outerBack"); //=> "outer edge at the back"
 * arrisLabel("bead"); //=> "bead"
 * ```
 */
export function arrisLabel(arris: string | null): string {
  if (arris === null) return "longest line of the piece";
  if (typeof arris !== "string") return refuse("type", "arris", arris, "the name of an arris, or null");
  return Object.hasOwn(LABELS, arris) ? LABELS[arris]! : isolate(arris);
}
