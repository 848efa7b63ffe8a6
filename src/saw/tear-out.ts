import { atan2Deg } from "../core/degrees.js";
import type { CutPlane } from "../miter/index.js";
import type { Direction, SideSurfaces } from "./side-surfaces.js";
import type { ShowingSide, StickSurface } from "./stick-surface.js";

/** A surface through which the teeth leave the wood, and break its fibers out unless something backs them. */
export interface TearOut {
  /** The surface. */
  readonly surface: StickSurface;
  /** What can back it there. */
  readonly at: "table" | "cradle" | "fence";
  /** Whether it is seen in the finished frame: the edges are, and of face and back the side that shows. */
  readonly shows: boolean;
  /**
   * Angle of the wood that is kept between this surface and the cut, in degrees; the sharper, the easier it breaks. It is that of the molding's own surface where
   * the section is known, else that of a square edge.
   */
  readonly edgeAngle: number;
}

/** What is known of a stick's surfaces, whichever end is cut. */
export interface StickLook {
  /** Whether it is known to lie still on a surface of its own. */
  readonly isLying: boolean;
  /** Which way the surfaces of its sides face. */
  readonly sides: SideSurfaces;
  /** The side that shows. */
  readonly shows: ShowingSide;
}

/** What {@link tearOutOf} needs to know. */
export interface TearOutQuestion {
  /** The cut, a unit normal. */
  readonly plane: CutPlane;
  /** The surface that lies down. */
  readonly down: StickSurface;
  /** The surface at the fence. */
  readonly atFence: StickSurface;
  /** Whether a cradle is under the stick. */
  readonly cradled: boolean;
  /** What is known of the stick's surfaces. */
  readonly look: StickLook;
}

/**
 * Where the blade leaves the wood.
 *
 * The teeth in the wood go down and toward the fence. That holds for a table saw whose gauge pushes the work from your side, and for a miter saw that comes
 * down in front of a fence behind the work. So they leave through the surface that lies down and the one at the fence. The arris left there has the angle 90 +
 * asin(n . s), for the cut's normal n and the surface's s. Common practice, no printed source.
 */
export function tearOutOf(question: TearOutQuestion): readonly TearOut[] {
  const { plane, down, atFence, cradled, look } = question;
  const angleAt = ([across, through]: Direction): number => {
    const cosine = across * plane.across + through * plane.through;
    const sine = Math.hypot(plane.along, across * plane.through - through * plane.across);
    return 90 + atan2Deg(cosine, sine);
  };
  const leaving = (surface: StickSurface, at: TearOut["at"]): TearOut => {
    const isSide = surface === "face" || surface === "back";
    return {
      surface,
      at,
      shows: !isSide || surface === look.shows,
      edgeAngle: Math.min(...look.sides[surface].map(angleAt)),
    };
  };
  return [leaving(down, cradled ? "cradle" : "table"), leaving(atFence, "fence")];
}
