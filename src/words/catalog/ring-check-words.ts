import type { RingCheck } from "../../closure/index.js";

/** What to measure, for every check of a ring. */
export type RingCheckWords = { readonly [C in RingCheck["code"]]: () => string };

/** In English. */
export const englishRingChecks: RingCheckWords = {
  "piece-length": () =>
    "length of every piece along the line that is measured at; one against the other, not by the rule",
  "corner-angle": () => "inside angle of every tight corner, taken level",
  "last-joint": () => "gap of the last joint, one end touching",
  "side-to-side": () => "from the middle of each side square to the opposite side",
  "corner-to-side": () => "from each corner square to the opposite side",
  "corner-to-corner": () => "between every two corners farthest apart",
  flatness: () => "gap under any corner on a flat bench",
  slope: () => "slope of every side against the bench, the joints tight",
};
