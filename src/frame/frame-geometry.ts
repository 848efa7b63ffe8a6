import { reject } from "../core/check.js";
import { type Board, joinCorner } from "../miter/index.js";
import { offsetPolygon, polygonExtent, type PolygonLike, type RegularPolygon } from "../polygon/index.js";
import { checkPolygon, cornerDirections, cornersFrom } from "../polygon/internal.js";
import type { Box, Point, Pose } from "../core/geometry-types.js";
import type { Profile, RabbetSeating } from "../profile/index.js";
import type {
  FilledSizing,
  FrameBrief,
  MeasuredArris,
  MeasuredBrief,
  MeasuredMolding,
  Opening,
  ProfileBrief,
} from "./brief/brief.js";
import { apothemOffset, lengthAt, sizeOpening } from "./opening.js";
import { extremePoint, placeSection, type PlacedSection } from "./placed-section.js";
import { readSizing } from "./brief/read-brief.js";
import type {
  ExtremeLength,
  PlacedArris,
  RingCorner,
  RingGeometry,
  RingOutline,
  RingPiece,
} from "./ring-geometry-types.js";

/** The size of a whole frame. */
export interface OverallSize {
  /** Its outermost polygon. */
  readonly polygon: RegularPolygon;
  /** The upright box round it, in its pose. */
  readonly extent: Box;
  /** Its height above the bench; `null` where only level measures are known. */
  readonly height: number | null;
}

/** The geometry of a regular frame: one kind of piece, one kind of corner. */
export interface FrameGeometry<M extends string = string> extends RingGeometry<M> {
  /** The piece that every side is made of. */
  readonly pieces: readonly [RingPiece<M>];
  /** The corner that every corner is. */
  readonly corners: readonly [RingCorner];
  /** Number of sides. */
  readonly sides: number;
  /** Slope of the sides, in degrees. */
  readonly slope: number;
  /** How the frame hangs or stands. */
  readonly pose: Pose;
  /** The arris at which the opening was given, or `opening`, where the contents touch. */
  readonly at: M | "opening";
  /** The opening at that arris. */
  readonly given: RegularPolygon;
  /** The opening where the contents touch; without a rabbet at the innermost point. */
  readonly opening: RegularPolygon;
  /** Where the contained rectangle's or the sheet's center lies from the frame's center; `null` when the opening was given by a measure. */
  readonly center: Point | null;
  /** The point of the section that decides the opening. */
  readonly deciding: PlacedArris;
  /** Where every named arris stands in the finished frame. */
  readonly arrises: { readonly [K in M]: PlacedArris };
  /** The polygon that every named arris runs on. */
  readonly polygons: { readonly [K in M]: PolygonLike };
  /** The seating of the contents in the rabbet; `null` without a rabbet or a section. */
  readonly seating: RabbetSeating | null;
  /** Level distance from the deciding point to the outermost. */
  readonly levelWidth: number;
  /** The frame's outermost polygon and the size of the box round it. */
  readonly overall: OverallSize;
  /** The molding's section, where it is known. */
  readonly profile: Profile<M> | null;
  /** The molding's level measures, where only they are known. */
  readonly measured: MeasuredMolding | null;
}

/** A cut needs no thickness in a corner of equal boards; this stands for it. */
const ANY_THICKNESS: number = 1;

/** The sentence gives the length without its last digits, which differ between engines. */
function refuseTightOpening(opening: Opening, arris: string | null, length: number): never {
  const place = arris === null ? "the innermost point" : `\`${arris}\``;
  const short = Number(length.toPrecision(12));
  const message = `Expected \`opening\` to leave the pieces a length at every edge, but at ${place} it would be ${short}`;
  return reject("impossible", "opening", opening, message);
}

function heightOf(section: PlacedSection): number | null {
  let high = -Infinity;
  let low = Infinity;
  for (const { up } of section.points) {
    if (up === null) return null;
    high = Math.max(high, up);
    low = Math.min(low, up);
  }
  return high - low;
}

/** Computes the frame of a filled brief. */
export function geometryOf(brief: FilledSizing): FrameGeometry {
  const { sides, slope, pose } = brief;
  const section = placeSection(brief);
  const { given, center } = sizeOpening(brief);
  const { planMiter, turn } = given;
  const offsetOf = (point: PlacedArris): number => apothemOffset(section, brief.at, point.out);
  const lengthOf = (point: PlacedArris): number => lengthAt(given, offsetOf(point), planMiter);
  const extreme = (side: 1 | -1): ExtremeLength => {
    const point = extremePoint(section, side);
    return { arris: point.arris, out: point.out, up: point.up, length: lengthOf(point) };
  };

  const shortest = extreme(-1);
  if (!(shortest.length > 0)) refuseTightOpening(brief.opening, shortest.arris, shortest.length);
  const longest = extreme(1);
  const lengths: Record<string, number> = {};
  const polygons: Record<string, PolygonLike> = {};
  const outline: Record<string, RingOutline> = {};
  // Every arris runs round the same directions, so they are worked out once.
  const directions = cornerDirections(sides, pose);
  for (const [arris, point] of Object.entries(section.arrises)) {
    const polygon = { sides, apothem: given.apothem + offsetOf(point) };
    lengths[arris] = lengthOf(point);
    polygons[arris] = polygon;
    outline[arris] = { up: point.up, corners: cornersFrom(directions, checkPolygon(polygon).apothem) };
  }

  const board: Board = { slope, thickness: ANY_THICKNESS, width: ANY_THICKNESS };
  const joint = joinCorner({ turn, first: board, second: board });
  const overall = offsetPolygon(given, offsetOf(longest));
  return {
    sides,
    slope,
    pose,
    at: brief.at,
    given,
    opening: offsetPolygon(given, offsetOf(section.deciding)),
    center,
    deciding: section.deciding,
    arrises: section.arrises,
    polygons,
    seating: section.seating,
    levelWidth: longest.out - section.deciding.out,
    overall: { polygon: overall, extent: polygonExtent(overall, pose), height: heightOf(section) },
    profile: brief.profile ?? null,
    measured: brief.measured ?? null,
    pieces: [{ side: 0, count: sides, lengths, longest, shortest, start: joint.second, end: joint.first }],
    corners: [{ count: sides, turn, planMiter, dihedral: joint.dihedral }],
    outline,
  };
}

/**
 * The geometry of a regular frame: every length, both end cuts, the corners, and the polygon at every arris.
 *
 * A piece whose point r runs on a polygon of apothem A has at point p the length 2 (A + out(p) - out(r)) tan(180/n). Here out is the level distance of a
 * section point once the section is tilted to the slope.
 *
 * @param brief - sides, slope, opening and molding; see {@link FrameBrief}
 * @returns the geometry, in the brief's length unit and degrees
 * @throws {InputError} for the brief's first issue, or when the opening is so tight that a piece would have no length at some edge
 * @example
 * ```ts
 * import { frameGeometry } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
 * const frame = frameGeometry({ sides: 6, profile, opening: { side: 200 } });
 * frame.pieces[0]?.lengths.wallLedge; //=> 200
 * frame.pieces[0]?.lengths.outerBack; //=> 236.950417228136
 * frame.levelWidth; //=> 32
 * ```
 */
export function frameGeometry<M extends string>(brief: ProfileBrief<M>): FrameGeometry<M>;
/**
 * The same for a molding that is known by level measures alone.
 *
 * @param brief - sides, slope, opening and level measures
 * @returns the geometry; heights are `null`
 * @throws {InputError} for the brief's first issue, or when the opening is too tight
 */
export function frameGeometry(brief: MeasuredBrief): FrameGeometry<MeasuredArris>;
/**
 * The same for a brief of either kind.
 *
 * @param brief - sides, slope, opening and molding
 * @returns the geometry
 * @throws {InputError} for the brief's first issue, or when the opening is too tight
 */
export function frameGeometry(brief: FrameBrief): FrameGeometry;
export function frameGeometry(brief: FrameBrief): FrameGeometry {
  return geometryOf(readSizing(brief));
}

/**
 * Joint width: level, from the innermost point of the molding to the outermost, its lip included. The gap of the last joint is seen across it.
 */
export function jointWidth(geometry: Pick<FrameGeometry, "pieces">): number {
  const { longest, shortest } = geometry.pieces[0];
  return longest.out - shortest.out;
}
