import { cosDeg, tanDeg } from "../core/degrees.js";
import type { Profile } from "../profile/index.js";
import type { CutPlacement, Hand, ScaleSetting } from "../saw/index.js";
import type { SeenCorner } from "./piece-body.js";
import { rolledOutline } from "./rolled-outline.js";

/** A line along a stick that lies at the blade, seen from above by the person at the saw. */
export interface PlacedLine extends SeenCorner {
  /** Where the blade meets the line: its distance to the right of where it meets the table at the stick's near edge. */
  readonly cut: number;
  /** Whether it is drawn as an edge. */
  readonly sharp: boolean;
}

/** A stick at the blade, in units of the paper. */
export interface PlacedStick {
  /** Its lines, counter-clockwise with `across` to the right and `toward` up. `across` is 0 at the far edge and grows toward the person. */
  readonly lines: readonly PlacedLine[];
  /** Its size from the far edge to the near one. */
  readonly width: number;
  /** The smallest and the largest `cut`. */
  readonly reach: readonly [number, number];
}

/** How large a stick may be on the paper. */
export interface PlacedRoom {
  /** Largest width and height of its section. */
  readonly size: number;
  /** Largest distance along it from one end of the cut to the other. */
  readonly reach: number;
}

/** What stands for a section that is not known. */
const UNKNOWN: Pick<Profile, "outline"> = {
  outline: [
    { x: 0, y: 0 },
    { x: 2, y: 0 },
    { x: 2, y: 1 },
    { x: 0, y: 1 },
  ],
};

/** A hand as a sign: positive to the left. */
function signOf(toward: Hand | "none"): number {
  return toward === "left" ? 1 : toward === "right" ? -1 : 0;
}

function slantOf({ degrees, toward }: ScaleSetting): number {
  return signOf(toward) * tanDeg(degrees);
}

/**
 * Lays a stick at the blade as a placement says.
 *
 * The line of cut runs by tan(miter) to its hand for every unit away from the person, and by tan(bevel) / cos(miter) for every unit of height.
 */
export function placeStick(
  profile: Profile | null,
  slope: number,
  placement: CutPlacement,
  room: PlacedRoom,
): PlacedStick {
  const { outline } = profile ?? UNKNOWN;
  const tilt = profile === null ? 0 : slope - placement.rotation;
  // The outer side lies nearer to the person when the stick points right; otherwise all of it is the other way round.
  const hand = placement.along === "right" ? 1 : -1;
  const rolled = rolledOutline(outline, tilt).map(({ at, sharp }) => ({ near: hand * at.x, up: at.y, sharp }));
  const far = Math.min(...rolled.map(({ near }) => near));
  const low = Math.min(...rolled.map(({ up }) => up));
  const width = Math.max(...rolled.map(({ near }) => near)) - far;
  const height = Math.max(...rolled.map(({ up }) => up)) - low;
  const miter = slantOf(placement.miter);
  const bevel = slantOf(placement.bevel) / cosDeg(placement.miter.degrees);
  const cuts = rolled.map(({ near, up }) => -miter * (width - (near - far)) - bevel * (up - low));
  const [least, most] = [Math.min(...cuts), Math.max(...cuts)];
  const scale = Math.min(room.size / Math.max(width, height), room.reach / (most - least));
  const lines = rolled.map(({ near, up, sharp }, index) => ({
    across: (near - far) * scale,
    toward: (up - low) * scale,
    cut: cuts[index]! * scale,
    sharp,
  }));
  return { lines: hand > 0 ? lines : lines.reverse(), width: width * scale, reach: [least * scale, most * scale] };
}
