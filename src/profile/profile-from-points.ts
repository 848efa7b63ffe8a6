import { checkArray, checkInteger, checkObject, checkSlope, reject } from "../core/check.js";
import type { Point } from "../core/geometry-types.js";
import { checkPoint, outlineSize, refuseCrossing } from "./parse-profile.js";
import { orientationOf } from "./orientation.js";
import type { Profile } from "./profile.js";

/**
 * Options of {@link profileFromPoints}.
 *
 * @template M - the names of the arrises
 */
export interface ProfilePoints<M extends string = string> {
  /**
   * The corners in order, either way round, in the caller's length unit: x outward from the sight edge, y up from the back. The
   * first may be repeated at the end, and so may any point be after itself.
   */
  readonly outline: readonly Point[];
  /**
   * The arrises that get a name, each as a point of the outline or as a corner's index in the given outline, from 0. A rabbet is
   * known by `sightBack`, `wallLedge` and `wallMouth`. May be empty.
   */
  readonly arrises: { readonly [K in M]: Point | number };
  /** The slope in degrees that its surfaces are milled for, -90 to 90. Default: none. */
  readonly madeFor?: number | undefined;
}

/** How far off the outline an arris may be, as a share of the outline's size: it absorbs the rounding of a point on a sloping edge. */
const ARRIS_TOLERANCE: number = 1e-9;

/** A corner with its index in the outline as it was given. */
interface Corner extends Point {
  readonly index: number;
}

/** The corners without repetitions. */
function distinctCorners(points: readonly Point[]): Corner[] {
  const corners: Corner[] = [];
  points.forEach(({ x, y }, index) => {
    const last = corners.at(-1);
    if (last?.x !== x || last.y !== y) corners.push({ x, y, index });
  });
  const first = corners[0];
  while (corners.length > 1 && corners.at(-1)!.x === first!.x && corners.at(-1)!.y === first!.y) corners.pop();
  return corners;
}

/** Distance of a point from the edge a to b. */
function distanceToEdge(point: Point, a: Point, b: Point): number {
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  const x = (b.x - a.x) / size;
  const y = (b.y - a.y) / size;
  const along = Math.min(size, Math.max(0, (point.x - a.x) * x + (point.y - a.y) * y));
  return Math.hypot(point.x - a.x - along * x, point.y - a.y - along * y);
}

/**
 * A profile from the corners of any polygon.
 *
 * Repeated corners are dropped and a clockwise outline is turned round, so that it runs counter-clockwise from the same
 * first corner; coordinates are kept to the bit. Whether the outline crosses or touches itself is decided exactly.
 *
 * @param options - the outline, its arrises and the slope it is made for
 * @returns the profile, with the arrises as points
 * @throws {InputError} when the outline has fewer than three corners or crosses or touches itself, or an arris is not on it
 * @example
 * ```ts
 * import { levelWidth, profileFromPoints } from "miterwright/profile";
 *
 * const cove = profileFromPoints({
 *   outline: [{ x: 0, y: 0 }, { x: 0, y: 4 }, { x: 10, y: 8 }, { x: 30, y: 24 }, { x: 30, y: 0 }],
 *   arrises: { sight: 1, crest: 3 },
 * });
 * cove.outline[1]; //=> { x: 30, y: 0 }
 * levelWidth(cove, { slope: 0, from: "sight", to: "crest" }); //=> 30
 * ```
 */
export function profileFromPoints<M extends string>(options: ProfilePoints<M>): Profile<M> {
  const given = checkObject(options);
  const points = checkArray(given["outline"], "outline", "an array of points").map((point, index) =>
    checkPoint(point, `outline[${index}]`),
  );
  const corners = distinctCorners(points);
  if (corners.length < 3) {
    const what = "an outline of three or more different points";
    reject("range", "outline", given["outline"], `Expected \`outline\` to be ${what}, got ${corners.length}`);
  }
  refuseCrossing(corners, "outline", given["outline"]);
  const size = outlineSize(corners, "outline", given["outline"]);

  const readArris = (name: string, value: unknown): Point => {
    const path = `arrises.${name}`;
    if (typeof value === "number") return points[checkInteger(value, path, 0, points.length - 1)]!;
    const arris = checkPoint(value, path);
    const distance = (corner: Point, index: number): number =>
      distanceToEdge(arris, corner, corners[(index + 1) % corners.length]!);
    if (!corners.some((corner, index) => distance(corner, index) <= ARRIS_TOLERANCE * size)) {
      reject("impossible", path, value, `Expected \`${path}\` to lie on the outline, got a point off it`);
    }
    return arris;
  };
  const arrises = Object.entries(checkObject(given["arrises"], "arrises")).map(([name, value]) => [
    name,
    readArris(name, value),
  ]);
  const madeFor = given["madeFor"] === undefined ? undefined : checkSlope(given["madeFor"], "madeFor");

  const [first, ...rest] = corners.map(({ x, y }): Point => ({ x, y }));
  const profile = {
    outline: orientationOf(corners) < 0 ? [first!, ...rest.reverse()] : [first!, ...rest],
    arrises: Object.fromEntries(arrises) as Profile<M>["arrises"],
  };
  return madeFor === undefined ? profile : Object.assign(profile, { madeFor });
}
