import type { FrameGeometry, MeasureAlong } from "../frame/index.js";
import type { CutPlacement } from "../saw/index.js";
import { arrisLabel, layLabel, type EndValues } from "../words/index.js";
import { englishPieceDrawing } from "../words/internal.js";
import { drawBreak } from "./break-line.js";
import { canvasBox, drawLine, drawShape, drawText, finishDrawing, startCanvas, type Canvas } from "./canvas.js";
import { levelDimension } from "./dimension.js";
import { checkDrawingOptions, type DrawingOptions, type ReadyOptions } from "./drawing-options.js";
import type { Drawing } from "./drawing.js";
import { drawKey, type KeyEntry } from "./key.js";
import { LINE_HEIGHT, TEXT_SIZE } from "./looks.js";
import { arrisLetters } from "./arris-letters.js";
import { boxCorners, boxesMeet, type PaperBox } from "./paper.js";
import { readSawing, type SawingToDraw } from "./read-frame.js";
import { drawBody, type BodyLine } from "./piece-body.js";
import { fenceNotes } from "./piece-notes.js";
import { lyingPiece, pieceStrip, type LyingPiece } from "./lying-piece.js";
import { textWidth } from "./text-width.js";

/** Size of a piece's section on the paper: never drawn larger, and broken off rather than drawn smaller. */
const LARGEST: number = 72;
const SMALLEST: number = 30;
/** The size it is drawn with when it is broken. */
const BROKEN: number = 60;
/** The share of the paper that one end's wedge may take when the piece is broken. */
const WEDGE_SHARE: number = 0.38;
/** Room between the view from above and the view from the side, for a line of text. */
const BETWEEN: number = 22;
/** The piece is never drawn shorter, however wide its labels are. */
const LEAST_ROOM: number = 150;
/** From the piece to a dimension. */
const LANE: number = 20;

/** How a piece is laid out on the paper. */
interface PieceLayout {
  readonly solid: LyingPiece;
  readonly scale: number;
  readonly right: number;
  readonly isBroken: boolean;
}

function layOut(solid: LyingPiece, length: number, room: number): PieceLayout {
  const size = Math.max(solid.width, solid.height);
  const whole = Math.min(room / length, LARGEST / size);
  if (whole * size >= SMALLEST) return { solid, scale: whole, right: whole * length, isBroken: false };
  const scale = Math.min(BROKEN / size, (WEDGE_SHARE * room) / solid.wedge);
  return { solid, scale, right: room, isBroken: true };
}

function bodyLines(layout: PieceLayout, view: "above" | "side"): BodyLine[] {
  const { solid, scale, right } = layout;
  return solid.lines.map(({ across, up, short, sharp }) => ({
    // From the side the viewer stands where `across` points, so heights take the place of widths.
    across: view === "above" ? across * scale : (solid.height - up) * scale,
    toward: (view === "above" ? up : across) * scale,
    from: short * scale,
    to: right - short * scale,
    sharp,
  }));
}

/** How an end is cut; where no lay suits the saw, as it is in plan. */
function endValues(
  end: EndValues["end"],
  placement: CutPlacement | undefined,
  planMiter: number,
  { angle }: ReadyOptions,
): EndValues {
  if (placement === undefined) return { end, miter: angle(planMiter), bevel: undefined };
  const { miter, bevel } = placement;
  return { end, miter: angle(miter.degrees), bevel: bevel.toward === "none" ? null : angle(bevel.degrees) };
}

/** Text beside the piece, about one of its ends. */
interface Column {
  readonly end: EndValues["end"];
  readonly lines: readonly string[];
  /** Where it starts, and in which direction it goes from there. */
  readonly x: number;
  readonly hand: 1 | -1;
}

/** Writes lines of text beside the piece, farther out where a label is in the way. */
function writeColumn(canvas: Canvas, y: number, { end, lines, x, hand }: Column): void {
  const width = Math.max(...lines.map((line) => textWidth(line, TEXT_SIZE).width));
  const half = (lines.length * LINE_HEIGHT) / 2;
  const boxAt = (start: number): PaperBox => ({
    x0: hand > 0 ? start : start - width,
    x1: hand > 0 ? start + width : start,
    y0: y - half,
    y1: y + half,
  });
  let start = x;
  for (;;) {
    const met = canvas.texts.find((text) => boxesMeet(text, boxAt(start), 2));
    if (met === undefined) break;
    start = hand > 0 ? met.x1 + 8 : met.x0 - 8;
  }
  lines.forEach((line, index) => {
    const baseline = y - half + index * LINE_HEIGHT + 10.5;
    drawText(canvas, { x: start, y: baseline }, line, {
      is: { part: "label", end },
      anchor: hand > 0 ? "start" : "end",
    });
  });
}

/** The line along which the tape goes: that of the measured arris, else the longest. */
function tapeLine(geometry: FrameGeometry, solid: LyingPiece, arris: string | null): number {
  const place = arris === null ? undefined : geometry.profile?.arrises[arris];
  const named = geometry.profile?.outline.findIndex(({ x, y }) => x === place?.x && y === place.y) ?? -1;
  if (named >= 0) return named;
  return solid.lines.reduce((best, { short }, index) => (short < solid.lines[best]!.short ? index : best), 0);
}

function drawTape(canvas: Canvas, line: BodyLine, y: number, { hook, arris }: MeasureAlong): void {
  const at = y + line.across;
  const stated = { measure: "tape", arris } as const;
  drawLine(canvas, { part: "tape", ...stated }, "tape", [
    { x: line.from, y: at },
    { x: line.to, y: at },
  ]);
  const end = { x0: line.from - 3.2, x1: line.from - 0.8, y0: at - 5, y1: at + 5 };
  if (hook) {
    drawShape(canvas, { part: "hook", ...stated }, "arrow", boxCorners(end.x0, end.y0, end.x1, end.y1));
    return;
  }
  for (const x of [line.from, line.to])
    drawLine(canvas, { part: "pencil", ...stated }, "dimension", [
      { x, y: at - 7 },
      { x, y: at + 7 },
    ]);
}

/**
 * Draws a finished piece as it lies on the saw, seen from above and, where the blade leans, from the side. It shows both cuts, the longest and shortest line,
 * where the tape goes and which edge is at the fence. A long piece is drawn with a part taken out of its middle.
 *
 * @param plan - a plan, or a geometry and its saw plan; also one that was read back from JSON
 * @param options - formatters, words, and the width to aim at (default 700)
 * @returns the drawing
 * @throws {InputError} when the plan lacks its geometry or saw plan, or an option is not sound
 * @example
 * ```ts
 * import { drawPiece } from "miterwright/drawing";
 * import { planFrame } from "miterwright/frame";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, measured: { levelWidth: 42, lap: 6 } });
 * drawPiece(plan, { formats: formatters({ unit: "mm" }) }).title; //=> "Finished piece, one of 9"
 * ```
 */
export function drawPiece(plan: SawingToDraw, options: DrawingOptions): Drawing {
  const ready = checkDrawingOptions(options, 700);
  const { geometry, sawing } = readSawing(plan);
  const canvas = startCanvas();
  const piece = geometry.pieces[0];
  const { longest, shortest } = piece;
  const lay = sawing.lay?.lay ?? "propped";
  const solid = lyingPiece(geometry, lay) ?? pieceStrip(geometry);
  const { planMiter } = geometry.corners[0];
  const words = ready.words?.drawings.piece ?? englishPieceDrawing;
  const ends = [
    endValues("start", sawing.lay?.second, planMiter, ready),
    endValues("end", sawing.lay?.first, planMiter, ready),
  ] as const;
  const [startText, endText] = [words.end(ends[0]), words.end(ends[1])];
  const columns = [startText, endText].map((lines) =>
    Math.max(...lines.map((line) => textWidth(line, TEXT_SIZE).width)),
  );
  const layout = layOut(solid, longest.length, Math.max(LEAST_ROOM, ready.width - columns[0]! - columns[1]! - 42));
  const { scale, right, isBroken } = layout;
  const measure = sawing.operations.at(-1)?.measure ?? {
    arris: longest.arris,
    length: longest.length,
    hook: true,
    pointAngle: null,
  };
  const tape = tapeLine(geometry, solid, measure.arris);

  const isLeaning = sawing.lay !== null && sawing.lay.first.bevel.toward !== "none" && solid.height > 0;
  const width = solid.width * scale;
  const sideY = width + BETWEEN;
  const views = [
    { view: "above", y: 0, height: width } as const,
    { view: "side", y: sideY, height: solid.height * scale } as const,
  ];
  const drawn = views.slice(0, isLeaning ? 2 : 1);
  for (const { view, y, height } of drawn) {
    const lines = bodyLines(layout, view);
    drawBody(canvas, { body: "piece", lines, y, ends: ["from", "to"] });
    if (lines.length > 0) drawTape(canvas, lines[tape]!, y, measure);
    if (isBroken) drawBreak(canvas, right / 2, y, y + height);
  }
  // A square cut through the long points, to see the miter by.
  for (const x of [0, right])
    drawLine(canvas, "square", "thin", [
      { x, y: -6 },
      { x, y: width + 6 },
    ]);

  const bottom = isLeaning ? sideY + solid.height * scale : width;
  const notes = fenceNotes(sawing, words, ready);
  const inset = solid.wedge * scale;
  // A note that is wider than the line it stands at stands clear of that line's dimension, beyond it.
  const isWider = (note: string, line: number): boolean => textWidth(note, TEXT_SIZE).width > line;
  const isLowerOut = !isLeaning && isWider(notes.lower, right - 4);
  const noteBelow = (y: number): void => {
    drawText(canvas, { x: right / 2, y }, notes.lower, { anchor: "middle", remark: true });
  };
  if (!isLowerOut) noteBelow(width + 15);
  levelDimension(canvas, {
    from: { x: 0, y: bottom },
    to: { x: right, y: bottom },
    at: bottom + (isLeaning || isLowerOut ? 0 : 14) + LANE,
    measure: "longest",
    arris: longest.arris,
    label: words.longest({ value: ready.length(longest.length) }),
  });
  if (isLowerOut) noteBelow(canvasBox(canvas).y1 + 11);
  const isWide = isWider(notes.upper, right - 2 * inset);
  const highest = -LANE - (notes.upper === "" || isWide ? 0 : 12);
  drawText(canvas, { x: right / 2, y: isWide ? highest - LANE : -7 }, notes.upper, { anchor: "middle", remark: true });
  levelDimension(canvas, {
    from: { x: inset, y: 0 },
    to: { x: right - inset, y: 0 },
    at: highest,
    measure: "shortest",
    arris: shortest.arris,
    label: words.shortest({ value: ready.length(shortest.length) }),
  });
  writeColumn(canvas, width / 2, { end: "start", lines: startText, x: -14, hand: -1 });
  writeColumn(canvas, width / 2, { end: "end", lines: endText, x: right + 14, hand: 1 });

  const letter = measure.arris === null ? undefined : arrisLetters(Object.keys(geometry.arrises))[measure.arris];
  const isKnown = geometry.profile !== null;
  const lies = sawing.lay === null ? null : layLabel(lay, ready);
  const tapeText = words.tape({
    hook: measure.hook,
    edge: arrisLabel(measure.arris, ready),
    letter: letter ?? null,
    length: ready.length(measure.length),
  });
  const seen = [
    words.seen({ isLeaning, lay: isKnown ? lies : null }),
    ...(isKnown || lies === null ? [] : [words.anglesFor({ lay: lies })]),
  ];
  const key: KeyEntry[] = [{ sign: { look: "tape" }, text: tapeText }, { text: seen.join(" ") }];
  const box = canvasBox(canvas);
  if (ready.key) drawKey(canvas, key, { x: box.x0, y: box.y1 + 8, width: Math.max(ready.width - 12, box.x1 - box.x0) });
  return finishDrawing(canvas, {
    figure: "piece",
    title: words.title({ count: piece.count }),
    sentences: [
      tapeText,
      ...seen,
      words.lines({ longest: ready.length(longest.length), shortest: ready.length(shortest.length) }),
      words.ends({ ends }),
    ],
  });
}
