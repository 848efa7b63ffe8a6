import { checkArray, checkNumber, checkObject, checkSides, checkSlope, checkWord } from "../core/check.js";
import type { CuttingPlan, FrameContents, FrameGeometry } from "../frame/index.js";

/** A frame's geometry, or a plan that holds it, as it was made or read back from JSON. */
export type FrameToDraw =
  | FrameGeometry
  | {
      /** The frame. */
      readonly geometry: FrameGeometry;
      /** What goes into it; drawn where it is given. */
      readonly contents?: FrameContents;
    };

/** A plan whose cutting is drawn. */
export interface CuttingToDraw {
  /** The frame. */
  readonly geometry: FrameGeometry;
  /** How its sticks are cut. */
  readonly cutting: CuttingPlan;
}

/** The numbers of a geometry that drawings rely on, as paths. */
const NUMBERS: readonly string[] = [
  "levelWidth",
  "deciding.out",
  "opening.apothem",
  "opening.side",
  "overall.polygon.apothem",
  "overall.polygon.side",
  "overall.polygon.acrossFlats",
  "overall.polygon.acrossCorners",
  "overall.extent.width",
  "overall.extent.height",
  "corners.0.planMiter",
  "sticks.0.longest.out",
  "sticks.0.longest.length",
  "sticks.0.shortest.out",
  "sticks.0.shortest.length",
];

function checkNumberAt(geometry: unknown, path: string): void {
  const keys = path.split(".");
  const last = keys.pop()!;
  let holder = checkObject(geometry, "geometry");
  let name = "geometry";
  for (const key of keys) {
    const value = holder[key];
    if (key === "0") {
      name += "[0]";
    } else {
      name += `.${key}`;
    }
    // An array's item 0 is read like a field.
    holder = Array.isArray(value) ? (checkArray(value, name) as unknown as typeof holder) : checkObject(value, name);
  }
  checkNumber(holder[last], `${name}.${last}`, -Number.MAX_VALUE, Number.MAX_VALUE, "a finite number");
}

/**
 * Reads a frame's geometry from wherever it stands.
 *
 * @param frame - a geometry or a plan
 * @returns the geometry, checked where drawings rely on it
 * @throws {InputError} when it is not one
 */
export function readGeometry(frame: unknown): FrameGeometry {
  const given = checkObject(frame, "frame");
  const geometry = checkObject(given["geometry"] ?? given, "geometry");
  checkSides(geometry["sides"], "geometry.sides");
  checkSlope(geometry["slope"], "geometry.slope");
  checkWord(geometry["pose"], "geometry.pose", ["side-down", "corner-down"]);
  checkObject(geometry["marks"], "geometry.marks");
  for (const path of NUMBERS) checkNumberAt(geometry, path);
  return geometry as unknown as FrameGeometry;
}

/**
 * Reads a plan's geometry and cutting.
 *
 * @param plan - the plan
 * @returns both
 * @throws {InputError} when one of them is missing
 */
export function readCutting(plan: unknown): CuttingToDraw {
  const cutting = checkObject(checkObject(plan, "plan")["cutting"], "cutting");
  checkArray(cutting["operations"], "cutting.operations", "an array of operations");
  return { geometry: readGeometry(plan), cutting: cutting as unknown as CuttingPlan };
}
