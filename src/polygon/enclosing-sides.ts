import type { Point } from "../core/geometry-types.js";
import { rotated } from "../core/rotated.js";
import { cosineOfQuarters, sineOfQuarters } from "./quarter-turns.js";

/**
 * A side of an odd polygon that may touch an upright rectangle. Angles are in parts, of which n make a quarter turn.
 */
interface Contact {
  /** Direction of its normal before the polygon is rotated, an odd integer. */
  readonly normal: number;
  /** How far the rectangle's corner that meets it lies past the normal, seen from the rectangle's center. */
  readonly past: number;
}

/**
 * What three sides that hem a rectangle in demand of a polygon that is rotated by r: with D the rectangle's half
 * diagonal, an apothem of D ((1 - lack) cos r + growth sin r).
 */
export interface Demand {
  /** The three sides, counter-clockwise. */
  readonly contacts: readonly [Contact, Contact, Contact];
  /** What the apothem lacks to D before the polygon is rotated, over D. Far smaller than 1 and as exact as that. */
  readonly lack: number;
  /** How the apothem grows when the polygon is rotated, over D and a radian. */
  readonly growth: number;
}

/** Sine of a number of parts that need not be whole. */
function sineOfParts(parts: number, n: number): number {
  return Math.sin(((Math.PI / 2) * parts) / n);
}

/**
 * The sides that may touch the rectangle while the polygon is rotated by up to one part from standing on a side.
 *
 * A normal belongs to the rectangle's corner in its own quadrant and stays there: it is an odd number of parts off, so
 * that it reaches an axis at the very end if at all. Which sides can touch: a snug polygon is no larger than the one
 * with its center on the rectangle's, so that for 5 sides or more the two centers are within D tan h of each other, h
 * being the plan miter. Seen from the one a corner is at most asin(tan h) < 2.6 parts off where it is seen from the
 * other, a side that it touches has its normal within 2 parts, and the rotation adds 1. Any but the three nearest sides
 * are 6 parts or more off.
 */
function contactsOf(n: number, direction: number): Contact[] {
  const corners = [direction, 2 * n - direction, 2 * n + direction, 4 * n - direction];
  const first = 4 - (n % 4);
  const near = corners.flatMap((corner) => {
    const side = Math.round((corner - first) / 4);
    return [side - 1, side, side + 1].map((k) => (k + n) % n);
  });
  const sides = [...new Set(near)].sort((a, b) => a - b);
  return sides.map((side) => {
    const normal = first + 4 * side;
    return { normal, past: corners[Math.floor((normal + 0.5) / n)]! - normal };
  });
}

/** What three sides demand; nothing when they leave a way out. */
function demandOf(n: number, a: Contact, b: Contact, c: Contact): Demand[] {
  const ab = b.normal - a.normal;
  const bc = c.normal - b.normal;
  const ca = 4 * n - ab - bc;
  if (Math.max(ab, bc, ca) > 2 * n) return [];
  // Weighted by the sine of the angle between the other two, the three unit normals add up to nothing, which rids the
  // sum of the center. The sum of the weights as a product, so that it stays exact when two sides are neighbors:
  const whole = 4 * sineOfQuarters(ab / 2, n) * sineOfQuarters(bc / 2, n) * sineOfQuarters(ca / 2, n);
  const mean = (of: (contact: Contact) => number): number =>
    (sineOfQuarters(bc, n) * of(a) + sineOfQuarters(ca, n) * of(b) + sineOfQuarters(ab, n) * of(c)) / whole;
  const lack = mean(({ past }) => 2 * sineOfParts(past / 2, n) ** 2);
  const growth = mean(({ past }) => sineOfParts(past, n));
  return [{ contacts: [a, b, c], lack, growth }];
}

/**
 * What any three sides of an odd polygon demand of it when it is rotated by up to one part around an upright rectangle.
 * The greatest demand is met by the polygon that is snug.
 */
export function demandsOfSides(n: number, direction: number): Demand[] {
  return contactsOf(n, direction).flatMap((a, i, all) =>
    all.slice(i + 1).flatMap((b, k, later) => later.slice(k + 1).flatMap((c) => demandOf(n, a, b, c))),
  );
}

/** Where the rectangle's center lies from the polygon's when three sides touch it. */
export function centerBetween(n: number, demand: Demand, rotation: number, diagonal: number): Point {
  const [a, b, c] = demand.contacts;
  // Two sides are touched alike, which gives the center's coordinate square to the line halfway between their normals.
  const square = (i: Contact, k: Contact): number =>
    (diagonal * sineOfParts((i.past + k.past) / 2 - rotation, n) * sineOfParts((i.past - k.past) / 2, n)) /
    sineOfQuarters((k.normal - i.normal) / 2, n);
  const first = square(a, b);
  const second = square(b, c);
  const s = (a.normal + b.normal) / 2;
  const t = (b.normal + c.normal) / 2;
  const whole = sineOfQuarters(t - s, n);
  const x = (second * cosineOfQuarters(s, n) - first * cosineOfQuarters(t, n)) / whole;
  const y = (second * sineOfQuarters(s, n) - first * sineOfQuarters(t, n)) / whole;
  const sin = sineOfParts(rotation, n);
  const cos = sineOfParts(n - rotation, n);
  return rotated({ x, y }, cos, sin);
}
