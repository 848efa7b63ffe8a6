import { isolate } from "../core/isolate.js";
import type { ContentsStack, FramePlan, MaterialPart } from "../frame/index.js";
import { costText } from "./cost-text.js";
import { element, list, table, type Content, type Markup } from "./html.js";
import { describeReason } from "../words/index.js";
import { quantityText } from "../words/internal.js";
import type { Words } from "./sheet-options.js";

/** How much room the stack leaves behind it, and how much of that is too little. */
function stackText(
  { thickness, left, leftAtLeast, tolerance, spare }: ContentsStack,
  room: number,
  words: Words,
): string {
  const { length } = words;
  const together = `Together ${length(thickness)}`;
  if (left === null || leftAtLeast === null || spare === null) return `${together}.`;
  if (left < 0) return `${together}: they stand ${length(-left)} proud of the rabbet.`;
  const thickest = length(leftAtLeast);
  const varies = tolerance > 0 && leftAtLeast >= 0 && thickest !== length(left);
  const thick = varies ? ` (${thickest} if the glass is as thick as it may be)` : "";
  const wanted = spare < 0 ? `, ${length(room)} is wanted` : "";
  return `${together}; ${length(left)} of depth, plumb, is left behind them${thick}${wanted}.`;
}

/** The layers from the front, with what is known of each. */
function layersTable(stack: ContentsStack, parts: readonly MaterialPart[], words: Words): Markup {
  const { length } = words;
  const layers = parts.filter(({ layer }) => layer !== null);
  const weighed = layers.some(({ mass }) => mass !== null);
  const hasCosts = layers.some(({ cost }) => cost !== null);
  const rows = stack.layers.map(({ name, thickness, behind, kind }, index): Content[] => {
    const { mass, cost } = layers[index]!;
    const total = cost?.total ?? null;
    const glazing = kind === null || kind === "sheet" || name.toLowerCase().includes(kind) ? "" : `, ${kind}`;
    return [
      `${isolate(name)}${glazing}`,
      length(thickness),
      length(behind),
      ...(weighed ? [mass === null ? "?" : quantityText(mass, "mass", words)] : []),
      ...(hasCosts ? [total === null ? "?" : costText(total)] : []),
    ];
  });
  const heads = ["layer", "thick", "its back at", ...(weighed ? ["mass"] : []), ...(hasCosts ? ["cost"] : [])];
  return table({ caption: "Layers from the front", hasNames: true, heads, rows });
}

/** The seating of the contents in the rabbet. */
function seatingLines({ contents, brief }: FramePlan, words: Words): string[] {
  const { length } = words;
  const { seating, reason, possible, hidden, visible, stack } = contents;
  if (possible === false) return [`They can't be held: ${reason === null ? "" : describeReason(reason)}`];
  const seen = `Hidden by the lip: ${length(hidden)} at every side; seen: sides of ${length(visible.side)}.`;
  const stacked = stack === null ? [] : [stackText(stack, brief.fastenerRoom, words)];
  if (seating?.possible !== true) {
    const { measured } = brief;
    const depth =
      measured?.depth === undefined ? [] : [`The rabbet is ${length(measured.depth)} deep, measured plumb.`];
    return [...(hidden > 0 ? [seen] : []), ...depth, ...stacked];
  }
  const wall = length(seating.depthUsed + seating.depthLeft);
  if (stack === null) return [seen, `The rabbet's wall is ${wall} deep.`];
  const leaning =
    brief.slope < 0 ? "They go in through a mouth that is" : "The wall leans away, so that their backs have";
  const room = brief.slope < 0 ? "narrower at every side" : "of room at every side";
  return [
    seen,
    `They use ${length(seating.depthUsed)} of the rabbet's wall of ${wall}.`,
    ...stacked,
    ...(seating.roomLost > 0 ? [`${leaning} ${length(seating.roomLost)} ${room}.`] : []),
  ];
}

/** The panel's size. */
function panelText({ contents }: FramePlan, { length }: Words): string[] {
  const { panel, box, stack } = contents;
  if (panel === null || box === null) return [];
  const size = `Panel: ${panel.sides} equal sides of ${length(panel.side)}, across flats ${length(panel.acrossFlats)}`;
  if (stack === null) return [`${size}.`];
  return [
    `${size}, across corners ${length(panel.acrossCorners)}; cut from ${length(box.width)} × ${length(box.height)} as it stands.`,
  ];
}

/**
 * What goes into the frame: the panel's size, what the lip hides, the layers, and the rabbet's depth.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns a block that stands beside the lengths
 */
export function contentsBlock(plan: FramePlan, words: Words): Markup {
  const { length } = words;
  const { contents, brief, materials } = plan;
  const { contained, sheet, stack } = contents;
  const lines: Content[] = [...panelText(plan, words)];
  if (brief.clearance > 0) lines.push(`Clearance kept at every side: ${length(brief.clearance)}.`);
  if (contained !== null) lines.push(`It must hold ${length(contained.width)} × ${length(contained.height)}.`);
  if (sheet !== null) lines.push(`It is cut from a sheet of ${length(sheet.width)} × ${length(sheet.height)}.`);
  lines.push(...seatingLines(plan, words));
  return element(
    'div class="keep"',
    element("h3", "Contents"),
    list("ul", lines),
    ...(stack === null ? [] : [layersTable(stack, materials.parts, words)]),
  );
}
