import type { Box, Point, Pose } from "../core/geometry-types.js";
import type { RegularPolygon } from "../polygon/index.js";

/** How far a point lies from an edge of the blank. */
export interface EdgeDistance<E extends string = string> {
  /** The edge. */
  readonly edge: E;
  /** The distance, 0 or more. */
  readonly distance: number;
}

/** A corner or another point of the panel, located by two edges of the blank. */
export interface LocatedPoint {
  /** Where it is, from the blank's lower left corner: x to the right, y up. */
  readonly point: Point;
  /** The nearer of the blank's left and right edges, and the distance from it. */
  readonly fromSide: EdgeDistance<"left" | "right">;
  /** The nearer of the blank's bottom and top edges, and the distance from it. */
  readonly fromBase: EdgeDistance<"bottom" | "top">;
}

/** A corner of the panel. */
export interface PanelCorner extends LocatedPoint {
  /** Whether it lies inside the blank, where no edge shows it: it must be marked by its two distances. */
  readonly inside: boolean;
}

/** One cut of a panel. */
export interface PanelCut {
  /** Its place in the order of work, from 1. */
  readonly step: number;
  /** The side that is cut, numbered counter-clockwise from side 0. */
  readonly side: number;
  /** The side that lies against the gauge. */
  readonly against: number;
  /** How far the gauge is swung from square, in degrees. */
  readonly setting: number;
  /** Which way it is swung: `closed` where the kept part between fence and blade is less than square, `open` where it is more. */
  readonly swing: "closed" | "open";
  /** Which face of the panel is up: with the gauge left as it is, sides that come before the one at the fence are cut with the panel turned over. */
  readonly up: "front" | "back";
  /** How many times an error of the setting counts in this side's direction. */
  readonly errorMultiple: number;
  /** The middle of the side to be cut, where the line of cut is located on the blank. */
  readonly middle: LocatedPoint;
}

/** How a panel is cut from a squared blank. */
export interface PanelPlan {
  /** The panel. */
  readonly panel: RegularPolygon;
  /** How it stands in the blank. */
  readonly pose: Pose;
  /** The squared blank: the panel's bounding box. */
  readonly blank: Box;
  /** The panel's center, from the blank's lower left corner. */
  readonly center: Point;
  /** The sides that the blank has already. */
  readonly existing: readonly number[];
  /** The one setting of the gauge that all cuts use, in degrees from square. */
  readonly setting: number;
  /** How many sides on from the one at the fence the new side lies. */
  readonly sidesOn: number;
  /** The cuts in order. */
  readonly cuts: readonly PanelCut[];
  /** The corners, counter-clockwise from the start of side 0. */
  readonly corners: readonly PanelCorner[];
}
