import type { Box, Pose } from "../../core/geometry-types.js";
import { polygonExtent } from "../../polygon/index.js";
import type { FilledBrief } from "../brief/brief.js";
import type { FrameGeometry } from "../frame-geometry.js";

/** How an upright rectangle lies in a square frame once it is centered there, across and up. Negative: it reaches farther than that. */
export interface ContainedRest {
  /** How the frame stands. */
  readonly pose: Pose;
  /** How wide the lip is where contents bear, level; 0 where the molding has none, `null` where that is not known. */
  readonly lip: number | null;
  /** From its left and right edges to where the lip begins. */
  readonly pastAcross: number;
  /** From its upper and lower edges to where the lip begins. */
  readonly pastUp: number;
  /** From its left and right edges to the farthest point of the opening. */
  readonly roomAcross: number;
  /** From its upper and lower edges to the farthest point of the opening. */
  readonly roomUp: number;
}

/** How wide the lip is where contents bear. */
function lipWidth({ seating, measured }: FrameGeometry, clearance: number): number | null | undefined {
  if (seating !== null) return seating.possible ? seating.lap + clearance : undefined;
  if (measured !== null) return measured.lap ?? null;
  return 0;
}

/**
 * How the rectangle that a frame of four sides was made to hold lies on its lip.
 *
 * The frame is a square, so that what is not square reaches all of its sides in one direction alone. With other numbers of sides the panel is what the lip
 * holds,
 * and the rectangle is a picture on it. `null` where nothing was to be contained, the frame has another number of sides, or its rabbet holds nothing.
 */
export function containedRest(brief: FilledBrief, geometry: FrameGeometry): ContainedRest | null {
  const { clearance } = brief;
  const { sides, opening, pose } = geometry;
  const { contains } = brief.opening;
  if (contains === undefined || sides !== 4) return null;
  const lip = lipWidth(geometry, clearance);
  if (lip === undefined) return null;
  const reach = ({ width, height }: Box): readonly [number, number] => [
    (width - contains.width) / 2,
    (height - contains.height) / 2,
  ];
  const [roomAcross, roomUp] = reach(polygonExtent(opening, pose));
  // The lip's edge is a square too, with its corners `lip` times the square root of 2 nearer.
  const nearer = (lip ?? 0) * (pose === "side-down" ? 1 : Math.SQRT2);
  return { pose, lip, pastAcross: roomAcross - nearer, pastUp: roomUp - nearer, roomAcross, roomUp };
}
