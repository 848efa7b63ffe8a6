import type { Hazard } from "../../core/hazard.js";
import type { PanelPlan } from "../../panel/index.js";
import { workAtGauge } from "../../panel/internal.js";
import type { FilledBrief } from "../brief/brief.js";
import type { RoundLength } from "./round-length.js";
import { ruleLength } from "./common-practice.js";
import { makeHazard } from "./make-hazard.js";

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

function gaugeHazards(panel: PanelPlan, brief: FilledBrief): Hazard[] {
  const work = workAtGauge(panel);
  if (work.length === 0) return [];
  const hazards: Hazard[] = [];
  const depth = Math.max(...work.map((one) => one.depth));
  const reach = brief.saw.gaugeReach ?? ruleLength(GAUGE_REACH, brief.unit);
  if (depth > reach) {
    hazards.push(makeHazard("deep-panel", "warning", { quantities: { length: { depth, limit: reach } } }));
  }
  const bearing = Math.min(...work.map((one) => one.bearing));
  const limit = ruleLength(SHORT_BEARING, brief.unit);
  if (bearing < limit) {
    hazards.push(makeHazard("short-panel-edge", "danger", { quantities: { length: { bearing, limit } } }));
  }
  return hazards;
}

function narrowRip({ blank }: PanelPlan, { unit }: FilledBrief): Hazard[] {
  const width = Math.min(blank.width, blank.height);
  const limit = ruleLength(NARROW_RIP, unit);
  if (width >= limit) return [];
  const length = { width, limit, lastStretch: ruleLength(PUSHED, unit), pushStick: ruleLength(PUSH_STICK, unit) };
  return [makeHazard("narrow-rip", "danger", { quantities: { length }, source: PUSH_STICK_SOURCE })];
}

/**
 * The hazards of cutting the panel.
 *
 * @param panel - how it is cut; absent where there is none, or none is sawn
 * @param brief - the filled brief
 * @returns the hazards
 */
export function panelHazards(panel: PanelPlan | undefined, brief: FilledBrief): Hazard[] {
  return panel === undefined ? [] : [...gaugeHazards(panel, brief), ...narrowRip(panel, brief)];
}
