import { convertLength, formatters } from "miterwright/units";
import { html, type Markup } from "./html.js";
import type { FullSizeWords } from "./labels/full-size-words.js";

/** Color of the ruler, so that it can be told from the section. */
const RULER: string = "#0b5563";
/** Length of the metric ruler, in millimeters. */
const METRIC: number = 100;
/** Length of the other ruler, in inches. */
const INCHES: number = 4;

/** Whole millimeters and whole inches, as they stand beside the rulers. */
export const inMillimeters = (value: number): string => formatters({ unit: "mm", digits: 0 }).length(value);
const inInches = (value: number): string => formatters({ unit: "in" }).length(value);

/**
 * A coordinate of a drawing in millimeters.
 *
 * @param millimeters - the coordinate
 * @returns its text, for markup
 */
export const coordinate = (millimeters: number): string => String(Number(millimeters.toFixed(4)));

/** A path of lines, one every `step` millimeters; every so many is longer. */
function ticks(step: number, count: number, y: number, every: number): string {
  return Array.from(
    { length: count + 1 },
    (_, index) => `M${coordinate(index * step)} ${y}v${index % every === 0 ? 4 : 2.5}`,
  ).join("");
}

/**
 * Rulers to check the printer by: one of 100 mm with lines every 5, and below it one of 4 inches with lines every quarter.
 *
 * @param words - what the page of the profile says
 * @returns the drawing
 */
export function rulerMarkup({ rulers }: FullSizeWords): Markup {
  const [millimeters, inches] = [inMillimeters(METRIC), inInches(INCHES)];
  const inchEnd = coordinate(convertLength(INCHES, "in", "mm"));
  return html`<svg
    class="ruler"
    width="110mm"
    height="30mm"
    viewBox="-2 0 110 30"
    role="img"
    aria-label="${rulers({ millimeters, inches })}"
  >
    <g fill="none" stroke="${RULER}" stroke-width=".25">
      <path data-part="millimeters" d="M0 6H${METRIC}${ticks(5, 20, 6, 2)}" />
      <path data-part="inches" d="M0 24H${inchEnd}${ticks(6.35, 16, 24, 4)}" />
    </g>
    <g font-size="3.2" fill="#1d1d1b">
      <text x="0" y="4.6">0</text>
      <text x="${METRIC}" y="4.6" text-anchor="end">${millimeters}</text>
      <text x="0" y="22.6">0</text>
      <text x="${inchEnd}" y="22.6" text-anchor="end">${inches}</text>
    </g>
  </svg>`;
}
