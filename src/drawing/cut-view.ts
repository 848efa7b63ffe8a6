import { checkInteger, refuse } from "../core/check.js";
import { tanDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import type { CutPlacement } from "../saw/index.js";
import { operationText, type CutDrawingWords } from "../words/index.js";
import { englishCutDrawing } from "../words/internal.js";
import { drawBladeView } from "./blade-view.js";
import { drawBreak } from "./break-line.js";
import { canvasBox, drawLine, drawShape, drawText, finishDrawing, startCanvas, type Canvas } from "./canvas.js";
import { checkDrawingOptions, type DrawingOptions } from "./drawing-options.js";
import type { Drawing } from "./drawing.js";
import { drawHatch } from "./hatch.js";
import { SMALL_SIZE } from "./looks.js";
import { placeStick, type PlacedStick } from "./placed-stick.js";
import { readSawing, type SawingToDraw } from "./read-frame.js";
import { drawBody, type BodyLine } from "./piece-body.js";
import { boxCorners } from "./paper.js";

/** Options of {@link drawCut}. */
export interface CutOptions extends DrawingOptions {
  /** Which step of the saw plan, from 1. */
  readonly step: number;
}

/** Largest size of the stick's section on the paper. */
const SIZE: number = 56;
/** Largest distance along the stick from one end of the cut to the other. */
const REACH: number = 64;
/** Width of the saw cut on the paper, which stands for no measure. */
const KERF: number = 4;
/** Length of the stick's parts beyond the cut's ends. */
const KEPT: number = 64;
const OFFCUT: number = 48;
/** Thickness of the fence, and its distance from the blade's path. */
const FENCE: number = 13;
const FENCE_GAP: number = 14;
/** Words stand on a stick that is at least this wide. */
const THIN: number = 18;
/** Half the height of the stop, and its thickness. */
const STOP: number = 11;
/** How far the blade's path is drawn beyond the stick. */
const PATH: number = 20;

/** The stick's two parts on the paper, with x growing to the right from the cut's place at the stick's near edge. */
interface CutStick {
  readonly stick: PlacedStick;
  /** 1 when the kept part lies to the right. */
  readonly hand: 1 | -1;
  /** Where the kept part's finished end or broken edge is, at its longest line. */
  readonly keptEnd: number;
  /** Where the offcut breaks off. */
  readonly offEnd: number;
}

function partLines(stick: PlacedStick, ends: (cut: number) => readonly [number, number]): BodyLine[] {
  return stick.lines.map(({ across, toward, cut, sharp }) => {
    const [a, b] = ends(cut);
    return { across, toward, sharp, from: Math.min(a, b), to: Math.max(a, b) };
  });
}

/** The silhouette's rows from above, for hatching: as wide as the section's outermost lines. */
function silhouette(lines: readonly BodyLine[]): Point[] {
  const far = lines.reduce((a, b) => (b.across < a.across || (b.across === a.across && b.toward > a.toward) ? b : a));
  const near = lines.reduce((a, b) => (b.across > a.across || (b.across === a.across && b.toward > a.toward) ? b : a));
  return [
    { x: far.from, y: far.across },
    { x: far.to, y: far.across },
    { x: near.to, y: near.across },
    { x: near.from, y: near.across },
  ];
}

function drawParts(canvas: Canvas, { stick, hand, keptEnd, offEnd }: CutStick, finished: boolean): void {
  const [least, most] = stick.reach;
  // The two ends mirror each other, so the finished one falls short as the cut does.
  const farEnd = (cut: number): number => keptEnd + hand * (hand > 0 ? -(cut - least) : -(most - cut));
  const kept = partLines(stick, (cut) => [cut, finished ? farEnd(cut) : keptEnd]);
  const off = partLines(stick, (cut) => [cut - hand * KERF, offEnd]);
  drawBody(canvas, { body: "offcut", lines: off, y: 0, ends: [hand > 0 ? "to" : "from"] });
  drawBody(canvas, { body: "kept", lines: kept, y: 0, ends: finished ? ["from", "to"] : [hand > 0 ? "from" : "to"] });
  drawHatch(canvas, { part: "kept", body: "kept" }, silhouette(kept));
  drawBreak(canvas, offEnd, 0, stick.width);
  drawBreak(canvas, finished ? (hand > 0 ? (most + keptEnd) / 2 : (least + keptEnd) / 2) : keptEnd, 0, stick.width);
}

/** A fence from one end to the other, with a gap for the blade, and its name. */
interface Fence {
  readonly from: number;
  readonly to: number;
  readonly gap: number;
  readonly name: string;
}

/** The fence in two parts, left and right of the blade's path, with its name on the longer one. */
function drawFence(canvas: Canvas, y0: number, { from, to, gap, name }: Fence): void {
  const ends = [
    [from, gap - FENCE_GAP],
    [gap + FENCE_GAP, to],
  ] as const;
  for (const [x0, x1] of ends) {
    drawShape(canvas, "fence", "saw", boxCorners(x0, y0, x1, y0 + FENCE));
  }
  const [x0, x1] = ends[0][1] - ends[0][0] > ends[1][1] - ends[1][0] ? ends[0] : ends[1];
  drawText(canvas, { x: (x0 + x1) / 2, y: y0 + 10 }, name, { is: "fence", anchor: "middle", size: SMALL_SIZE });
}

/** The stop at the finished end, where the end's longest line is. */
function drawStop(canvas: Canvas, { stick, hand, keptEnd }: CutStick, name: string): void {
  const touch = stick.lines.find(({ cut }) => cut === stick.reach[hand > 0 ? 0 : 1])!;
  const [x0, x1] = hand > 0 ? [keptEnd, keptEnd + STOP] : [keptEnd - STOP, keptEnd];
  const [y0, y1] = [touch.across - STOP, touch.across + STOP];
  drawShape(canvas, "stop", "saw", boxCorners(x0, y0, x1, y1));
  const place = { x: hand > 0 ? x1 + 4 : x0 - 4, y: touch.across + 3.5 };
  drawText(canvas, place, name, { is: "stop", anchor: hand > 0 ? "start" : "end", size: SMALL_SIZE });
}

/** The blade's path: across how much wood, how far it is drawn, and what is written at it. */
interface Path {
  readonly width: number;
  readonly ends: readonly [top: number, bottom: number];
  readonly label: string;
}

/** The path of the blade across the table, with a square one beside it where it leans, and the angle between them. */
function drawPath(canvas: Canvas, placement: CutPlacement, { width, ends, label }: Path): void {
  const { toward, degrees } = placement.miter;
  const slant = (toward === "left" ? -1 : toward === "right" ? 1 : 0) * tanDeg(degrees);
  const at = (y: number): Point => ({ x: slant * (width - y), y });
  const [top, bottom] = ends;
  drawLine(canvas, { part: "blade-path", measure: "miter" }, "blade", [at(bottom), at(width)]);
  drawLine(canvas, { part: "blade-path", measure: "miter" }, "blade", [at(0), at(top)]);
  if (toward !== "none")
    drawLine(canvas, "square", "thin", [
      { x: 0, y: width },
      { x: 0, y: top },
    ]);
  drawText(canvas, { x: at(top).x, y: top - 5 }, label, {
    is: { part: "label", measure: "miter" },
    anchor: "middle",
    accent: true,
  });
}

/**
 * Draws one step at the saw: from above, the stick at the blade with its fence, the line of cut and the part that is kept (hatched); beside it, the lean of the blade.
 *
 * The person at the saw stands below the picture. It is drawn from the words of the placement alone, as they are followed at the saw; only the angles are to
 * scale.
 *
 * @param plan - a plan, or a geometry and its saw plan; also one that was read back from JSON
 * @param options - the step, formatters, words, and the width to aim at
 * @returns the drawing
 * @throws {InputError} when there is no such step, the plan lacks its geometry or saw plan, or an option is not sound
 * @example
 * ```ts
 * import { drawCut } from "miterwright/drawing";
 * import { planFrame } from "miterwright/frame";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, measured: { levelWidth: 42, lap: 6 } });
 * drawCut(plan, { step: 1, formats: formatters({ unit: "mm" }) }).title; //=> "Step 1: Cut the first end, 9 pieces"
 * ```
 */
export function drawCut(plan: SawingToDraw, options: CutOptions): Drawing {
  const ready = checkDrawingOptions(options, 340);
  const { geometry, sawing } = readSawing(plan);
  const step = checkInteger(options.step, "step", 1, Math.max(1, sawing.operations.length));
  const operation = sawing.operations[step - 1];
  if (operation === undefined)
    return refuse("impossible", "step", step, "a step of a plan that has some, but no lay suits its saw");
  const { placement } = operation;
  const stick = placeStick(geometry.profile, geometry.slope, placement, { size: SIZE, reach: REACH });
  const [least, most] = stick.reach;
  const hand = placement.kept === "right" ? 1 : -1;
  const isSecond = operation.kind === "second-end";
  const keptLength = KEPT + (isSecond ? most - least : 0);
  const parts: CutStick = {
    stick,
    hand,
    keptEnd: hand > 0 ? most + keptLength : least - keptLength,
    offEnd: hand > 0 ? least - OFFCUT : most + OFFCUT,
  };
  const words: CutDrawingWords = ready.words?.drawings.cut ?? englishCutDrawing;
  const canvas = startCanvas();
  drawParts(canvas, parts, isSecond);
  const isNear = sawing.saw.fence === "near";
  const slant =
    placement.miter.toward === "none"
      ? 0
      : tanDeg(placement.miter.degrees) * (placement.miter.toward === "left" ? -1 : 1);
  const from = Math.min(parts.keptEnd, parts.offEnd) - 4;
  const to = Math.max(parts.keptEnd, parts.offEnd) + 4;
  const gap = isNear ? 0 : slant * stick.width;
  drawFence(canvas, isNear ? stick.width + 1.5 : -FENCE - 1.5, { from, to, gap, name: words.fence });
  if (isSecond) drawStop(canvas, parts, words.stop);
  const top = -PATH - (isNear ? 0 : FENCE);
  const bottom = stick.width + PATH + (isNear ? FENCE : 0) - 8;
  const { miter, bevel } = placement;
  const label = words.miter({ toward: miter.toward, value: ready.angle(miter.degrees) });
  drawPath(canvas, placement, { width: stick.width, ends: [top, bottom], label });
  // On a thin stick there is no room for words: they stand across from the fence.
  const middle = stick.width >= THIN ? stick.width / 2 + 4 : isNear ? -6 : stick.width + 13;
  const keptMiddle = isSecond
    ? (parts.keptEnd + (hand > 0 ? most : least)) / 2 - hand * 22
    : hand > 0
      ? most + KEPT / 2 - 4
      : least - KEPT / 2 + 4;
  drawText(canvas, { x: keptMiddle, y: middle }, words.kept, {
    is: { part: "label", body: "kept" },
    anchor: "middle",
  });
  drawText(canvas, { x: hand > 0 ? least - OFFCUT / 2 : most + OFFCUT / 2, y: middle }, words.offcut, {
    is: { part: "label", body: "offcut" },
    anchor: "middle",
    size: SMALL_SIZE,
  });
  drawText(canvas, { x: 0, y: canvasBox(canvas).y1 + 14 }, words.youStandHere, {
    anchor: "middle",
    remark: true,
    size: SMALL_SIZE,
  });
  drawBladeView(canvas, placement, {
    labels: words.bevel({ toward: bevel.toward, value: ready.angle(bevel.degrees) }),
    remark: words.lookingAway,
  });
  const { title, lines } = operationText(operation, ready);
  return finishDrawing(canvas, { figure: "cut", step, title: words.title({ step, title }), sentences: lines });
}
