import type { FrameCheck } from "../../frame/index.js";

/** What the words for a check may tell of. */
export interface CheckValues {
  /** Number of sides. */
  readonly sides: number;
  /** What to call the edge that is measured at. Checks at no edge leave it out. */
  readonly edge: string;
  /** Where the opening and the width taken level are measured. */
  readonly place: FrameCheck["place"];
}

/** What to measure, for every check of a frame. */
export type CheckWords = { readonly [C in FrameCheck["code"]]: (values: CheckValues) => string };

/** Across flats: an odd polygon has no opposite sides. */
function flats({ sides }: CheckValues): string {
  return sides % 2 === 0 ? "side to opposite side" : "corner to opposite side";
}

/** Where the opening is measured, within a sentence. */
function placeOf({ edge, place }: CheckValues): string {
  return place === "arris" ? `at the ${edge}` : place === "rabbet" ? "in the rabbet" : "inside";
}

/** The opening on the glued frame: where it is, only if it is not where one would look. */
function again(values: CheckValues): string {
  return values.place === "arris" ? `opening again, ${placeOf(values)},` : "opening again,";
}

/** In English. */
export const englishChecks: CheckWords = {
  "piece-length": ({ edge }) => `length of every piece along the ${edge}, one against the other`,
  "level-width": ({ edge, place }) => {
    const start = place === "arris" ? `the ${edge}` : place === "rabbet" ? "the rabbet's wall" : "the inside";
    return `width taken level, from ${start}`;
  },
  "miter-sum": ({ sides }) => `${sides} corners, two plan miters each, add up to`,
  "corner-angle": () => "inside angle of every tight corner, in plan",
  "last-joint": () => "gap of the last joint, its other end touching",
  "opening-across-flats": (values) => `opening, ${placeOf(values)}, ${flats(values)}`,
  "opening-across-corners": (values) => `opening, ${placeOf(values)}, corner to farthest corner`,
  "overall-across-flats": (values) => `overall, ${flats(values)}`,
  "overall-across-corners": () => "overall, corner to farthest corner",
  flatness: () => "gap under any corner on a flat bench",
  slope: () => "slope of every side against the bench",
  "glued-across-flats": (values) => `${again(values)} before the panel is cut, ${flats(values)}`,
  "glued-across-corners": (values) => `${again(values)} corner to farthest corner`,
  "glued-flatness": () => "gap under any corner on a flat bench, again",
};
