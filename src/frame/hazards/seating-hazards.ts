import { isPane } from "../contents/layer-names.js";
import { roundLength, type RoundLength } from "../round-length.js";
import { COMPUTED, raise, type HazardRule, type PlanFacts } from "./hazard-rule.js";

/** A lip that laps less than this holds nothing once the wood has moved; common practice, no printed source. */
const LEAST_LAP: RoundLength = { millimeters: 3, inches: 0.125 };
/** A distance this small is rounding, as a share of the contents' size. */
const ROUNDING: number = 1e-12;

/** A frame of four sides is a square, and what it should contain misses its lip. */
export const missedLip: HazardRule = ({ brief, rest }) => {
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
  const parts = { quantities: { length }, facts: { pose: rest.pose }, source: COMPUTED };
  if (rest.lip === 0) return raise("unfilled-opening", "notice", parts);
  // Whoever lays the contents in sees that they miss the lip; a pane that lies on two sides of it alone can drop later on.
  const signal = contents.some(isPane) ? "warning" : "notice";
  return raise(rest.lip === null ? "lip-not-known" : "missed-lip", signal, parts);
};

/** The clearance leaves no contents. */
export const nothingLeft: HazardRule = ({ brief, contents }) => {
  if (contents.panel !== null) return [];
  const quantities = { length: { clearance: brief.clearance } };
  return raise("no-contents-left", "notice", { quantities, source: COMPUTED });
};

/** The rabbet cannot hold level contents. */
export const seatingImpossible: HazardRule = ({ brief, contents: { panel, seating } }) => {
  if (panel === null || seating?.possible !== false) return [];
  return raise("seating-impossible", "notice", {
    quantities: { angle: { slope: brief.slope } },
    facts: { reason: seating.reason },
    source: COMPUTED,
  });
};

/** Whether something goes into the rabbet, as far as is known. */
function isSeated({ contents: { panel, seating } }: PlanFacts): boolean {
  return panel !== null && seating?.possible !== false;
}

/** The least by which the lip laps what it holds, and how far that can slide to one side. */
function lapAndRoom({ contents: { lap }, rest, brief: { clearance } }: PlanFacts): [number, number] {
  if (rest?.pose !== "side-down") return [lap, clearance];
  return [-Math.max(rest.pastAcross, rest.pastUp), Math.max(rest.roomAcross, rest.roomUp)];
}

/** The lip laps its contents so little that they can slide off it. Another hazard says that they miss it altogether. */
export const narrowLip: HazardRule = (facts) => {
  const { brief, contents, unit } = facts;
  const [lap, room] = lapAndRoom(facts);
  const limit = Math.max(roundLength(LEAST_LAP, unit), room);
  if (contents.panel === null || contents.seating?.possible !== true || !(lap > 0 && lap < limit)) return [];
  const signal = brief.contents.some(isPane) ? "warning" : "caution";
  return raise("narrow-lip", signal, { quantities: { length: { lap, limit } } });
};

/** The stack against the rabbet: too thick, or too thick when the glass is. */
export const stackDepth: HazardRule = (facts) => {
  const { stack } = facts.contents;
  if (!isSeated(facts) || stack === null) return [];
  const { verdict, left, leftAtLeast } = stack;
  if (verdict === null || left === null || leftAtLeast === null || verdict === "roomy") return [];
  const limit = facts.brief.fastenerRoom;
  if (verdict === "tight") {
    const quantities = { length: { left: leftAtLeast, limit } };
    return raise("glass-tolerance", "notice", { quantities, source: "EN 572-2 (values from memory)" });
  }
  return raise("shallow-rabbet", "notice", { quantities: { length: { left, limit } }, facts: { verdict } });
};

/** Level measures do not tell how contents lie in a rabbet that leans. */
export const seatingNotKnown: HazardRule = (facts) => {
  const { measured, slope, contents } = facts.brief;
  if (!isSeated(facts) || measured === undefined || slope === 0 || contents.length === 0) return [];
  return raise("seating-not-known", "notice", { quantities: { angle: { slope } } });
};
