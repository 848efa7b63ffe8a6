import type { ClosingReason } from "../../closure/index.js";
import type { ContentsReason, HangingReason } from "../../frame/index.js";

/** Why something that was asked for cannot be made: the contents held, the ring closed, the frame hung. */
export type Reason = ContentsReason | ClosingReason | HangingReason;

/** Why something cannot be made, for every reason that a result gives. */
export type ReasonWords = { readonly [R in Reason]: () => string };

/** In English. */
export const englishReasons: ReasonWords = {
  "past-mouth": () =>
    "The rabbet is too shallow: at this slope its wall ends before it reaches the front of level contents.",
  "falls-through": () =>
    "The rabbet is too narrow: contents small enough to go in would fall through the sight opening.",
  "too-steep": () => "The frame is too steep: at this slope the rabbet's ledge and wall no longer face level contents.",
  "no-contents-left": () => "The clearance leaves nothing of the opening.",
  "no-room": () => "The two open ends lie on each other and leave no room for a piece.",
  "ends-turned-away": () => "The two open ends do not look toward each other: no piece can lie between them.",
  "no-wall-surface": () =>
    "No surface of the molding lies toward the wall at this slope, so a hanger has nothing to lie on: hang the frame by a cleat or a bracket of its own.",
};
