import type { PanelPlan } from "../../panel/index.js";
import { workAtGauge } from "../../panel/internal.js";
import { roundLength, type RoundLength } from "../round-length.js";
import { raise, type HazardRule, type PlanFacts } from "./hazard-rule.js";

/** Deeper work takes the gauge off the front of most tables before the cut begins; common practice, no printed source. */
const GAUGE_REACH: RoundLength = { millimeters: 300, inches: 12 };
/** An edge shorter than this does not hold a panel at the gauge, and brings hands to the blade; common practice, no printed source. */
const SHORT_BEARING: RoundLength = { millimeters: 150, inches: 6 };
/** A hand does not pass between fence and blade where the rip is narrower than this; common practice, no printed source. */
const NARROW_RIP: RoundLength = { millimeters: 150, inches: 6 };
/** The last stretch of a cut is fed with a push stick; see {@link PUSH_STICK_SOURCE}, which has millimeters: the inches are no less. */
const PUSHED: RoundLength = { millimeters: 300, inches: 12 };
/** A push stick is at least so long; see {@link PUSH_STICK_SOURCE}, which has millimeters: the inches are no less. */
const PUSH_STICK: RoundLength = { millimeters: 450, inches: 18 };
const PUSH_STICK_SOURCE: string =
  "HSE, Woodworking Information Sheet 16, Circular saw benches, as a contractor's safety standard restates it; the narrowest width is common practice";

/** The panel, where one is sawn. */
function sawnPanel({ contents, panel }: PlanFacts): PanelPlan | null {
  return contents.work === "sawn" ? panel : null;
}

/** How the panel lies at the gauge: too deep for the table before the cut, or on too short an edge. */
export const gaugeWork: HazardRule = (facts) => {
  const { brief, unit } = facts;
  const panel = sawnPanel(facts);
  const work = panel === null ? [] : workAtGauge(panel);
  if (work.length === 0) return [];
  const depth = Math.max(...work.map((one) => one.depth));
  const reach = brief.saw.gaugeReach ?? roundLength(GAUGE_REACH, unit);
  const bearing = Math.min(...work.map((one) => one.bearing));
  const limit = roundLength(SHORT_BEARING, unit);
  return [
    ...(depth > reach ? raise("deep-panel", "warning", { quantities: { length: { depth, limit: reach } } }) : []),
    ...(bearing < limit ? raise("short-panel-edge", "danger", { quantities: { length: { bearing, limit } } }) : []),
  ];
};

/** A rip too narrow for a hand between fence and blade. */
export const narrowRip: HazardRule = (facts) => {
  const { unit } = facts;
  const blank = sawnPanel(facts)?.blank;
  const limit = roundLength(NARROW_RIP, unit);
  if (blank === undefined) return [];
  const width = Math.min(blank.width, blank.height);
  if (width >= limit) return [];
  const length = { width, limit, lastStretch: roundLength(PUSHED, unit), pushStick: roundLength(PUSH_STICK, unit) };
  return raise("narrow-rip", "danger", { quantities: { length }, source: PUSH_STICK_SOURCE });
};
