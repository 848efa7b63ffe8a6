import { isolate } from "../core/isolate.js";
import type { Point } from "../core/geometry-types.js";
import { type FrameGeometry } from "../frame/index.js";
import { arrisLabel, reasonText } from "../words/index.js";
import { sectionAt, type Profile, type RabbetHold } from "../profile/index.js";
import { drawBench } from "./bench.js";
import { canvasBox, drawShape, finishDrawing, startCanvas } from "./canvas.js";
import { levelDimension, plumbDimension } from "./dimension.js";
import { checkDrawingOptions, type DrawingOptions, type ReadyOptions } from "./drawing-options.js";
import type { Drawing } from "./drawing.js";
import { drawKey, type KeyEntry } from "./key.js";
import { arrisLetters } from "./arris-letters.js";
import { drawLevelMeasures } from "./measured-section.js";
import { boxAround } from "./paper.js";
import { placeLabel } from "./place-label.js";
import { readGeometry, type FrameToDraw } from "./read-frame.js";
import { contentsWidth, drawContents } from "./section-contents.js";
import { letterArrises } from "./section-letters.js";
import type { SectionSheet } from "./section-sheet.js";
import { drawSlope } from "./section-slope.js";

/** Greatest height of the section itself. */
const HIGHEST: number = 190;
/** The section may always be this wide, however wide its labels are. */
const LEAST_ROOM: number = 100;
/** From the figure to a dimension, and from one to the next. */
const LANE: number = 21;
/** Room beside the section for dimensions and words. */
const BESIDE: number = 66;

/** Level dimensions below the bench: lap and level width in one line, the whole level size in the next. */
function dimensionWidths(sheet: SectionSheet, hold: RabbetHold | null, edge: number): void {
  const { canvas, geometry, toPaper, options } = sheet;
  const { deciding, pieces, levelWidth, arrises } = geometry;
  const { longest, shortest } = pieces[0];
  const place = (point: { readonly out: number; readonly up: number | null }): Point => toPaper(point.out, point.up!);
  const at = canvasBox(canvas).y1 + LANE - 4;
  const label = `width taken level ${options.length(levelWidth)}`;
  levelDimension(canvas, { from: place(deciding), to: place(longest), at, label });
  const sight = arrises["sightBack"];
  if (hold !== null && sight !== undefined) {
    const to = toPaper(edge, deciding.up!);
    levelDimension(canvas, { from: place(sight), to, at, label: `lap ${options.length(hold.lap)}`, outside: "before" });
  }
  if (shortest.out < deciding.out) {
    const whole = `overall ${options.length(longest.out - shortest.out)}`;
    levelDimension(canvas, { from: place(shortest), to: place(longest), at: at + LANE, label: whole });
  }
}

function drawKnown(sheet: SectionSheet, profile: Profile, scale: number): void {
  const { canvas, geometry, toPaper, options } = sheet;
  const { seating, slope, arrises, pieces } = geometry;
  const { outline } = sectionAt(profile, slope);
  const hold = seating?.possible === true ? seating : null;
  const sight = arrises["sightBack"]?.out ?? 0;
  const edge = hold === null ? 0 : sight + hold.lap;
  if (hold !== null) drawContents(sheet, hold, edge, pieces[0].shortest.out);
  const shape = outline.map(({ out, up }) => toPaper(out, up));
  drawShape(canvas, "section", "section", shape);
  const box = boxAround(shape);
  const slopeLabel = drawSlope(sheet, profile, scale);
  const top = shape.reduce((best, point) => (point.y < best.y ? point : best));
  plumbDimension(canvas, {
    from: top,
    to: { x: box.x1 + 12, y: box.y1 },
    at: Math.max(canvasBox(canvas).x1, box.x1 + 12) + LANE,
    label: `height ${options.length(geometry.overall.height!)}`,
  });
  const stub = hold !== null && hold.layers.length > 0 ? 36 : 16;
  drawBench(canvas, box.x0 - stub, box.x1 + 16, sheet.bench);
  dimensionWidths(sheet, hold, edge);
  letterArrises(sheet, outline, arrises);
  if (slopeLabel !== null) placeLabel(canvas, slopeLabel);
}

/** How deep the rabbet is and what is left of it behind the contents. */
function rabbetText(hold: RabbetHold, letters: Readonly<Record<string, string>>, { length }: ReadyOptions): string {
  const wall = `${letters["wallLedge"] ?? ""}–${letters["wallMouth"] ?? ""}`;
  const deep = `Rabbet ${length(hold.depthUsed + hold.depthLeft)} deep along its wall (${wall})`;
  if (hold.layers.length === 0) return `${deep}.`;
  return hold.depthLeft < 0
    ? `${deep}: its contents stand ${length(-hold.depthLeft)} proud of it.`
    : `${deep}, ${length(hold.depthLeft)} of it left behind its contents.`;
}

function keyOf(geometry: FrameGeometry, options: ReadyOptions): KeyEntry[] {
  const letters = arrisLetters(Object.keys(geometry.arrises));
  const entries: KeyEntry[] = Object.keys(geometry.arrises).map((arris) => ({
    sign: { name: letters[arris]! },
    text: arrisLabel(arris),
  }));
  if (geometry.profile === null) {
    entries.push({
      text: `The profile is not known: only its level measures are to scale. Slope ${options.angle(geometry.slope)}.`,
    });
  }
  if (geometry.seating?.possible === true) entries.push({ text: rabbetText(geometry.seating, letters, options) });
  return entries;
}

function describe(geometry: FrameGeometry, { length, angle }: ReadyOptions): string {
  const { slope, levelWidth, seating } = geometry;
  const stands = slope === 0 ? "lying flat" : `sloping ${angle(slope)}`;
  const layers =
    seating?.possible === true
      ? seating.layers.map(({ name, front, back }) => `${isolate(name)} ${length(front - back)}`)
      : [];
  const held = layers.length === 0 ? "" : ` In its rabbet, from the front: ${layers.join(", ")}.`;
  const miss = seating?.possible === false ? ` ${reasonText(seating.reason)}` : "";
  return `A side of the frame cut across, ${stands}; the frame's center is to the left. Width taken level ${length(levelWidth)}.${held}${miss}`;
}

/**
 * Draws the section of a side as it stands in the finished frame, on the bench: its arrises, its level width, and what lies in its rabbet.
 *
 * The frame's center is to the left. Where only level measures are known, they alone are to scale.
 *
 * @param frame - a geometry or a plan; also one that was read back from JSON
 * @param options - how to write lengths and angles, and the width to aim at (default 360)
 * @returns the drawing
 * @throws {InputError} when the frame is not a geometry or plan, or an option is not sound
 * @example
 * ```ts
 * import { drawSection } from "miterwright/drawing";
 * import { frameGeometry } from "miterwright/frame";
 *
 * const tray = frameGeometry({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, measured: { levelWidth: 42, lap: 6 } });
 * const drawing = drawSection(tray, { length: (value) => `${value.toFixed(1)} mm`, angle: (degrees) => `${degrees.toFixed(1)}°` });
 * drawing.description; //=> "A side of the frame cut across, sloping 20.0°; the frame's center is to the left. Width taken level 42.0 mm."
 * ```
 */
export function drawSection(frame: FrameToDraw, options: DrawingOptions): Drawing {
  const ready = checkDrawingOptions(options, 360);
  const geometry = readGeometry(frame);
  const { profile, slope, seating } = geometry;
  const canvas = startCanvas();
  if (profile === null) {
    drawLevelMeasures(canvas, geometry, ready);
  } else {
    const { outline } = sectionAt(profile, slope);
    const outs = outline.map(({ out }) => out);
    const ups = outline.map(({ up }) => up);
    const [inner, low] = [Math.min(...outs), Math.min(...ups)];
    const named = seating?.possible === true ? contentsWidth(seating, ready) : 0;
    const room = Math.max(LEAST_ROOM, ready.width - BESIDE - named);
    const scale = Math.min(room / (Math.max(...outs) - inner), HIGHEST / (Math.max(...ups) - low));
    const toPaper = (out: number, up: number): Point => ({ x: (out - inner) * scale, y: (low - up) * scale });
    drawKnown({ canvas, geometry, options: ready, toPaper, bench: 0 }, profile, scale);
  }
  const key: KeyEntry[] = ready.key ? keyOf(geometry, ready) : [];
  if (seating?.possible === false) key.push({ text: reasonText(seating.reason) });
  const box = canvasBox(canvas);
  drawKey(canvas, key, box.x0, box.y1 + 8, Math.max(ready.width - 12, box.x1 - box.x0));
  return finishDrawing(canvas, "Profile of a side, as it stands in the frame", describe(geometry, ready));
}
