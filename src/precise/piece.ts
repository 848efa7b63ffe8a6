import type { Real, RealField } from "./real-field.js";
import { space, type Vec } from "./space.js";

/** A piece's own axes as it stands in the frame, each of length 1. */
export interface PieceAxes {
  /** Level, counter-clockwise round the frame. */
  readonly along: Vec;
  /** Level, away from the frame's center. */
  readonly out: Vec;
  /** In the face, from the sight edge to the outer edge. */
  readonly across: Vec;
  /** From the back to the face. */
  readonly through: Vec;
}

/** The axes of a piece at the bottom of the frame, the one that ends at the corner. */
export function firstPiece(field: RealField, slope: Real): PieceAxes {
  const { vec, add, sub, scale } = space(field);
  const [sine, cosine] = field.sinCos(slope);
  const out = vec(0, -1, 0);
  const up = vec(0, 0, 1);
  return {
    along: vec(1, 0, 0),
    out,
    across: add(scale(cosine, out), scale(sine, up)),
    through: sub(scale(cosine, up), scale(sine, out)),
  };
}

/** The axes of the next piece, the one that starts at the corner: turned about the vertical. */
export function secondPiece(field: RealField, slope: Real, turn: Real): PieceAxes {
  const { along, out, across, through } = firstPiece(field, slope);
  const turned = (axis: Vec): Vec => space(field).turn(axis, turn);
  return { along: turned(along), out: turned(out), across: turned(across), through: turned(through) };
}
