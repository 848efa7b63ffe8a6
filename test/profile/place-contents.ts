import { sectionAt, type SectionPoint } from "miterwright/profile";
import type { Rabbeted } from "../laws/profile.js";

/** The part of a polygon that stands no farther out (or up) than a limit, by cutting it edge by edge. */
function cutOff(
  polygon: readonly SectionPoint[],
  axis: "out" | "up",
  limit: number,
  keep: "below" | "above",
): SectionPoint[] {
  const over = (point: SectionPoint): number => (keep === "below" ? point[axis] - limit : limit - point[axis]);
  const kept: SectionPoint[] = [];
  polygon.forEach((point, index) => {
    const last = polygon.at(index - 1)!;
    const share = over(last) / (over(last) - over(point));
    if (over(last) > 0 !== over(point) > 0) {
      kept.push({ out: last.out + share * (point.out - last.out), up: last.up + share * (point.up - last.up) });
    }
    if (!(over(point) > 0)) kept.push(point);
  });
  return kept;
}

/** Area that a polygon shares with the upright rectangle from `low` to `high` and up to `edge` outward. */
export function overlap(wood: readonly SectionPoint[], edge: number, low: number, high: number): number {
  const part = cutOff(cutOff(cutOff(wood, "out", edge, "below"), "up", high, "below"), "up", low, "above");
  let twice = 0;
  part.forEach((point, index) => {
    const last = part.at(index - 1)!;
    twice += last.out * point.up - last.up * point.out;
  });
  return Math.abs(twice) / 2;
}

/** How far a point is from the nearest edge of a polygon. */
export function distanceToOutline(wood: readonly SectionPoint[], point: SectionPoint): number {
  const distances = wood.map((end, index) => {
    const start = wood.at(index - 1)!;
    const [outward, upward] = [end.out - start.out, end.up - start.up];
    const along = (point.out - start.out) * outward + (point.up - start.up) * upward;
    const share = Math.min(1, Math.max(0, along / (outward ** 2 + upward ** 2)));
    return Math.hypot(point.out - start.out - share * outward, point.up - start.up - share * upward);
  });
  return Math.min(...distances);
}

/** How high contents rise that reach outward to `edge` and come from far below: to the lowest wood over them. */
export function restHeight(wood: readonly SectionPoint[], edge: number): number {
  return Math.min(...cutOff(wood, "out", edge, "below").map((point) => point.up));
}

/** Where trying out contents in the tilted section says they belong. */
export interface TrialPlacement {
  /** The sight edge's back arris. */
  readonly sight: SectionPoint;
  /** How far outward the largest contents reach that come to rest on the lip. `null`: none do, or the wall stops none. */
  readonly edge: number | null;
  /** The wood. */
  readonly wood: readonly SectionPoint[];
  /** Rounding to allow for. */
  readonly slack: number;
}

/**
 * Finds the largest level contents that rest on the lip, by trying: a rectangle is raised from far below into the tilted wood,
 * and its size is bisected for the largest whose first contact is the lip and not the wall or its mouth.
 *
 * @param profile - a profile whose lip is the part of the wood inside the wall's end at the ledge
 * @param slope - the frame's slope
 */
export function placeByTrial(profile: Rabbeted, slope: number): TrialPlacement {
  const wood = sectionAt(profile, slope).outline;
  const { sightBack, wallLedge, sightFace } = profile.arrises;
  const lipOutline = [sightBack, wallLedge, { x: wallLedge.x, y: sightFace.y }, sightFace];
  const section = sectionAt({ outline: lipOutline, arrises: { sightBack } }, slope);
  const sight = section.arrises.sightBack;
  const slack = 1e-12 * Math.max(...wood.map((point) => Math.hypot(point.out, point.up)));
  const rests = (edge: number): boolean => restHeight(wood, edge) >= restHeight(section.outline, edge) - slack;
  let small = sight.out + 1e3 * slack;
  let large = Math.max(...wood.map((point) => point.out));
  if (!rests(small) || rests(large)) return { sight, edge: null, wood, slack };
  while (large - small > slack) {
    const middle = (small + large) / 2;
    if (rests(middle)) small = middle;
    else large = middle;
  }
  return { sight, edge: small, wood, slack };
}
