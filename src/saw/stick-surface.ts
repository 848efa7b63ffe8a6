/** A surface of the stick. */
export type StickSurface = "back" | "face" | "sight edge" | "outer edge";

/** Which way each surface of a section faces: across it, outward from the sight edge, and through it, from back to face. */
export const SURFACE_NORMALS: Readonly<Record<StickSurface, readonly [across: number, through: number]>> = {
  back: [0, -1],
  face: [0, 1],
  "sight edge": [-1, 0],
  "outer edge": [1, 0],
};
