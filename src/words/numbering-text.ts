import type { Pose } from "../core/geometry-types.js";

const FIRST: Readonly<Record<Pose, string>> = {
  "side-down": "the side at the bottom",
  "corner-down": "the side to the right of the bottom corner",
};

/**
 * How the sides of a frame or a panel are numbered where people read their numbers.
 *
 * @param pose - how it stands
 * @returns a sentence
 */
export function numberingText(pose: Pose): string {
  return `Sides are numbered counter-clockwise from 1, ${FIRST[pose]}.`;
}
