import type { Point } from "../core/geometry-types.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import { rotated } from "../core/rotated.js";
import type { Profile } from "../profile/index.js";
import { drawLine } from "./canvas.js";
import { drawArrow } from "./dimension.js";
import type { LabelOptions } from "./place-label.js";
import type { SectionSheet } from "./section-sheet.js";

/** Points of the section this close to its back, as a share of its size, are on it. */
const ON_BACK: number = 1e-9;
/** The angle's arc is never smaller nor larger. */
const SMALLEST: number = 30;
const LARGEST: number = 70;
/** An angle wider than this has room for its label inside the arc. */
const WIDE: number = 70;
/** An arc shorter than this has no room for arrowheads. */
const SHORT_ARC: number = 24;

/** The end of the back that stands lower, and the length of the back. */
function lowerEnd({ outline }: Profile, slope: number): { readonly index: number; readonly back: number } {
  const xs = outline.map(({ x }) => x);
  const ys = outline.map(({ y }) => y);
  const bottom = Math.min(...ys);
  const size = Math.max(...xs) - Math.min(...xs) + Math.max(...ys) - bottom;
  const onBack = outline.flatMap((point, index) => (point.y - bottom <= ON_BACK * size ? [index] : []));
  const index = onBack.reduce((best, next) => ((xs[next]! - xs[best]!) * Math.sign(slope) < 0 ? next : best));
  const other = onBack.reduce((best, next) => ((xs[next]! - xs[best]!) * Math.sign(slope) > 0 ? next : best));
  return { index, back: Math.abs(xs[other]! - xs[index]!) };
}

/** Draws the slope as an angle between a level line and the section's back. */
export function drawSlope(sheet: SectionSheet, profile: Profile, scale: number): LabelOptions | null {
  const { canvas, geometry, toPaper, options, words, bench } = sheet;
  const stated = { measure: "slope" } as const;
  const { slope } = geometry;
  if (slope === 0) return null;
  const { index, back } = lowerEnd(profile, slope);
  const lowest = rotated(profile.outline[index]!, cosDeg(slope), sinDeg(slope));
  const vertex = toPaper(lowest.x, lowest.y);
  const radius = Math.min(Math.max(0.6 * back * scale, SMALLEST), LARGEST);
  const hand = slope > 0 ? 1 : -1;
  const size = Math.abs(slope);
  const at = (degrees: number, r: number): Point => ({
    x: vertex.x + hand * r * cosDeg(degrees),
    y: vertex.y - r * sinDeg(degrees),
  });
  if (Math.abs(vertex.y - bench) > 0.5)
    drawLine(canvas, { part: "level", ...stated }, "dimension", [vertex, at(0, radius + 10)]);
  drawLine(canvas, { part: "back", ...stated }, "dimension", [vertex, at(size, radius + 10)]);
  const steps = Math.max(2, Math.ceil(size / 5));
  const arc = Array.from({ length: steps + 1 }, (_, step) => at((size * step) / steps, radius));
  drawLine(canvas, { part: "slope", ...stated }, "dimension", arc);
  if ((radius * size * Math.PI) / 180 > SHORT_ARC) {
    drawArrow(canvas, arc[0]!, arc[1]!, stated);
    drawArrow(canvas, arc.at(-1)!, arc.at(-2)!, stated);
  }
  return {
    at: at(size / 2, radius),
    is: { part: "label", ...stated },
    lines: [words.slope({ value: options.angle(slope) })],
    // Outside the wood: inside a wide angle's arc, else beside it or below it.
    toward: (hand > 0 ? size / 2 : 180 - size / 2) + (size > WIDE ? 180 : -30 * hand),
    turn: 80,
    reach: 5,
    accent: true,
  };
}
