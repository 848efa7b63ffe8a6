import { inkAttributes, lookAttributes } from "./looks.js";
import { escapeText } from "./markup.js";
import { meaningAttributes, type FigureName } from "./parts.js";
import { freezeShowing, type PageDocument } from "./rich-display.js";

/** The page's `SVGSVGElement` where the compiler knows of one. */
export type SvgElement = typeof globalThis extends { SVGSVGElement: { prototype: infer E } } ? E : object;

/** A picture. It shows itself in notebooks, and is otherwise a text of SVG. */
export interface Drawing {
  /**
   * The picture as an SVG document. It needs no other file, font, style or id, so that many can stand on one page, and has no style attribute, which a
   * Content-Security-Policy may forbid. `drawingStyles` is a style sheet that gives it other colors, in the dark too. A page in which it is the text of an element says `svg { max-width: 100%; height: auto }` to let it shrink.
   */
  readonly svg: string;
  /** What it shows, in a few words; the SVG's title. */
  readonly title: string;
  /** What it shows, in sentences; the SVG's description. */
  readonly description: string;
  /** Width in the picture's units, which are as large as a screen's pixels; letters are 11 high. */
  readonly width: number;
  /** Height in the same units. */
  readonly height: number;
  /**
   * The SVG document.
   *
   * @returns the same as `svg`
   */
  readonly toString: () => string;
  /**
   * The picture as an element of a page, no wider than the place that it is put in. It is built without the parser of HTML and without style attributes, so that
   * a strict Content-Security-Policy and Trusted Types allow it.
   *
   * @param document - the page's document; default the global one
   * @returns a new `svg` element that is in no page yet
   * @throws {InputError} when no document is given and there is no global one
   */
  readonly toElement: (document?: PageDocument) => SvgElement;
}

/** What a picture is made from. */
export interface DrawingFacts extends Pick<Drawing, "title" | "description" | "width" | "height"> {
  /** Which figure it is. */
  readonly figure: FigureName;
  /** The step that it shows, where it shows one. */
  readonly step?: number | undefined;
  /** The upper left corner of the picture. */
  readonly corner: { readonly x: number; readonly y: number };
  /** The elements inside. */
  readonly content: string;
}

const FONTS: string = "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";

/** Makes a picture from its elements. */
export function makeDrawing(facts: DrawingFacts): Drawing {
  const { figure, step, title, description, width, height, corner, content } = facts;
  const box = `${corner.x} ${corner.y} ${width} ${height}`;
  const shows = ` data-drawing="${figure}"${step === undefined ? "" : ` data-step="${step}"`}`;
  const ink = `fill="none"${inkAttributes("stroke", "ink")} stroke-linejoin="round" stroke-linecap="round"`;
  const paper = `<rect${meaningAttributes("paper")} x="${corner.x}" y="${corner.y}" width="${width}" height="${height}"${lookAttributes("paper")}/>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}" width="${width}" height="${height}" role="img"${shows} font-family="${FONTS}" ${ink}><title>${escapeText(title)}</title><desc>${escapeText(description)}</desc>${paper}${content}</svg>`;
  return freezeShowing(
    { svg, title, description, width, height },
    {
      markup: () => svg.replace("<svg ", '<svg style="max-width:100%;height:auto" '),
      bundle: () => ({ "image/svg+xml": svg, "text/plain": `${title}. ${description}` }),
      functions: { toString: () => svg },
    },
  ) as Drawing;
}
