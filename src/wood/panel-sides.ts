import { checkInteger, checkLength, checkObject, checkOneOf, MAX_FRAME_SIDES } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";

/** A side of a panel, seen from its center: its outward normal and its two ends. */
export interface PanelSide {
  /** Unit vector that points outward. */
  readonly normal: Point;
  /** Where it starts and ends. */
  readonly ends: readonly [Point, Point];
}

/** The four sides of an upright rectangle, counter-clockwise from the one at the bottom. */
function boxSides(value: unknown): PanelSide[] {
  const box = checkObject(value, "box");
  const x = checkLength(box["width"], "box.width") / 2;
  const y = checkLength(box["height"], "box.height") / 2;
  const [a, b, c, d] = [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ];
  return [
    { normal: { x: 0, y: -1 }, ends: [a, b] },
    { normal: { x: 1, y: 0 }, ends: [b, c] },
    { normal: { x: 0, y: 1 }, ends: [c, d] },
    { normal: { x: -1, y: 0 }, ends: [d, a] },
  ];
}

/** The sides of a regular polygon that stands on side 0, counter-clockwise from it. */
function polygonSides(value: unknown): PanelSide[] {
  const polygon = checkObject(value, "polygon");
  const sides = checkInteger(polygon["sides"], "polygon.sides", 3, MAX_FRAME_SIDES);
  const radius = checkLength(polygon["apothem"], "polygon.apothem") / cosDeg(180 / sides);
  /** The direction that lies so many half sides on from the middle of side 0. */
  const direction = (halves: number): Point => {
    const angle = (180 * halves) / sides;
    return { x: sinDeg(angle), y: -cosDeg(angle) + 0 };
  };
  const corner = (halves: number): Point => {
    const { x, y } = direction(halves);
    return { x: radius * x, y: radius * y };
  };
  return Array.from({ length: sides }, (_, side) => ({
    normal: direction(2 * side),
    ends: [corner(2 * side - 1), corner(2 * side + 1)],
  }));
}

/**
 * The sides of a panel that is given as a regular polygon or as a rectangle. Counter-clockwise from the one at the bottom.
 */
export function panelSides(given: Readonly<Record<string, unknown>>): PanelSide[] {
  return checkOneOf(given, "", ["polygon", "box"]) === "box" ? boxSides(given["box"]) : polygonSides(given["polygon"]);
}
