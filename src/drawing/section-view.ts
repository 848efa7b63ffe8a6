import type { Point } from "../core/geometry-types.js";
import { isolate } from "../core/isolate.js";
import { arrisLabel, reasonText } from "../words/index.js";
import { englishSectionDrawing } from "../words/internal.js";
import { sectionAt, type Profile, type RabbetHold } from "../profile/index.js";
import { drawBench } from "./bench.js";
import { canvasBox, drawShape, finishDrawing, startCanvas } from "./canvas.js";
import { levelDimension, plumbDimension } from "./dimension.js";
import { checkDrawingOptions, type DrawingOptions } from "./drawing-options.js";
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

/** What is told of a section. */
type Told = Pick<SectionSheet, "geometry" | "options" | "words">;

/** Level dimensions below the bench: lap and level width in one line, the whole level size in the next. */
function dimensionWidths(sheet: SectionSheet, hold: RabbetHold | null, edge: number): void {
  const { canvas, geometry, toPaper, options, words } = sheet;
  const { deciding, pieces, levelWidth, arrises } = geometry;
  const { longest, shortest } = pieces[0];
  const place = (point: { readonly out: number; readonly up: number | null }): Point => toPaper(point.out, point.up!);
  const at = canvasBox(canvas).y1 + LANE - 4;
  const width = words.levelWidth({ value: options.length(levelWidth) });
  levelDimension(canvas, { measure: "levelWidth", from: place(deciding), to: place(longest), at, label: width });
  const sight = arrises["sightBack"];
  if (hold !== null && sight !== undefined) {
    const [from, to] = [place(sight), toPaper(edge, deciding.up!)];
    const label = words.lap({ value: options.length(hold.lap) });
    levelDimension(canvas, { measure: "lap", from, to, at, label, outside: "before" });
  }
  if (shortest.out < deciding.out) {
    const [from, to] = [place(shortest), place(longest)];
    const label = words.jointWidth({ value: options.length(longest.out - shortest.out) });
    levelDimension(canvas, { measure: "jointWidth", from, to, at: at + LANE, label });
  }
}

function drawKnown(sheet: SectionSheet, profile: Profile, scale: number): void {
  const { canvas, geometry, toPaper, options, words } = sheet;
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
    measure: "height",
    label: words.height({ value: options.length(geometry.overall.height!) }),
  });
  const stub = hold !== null && hold.layers.length > 0 ? 36 : 16;
  drawBench(canvas, box.x0 - stub, box.x1 + 16, sheet.bench);
  dimensionWidths(sheet, hold, edge);
  letterArrises(sheet, outline, arrises);
  if (slopeLabel !== null) placeLabel(canvas, slopeLabel);
}

/** How deep the rabbet is and what is left of it behind the contents. */
function rabbetText(hold: RabbetHold, { geometry, options: { length }, words }: Told): string {
  const letters = arrisLetters(Object.keys(geometry.arrises));
  const { depthUsed, depthLeft, layers } = hold;
  return words.rabbet({
    depth: length(depthUsed + depthLeft),
    wall: [letters["wallLedge"] ?? "", letters["wallMouth"] ?? ""],
    left: layers.length > 0 && depthLeft >= 0 ? length(depthLeft) : null,
    proud: layers.length > 0 && depthLeft < 0 ? length(-depthLeft) : null,
  });
}

function keyOf(told: Told): KeyEntry[] {
  const { geometry, options, words } = told;
  const letters = arrisLetters(Object.keys(geometry.arrises));
  const entries: KeyEntry[] = Object.keys(geometry.arrises).map((arris) => ({
    sign: { name: letters[arris]! },
    text: arrisLabel(arris, options),
  }));
  if (geometry.profile === null) {
    entries.push({ text: words.onlyLevel({ slope: options.angle(geometry.slope) }) });
  }
  if (geometry.seating?.possible === true) entries.push({ text: rabbetText(geometry.seating, told) });
  return entries;
}

function describe({ geometry, options, words }: Told): string[] {
  const { slope, levelWidth, seating } = geometry;
  const { length, angle } = options;
  const held = seating?.possible === true ? seating.layers : [];
  const layers = held.map(({ name, front, back }) => ({ name: isolate(name), thickness: length(front - back) }));
  return [
    words.seen({ slope: slope === 0 ? null : angle(slope) }),
    words.width({ levelWidth: length(levelWidth) }),
    ...(layers.length === 0 ? [] : [words.layers({ layers })]),
    ...(seating?.possible === false ? [reasonText(seating.reason, options)] : []),
  ];
}

/**
 * Draws the section of a side as it stands in the finished frame, on the bench: its arrises, its level width, and what lies in its rabbet.
 *
 * The frame's center is to the left. Where only level measures are known, they alone are to scale.
 *
 * @param frame - a geometry or a plan; also one that was read back from JSON
 * @param options - formatters, words, and the width to aim at (default 360)
 * @returns the drawing
 * @throws {InputError} when the frame is not a geometry or plan, or an option is not sound
 * @example
 * ```ts
 * import { drawSection } from "miterwright/drawing";
 * import { frameGeometry } from "miterwright/frame";
 * import { formatters } from "miterwright/units";
 *
 * const tray = frameGeometry({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, measured: { levelWidth: 42, lap: 6 } });
 * const drawing = drawSection(tray, { formats: formatters({ unit: "mm" }) });
 * drawing.description; //=> "A side of the frame cut across, sloping 20°; the frame's center is to the left. Width taken level 42 mm."
 * ```
 */
export function drawSection(frame: FrameToDraw, options: DrawingOptions): Drawing {
  const ready = checkDrawingOptions(options, 360);
  const geometry = readGeometry(frame);
  const { profile, slope, seating } = geometry;
  const words = ready.words?.drawings.section ?? englishSectionDrawing;
  const told: Told = { geometry, options: ready, words };
  const canvas = startCanvas();
  if (profile === null) {
    drawLevelMeasures(canvas, geometry, ready, words);
  } else {
    const { outline } = sectionAt(profile, slope);
    const outs = outline.map(({ out }) => out);
    const ups = outline.map(({ up }) => up);
    const [inner, low] = [Math.min(...outs), Math.min(...ups)];
    const named = seating?.possible === true ? contentsWidth(seating, ready) : 0;
    const room = Math.max(LEAST_ROOM, ready.width - BESIDE - named);
    const scale = Math.min(room / (Math.max(...outs) - inner), HIGHEST / (Math.max(...ups) - low));
    const toPaper = (out: number, up: number): Point => ({ x: (out - inner) * scale, y: (low - up) * scale });
    drawKnown({ ...told, canvas, toPaper, bench: 0 }, profile, scale);
  }
  const key: KeyEntry[] = ready.key ? keyOf(told) : [];
  if (seating?.possible === false) key.push({ text: reasonText(seating.reason, ready) });
  const box = canvasBox(canvas);
  drawKey(canvas, key, { x: box.x0, y: box.y1 + 8, width: Math.max(ready.width - 12, box.x1 - box.x0) });
  return finishDrawing(canvas, { figure: "section", title: words.title, sentences: describe(told) });
}
