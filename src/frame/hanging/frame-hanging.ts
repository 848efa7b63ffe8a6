import type { Hanging } from "../brief/brief.js";
import type { FixingPair } from "./fixing-points.js";

/** Where a hanger lies on the molding, and what its screw finds there. */
export interface HangerSeat {
  /** Width of the surface that it is screwed to, across the stick. */
  readonly width: number;
  /** Angle of that surface to the wall in degrees, -45 to 45; 0 is flat. */
  readonly leanAngle: number;
  /** Which way the gap between the surface and the wall opens. */
  readonly opens: "nowhere" | "outward" | "inward";
  /** How far the middle of the surface stands off the wall when the frame's back touches it. */
  readonly standoff: number;
  /** How much wood a screw finds there, square to the surface, before it comes out at the other side. */
  readonly wood: number;
  /** How deep a screw may go, so that 3 mm of wood are left before it (common practice, no printed source); 0 or more. */
  readonly deepest: number;
  /** The brief's depth of the screws; `null` where it gives none. */
  readonly screwDepth: number | null;
  /** Whether that is no deeper than `deepest`; `null` without a depth. */
  readonly screwFits: boolean | null;
}

/** A wire between two fixings that lies over one hook. */
export interface HangingWire {
  /** Angle of each half above level, in degrees. */
  readonly angle: number;
  /** Length from fixing to fixing when it is taut; the knots come besides. */
  readonly length: number;
  /** How far its highest point lies above the fixings. */
  readonly rise: number;
  /** How far its highest point, the hook, stays below the frame's top; below 0 it shows above the frame. */
  readonly belowTop: number;
}

/** What the fixings carry. */
export interface HangingLoad {
  /** Mass in kilograms of all that is known to hang, extra mass included; `null` where nothing is known. */
  readonly mass: number | null;
  /** Whether that is all of it; if not, all of this is a least. */
  readonly complete: boolean;
  /** Its weight in newtons. */
  readonly weight: number | null;
  /** Pull of each half of the wire, or of each hook, as a share of the weight. */
  readonly share: number;
  /** The same in newtons. */
  readonly pull: number | null;
  /** By how much wire, hangers and hooks are usually stronger than the pull (common practice, no printed source, and no advice). */
  readonly factor: number;
  /** The pull times that factor, in newtons. */
  readonly strength: number | null;
}

/** A frame that can hang. */
export interface HungFrame extends FixingPair {
  /** There is a surface for the hangers. */
  readonly possible: true;
  /** How it hangs. */
  readonly by: Hanging["by"];
  /** Where a hanger lies; `null` where no section is known, and the fixings are then taken at the middle of the level width. */
  readonly seat: HangerSeat | null;
  /** The wire; `null` on two hooks. */
  readonly wire: HangingWire | null;
  /** What the fixings carry. */
  readonly load: HangingLoad;
}

/** Why a frame cannot hang. `no-wall-surface`: no surface of the molding lies toward the wall at this slope, so a hanger has nothing to lie on. */
export type HangingReason = "no-wall-surface";

/** A frame that has no place for hangers. */
export interface UnhungFrame {
  /** There is no surface for the hangers. */
  readonly possible: false;
  /** How it was to hang. */
  readonly by: Hanging["by"];
  /** Why not. */
  readonly reason: HangingReason;
}

/** How a frame hangs, or why it cannot. */
export type FrameHanging = HungFrame | UnhungFrame;
