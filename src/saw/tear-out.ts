import { atan2Deg } from "../core/degrees.js";
import type { CutPlane } from "../miter/index.js";
import { SURFACE_NORMALS, type StickSurface } from "./stick-surface.js";

/** A surface through which the teeth leave the wood, and break its fibers out unless something backs them. */
export interface TearOut {
  /** The surface. */
  readonly surface: StickSurface;
  /** What can back it there. */
  readonly at: "table" | "cradle" | "fence";
  /** Whether it is seen in the finished frame: every surface but the back. */
  readonly shows: boolean;
  /** Angle of the wood that is kept between this surface and the cut, in degrees; the sharper, the easier it breaks. */
  readonly arris: number;
}

/**
 * Where the blade leaves the wood.
 *
 * The teeth in the wood go down and toward the fence, on a table saw whose gauge pushes the work from your side as on a miter saw that comes down in front
 * of a fence behind the work. So they leave through the surface that lies down and the one at the fence. The arris left there has the angle
 * 90 + asin(n . s), for the cut's normal n and the surface's s. Common practice, no printed source.
 *
 * @param plane - the cut, a unit normal
 * @param down - the surface that lies down
 * @param atFence - the surface at the fence
 * @param cradled - whether a cradle is under it
 * @returns the two surfaces
 */
export function tearOutOf(
  plane: CutPlane,
  down: StickSurface,
  atFence: StickSurface,
  cradled: boolean,
): readonly TearOut[] {
  const leaving = (surface: StickSurface, at: TearOut["at"]): TearOut => {
    const [across, through] = SURFACE_NORMALS[surface];
    const cosine = across * plane.across + through * plane.through;
    const sine = Math.hypot(plane.along, across * plane.through - through * plane.across);
    return { surface, at, shows: surface !== "back", arris: 90 + atan2Deg(cosine, sine) };
  };
  return [leaving(down, cradled ? "cradle" : "table"), leaving(atFence, "fence")];
}
