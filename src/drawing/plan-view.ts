import type { Box, Point } from "../core/geometry-types.js";
import { englishAbove, englishNumbering } from "../words/internal.js";
import { polygonCorners, polygonExtent } from "../polygon/index.js";
import { drawLine, drawShape, finishDrawing, startCanvas, canvasBox } from "./canvas.js";
import { checkDrawingOptions, type DrawingOptions } from "./drawing-options.js";
import type { Drawing } from "./drawing.js";
import { drawKey, type KeyEntry } from "./key.js";
import { boxCorners, boxAround } from "./paper.js";
import { dimensionPlan } from "./plan-dimensions.js";
import { numberSides } from "./plan-numbers.js";
import { readContents, readGeometry, type DrawnContents, type FrameToDraw } from "./read-frame.js";
import type { PlanSheet } from "./plan-sheet.js";
import { arrisesSeenFromAbove } from "./seen-arrises.js";

/** Room for one dimension beside the figure. */
const LANE: number = 26;
/** Edges whose lines lie closer than this are drawn as one. */
const ONE_LINE: number = 1.2;
/** Corners closer than this are not all drawn. */
const CLOSE_CORNERS: number = 3;
/** A sheet that reaches this many times farther than the frame is not drawn. */
const FAR_SHEET: number = 1.5;

/** A rectangle that belongs to the frame: what it holds or what its panel is cut from. */
interface Rectangle {
  readonly part: "contained" | "sheet";
  readonly box: Box;
  readonly center: Point;
}

function rectangleOf(contents: DrawnContents | undefined): Rectangle | null {
  const box = contents?.contained ?? contents?.sheet ?? null;
  if (box === null || contents === undefined || contents.center === null) return null;
  return { part: contents.contained === null ? "sheet" : "contained", box, center: contents.center };
}

function rectangleCorners({ box, center }: Rectangle): Point[] {
  const [x, y] = [box.width / 2, box.height / 2];
  return boxCorners(center.x - x, center.y - y, center.x + x, center.y + y);
}

/** One joint in how many is drawn: where there are many, only some of them. */
function jointStep({ geometry, scale }: PlanSheet): number {
  return Math.ceil(CLOSE_CORNERS / Math.max(geometry.overall.polygon.side * scale, 1e-3));
}

/** Every side by itself, so that a program can tell which of them is touched; over the whole ring, lest its ground show between them. */
function drawSides(sheet: PlanSheet): void {
  const { canvas, geometry, corners, sight } = sheet;
  if (jointStep(sheet) > 1) return;
  const [outer, inner] = [corners(geometry.overall.polygon.apothem), corners(sight)];
  outer.forEach((from, side) => {
    const next = (side + 1) % outer.length;
    drawShape(canvas, { part: "side", side }, "wood", [from, outer[next]!, inner[next]!, inner[side]!]);
  });
}

function drawJoints(sheet: PlanSheet): number {
  const { canvas, geometry, corners, sight } = sheet;
  const outer = corners(geometry.overall.polygon.apothem);
  const inner = corners(sight);
  const every = jointStep(sheet);
  outer.forEach((corner, index) => {
    if (index % every === 0) drawLine(canvas, { part: "joint", corner: index }, "edge", [corner, inner[index]!]);
  });
  return every;
}

function drawRings(sheet: PlanSheet): KeyEntry[] {
  const { canvas, geometry, corners, sight, scale, options, words } = sheet;
  const { opening, overall, deciding, pieces } = geometry;
  const outer = overall.polygon.apothem;
  drawShape(canvas, "wood", "wood", corners(outer), corners(sight));
  drawSides(sheet);
  const seen = arrisesSeenFromAbove(geometry)
    .map(([arris, { out }]) => ({ arris, apothem: opening.apothem + (out - deciding.out) }))
    .sort((a, b) => a.apothem - b.apothem);
  let last = sight;
  for (const { arris, apothem } of seen) {
    if (Math.min(apothem - last, outer - apothem) * scale < ONE_LINE) continue;
    drawShape(canvas, { part: "arris", arris }, "edge", corners(apothem));
    last = apothem;
  }
  const every = drawJoints(sheet);
  drawShape(canvas, "outermost", "outline", corners(outer));
  drawShape(canvas, "innermost", "outline", corners(sight));
  const key: KeyEntry[] = [];
  if (deciding.out > pieces[0].shortest.out) {
    drawShape(canvas, "opening", "hidden", corners(opening.apothem));
    key.push({
      sign: { look: "hidden" },
      text: words.openingUnderLip({ side: options.length(opening.side) }),
    });
  }
  if (every > 1) key.push({ text: words.joints({ sides: geometry.sides, every }) });
  return key;
}

function drawRectangle(sheet: PlanSheet, rectangle: Rectangle | null, isDrawn: boolean): KeyEntry[] {
  if (rectangle === null) return [];
  const { canvas, scale, options, words } = sheet;
  const { part, box } = rectangle;
  const text = words[part]({ width: options.length(box.width), height: options.length(box.height), isDrawn });
  if (!isDrawn) return [{ text }];
  drawShape(
    canvas,
    part,
    "phantom",
    rectangleCorners(rectangle).map(({ x, y }) => ({ x: x * scale, y: -y * scale })),
  );
  return [{ sign: { look: "phantom" }, text }];
}

/**
 * Draws a frame as it is seen from above, in its pose: its edges, joints and numbered sides, the opening, what it holds, and its overall dimensions.
 *
 * @param frame - a geometry or a plan; also one that was read back from JSON. With a plan, the rectangle that it was made for is drawn too
 * @param options - formatters, words, and the width to aim at (default 360)
 * @returns the drawing
 * @throws {InputError} when the frame is not a geometry or plan, or an option is not sound
 * @example
 * ```ts
 * import { drawPlanView } from "miterwright/drawing";
 * import { frameGeometry } from "miterwright/frame";
 * import { formatters } from "miterwright/units";
 *
 * const tray = frameGeometry({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, measured: { levelWidth: 42, lap: 6 } });
 * drawPlanView(tray, { formats: formatters({ unit: "mm" }) }).title; //=> "Frame of 9 sides seen from above"
 * ```
 */
export function drawPlanView(frame: FrameToDraw, options: DrawingOptions): Drawing {
  const ready = checkDrawingOptions(options, 360);
  const geometry = readGeometry(frame);
  const { sides, pose, overall, opening, deciding, pieces } = geometry;
  const rectangle = rectangleOf(readContents(frame));
  const { width, height } = overall.extent;
  const isDrawn =
    rectangle !== null && rectangle.box.width <= FAR_SHEET * width && rectangle.box.height <= FAR_SHEET * height;

  const unit = polygonCorners({ sides, apothem: 1 }, pose);
  const outline = unit.map(({ x, y }) => ({ x: x * overall.polygon.apothem, y: y * overall.polygon.apothem }));
  const room = boxAround([...outline, ...(isDrawn ? rectangleCorners(rectangle) : [])]);
  const scale = (ready.width - 2 * LANE - 12) / Math.max(room.x1 - room.x0, room.y1 - room.y0);
  const sheet: PlanSheet = {
    canvas: startCanvas(),
    geometry,
    options: ready,
    words: ready.words?.drawings.above ?? englishAbove,
    corners: (apothem) => unit.map(({ x, y }) => ({ x: x * apothem * scale, y: -y * apothem * scale })),
    sight: opening.apothem + (pieces[0].shortest.out - deciding.out),
    scale,
  };
  const { canvas, words } = sheet;
  const key = [...drawRings(sheet), ...drawRectangle(sheet, rectangle, isDrawn)];
  const said = dimensionPlan(sheet);
  numberSides(sheet);
  const drawn = canvasBox(canvas);
  const left = Math.min(drawn.x0, (drawn.x0 + drawn.x1 - ready.width) / 2 + 6);
  if (ready.key) drawKey(canvas, key, { x: left, y: drawn.y1 + 6, width: ready.width - 12 });
  const across = polygonExtent(opening, pose);
  return finishDrawing(canvas, {
    figure: "above",
    title: words.title({ sides }),
    sentences: [
      words.seen({ sides, pose }),
      (ready.words?.labels.numbering ?? englishNumbering)[pose],
      words.outermost({ measures: said }),
      words.openingSize({ width: ready.length(across.width), height: ready.length(across.height) }),
      ...key.map(({ text }) => text),
    ],
  });
}
