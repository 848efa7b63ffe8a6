import type { FramePlan } from "miterwright/frame";
import type { StockFit } from "miterwright/stock";
import type { RackWords } from "./labels/rack-words.js";
import type { EssenceValues } from "./labels/status-words.js";
import type { Pen } from "./writers.js";

/** What is known of the rack: nothing was asked of it, it is being looked at, what it gives, or why it does not suit. */
export type Rack =
  | { readonly kind: "none" | "pending" }
  | { readonly kind: "fit"; readonly fit: StockFit }
  | { readonly kind: "refused"; readonly why: keyof RackWords["refused"] };

/** The numbers that are looked for first; `null` where no lay suits the saw. */
export function essenceOf({ sawing, geometry }: FramePlan, { formats }: Pen): EssenceValues | null {
  if (sawing.lay === null) return null;
  const { miter, bevel } = sawing.lay.first;
  const { angle, length } = formats;
  return {
    miter: angle(miter.reading),
    bevel: angle(bevel.reading),
    length: length(geometry.pieces[0].longest.length),
  };
}

/**
 * How far a plan is: ready, or what is in its way.
 *
 * @param plan - the plan
 * @param notReady - what its report says has to be mended
 * @param rack - what is known of the sticks
 * @param pen - what the page writes with
 * @returns a sentence or two
 */
export function readyText(plan: FramePlan, notReady: readonly string[], rack: Rack, pen: Pen): string {
  const { page, words } = pen;
  const first = essenceOf(plan, pen);
  if (notReady.length > 0 || first === null) return notReady.join(" ");
  if (rack.kind === "refused") return words.reports.notReady({ reason: page.rack.refused[rack.why] });
  const pieces = plan.geometry.pieces[0].count;
  return page.status.ready({ ...first, pieces, isFitting: rack.kind === "pending" });
}
