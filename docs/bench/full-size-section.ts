import type { FramePlan } from "miterwright/frame";
import { arrisLabel } from "miterwright/words";
import { sectionAt } from "miterwright/profile";
import { convertLength } from "miterwright/units";
import { arrisLetters } from "../../src/drawing/arris-letters.js";
import { coordinate, inMillimeters, rulerMarkup } from "./full-size-ruler.js";
import { html, trusted, type Markup } from "./html.js";
import type { Pen } from "./writers.js";

/** What fits on A4 and on Letter alike, in millimeters: the narrower width and the smaller height, less margins. */
export const PAPER: { readonly width: number; readonly height: number } = { width: 186, height: 190 };

/** Room beside the section and above it, in millimeters. */
const ROOM = { beside: 6, above: 3 } as const;

/** A page for the full-size section, or why there is none. */
export type FullSize =
  { readonly page: string; readonly why?: never } | { readonly why: string; readonly page?: never };

/** A point of the drawing, in millimeters from its corner. */
interface Place {
  readonly x: number;
  readonly y: number;
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

/** A letter of an arris, a little toward the middle of the section. */
function letterMarkup(letter: string, at: Place, middle: Place): Markup {
  const [dx, dy] = [middle.x - at.x, middle.y - at.y];
  const share = Math.min(1, LETTER_INSET / Math.max(Math.hypot(dx, dy), LETTER_INSET));
  return html`<text x="${coordinate(at.x + share * dx)}" y="${coordinate(at.y + share * dy + 1)}">${letter}</text>`;
}

/** The section as it stands on the bench, moved so that it lies within its drawing; `scale` is a unit of the plan in millimeters. */
function placeSection(
  { profile, slope, arrises }: FramePlan["geometry"],
  scale: number,
): { readonly width: number; readonly height: number; readonly outline: Place[]; readonly named: [string, Place][] } {
  const outline = sectionAt(profile!, slope).outline.map(({ out, up }) => ({ x: out * scale, y: -up * scale }));
  const [left, top] = [Math.min(...outline.map(({ x }) => x)), Math.min(...outline.map(({ y }) => y))];
  const place = ({ x, y }: Place): Place => ({ x: x - left + ROOM.beside, y: y - top + ROOM.above });
  const named = Object.entries(arrises).map(([arris, { out, up }]): [string, Place] => [
    arris,
    place({ x: out * scale, y: -(up ?? 0) * scale }),
  ]);
  return {
    width: Math.max(...outline.map(({ x }) => x)) - left,
    height: Math.max(...outline.map(({ y }) => y)) - top,
    outline: outline.map(place),
    named,
  };
}

/**
 * The section of a side at its full size, as it stands on the bench, on a page of its own with rulers to check the printer by.
 *
 * @param plan - the plan
 * @param pen - what the page writes with
 * @returns an HTML document whose drawings are sized in millimeters, or why it can't be made
 */
export function fullSizeSection(plan: FramePlan, { page, words, formats }: Pen): FullSize {
  const { profile, slope, pieces } = plan.geometry;
  const { fullSize } = page;
  if (profile === null) return { why: fullSize.notKnown };
  const scale = convertLength(1, plan.brief.unit, "mm");
  const { width, height, outline, named } = placeSection(plan.geometry, scale);
  const paperWidth = PAPER.width - 2 * ROOM.beside;
  if (!(width <= paperWidth && height <= PAPER.height)) {
    const sizes = { width: Math.ceil(width), height: Math.ceil(height), paperWidth, paperHeight: PAPER.height };
    return {
      why: fullSize.tooLarge({
        width: inMillimeters(sizes.width),
        height: inMillimeters(sizes.height),
        paperWidth: inMillimeters(sizes.paperWidth),
        paperHeight: inMillimeters(sizes.paperHeight),
      }),
    };
  }
  const path = outline.map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${coordinate(x)} ${coordinate(y)}`).join("");
  const [w, h] = [coordinate(width + 2 * ROOM.beside), coordinate(height + 2 * ROOM.above)];
  // The same letters as in the page's drawing: in the order of the arrises.
  const letters = arrisLetters(Object.keys(plan.geometry.arrises));
  const middle = { x: ROOM.beside + width / 2, y: ROOM.above + height / 2 };
  const bench = coordinate(height + ROOM.above);
  const drawing = html`<svg
    class="section"
    width="${w}mm"
    height="${h}mm"
    viewBox="0 0 ${w} ${h}"
    role="img"
    aria-label="${fullSize.drawing}"
  >
    <path data-part="section" d="${path}Z" fill="#f0e4cf" stroke="#1d1d1b" stroke-width=".25" stroke-linejoin="miter" />
    <path data-part="bench" d="M0 ${bench}H${w}" stroke="#1d1d1b" stroke-width=".25" />
    <g font-size="3" fill="#1d1d1b" text-anchor="middle">
      ${named.map(([arris, at]) => letterMarkup(letters[arris]!, at, middle))}
    </g>
  </svg>`;
  const shown = fullSize.shown({
    slope: slope === 0 ? null : formats.angle(slope),
    width: formats.length(width / scale),
    height: formats.length(height / scale),
  });
  const edges = named.map(([arris]) => ({
    letter: letters[arris]!,
    edge: arrisLabel(arris, { words }),
    length: formats.length(pieces[0].lengths[arris]!),
  }));
  const body = html`<h1>${fullSize.title}</h1>
    <p>${shown}</p>
    ${drawing}
    <p>${fullSize.lengths({ edges })}</p>
    <p>${fullSize.print({ scale: formats.percent(100) })}</p>
    ${rulerMarkup(fullSize)}`;
  const head = html`<html lang="${page.language}">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width,initial-scale=1" />
      <title>${fullSize.title}</title>
      ${trusted(`<style>${STYLE}</style>`)}
    </head>
  </html>`;
  return { page: `<!DOCTYPE html>\n${head.html}\n<body>${body.html}</body></html>\n` };
}
