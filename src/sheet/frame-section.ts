import { isolate } from "../core/isolate.js";
import { drawPlanView, drawSection } from "../drawing/index.js";
import { arrisLetters } from "../drawing/arris-letters.js";
import { type FramePlan, type PartialSum } from "../frame/index.js";
import { arrisLabel } from "../words/index.js";
import { costText } from "./cost-text.js";
import { element, figure, table, type Content, type Markup } from "./html.js";
import { quantityText } from "../words/internal.js";
import type { Words } from "./sheet-options.js";

/** Width of the view from above: less than half the sheet, so that the frame fits on one page with the rest. */
const ABOVE: number = 250;
/** Width of the section: less than its column, so that what stands below it stays on the page. */
const SECTION: number = 310;

function fact(name: string, value: string): Content[] {
  return [element("div", element("dt", name), element("dd", value))];
}

/** A sum that may be known in part; no fact at all where nothing of it is known. */
function sumFact(name: string, sum: PartialSum | null, write: (value: number) => string): Content[] {
  if (sum === null) return [];
  const { total, missing } = sum;
  if (total === null) return [];
  return fact(
    name,
    missing.length === 0 ? write(total) : `at least ${write(total)}, without ${missing.map(isolate).join(", ")}`,
  );
}

/**
 * The frame at a glance.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns a list of its main measures
 */
export function factsOf(plan: FramePlan, words: Words): Markup {
  const { geometry, materials } = plan;
  const { length, angle } = words;
  const { sides, slope, pose, opening, overall, levelWidth, pieces } = geometry;
  const height = overall.height === null ? [] : fact("height on the bench", length(overall.height));
  // A job may ask for the pieces of several frames; all else is told of one.
  const frames = (plan.stockJobs[0]?.pieces[0]?.count ?? pieces[0].count) / pieces[0].count;
  const [inAll, each] = frames > 1 ? [` a frame, ${frames * pieces[0].count} in all`, ", a frame"] : ["", ""];
  return element(
    "dl",
    ...fact("sides", `${sides}, ${pose === "side-down" ? "standing on a side" : "standing on a corner"}`),
    ...fact("slope", slope === 0 ? "none, it lies flat" : angle(slope)),
    ...fact("opening, side", length(opening.side)),
    ...fact("opening, across flats", length(opening.acrossFlats)),
    ...fact("overall, across flats", length(overall.polygon.acrossFlats)),
    ...fact("overall, across corners", length(overall.polygon.acrossCorners)),
    ...fact("molding, width taken level", length(levelWidth)),
    ...height,
    ...fact("pieces", `${pieces[0].count}${inAll}, longest line ${length(pieces[0].longest.length)}`),
    ...fact(`molding needed${each}`, length(materials.moldingLength)),
    ...sumFact(`mass${each}`, materials.mass, (mass) => quantityText(mass, "mass", words)),
    ...sumFact(`cost${each}`, materials.cost, costText),
  );
}

function lengthsTable({ geometry, sawing }: FramePlan, { length }: Words): Markup {
  const piece = geometry.pieces[0];
  const arrises = Object.keys(geometry.arrises);
  const letters = arrisLetters(arrises);
  const measured = sawing.operations.at(-1)?.measure?.arris;
  const rows: Content[][] = arrises.map((arris) => [
    letters[arris]!,
    arrisLabel(arris),
    length(piece.lengths[arris]!),
    arris === measured ? "measure here" : "",
  ]);
  if (piece.longest.arris === null)
    rows.push([
      "–",
      "longest line of the piece",
      length(piece.longest.length),
      measured === null ? "measure here" : "",
    ]);
  if (piece.shortest.arris === null) rows.push(["–", "shortest line of the piece", length(piece.shortest.length), ""]);
  return table({
    caption: "Finished length of every piece along every edge",
    hasNames: true,
    heads: ["letter", "edge", "length", "tape"],
    rows,
  });
}

/**
 * The frame: pictures from above and in section, and the lengths at every arris.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @param contents - what stands below the view from above
 * @param sticks - what stands below the lengths
 * @returns the section
 */
export function frameSection(plan: FramePlan, words: Words, contents: Markup, sticks: Markup): Markup {
  const above = drawPlanView(plan, { ...words, width: ABOVE });
  const section = drawSection(plan, { ...words, width: SECTION, key: false });
  return element(
    "section",
    element("h2", "The frame"),
    element(
      'div class="frame"',
      element("div", element("figure", { html: above.svg }), contents),
      element(
        "div",
        figure(section, "A side cut across, as it stands; the frame's center is to the left."),
        lengthsTable(plan, words),
        sticks,
      ),
    ),
  );
}
