import { molding, type Profile, type RabbetArris } from "miterwright/profile";
import type { EdgeArris } from "miterwright/profile";

/** A molding of the guides: plain, with a rabbet. */
export type PlainMolding = Profile<EdgeArris | RabbetArris>;

/** A molding with a rabbet that takes about a quarter of its width and half its thickness. */
export function plainMolding(width: number, thickness: number): PlainMolding {
  return molding({ width, thickness, rabbet: { width: width / 5, depth: thickness / 2 } });
}
