import { reject } from "../core/check.js";
import type { Point } from "../core/geometry-types.js";
import { makeDrawing, type Drawing, type DrawingFacts } from "./drawing.js";
import { inkAttributes, lookAttributes, TEXT_SIZE, type Look } from "./looks.js";
import { escapeText, oneLine } from "./markup.js";
import { boxAround, type PaperBox, type Stroke } from "./paper.js";
import { meaningAttributes, type Meaning } from "./parts.js";
import { textWidth } from "./text-width.js";

/** A picture in the making: its elements, and the room that is taken. */
export interface Canvas {
  /** The lines and shapes so far, as markup, in the order in which they are painted. */
  readonly parts: string[];
  /** The texts so far, as markup; they are painted last, so that no line runs over their letters. */
  readonly labels: string[];
  /** The boxes of all texts. */
  readonly texts: PaperBox[];
  /** All lines, which labels keep clear of. */
  readonly strokes: Stroke[];
}

/** Where a text stands. */
export interface TextOptions {
  /** What it is; default a label. */
  readonly is?: Meaning;
  /** Which point of the text is given; default its start. */
  readonly anchor?: "start" | "middle" | "end";
  /** Size of its letters; default that of ordinary labels. */
  readonly size?: number;
  /** Whether it belongs to a dimension and takes its color. */
  readonly accent?: boolean;
  /** Whether it runs upward. */
  readonly upward?: boolean;
  /** Whether it is a remark, set in italics. */
  readonly remark?: boolean;
}

/** What a finished picture shows. */
export interface Shown extends Pick<DrawingFacts, "figure" | "step"> {
  /** What it shows, in a few words. */
  readonly title: string;
  /** What it shows, in sentences. */
  readonly sentences: readonly string[];
}

/** Blank margin round the picture. */
const MARGIN: number = 6;
/** Far less than is seen, and more than rounding leads to. */
const ROUNDING: number = 1e-6;
/** How far letters reach above their baseline, as a share of their size. */
const ASCENT: number = 0.8;
/** How far letters reach below their baseline, as a share of their size. */
const DESCENT: number = 0.24;

/** Starts an empty picture. */
export function startCanvas(): Canvas {
  return { parts: [], labels: [], texts: [], strokes: [] };
}

/** A coordinate as it is written: two decimals, never -0. */
export function writeNumber(value: number): string {
  if (!Number.isFinite(value)) {
    const message = "Expected the numbers of what is drawn to be finite and of a size that can be computed with";
    return reject("impossible", "drawing", value, message);
  }
  return String(Math.round(value * 100) / 100 + 0);
}

function pathData(points: readonly Point[]): string {
  return points.map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${writeNumber(x)} ${writeNumber(y)}`).join("");
}

/** Draws closed lines as one element, filled by the even-odd rule: a ring is two of them. */
export function drawShape(canvas: Canvas, is: Meaning, look: Look, ...outlines: readonly (readonly Point[])[]): void {
  const data = outlines.map((points) => `${pathData(points)}Z`).join("");
  const rule = outlines.length > 1 ? ' fill-rule="evenodd"' : "";
  canvas.parts.push(`<path${meaningAttributes(is)}${lookAttributes(look)}${rule} d="${data}"/>`);
  for (const points of outlines) points.forEach((point, index) => canvas.strokes.push([points.at(index - 1)!, point]));
}

/** Draws an open line. */
export function drawLine(canvas: Canvas, is: Meaning, look: Look, points: readonly Point[]): void {
  canvas.parts.push(`<path${meaningAttributes(is)}${lookAttributes(look)} d="${pathData(points)}"/>`);
  points.slice(1).forEach((point, index) => canvas.strokes.push([points[index]!, point]));
}

/** The box of a text. */
function textBox(at: Point, width: number, options: TextOptions): PaperBox {
  const { anchor = "start", size = TEXT_SIZE, upward = false } = options;
  const before = anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width;
  if (upward) {
    const y1 = at.y + before;
    return { x0: at.x - ASCENT * size, x1: at.x + DESCENT * size, y0: y1 - width, y1 };
  }
  const x0 = at.x - before;
  return { x0, x1: x0 + width, y0: at.y - ASCENT * size, y1: at.y + DESCENT * size };
}

/** One line whose words are tied no more. */
function looseLine(text: string): string {
  return oneLine(text.replaceAll("\u00a0", " ")).trim();
}

/** Writes one line of text. A rim of paper keeps it readable over lines. */
export function drawText(canvas: Canvas, at: Point, text: string, options: TextOptions = {}): void {
  const line = looseLine(text);
  if (line === "") return;
  const { anchor = "start", size = TEXT_SIZE, accent = false, upward = false, remark = false } = options;
  const { is = remark ? "remark" : "label" } = options;
  const { width, known } = textWidth(line, size);
  canvas.texts.push(textBox(at, width, options));
  const [x, y] = [writeNumber(at.x), writeNumber(at.y)];
  const attributes = [
    `x="${x}" y="${y}" font-size="${size}"`,
    anchor === "start" ? "" : ` text-anchor="${anchor}"`,
    upward ? ` transform="rotate(-90 ${x} ${y})"` : "",
    remark ? ' font-style="italic"' : "",
    known ? "" : ` textLength="${writeNumber(width)}" lengthAdjust="spacingAndGlyphs"`,
  ];
  canvas.labels.push(
    `<text${meaningAttributes(is)} ${attributes.join("")}${inkAttributes("fill", accent ? "accent" : "ink")}${inkAttributes("stroke", "paper")} stroke-width="3" paint-order="stroke">${escapeText(line)}</text>`,
  );
}

/** The box round all that is drawn. */
export function canvasBox(canvas: Canvas): PaperBox {
  const corners = canvas.texts.flatMap(({ x0, y0, x1, y1 }) => [
    { x: x0, y: y0 },
    { x: x1, y: y1 },
  ]);
  return boxAround([...corners, ...canvas.strokes.flat()]);
}

/** Ends a picture: cuts the paper to what is drawn, with a margin. */
export function finishDrawing(canvas: Canvas, shown: Shown): Drawing {
  const box = canvasBox(canvas);
  // What is whole but for rounding stays whole, so that a picture does not change with the unit of its lengths.
  const before = (value: number): number => Math.floor(value - MARGIN + ROUNDING);
  const after = (value: number): number => Math.ceil(value + MARGIN - ROUNDING);
  const corner = { x: before(box.x0) + 0, y: before(box.y0) + 0 };
  const width = after(box.x1) - corner.x;
  const height = after(box.y1) - corner.y;
  const { figure, title, sentences, step } = shown;
  const words = { title: looseLine(title), description: looseLine(sentences.join(" ")) };
  return makeDrawing({
    figure,
    step,
    ...words,
    width,
    height,
    corner,
    content: [...canvas.parts, ...canvas.labels].join(""),
  });
}
