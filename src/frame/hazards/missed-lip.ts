import type { Hazard } from "../../core/hazard.js";
import type { FilledBrief } from "../brief/brief.js";
import type { ContainedRest } from "../contents/contained-rest.js";
import { isPane } from "../contents/layer-names.js";
import { makeHazard } from "./make-hazard.js";

/** A distance this small is rounding, as a share of the contents' size. */
const ROUNDING: number = 1e-12;

const SOURCE: string = "geometry of the opening";

/**
 * That a frame of four sides is a square, and what it should contain misses its lip.
 *
 * @param brief - the filled brief
 * @param rest - how the contents lie on the lip; `null` where nothing is contained
 * @returns the hazard, or none
 */
export function missedLip(brief: FilledBrief, rest: ContainedRest | null): Hazard[] {
  if (rest === null) return [];
  const { opening, clearance, contents } = brief;
  const { width, height, allowance = 0 } = opening.contains!;
  // Without a lip that is known the contents only have to fill the opening, less what is to be free beside them.
  const wanted = rest.lip === null || rest.lip === 0 ? clearance + allowance / 2 : 0;
  const least = wanted + ROUNDING * (width + height + clearance + allowance);
  const isAcross = rest.pastAcross > least;
  const isUp = rest.pastUp > least;
  if (!isAcross && !isUp) return [];
  const length = {
    ...(isAcross ? { leftAndRight: rest.pastAcross } : {}),
    ...(isUp ? { aboveAndBelow: rest.pastUp } : {}),
  };
  const parts = { quantities: { length }, facts: { pose: rest.pose }, source: SOURCE };
  if (rest.lip === 0) return [makeHazard("unfilled-opening", "notice", parts)];
  // Whoever lays the contents in sees that they miss the lip; a pane that lies on two sides of it alone can drop later on.
  const signal = contents.some(isPane) ? "warning" : "notice";
  return [makeHazard(rest.lip === null ? "lip-not-known" : "missed-lip", signal, parts)];
}
