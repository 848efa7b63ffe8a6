/** A corner of a section, seen from a side on which `toward` grows. */
export interface SeenCorner {
  /** Its place on the paper, square to the body's length. */
  readonly across: number;
  /** How near to the viewer it is. */
  readonly toward: number;
}

/**
 * The faces of a long body that a viewer sees, as pairs of neighboring corners of its section, the farthest first so that nearer ones are painted over them.
 *
 * @param corners - the section, counter-clockwise with `across` to the right and `toward` up
 * @returns pairs of indexes
 */
export function seenFaces(corners: readonly SeenCorner[]): (readonly [number, number])[] {
  const faces = corners.map((_, index) => [index, (index + 1) % corners.length] as const);
  const depth = ([a, b]: readonly [number, number]): number => corners[a]!.toward + corners[b]!.toward;
  return (
    faces
      // The outside of a counter-clockwise section is to the right of its edges: it faces the viewer where an edge goes backward.
      .filter(([a, b]) => corners[b]!.across < corners[a]!.across)
      .sort((one, other) => depth(one) - depth(other))
  );
}
