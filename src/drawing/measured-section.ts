import type { Point } from "../core/geometry-types.js";
import type { FrameGeometry } from "../frame/index.js";
import type { SectionDrawingWords } from "../words/index.js";
import { drawBench } from "./bench.js";
import { drawShape, drawText, type Canvas } from "./canvas.js";
import { levelDimension, plumbDimension } from "./dimension.js";
import type { ReadyOptions } from "./drawing-options.js";
import { arrisLetters } from "./arris-letters.js";
import { placeLabel } from "./place-label.js";

/** Height of the figure, which stands for no measure. */
const HEIGHT: number = 84;
/** Room beside the figure. */
const BESIDE: number = 110;
/** From the figure to the dimensions. */
const LANE: number = 26;

/** Draws the level measures of a molding whose section is not known: an unspecific block, dashed, whose level sizes alone are to scale. */
export function drawLevelMeasures(
  canvas: Canvas,
  geometry: FrameGeometry,
  options: ReadyOptions,
  words: SectionDrawingWords,
): void {
  const { arrises, levelWidth, measured } = geometry;
  const inner = arrises["sight"]?.out ?? arrises["wall"]!.out;
  const wall = arrises["wall"]!.out - inner;
  const outer = arrises["outer"]!.out - inner;
  const scale = (options.width - BESIDE) / outer;
  const at = (out: number, height: number): Point => ({ x: out * scale, y: -height });
  const lip = HEIGHT / 2;
  drawShape(canvas, "unknown-section", "hidden", [
    at(wall, 0),
    at(outer, 0),
    at(outer, HEIGHT),
    at(0, HEIGHT),
    at(0, lip),
    at(wall, lip),
  ]);
  drawBench(canvas, at(0, 0).x - 20, at(outer, 0).x + 20, 0);
  levelDimension(canvas, {
    from: at(wall, 0),
    to: at(outer, 0),
    at: LANE,
    measure: "levelWidth",
    label: words.levelWidth({ value: options.length(levelWidth) }),
  });
  if (measured?.lap !== undefined && measured.lap > 0) {
    const label = words.lap({ value: options.length(measured.lap) });
    levelDimension(canvas, { measure: "lap", from: at(0, lip), to: at(wall, 0), at: LANE, label, outside: "before" });
  }
  if (measured?.depth !== undefined) {
    const label = words.depth({ value: options.length(measured.depth) });
    const [from, to] = [at(wall, lip), at(wall, 0)];
    plumbDimension(canvas, { measure: "depth", from, to, at: at(0, 0).x - 14, label, outside: "before" });
  }
  drawText(canvas, { x: ((wall + outer) / 2) * scale, y: -HEIGHT - 8 }, words.notKnown, {
    anchor: "middle",
    remark: true,
  });
  const letters = arrisLetters(Object.keys(arrises));
  const places: Readonly<Record<string, Point>> = {
    wall: at(wall, lip / 2),
    outer: at(outer, HEIGHT / 2),
    sight: at(0, (lip + HEIGHT) / 2),
  };
  for (const arris of Object.keys(arrises)) {
    const place = places[arris];
    const toward = arris === "outer" ? 0 : 180;
    if (place === undefined) continue;
    placeLabel(canvas, { is: { part: "label", arris }, at: place, lines: [letters[arris]!], toward, reach: 5 });
  }
}
