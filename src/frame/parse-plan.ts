import { readStored } from "../core/stored.js";
import { plainCopy } from "../core/plain-copy.js";
import type { FramePlan } from "./plan-frame.js";
import { framePlan } from "./stored/plan.js";

/**
 * Reads a plan that was stored: from JSON, a database, or another program.
 *
 * Every field is looked at, and so is whether the parts agree. Drawings, tables and sheets read plans by the same reader, so a plan that this function takes can
 * be drawn and printed. Numbers are not computed anew: that they are those of the brief is not checked.
 *
 * @param value - anything
 * @returns a copy of the plan
 * @throws {InputError} for the first field that is missing, damaged or at odds with another, and for a plan of another `schemaVersion`
 * @example
 * ```ts
 * import { parsePlan, planFrame } from "miterwright/frame";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * const stored = JSON.stringify(plan);
 * parsePlan(JSON.parse(stored)).geometry.pieces[0].longest.length.toFixed(1); //=> "246.2"
 * ```
 */
export function parsePlan(value: unknown): FramePlan {
  return plainCopy(readStored(value, "plan", framePlan));
}
