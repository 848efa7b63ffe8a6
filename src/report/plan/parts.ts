import { isolate } from "../../core/isolate.js";
import type { FramePlan, MaterialPart } from "../../frame/index.js";
import type { Pen } from "../pen.js";

/** What a part of the frame is called: its layer's name, or the word for the molding. */
export function partName({ name, layer }: MaterialPart, { words }: Pick<Pen, "words">): string {
  return layer === null ? words.materials.moldingPart : isolate(name);
}

/** The parts of which a mass or a cost is not known. */
export function missingParts({ materials }: FramePlan, what: "mass" | "cost", pen: Pen): readonly string[] {
  return materials.parts
    .filter((part) => (what === "mass" ? part.mass : (part.cost?.total ?? null)) === null)
    .map((part) => partName(part, pen));
}
