import type { Decimal } from "decimal.js";
import type { Real, RealField } from "./real-field.js";
import { deriveSawSetting } from "./saw-setting.js";
import { space, type Vec } from "./space.js";
import { firstPiece, secondPiece, type PieceAxes } from "./piece.js";

/** How two boards share a corner: both mitered, or the first one ending on the second. */
export type PreciseJoint = "miter" | "butt";

/** What comes together: faces and backs, or inner and outer edges as seen from above. */
export type PreciseMeetingAt = "faces" | "edges";

/** A board that was checked. */
export interface ExactBoard {
  /** Slope in degrees. */
  readonly slope: Decimal;
  /** Thickness. */
  readonly thickness: Decimal;
  /** Width; only corners that meet at edges, of boards that differ, need it. */
  readonly width: Decimal | undefined;
}

/** A corner that can be made. */
export interface ExactCorner {
  /** Turn in degrees. */
  readonly turn: Decimal;
  /** The board that ends at the corner. */
  readonly first: ExactBoard;
  /** The board that starts there. */
  readonly second: ExactBoard;
  /** How they share it. */
  readonly joint: PreciseJoint;
  /** What comes together. */
  readonly meet: PreciseMeetingAt;
}

/** The numbers of an end cut. */
type CutNumber = "miter" | "bevel" | "slope" | "along" | "across" | "through";

/** The numbers of a corner. */
export type CornerNumber = `${"first" | "second"}.${CutNumber}` | "dihedral";

/** Whether nothing in a mitered joint tells the boards apart. */
export function mirrors(corner: ExactCorner): boolean {
  const { first, second, meet } = corner;
  if (!first.slope.eq(second.slope)) return false;
  if (meet === "faces") return first.thickness.eq(second.thickness);
  if (first.width === undefined || second.width === undefined) return first.width === second.width;
  return first.width.eq(second.width);
}

/** A normal of the joint plane of a miter, pointing to either side. */
function miterNormal(field: RealField, corner: ExactCorner, one: PieceAxes, two: PieceAxes): Vec {
  const { vec, add, scale, dot, cross, planeThrough, meet } = space(field);
  if (mirrors(corner)) return add(one.along, two.along);
  const origin = vec(0, 0, 0);
  const { first, second } = corner;
  if (corner.meet === "edges") {
    // Seen from above the inner edges meet at the origin; the outer ones run beside them through the ends of the widths.
    const up = vec(0, 0, 1);
    const levelWidth = (width: Decimal | undefined, piece: PieceAxes): Real =>
      dot(piece.out, scale(field.exact(width ?? 0), piece.across));
    const outer = meet(
      { normal: one.out, offset: levelWidth(first.width, one) },
      { normal: two.out, offset: levelWidth(second.width, two) },
      planeThrough(origin, up),
    );
    return cross(outer, up);
  }
  // The backs meet in a line through the origin, the faces in one beside it: a plane square to both leads across.
  const line = cross(one.through, two.through);
  const across = meet(
    planeThrough(scale(field.exact(first.thickness), one.through), one.through),
    planeThrough(scale(field.exact(second.thickness), two.through), two.through),
    planeThrough(origin, line),
  );
  return cross(line, across);
}

/** A normal turned to the side of a direction that it is not square to. */
function towards(field: RealField, direction: Vec, normal: Vec): Vec {
  const { dot, scale } = space(field);
  return scale(field.choose(dot(direction, normal), field.exact(1), field.exact(-1)), normal);
}

/** The numbers of one end cut, whose normal points out of the wood. */
function endCut(field: RealField, normal: Vec, piece: PieceAxes, slope: Decimal): Record<CutNumber, Real> {
  const { dot, norm } = space(field);
  const length = norm(normal);
  const part = (axis: Vec): Real => field.div(dot(normal, axis), length);
  const plane = { along: part(piece.along), across: part(piece.across), through: part(piece.through) };
  const { miter, bevel } = deriveSawSetting(field, plane, field.exact(0));
  return { ...plane, miter, bevel, slope: field.exact(slope) };
}

/** The numbers of an end cut under names that say which. */
function prefixed<E extends string>(end: E, cut: Record<CutNumber, Real>): Record<`${E}.${CutNumber}`, Real> {
  const entries = Object.entries(cut).map(([name, value]) => [`${end}.${name}`, value]);
  return Object.fromEntries(entries) as Record<`${E}.${CutNumber}`, Real>;
}

/**
 * A corner on real numbers.
 *
 * The boards stand in space; their faces, backs and edges meet in points that three planes have in common, and the joint's
 * plane goes through those. Both cuts are then read off it along each piece's own axes.
 */
export function deriveCorner(field: RealField, corner: ExactCorner): Record<CornerNumber, Real> {
  const { add, scale, dot, cross, norm } = space(field);
  const turn = field.exact(corner.turn);
  const one = firstPiece(field, field.exact(corner.first.slope));
  const two = secondPiece(field, field.exact(corner.second.slope), turn);
  const butt = corner.joint === "butt" && !turn.mid.isZero();
  const onto = corner.meet === "faces" ? "through" : "across";
  const normal = butt ? undefined : miterNormal(field, corner, one, two);
  // In a butt joint each board is cut along the other: the first where that one begins, the second flush with the first.
  const out = towards(field, one.along, normal ?? two[onto]);
  const back = scale(field.exact(-1), towards(field, two.along, normal ?? one[onto]));
  const first = endCut(field, out, one, corner.first.slope);
  const second = endCut(field, back, two, corner.second.slope);

  // The faces look toward each other where the line in which they meet has them turn from the first one's normal to the
  // second one's about the outward direction.
  const line = cross(one.through, two.through);
  const between = field.atan2(norm(line), field.neg(dot(one.through, two.through)));
  const facing = dot(line, add(one.across, two.across));
  return {
    ...prefixed("first", first),
    ...prefixed("second", second),
    dihedral: field.choose(facing, between, field.sub(field.exact(360), between)),
  };
}
