import type { FrameGeometry } from "./frame-geometry.js";

/** One thing to measure on the dry frame, and what it must be. */
export interface FrameCheck {
  /** Which check. */
  readonly code:
    | "miter-sum"
    | "corner-angle"
    | "opening-side"
    | "opening-across-flats"
    | "opening-across-corners"
    | "overall-across-flats"
    | "overall-across-corners"
    | "level-width"
    | "slope";
  /** What to measure, for people. */
  readonly label: string;
  /** Whether the value is a length in the plan's unit or an angle in degrees. */
  readonly kind: "length" | "angle";
  /** What it must be. */
  readonly value: number;
}

/**
 * What to measure on a frame before it is glued.
 *
 * @param geometry - the frame
 * @returns the checks, in the order in which they are best made
 */
export function frameChecks(geometry: FrameGeometry): FrameCheck[] {
  const { sides, opening, overall, slope, levelWidth } = geometry;
  const { planMiter } = geometry.corners[0]!;
  const flats = sides % 2 === 0 ? "from side to opposite side" : "from corner to opposite side";
  const inside = geometry.fit === null && geometry.measured === null ? "inside" : "in the rabbet";
  const checks: FrameCheck[] = [
    { code: "miter-sum", label: `${sides} corners, two plan miters each, add up to`, kind: "angle", value: 360 },
    { code: "corner-angle", label: "angle of every corner in plan, inside", kind: "angle", value: 180 - 2 * planMiter },
    {
      code: "opening-side",
      label: `side of the opening, ${inside}, corner to corner`,
      kind: "length",
      value: opening.side,
    },
    { code: "opening-across-flats", label: `opening, ${inside}, ${flats}`, kind: "length", value: opening.acrossFlats },
    {
      code: "opening-across-corners",
      label: `opening, ${inside}, between the two corners farthest apart`,
      kind: "length",
      value: opening.acrossCorners,
    },
    {
      code: "overall-across-flats",
      label: `whole frame, ${flats}`,
      kind: "length",
      value: overall.polygon.acrossFlats,
    },
    {
      code: "overall-across-corners",
      label: "whole frame, between the two corners farthest apart",
      kind: "length",
      value: overall.polygon.acrossCorners,
    },
    {
      code: "level-width",
      label: `width of the molding, taken level, from ${inside === "inside" ? "the inside" : "the rabbet's wall"} to the outermost point`,
      kind: "length",
      value: levelWidth,
    },
  ];
  if (slope !== 0)
    checks.push({ code: "slope", label: "slope of every side against the bench", kind: "angle", value: slope });
  return checks;
}
