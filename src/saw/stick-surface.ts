/** A surface of the stick. */
export type StickSurface = "back" | "face" | "sight-edge" | "outer-edge";

/** The side of a frame that is looked at: a picture frame's face, or the back of a box and a planter, whose faces look inward. */
export type ShowingSide = "face" | "back";

/** Which way each surface of a section faces: across it, outward from the sight edge, and through it, from back to face. */
export const SURFACE_NORMALS: Readonly<Record<StickSurface, readonly [across: number, through: number]>> = {
  back: [0, -1],
  face: [0, 1],
  "sight-edge": [-1, 0],
  "outer-edge": [1, 0],
};
