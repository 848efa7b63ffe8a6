import { type FramePlan } from "miterwright/frame";
import { arrisLabel } from "miterwright/words";
import { sectionAt } from "miterwright/profile";
import { convertLength, type LengthUnit } from "miterwright/units";
import { arrisLetters } from "../../src/drawing/arris-letters.js";
import { html, trusted, type Markup } from "./html.js";
import type { Writers } from "./writers.js";

/** What fits on A4 and on Letter alike, in millimeters: the narrower width and the smaller height, less margins. */
export const PAPER: { readonly width: number; readonly height: number } = { width: 186, height: 190 };

/** A page for the full-size section, or why there is none. */
export type FullSize =
  { readonly page: string; readonly why?: never } | { readonly why: string; readonly page?: never };

/** A named arris on the page, in millimeters from the drawing's corner. */
interface Placed {
  readonly letter: string;
  readonly at: { readonly x: number; readonly y: number };
}

/** Color of the ruler, so that it can be told from the section. */
const RULER: string = "#0b5563";

const written = (millimeters: number): string => String(Number(millimeters.toFixed(4)));

/** A ruler of 100 mm with marks every 5, and below it one of 4 inches with marks every quarter. */
function ruler(): Markup {
  const tick = (x: number, y: number, size: number): string => `M${written(x)} ${y}v${size}`;
  const millimeters = Array.from({ length: 21 }, (_, index) => tick(5 * index, 6, index % 2 === 0 ? 4 : 2.5)).join("");
  const inches = Array.from({ length: 17 }, (_, index) => tick(index * 6.35, 24, index % 4 === 0 ? 4 : 2.5)).join("");
  return html`<svg
    class="ruler"
    width="110mm"
    height="30mm"
    viewBox="-2 0 110 30"
    role="img"
    aria-label="Check ruler of 100 millimeters and of 4 inches"
  >
    <g fill="none" stroke="${RULER}" stroke-width=".25">
      <path data-part="millimeters" d="M0 6H100${millimeters}" />
      <path data-part="inches" d="M0 24H101.6${inches}" />
    </g>
    <g font-size="3.2" fill="#1d1d1b">
      <text x="0" y="4.6">0</text>
      <text x="100" y="4.6" text-anchor="end">100 mm</text>
      <text x="0" y="22.6">0</text>
      <text x="101.6" y="22.6" text-anchor="end">4 in</text>
    </g>
  </svg>`;
}

const STYLE: string = `@page{margin:12mm}
*{box-sizing:border-box}
body{margin:0;color:#1d1d1b;background:#fff;font:10pt/1.35 Helvetica,Arial,"Liberation Sans","DejaVu Sans",sans-serif}
h1{font-size:14pt;margin:0 0 2mm}
p{margin:0 0 2mm;max-width:170mm}
svg{display:block;margin:3mm 0}
svg.section{break-inside:avoid}
@media screen{body{padding:8mm}}
@media print{body{-webkit-print-color-adjust:exact;print-color-adjust:exact}}`;

/** How far inside its arris a letter stands, in millimeters. */
const LETTER_INSET: number = 2.6;

/** The letters of the named arrises, each a little toward the middle of the section. */
function letters(named: readonly Placed[], middle: Placed["at"]): Markup {
  return html`<g font-size="3" fill="#1d1d1b" text-anchor="middle">
    ${named.map(({ letter, at }) => {
      const [dx, dy] = [middle.x - at.x, middle.y - at.y];
      const share = Math.min(1, LETTER_INSET / Math.max(Math.hypot(dx, dy), LETTER_INSET));
      return html`<text x="${written(at.x + share * dx)}" y="${written(at.y + share * dy + 1)}">${letter}</text>`;
    })}
  </g>`;
}

/**
 * The section of a side at its full size, as it stands on the bench, on a page of its own with a ruler to check the printer by.
 *
 * @param plan - the plan
 * @param writers - how lengths and angles are written
 * @returns an HTML document whose drawings are sized in millimeters, or why it can't be made
 */
export function fullSizeSection(plan: FramePlan, writers: Writers): FullSize {
  const { profile, slope } = plan.geometry;
  if (profile === null) return { why: "The profile can be drawn when the molding is known by its dimensions." };
  const { outline } = sectionAt(profile, slope);
  const unit: LengthUnit = plan.brief.unit;
  const scale = convertLength(1, unit, "mm");
  const points = outline.map(({ out, up }) => ({ x: out * scale, y: -up * scale }));
  const [left, top] = [Math.min(...points.map(({ x }) => x)), Math.min(...points.map(({ y }) => y))];
  const width = Math.max(...points.map(({ x }) => x)) - left;
  const height = Math.max(...points.map(({ y }) => y)) - top;
  if (!(width <= PAPER.width - 12 && height <= PAPER.height)) {
    return {
      why: `At its full size the profile is ${Math.ceil(width)} mm wide and ${Math.ceil(height)} mm high; a sheet of A4 or Letter holds ${PAPER.width - 12} by ${PAPER.height} mm.`,
    };
  }
  const path = points
    .map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${written(x - left + 6)} ${written(y - top + 3)}`)
    .join("");
  const [w, h] = [written(width + 12), written(height + 6)];
  const { arrises, pieces } = plan.geometry;
  // The same letters as in the page's drawing: in the order of the arrises.
  const named = Object.entries(arrisLetters(Object.keys(arrises))).map(([arris, letter]) => ({ arris, letter }));
  const placed = named.map(({ arris, letter }) => {
    const { out, up } = arrises[arris]!;
    return { letter, at: { x: out * scale - left + 6, y: -(up ?? 0) * scale - top + 3 } };
  });
  const stands = slope === 0 ? "It lies flat." : `It stands at its slope of ${writers.angle(slope)}.`;
  const bench = written(height + 3);
  const drawing = html`<svg
    class="section"
    width="${w}mm"
    height="${h}mm"
    viewBox="0 0 ${w} ${h}"
    role="img"
    aria-label="Profile of a side at full size"
  >
    <path data-part="section" d="${path}Z" fill="#f0e4cf" stroke="#1d1d1b" stroke-width=".25" stroke-linejoin="miter" />
    <path data-part="bench" d="M0 ${bench}H${w}" stroke="#1d1d1b" stroke-width=".25" />
    ${letters(placed, { x: 6 + width / 2, y: 3 + height / 2 })}
  </svg>`;
  const body = html`<h1>Profile of a side, full size</h1>
    <p>
      A side cut straight across, on the bench; the frame's center is to the left. ${stands} Level from its innermost to
      its outermost point it is ${writers.length(width / scale)} wide, and ${writers.length(height / scale)} high.
    </p>
    ${drawing}
    <p>
      Length of every piece along its edges:
      ${named.map(({ arris, letter }) => `${letter} ${arrisLabel(arris)} ${writers.length(pieces[0].lengths[arris]!)}`).join("; ")}.
    </p>
    <p>
      Print at 100 %, without fitting to the page. Then lay a rule on the lines below: where they are not true, neither
      is the profile.
    </p>
    ${ruler()}`;
  return {
    page: `<!DOCTYPE html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1"><title>Profile of a side, full size</title>${trusted(`<style>${STYLE}</style>`).html}</head>
<body>${body.html}</body></html>
`,
  };
}
