import type { Point } from "../core/geometry-types.js";

/** An outline seen from its first point, in units of its largest coordinate there. */
export interface ScaledOutline {
  /** The scaled points, each coordinate from -1 to 1. */
  readonly points: readonly Point[];
  /** The unit; 0 when all points are one. */
  readonly unit: number;
}

/**
 * Moves an outline to its first point and scales it to 1, so that products neither lose a common offset's digits nor overflow.
 */
export function scaledOutline(outline: readonly Point[]): ScaledOutline {
  const origin = outline[0]!;
  const moved = outline.map(({ x, y }) => ({ x: x - origin.x, y: y - origin.y }));
  let unit = 0;
  for (const { x, y } of moved) unit = Math.max(unit, Math.abs(x), Math.abs(y));
  return { points: unit === 0 ? moved : moved.map(({ x, y }) => ({ x: x / unit, y: y / unit })), unit };
}
