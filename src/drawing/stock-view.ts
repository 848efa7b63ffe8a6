import type { Point } from "../core/geometry-types.js";
import type { StockFit, StockJob, Stretch } from "../stock/index.js";
import type { StockWords } from "../words/index.js";
import { englishStock, pieceLabel } from "../words/internal.js";
import { drawShape, drawText, finishDrawing, startCanvas, type Canvas } from "./canvas.js";
import { checkDrawingOptions, type DrawingOptions, type ReadyOptions } from "./drawing-options.js";
import type { Drawing } from "./drawing.js";
import { layoutText, summarizeLayouts, type LayoutRow, type LayoutSummary } from "./layout-summary.js";
import { LINE_HEIGHT, SMALL_SIZE, TEXT_SIZE } from "./looks.js";
import { boxCorners } from "./paper.js";
import type { Meaning } from "./parts.js";
import { textWidth, wrapText } from "./text-width.js";

/** Height of a bar. */
const BAR: number = 24;
/** From one bar to the text of the next. */
const APART: number = 10;
/** Pieces of more than this number in one stick are drawn as blocks. */
const MOST: number = 150;
/** More layouts than this are only counted. */
const MOST_BARS: number = 200;

/** A text longer than this is no label, and an id longer than this is not written at every element. */
const LONGEST: number = 400;

/** A bar in the making: the layout that it shows, its stick, and where it stands on the paper. */
interface Bar {
  readonly canvas: Canvas;
  readonly layout: number;
  readonly stick: string | null;
  readonly scale: number;
  readonly y: number;
}

/** What lengths and words are told with. */
interface Told extends Pick<ReadyOptions, "length"> {
  readonly words: StockWords;
}

/** An id as elements carry it; `null` where it is too long. */
function carried(id: string): string | null {
  return id.length > LONGEST ? null : id;
}

/** A stretch of a stick on the paper. */
function scaled({ scale }: Bar, { start, end }: Stretch): Stretch {
  return { start: start * scale, end: end * scale };
}

function barBlock(bar: Bar, stretch: Stretch): Point[] {
  const { start, end } = scaled(bar, stretch);
  return boxCorners(start, bar.y, end, bar.y + BAR);
}

/** One piece at its place. */
interface DrawnPiece extends Stretch {
  readonly row: LayoutRow;
}

/** The pieces of a stick one by one, from its start to its end. The parts of sequences that follow one another take turns. */
function piecesOf(rows: readonly LayoutRow[]): DrawnPiece[] {
  const pieces = rows.flatMap((row) =>
    Array.from({ length: row.count }, (_, k) => ({
      row,
      start: row.start + k * row.pitch,
      end: row.end + k * row.pitch,
    })),
  );
  return pieces.sort((a, b) => a.start - b.start);
}

/** The pieces of a stick as outlines: square ends, or the slanted line between two that share a cut. */
function pieceOutlines(pieces: readonly Stretch[], scale: number, y: number): Point[][] {
  let isLongAbove = true;
  let shared: { readonly above: number; readonly below: number } | null = null;
  return pieces.map(({ start, end }, index) => {
    const left: { readonly above: number; readonly below: number } = shared ?? { above: start, below: start };
    const next = pieces[index + 1]?.start ?? Infinity;
    let right = { above: end, below: end };
    shared = null;
    if (next < end) {
      // Long point to long point they overlap: the cut runs from the end of this one's long side to the start of the next one's.
      right = isLongAbove ? { above: end, below: next } : { above: next, below: end };
      shared = right;
    }
    isLongAbove = shared === null || !isLongAbove;
    return [
      { x: left.above * scale, y },
      { x: right.above * scale, y },
      { x: right.below * scale, y: y + BAR },
      { x: left.below * scale, y: y + BAR },
    ];
  });
}

/** The first of some texts that fits into a stretch, centered in it. */
function labelStretch(
  { canvas, y }: Bar,
  { start: from, end: to }: Stretch,
  is: Meaning,
  texts: readonly string[],
): void {
  const text = texts.find(
    (candidate) => candidate.length <= LONGEST && textWidth(candidate, SMALL_SIZE).width + 8 <= to - from,
  );
  if (text !== undefined)
    drawText(canvas, { x: (from + to) / 2, y: y + BAR / 2 + 3.5 }, text, { is, anchor: "middle", size: SMALL_SIZE });
}

/** Rows of pieces as blocks; the sequences of one row are one block with all their parts. */
function drawRows(bar: Bar, { rows, pieceCount }: LayoutSummary, { length, words }: Told): void {
  const { canvas, layout, stick } = bar;
  const drawBlock = (stretch: Stretch, piece: string | null, texts: readonly string[]): void => {
    const is: Meaning = { part: "pieces", layout, stick, piece };
    drawShape(canvas, is, "section", barBlock(bar, stretch));
    labelStretch(bar, scaled(bar, stretch), is, texts);
  };
  if (rows.length > MOST) {
    const to = rows.reduce((most, { end, count, pitch }) => Math.max(most, end + (count - 1) * pitch), 0);
    drawBlock({ start: rows[0]!.start, end: to }, null, [words.pieces({ count: pieceCount })]);
    return;
  }
  rows.forEach(({ piece, part, length: size, start, count }, index) => {
    if (part > 0 && rows[index - 1]?.piece === piece) return;
    let last = index;
    while (rows[last + 1]?.piece === piece && rows[last + 1]!.part > rows[last]!.part) last++;
    const { end, pitch } = rows[last]!;
    const name = `${count}\u00a0× ${pieceLabel(piece, words)}`;
    const texts = last === index ? [`${name} ${length(size)}`, words.pieces({ count })] : [name];
    drawBlock({ start, end: end + (count - 1) * pitch }, carried(piece), [...texts, String(count)]);
  });
}

function drawBar(bar: Bar, summary: LayoutSummary, told: Told): void {
  const { canvas, layout, stick, scale, y } = bar;
  const { length, words } = told;
  drawShape(canvas, { part: "stick", layout, stick }, "edge", barBlock(bar, { start: 0, end: summary.length }));
  if (summary.pieceCount > MOST) {
    drawRows(bar, summary, told);
  } else {
    const pieces = piecesOf(summary.rows);
    pieceOutlines(pieces, scale, y).forEach((outline, index) => {
      const { piece, length: own } = pieces[index]!.row;
      const is: Meaning = { part: "piece", layout, stick, piece: carried(piece) };
      drawShape(canvas, is, "section", outline);
      const size = length(own);
      const start = Math.max(outline[0]!.x, outline[3]!.x);
      const end = Math.min(outline[1]!.x, outline[2]!.x);
      labelStretch(bar, { start, end }, is, [`${pieceLabel(piece, words)} ${size}`, size]);
    });
  }
  for (const kept of summary.kept) {
    const is: Meaning = { part: "kept-offcut", layout, stick };
    drawShape(canvas, is, "hidden", barBlock(bar, kept));
    labelStretch(bar, scaled(bar, kept), is, [
      words.keep({ length: length(kept.end - kept.start) }),
      words.keep({ length: null }),
    ]);
  }
}

/**
 * Draws how sticks are cut up: a bar for every layout, with its pieces, what is lost between them, and the offcuts worth keeping.
 *
 * In a stick of more than 150 pieces equal neighbors are one block with their number; more than 150 such blocks are one. Beyond 200 layouts the rest is counted.
 *
 * @param job - what was to be cut
 * @param fit - a plan for it, from `fitStock`; both may have been read back from JSON
 * @param options - formatters, words, and the width of the longest stick (default 700)
 * @returns the drawing
 * @throws {InputError} when the plan is not one for the job, or an option is not sound
 * @example
 * ```ts
 * import { drawStock } from "miterwright/drawing";
 * import { fitStock } from "miterwright/stock";
 * import { formatters } from "miterwright/units";
 *
 * const job = { pieces: [{ id: "side", length: 240, count: 9 }], sticks: [{ id: "larch", length: 1200 }], kerf: 3 };
 * drawStock(job, fitStock(job), { formats: formatters({ unit: "mm" }) }).title; //=> "How 3 sticks are cut up"
 * ```
 */
export function drawStock(job: StockJob, fit: Pick<StockFit, "layouts">, options: DrawingOptions): Drawing {
  const ready = checkDrawingOptions(options, 700);
  const words = ready.words?.stock ?? englishStock;
  const summaries = summarizeLayouts(job, fit);
  const canvas = startCanvas();
  const width = ready.width - 12;
  const drawn = summaries.slice(0, MOST_BARS);
  const scale = width / drawn.reduce((most, { length }) => Math.max(most, length), 0);
  let y = 0;
  if (summaries.length === 0) drawText(canvas, { x: 0, y }, words.none);
  const told: Told = { length: ready.length, words };
  for (const [layout, summary] of drawn.entries()) {
    for (const line of wrapText(layoutText(summary, ready.length, words), TEXT_SIZE, width)) {
      drawText(canvas, { x: 0, y: y + TEXT_SIZE }, line, {
        is: { part: "label", layout, stick: carried(summary.stick) },
      });
      y += LINE_HEIGHT;
    }
    drawBar({ canvas, layout, stick: carried(summary.stick), scale, y: y + 2 }, summary, told);
    y += 2 + BAR + APART;
  }
  const others = summaries.slice(MOST_BARS).reduce((sum, { times }) => sum + times, 0);
  const rest = others === 0 ? [] : [words.notDrawn({ sticks: others })];
  for (const text of rest) drawText(canvas, { x: 0, y: y + TEXT_SIZE }, text);
  const sticks = summaries.reduce((sum, { times }) => sum + times, 0);
  const layouts = drawn.map((summary) => layoutText(summary, ready.length, words));
  return finishDrawing(canvas, {
    figure: "stock",
    title: words.title({ sticks }),
    sentences: [...(layouts.length === 0 ? [words.none] : [words.layouts({ layouts })]), ...rest],
  });
}
