import type { SectionPoint } from "./profile.js";

/** One thing that lies in the rabbet. */
export interface RabbetContent {
  /** What to call it, e.g. `glass`. */
  readonly name: string;
  /** Its thickness in the caller's length unit, positive. */
  readonly thickness: number;
}

/** Options of {@link rabbetSeating}. */
export interface RabbetSeatingOptions {
  /** The frame's slope in degrees, -90 to 90. */
  readonly slope: number;
  /** What lies in the rabbet, front to back: the first lies nearest the viewer. May be empty. */
  readonly contents: readonly RabbetContent[];
  /** Kept free between contents and `opening` at every side, level, in the caller's length unit; zero or more. Default: 0. */
  readonly clearance?: number | undefined;
}

/** Between which heights one thing lies in the rabbet, measured like `up` of {@link SectionPoint}. */
export interface RabbetLayer {
  /** What it is called. */
  readonly name: string;
  /** Height of its front, the side toward the viewer. */
  readonly front: number;
  /** Height of its back. */
  readonly back: number;
}

/** The seating of level contents in a rabbet that can hold them. Lengths are in the caller's unit. */
export interface RabbetHold {
  /** The rabbet can hold level contents at this slope. */
  readonly possible: true;
  /** The slope in degrees. */
  readonly slope: number;
  /**
   * What the contents' front rests on. `"sight-edge"`: the sight edge's back arris, where the ledge rises outward. `"ledge"`: the whole ledge, where it is
   * level. `"corner"`: the ledge near its corner with the wall, where it falls outward; only the contents' outer arris rests there, short of the corner itself.
   */
  readonly bearsOn: "sight-edge" | "ledge" | "corner";
  /** The point where they bear; of a level ledge its inner end. */
  readonly bearing: SectionPoint;
  /** The point of the wall that decides the contents' size: the panel and the frame are sized there, whatever the contents' thickness. */
  readonly opening: SectionPoint;
  /** How far the lip laps the contents, level, from the sight edge's back arris to the contents' edge: `clearance` is taken off. Positive. */
  readonly lap: number;
  /** How much of the wall lies in front of the contents' back, along the wall from the ledge; 0 or more. */
  readonly depthUsed: number;
  /** How much of the wall is left behind the contents for fasteners, along the wall; negative when the contents stand proud of its mouth. */
  readonly depthLeft: number;
  /**
   * Level room that the wall's lean costs at every side, 0 or more: beside the contents' back when the wall leans
   * outward toward its mouth, between mouth and corner when it leans inward.
   */
  readonly roomLost: number;
  /** Thickness of all contents together. */
  readonly thickness: number;
  /** The contents from front to back. */
  readonly layers: readonly RabbetLayer[];
}

/**
 * Why a rabbet cannot hold level contents. `past-mouth`: the wall ends before the contents' front. `falls-through`: the contents are too small for the lip to
 * hold. `too-steep`: ledge and wall no longer face the contents; the wall does not go down from the ledge to its mouth, or the ledge does not face down.
 */
export type SeatingReason = "past-mouth" | "falls-through" | "too-steep";

/** That a rabbet cannot hold level contents, and why. */
export interface RabbetMiss {
  /** The rabbet cannot hold level contents at this slope. */
  readonly possible: false;
  /** The slope in degrees. */
  readonly slope: number;
  /** Why not. */
  readonly reason: SeatingReason;
  /** What is lacking, in the caller's length unit: depth along the wall, or level width of the ledge; 0 when it is `too-steep`. */
  readonly shortBy: number;
}

/** The seating of level contents in a rabbet, or why there is none. */
export type RabbetSeating = RabbetHold | RabbetMiss;
