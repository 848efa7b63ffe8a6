import { type SawPlan, type MeasureAlong } from "../frame/index.js";
import { arrisLabel, surfaceLabel } from "../words/index.js";
import type { StickSurface } from "../saw/index.js";

/**
 * Notes along the two edges of a piece that is drawn from left to right: which of its surfaces is at the fence there, and for which cuts.
 *
 * @param sawing - the saw plan
 * @returns the notes of the upper edge and of the lower; empty where there is none
 */
export function fenceNotes(sawing: SawPlan): { readonly upper: string; readonly lower: string } {
  const notes = { upper: new Map<StickSurface, string[]>(), lower: new Map<StickSurface, string[]>() };
  for (const { kind, placement } of sawing.operations) {
    // Drawn from left to right; a stick that points left lies the other way round on the saw.
    const isLower = (placement.along === "right") === (sawing.saw.fence === "near");
    const side = isLower ? notes.lower : notes.upper;
    side.set(placement.atFence, [...(side.get(placement.atFence) ?? []), kind.replace("-", " ")]);
  }
  const write = (side: ReadonlyMap<StickSurface, readonly string[]>): string =>
    [...side].map(([surface, kinds]) => `${surfaceLabel(surface)} at the fence: ${kinds.join(", ")}`).join("; ");
  return { upper: write(notes.upper), lower: write(notes.lower) };
}

/**
 * How the tape is laid.
 *
 * @param measure - along which arris
 * @param letter - the letter of that arris in drawings
 * @param length - the length, as it is written
 * @returns a sentence
 */
export function tapeText(measure: MeasureAlong, letter: string | undefined, length: string): string {
  const arris = `${arrisLabel(measure.arris)}${letter === undefined ? "" : ` (${letter})`}`;
  return measure.hook
    ? `Tape: hook it over a long point of the ${arris} and read ${length} at the other.`
    : `Tape: square a pencil line to the piece at both long points of the ${arris} and measure ${length} between the lines.`;
}
