import { checkObject, checkText, reject } from "../core/check.js";
import { maybe, readStored } from "../core/stored.js";
import { checkDrawingOptions, checkFormatter } from "../drawing/drawing-options.js";
import type { FramePlan } from "../frame/index.js";
import { framePlan } from "../frame/internal.js";
import { stockFit } from "../stock/internal.js";
import { hazardSection, firstWord } from "./hazard-section.js";
import { checkSection } from "./check-section.js";
import { contentsBlock } from "./contents-section.js";
import { factsOf, frameSection } from "./frame-section.js";
import { hangingBlock } from "./hanging-section.js";
import { element, join, type Markup } from "./html.js";
import { movementBlock } from "./movement-section.js";
import { panelSection } from "./panel-section.js";
import { sawSection } from "./saw-section.js";
import type { SheetOptions, Words } from "./sheet-options.js";
import { SHEET_STYLE } from "./sheet-style.js";
import { sticksBlock, stockSection } from "./stock-section.js";

function optionalText(value: unknown, path: string): string | undefined {
  return value === undefined ? undefined : checkText(value, path);
}

function defaultTitle({ geometry }: FramePlan, { angle }: Words): string {
  const { sides, slope } = geometry;
  return `Shop sheet: frame of ${sides} sides, ${slope === 0 ? "lying flat" : `sloping ${angle(slope)}`}`;
}

/**
 * The shop sheet of a frame: one self-contained, printable HTML page with all that a maker at the saw needs.
 *
 * It has the pictures, the lengths at every arris, the sticks and how they are cut up, and the hazards. Then come the saw's settings and the steps in shop
 * order, the panel, and what to check before gluing. It prints on A4 and on Letter, holds no script and loads nothing. All text of the caller is escaped.
 *
 * @param plan - from `planFrame`; also one that was read back from JSON
 * @param options - how to write lengths and angles, and if wanted the stock fit, a title and a note
 * @returns an HTML document
 * @throws {InputError} when the plan is not one, an option is not sound, or a fit is given that is not one for the plan's stock job
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 * import { shopSheet } from "miterwright/sheet";
 * import { formatAngle, formatLength } from "miterwright/units";
 *
 * const profile = molding({ width: 42, thickness: 18, rabbet: { width: 8, depth: 9 } });
 * const plan = planFrame({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, profile });
 * const html = shopSheet(plan, { length: (value) => formatLength(value, "mm"), angle: (degrees) => formatAngle(degrees), title: "Tide-pool tray" });
 * html.startsWith("<!DOCTYPE html>"); //=> true
 * html.includes("<h1>Tide-pool tray</h1>"); //=> true
 * ```
 */
export function shopSheet(plan: FramePlan, options: SheetOptions): string {
  const { length, angle } = checkDrawingOptions(options, 700);
  // A line is never broken between a number and its unit.
  const tie = (write: (value: number) => string) => (value: number) => write(value).replaceAll(" ", "\u00a0");
  const small = options.small === undefined ? length : checkFormatter(options.small, "small");
  const { smallAngle, mass, force } = options;
  const words: Words = {
    length: tie(length),
    small: tie(small),
    angle: tie(angle),
    ...(smallAngle === undefined ? {} : { smallAngle: tie(checkFormatter(smallAngle, "smallAngle")) }),
    ...(mass === undefined ? {} : { mass: tie(checkFormatter(mass, "mass")) }),
    ...(force === undefined ? {} : { force: tie(checkFormatter(force, "force")) }),
  };
  const whole = readStored(checkObject(plan, "plan"), "", framePlan);
  const fit = readStored(options.fit, "fit", (value, path) => maybe(value, path, stockFit));
  if (fit !== undefined && whole.stockJobs.length === 0) {
    reject(
      "conflict",
      "fit",
      fit,
      "Expected `fit` only with a plan that has a stock job, which it has when its brief offers sticks",
    );
  }
  const title = optionalText(options.title, "title") ?? defaultTitle(whole, words);
  const note: Markup[] = (optionalText(options.note, "note") ?? "")
    .split(/\r?\n/)
    .flatMap((line) => (line.trim() === "" ? [] : [element("p", line)]));
  const body = join([
    element("header", element("h1", title), ...firstWord(whole, fit, words), ...note, factsOf(whole, words)),
    element(
      "main",
      frameSection(
        whole,
        words,
        contentsBlock(whole, words),
        join([sticksBlock(whole, words), ...hangingBlock(whole, words)]),
      ),
      stockSection(whole, fit, words),
      hazardSection(whole, words),
      sawSection(whole, words),
      checkSection(whole, words, movementBlock(whole, words)),
      panelSection(whole, words),
    ),
  ]);
  return `<!DOCTYPE html>
<html lang="en"><head><meta charset="utf-8"/><meta name="viewport" content="width=device-width,initial-scale=1"/>${element("title", title).html}<style>${SHEET_STYLE}</style></head>
<body>${body.html}</body></html>
`;
}
