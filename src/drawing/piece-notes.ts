import type { Operation, SawPlan } from "../frame/index.js";
import type { StickSurface } from "../saw/index.js";
import { surfaceLabel, type PieceDrawingWords, type WordsOptions } from "../words/index.js";

/**
 * Notes along the two edges of a piece that is drawn from left to right: which of its surfaces is at the fence there, and for which cuts. An edge that never is
 * has an empty note.
 */
export function fenceNotes(
  sawing: SawPlan,
  words: PieceDrawingWords,
  options: WordsOptions,
): { readonly upper: string; readonly lower: string } {
  const notes = {
    upper: new Map<StickSurface, Operation["kind"][]>(),
    lower: new Map<StickSurface, Operation["kind"][]>(),
  };
  for (const { kind, placement } of sawing.operations) {
    // Drawn from left to right; a stick that points left lies the other way round on the saw.
    const isLower = (placement.along === "right") === (sawing.saw.fence === "near");
    const side = isLower ? notes.lower : notes.upper;
    side.set(placement.atFence, [...(side.get(placement.atFence) ?? []), kind]);
  }
  const write = (side: ReadonlyMap<StickSurface, readonly Operation["kind"][]>): string =>
    side.size === 0
      ? ""
      : words.atFence({
          surfaces: [...side].map(([surface, cuts]) => ({ surface: surfaceLabel(surface, options), cuts })),
        });
  return { upper: write(notes.upper), lower: write(notes.lower) };
}
