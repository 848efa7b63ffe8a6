import { checkInteger, checkSlope, inOrder, MAX_FRAME_SIDES, refuse, reject } from "../../core/check.js";
import {
  box,
  count,
  finite,
  finiteOrNull,
  flag,
  list,
  only,
  maybe,
  named,
  orNull,
  point,
  record,
  text,
  textOrNull,
  word,
  type Fields,
  type Path,
  type Reader,
} from "../../core/stored.js";
import type { CutPlane, EndCut } from "../../miter/index.js";
import { pose } from "../../panel/internal.js";
import { polygonLike, regularPolygon } from "../../polygon/internal.js";
import { readProfile } from "../../profile/internal.js";
import type { Profile, RabbetSeating, RabbetHold, RabbetLayer, RabbetMiss, SectionPoint } from "../../profile/index.js";
import { stickEnd } from "../../saw/internal.js";
import type { MeasuredMolding } from "../brief/brief.js";
import type { FrameGeometry, OverallSize } from "../frame-geometry.js";
import type { ExtremeLength, PlacedArris, RingCorner, RingOutline, RingPiece } from "../ring-geometry-types.js";

/** A number of sides that a frame can have. */
export const frameSides: Reader<number> = (value, path) => checkInteger(value, path ?? "", 3, MAX_FRAME_SIDES);
/** A slope. */
export const slope: Reader<number> = (value, path) => checkSlope(value, path ?? "");
/** A molding's section. */
export const profile: Reader<Profile> = (value, path) => readProfile(value, path ?? "", inOrder);

const MEASURED: Fields<MeasuredMolding> = {
  levelWidth: finite,
  lap: (value, path) => maybe(value, path, finite),
  depth: (value, path) => maybe(value, path, finite),
};
/** A molding known by level measures. */
export const measured: Reader<MeasuredMolding> = (value, path) => record(value, path, MEASURED);

const ARRIS: Fields<PlacedArris> = { out: finite, up: finiteOrNull };
const placedArris: Reader<PlacedArris> = (value, path) => record(value, path, ARRIS);

const SECTION_POINT: Fields<SectionPoint> = { out: finite, up: finite };
const sectionPoint: Reader<SectionPoint> = (value, path) => record(value, path, SECTION_POINT);
const LAYER: Fields<RabbetLayer> = { name: text, front: finite, back: finite };
/** What says that something is possible. */
export const yes: Reader<true> = (value, path) =>
  value === true ? value : refuse("type", path ?? "", value, "true or false");
/** What says that it is not. */
export const no: Reader<false> = (value, path) =>
  value === false ? value : refuse("type", path ?? "", value, "true or false");
const HOLD: Fields<RabbetHold> = {
  possible: yes,
  slope,
  bearsOn: (value, path) => word(value, path, { "sight-edge": true, ledge: true, corner: true }),
  bearing: sectionPoint,
  opening: sectionPoint,
  lap: finite,
  depthUsed: finite,
  depthLeft: finite,
  roomLost: finite,
  thickness: finite,
  layers: (value, path) => list(value, path, (layer, at) => record(layer, at, LAYER)),
};
const MISS: Fields<RabbetMiss> = {
  possible: no,
  slope,
  reason: (value, path) => word(value, path, { "past-mouth": true, "falls-through": true, "too-steep": true }),
  shortBy: finite,
};

/** One of two kinds of records, which `possible` tells apart. */
export function possibleOrNot<A extends { possible: true }, B extends { possible: false }>(
  value: unknown,
  path: Path,
  can: Fields<A>,
  cannot: Fields<B>,
): A | B {
  const { possible } = record<{ possible: boolean }>(value, path, { possible: flag });
  return possible ? record(value, path, can) : record(value, path, cannot);
}

/** The seating of contents in a rabbet. */
export const rabbetSeating: Reader<RabbetSeating> = (value, path) => possibleOrNot(value, path, HOLD, MISS);

const PLANE: Fields<CutPlane> = { along: finite, across: finite, through: finite };
const plane: Reader<CutPlane> = (value, path) => {
  const read = record(value, path, PLANE);
  for (const key of ["along", "across", "through"] as const) {
    const part = read[key];
    if (!(Math.abs(part) <= 1) || (key === "along" && part === 0)) {
      refuse("range", `${path ?? ""}.${key}`, part, "a part of a unit vector (-1 to 1)");
    }
  }
  return read;
};
const END_CUT: Fields<EndCut> = {
  slope,
  end: stickEnd,
  plane,
  planMiter: (value, path) => maybe(value, path, finite),
  miter: finite,
  bevel: finite,
};
const endCut: Reader<EndCut> = (value, path) => record(value, path, END_CUT);

const EXTREME: Fields<ExtremeLength> = { arris: textOrNull, length: finite, out: finite, up: finiteOrNull };
const extreme: Reader<ExtremeLength> = (value, path) => record(value, path, EXTREME);
const PIECE: Fields<RingPiece> = {
  side: count,
  count: frameSides,
  lengths: (value, path) => named(value, path, finite),
  longest: extreme,
  shortest: extreme,
  start: endCut,
  end: endCut,
};
const CORNER: Fields<RingCorner> = { count: frameSides, turn: finite, planMiter: finite, dihedral: finite };
const OUTLINE: Fields<RingOutline> = { up: finiteOrNull, corners: (value, path) => list(value, path, point) };
const OVERALL: Fields<OverallSize> = { polygon: regularPolygon, extent: box, height: finiteOrNull };

const GEOMETRY: Fields<FrameGeometry> = {
  sides: frameSides,
  slope,
  pose,
  at: text,
  given: regularPolygon,
  opening: regularPolygon,
  center: (value, path) => orNull(value, path, point),
  deciding: placedArris,
  arrises: (value, path) => named(value, path, placedArris),
  polygons: (value, path) => named(value, path, polygonLike),
  seating: (value, path) => orNull(value, path, rabbetSeating),
  levelWidth: finite,
  overall: (value, path) => record(value, path, OVERALL),
  profile: (value, path) => orNull(value, path, profile),
  measured: (value, path) => orNull(value, path, measured),
  pieces: (value, path) => only(value, path, (piece, at) => record(piece, at, PIECE)),
  corners: (value, path) => only(value, path, (corner, at) => record(corner, at, CORNER)),
  outline: (value, path) => named(value, path, (outline, at) => record(outline, at, OUTLINE)),
};

/** Refuses a name that is no arris of the molding. */
function arris({ arrises }: FrameGeometry, name: string | null, path: string): void {
  if (name !== null && !Object.hasOwn(arrises, name))
    refuse("unknown", path, name, "the name of an arris of the molding");
}

/** Refuses a height that is missing although the section is known. */
function height(up: number | null, path: string): void {
  if (up === null) refuse("type", path, up, "a height, since the section is known");
}

/** What the parts of a geometry say of each other. */
function agree(geometry: FrameGeometry, at: string): void {
  const { sides, arrises, profile: section, measured: known, pieces, polygons, outline, seating, overall } = geometry;
  if ((section === null) === (known === null)) {
    const message = `Expected exactly one of \`${at}.profile\` and \`${at}.measured\` to be null`;
    reject("conflict", `${at}.profile`, section, message);
  }
  if (seating !== null || known !== null) {
    const wall = known !== null ? ["wall", "outer"] : ["sightBack", "wallLedge", "wallMouth"];
    for (const name of wall) arris(geometry, name, `${at}.arrises.${name}`);
  }
  if (geometry.at !== "opening") arris(geometry, geometry.at, `${at}.at`);
  for (const name of Object.keys(arrises)) {
    const missing = (part: string, what: string): never => refuse("missing", `${at}.${part}.${name}`, undefined, what);
    if (!Object.hasOwn(polygons, name)) missing("polygons", "an object");
    if (!Object.hasOwn(outline, name)) missing("outline", "an object");
    if (outline[name]!.corners.length !== sides) {
      const { corners } = outline[name]!;
      refuse("range", `${at}.outline.${name}.corners`, corners, "an array of as many corners as the frame has sides");
    }
    pieces.forEach(({ lengths }, index) => {
      if (!Object.hasOwn(lengths, name)) missing(`pieces[${index}].lengths`, "a finite number");
    });
    if (section !== null) {
      height(arrises[name]!.up, `${at}.arrises.${name}.up`);
      height(outline[name]!.up, `${at}.outline.${name}.up`);
    }
  }
  if (section !== null) {
    height(overall.height, `${at}.overall.height`);
    height(geometry.deciding.up, `${at}.deciding.up`);
  }
  pieces.forEach((piece, index) => {
    for (const line of ["longest", "shortest"] as const) {
      const path = `${at}.pieces[${index}].${line}`;
      arris(geometry, piece[line].arris, `${path}.arris`);
      if (section !== null) height(piece[line].up, `${path}.up`);
    }
  });
}

/** A frame's geometry, whose parts agree. */
export const frameGeometry: Reader<FrameGeometry> = (value, path) => {
  const geometry = record(value, path, GEOMETRY);
  agree(geometry, path ?? "");
  return geometry;
};
