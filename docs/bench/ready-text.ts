import { type FramePlan } from "miterwright/frame";
import { hazardText, reasonText } from "miterwright/words";
import type { StockFit } from "miterwright/stock";
import { shortageText } from "./cards/stock-card.js";
import type { Writers } from "./writers.js";

/** What is known of the rack: nothing was asked of it, it is being looked at, what it gives, or why it does not suit. */
export type Rack =
  | { readonly kind: "none" | "pending" }
  | { readonly kind: "fit"; readonly fit: StockFit }
  | { readonly kind: "refused"; readonly why: string };

/** What the rack lacks; "" where it lacks nothing. */
function rackText({ hazards }: FramePlan, writers: Writers, rack: Rack): string {
  const short = hazards.find(({ code }) => code === "short-stick");
  if (short !== undefined) return hazardText(short, writers).sentence;
  if (rack.kind === "refused") return `The sticks don't suit: ${rack.why}`;
  return rack.kind === "fit" && rack.fit.status === "short" ? shortageText(rack.fit) : "";
}

/**
 * How far a plan is: ready, or what is in its way.
 *
 * @param plan - the plan
 * @param writers - how lengths and angles are written
 * @param rack - what is known of the sticks; default nothing
 * @returns a sentence or two
 */
export function readyText(plan: FramePlan, writers: Writers, rack: Rack = { kind: "none" }): string {
  const { sawing, geometry, hazards, contents } = plan;
  const missed = hazards.find(({ code }) => code === "missed-lip" || code === "lip-not-known");
  if (missed !== undefined) {
    const { sentence, numbers } = hazardText(missed, writers);
    return `Not ready yet. ${sentence} (${numbers})`;
  }
  if (contents.reason !== null) {
    return `Not ready yet. The contents can't be held. ${reasonText(contents.reason)}`;
  }
  if (sawing.lay === null) return "No way to lay the stick suits this saw.";
  const lack = rackText(plan, writers, rack);
  if (lack !== "") return `Not ready yet. ${lack}`;
  const { length, angle } = writers;
  const { longest, count } = geometry.pieces[0];
  const { miter, bevel } = sawing.lay.first;
  const said = rack.kind === "pending" ? "The sticks are still being fitted" : "The plan is ready";
  return `${said}: ${count} pieces of ${length(longest.length)}, miter scale at ${angle(miter.reading)}, bevel scale at ${angle(bevel.reading)}.`;
}
