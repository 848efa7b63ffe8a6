/**
 * A convex solid with regular faces, all of its corners alike: the faces round a corner, by their sides, and the dihedral
 * between the first two of them as printed, in degrees.
 */
export interface SolidDihedral {
  readonly solid: string;
  /** Sides of the faces round a corner, in order; the dihedral is that between the first and the second. */
  readonly faces: readonly number[];
  readonly printed: number;
  /** What one unit of the last printed place allows: half of it for a rounded value, all of it for a truncated one. */
  readonly within: number;
}

/** Source, read: encyclopaedia article "Dihedral angle" (a Wikipedia-derived copy). */
export const PLATONIC_DIHEDRALS: readonly SolidDihedral[] = [
  { solid: "tetrahedron", faces: [3, 3, 3], printed: 70.53, within: 0.005 },
  { solid: "cube", faces: [4, 4, 4], printed: 90, within: 1e-12 },
  { solid: "octahedron", faces: [3, 3, 3, 3], printed: 109.47, within: 0.005 },
  // Truncated: 116.5651 rounds to 116.57; the same article says 116 deg 34 min.
  { solid: "dodecahedron", faces: [5, 5, 5], printed: 116.56, within: 0.01 },
  { solid: "icosahedron", faces: [3, 3, 3, 3, 3], printed: 138.19, within: 0.005 },
];

/** Source: Wikipedia, "Table of polyhedron dihedral angles"; values from memory. */
export const ARCHIMEDEAN_DIHEDRALS: readonly SolidDihedral[] = [
  { solid: "cuboctahedron 3-4", faces: [3, 4, 3, 4], printed: 125.26, within: 0.005 },
  { solid: "truncated tetrahedron 6-6", faces: [6, 6, 3], printed: 70.53, within: 0.005 },
  { solid: "truncated tetrahedron 3-6", faces: [3, 6, 6], printed: 109.47, within: 0.005 },
  { solid: "truncated octahedron 4-6", faces: [4, 6, 6], printed: 125.26, within: 0.005 },
  { solid: "truncated octahedron 6-6", faces: [6, 6, 4], printed: 109.47, within: 0.005 },
  { solid: "truncated cube 8-8", faces: [8, 8, 3], printed: 90, within: 1e-12 },
  { solid: "truncated cube 3-8", faces: [3, 8, 8], printed: 125.26, within: 0.005 },
  { solid: "rhombicuboctahedron 4-4", faces: [4, 4, 4, 3], printed: 135, within: 1e-12 },
  { solid: "rhombicuboctahedron 3-4", faces: [3, 4, 4, 4], printed: 144.74, within: 0.005 },
  { solid: "truncated icosahedron 6-6", faces: [6, 6, 5], printed: 138.19, within: 0.005 },
  { solid: "truncated icosahedron 5-6", faces: [5, 6, 6], printed: 142.62, within: 0.005 },
  { solid: "icosidodecahedron 3-5", faces: [3, 5, 3, 5], printed: 142.62, within: 0.005 },
];

/**
 * Solids with all faces alike, at a corner where three of them meet with their blunt angles. Source as above; values from
 * memory, and so are the rhombs' angles.
 */
export const RHOMBIC_DIHEDRALS: readonly {
  readonly solid: string;
  readonly faceAngle: number;
  readonly printed: number;
}[] = [
  // The diagonals of the rhombs are as 1 to the root of 2, and as 1 to the golden ratio.
  { solid: "rhombic dodecahedron", faceAngle: (2 * Math.atan(Math.SQRT2) * 180) / Math.PI, printed: 120 },
  {
    solid: "rhombic triacontahedron",
    faceAngle: (2 * Math.atan((1 + Math.sqrt(5)) / 2) * 180) / Math.PI,
    printed: 144,
  },
];

/**
 * Pyramids of equilateral triangles. `base` is the printed dihedral at the base, `side` that between two triangles.
 *
 * Source, read: Wikipedia, "Square pyramid" (109.47 and 54.74, after Johnson 1966), "Elongated pentagonal pyramid" (138.19,
 * and 127.37 = 90 + 37.37, truncated from 37.377); the tetrahedron as in the table of Platonic solids.
 */
export const EQUILATERAL_PYRAMIDS: readonly {
  readonly sides: number;
  readonly base: number;
  readonly side: number;
  readonly within: number;
}[] = [
  { sides: 3, base: 70.53, side: 70.53, within: 0.005 },
  { sides: 4, base: 54.74, side: 109.47, within: 0.005 },
  { sides: 5, base: 37.37, side: 138.19, within: 0.01 },
];

/**
 * Angles between the sides of right prisms over regular polygons, which are the polygons' interior angles.
 *
 * Source, read: Wikipedia, "Elongated pentagonal pyramid", states 108 for five sides; the rule is the definition of a right prism.
 */
export const PRISM_DIHEDRALS: readonly { readonly sides: number; readonly side: number }[] = [
  { sides: 3, side: 60 },
  { sides: 4, side: 90 },
  { sides: 5, side: 108 },
  { sides: 6, side: 120 },
  { sides: 8, side: 135 },
  { sides: 10, side: 144 },
  { sides: 12, side: 150 },
];
