import { isolate } from "../../core/isolate.js";
import type { ContentsStack, FramePlan, StackLayer } from "../../frame/index.js";
import { reasonText } from "../../words/index.js";
import { listOf, sectionOf, tableOf, type Pen } from "../pen.js";
import type { ReportSection } from "../report.js";
import { column, plainTable, written, type Cell } from "../tables/plain-table.js";
import type { TableData } from "../tables/table-data.js";

/** How much room the stack leaves behind it, and how much of that is too little. */
function stackLine(stack: ContentsStack, room: number, { words, formats: { length } }: Pen): string {
  const { left, leftAtLeast, tolerance, spare } = stack;
  const isKnown = left !== null && leftAtLeast !== null && spare !== null;
  const isIn = isKnown && left >= 0;
  const varies = isIn && tolerance > 0 && leftAtLeast >= 0 && length(leftAtLeast) !== length(left);
  return words.contents.stack({
    thickness: length(stack.thickness),
    left: isIn ? length(left) : null,
    proud: isKnown && left < 0 ? length(-left) : null,
    leftAtLeast: varies ? length(leftAtLeast) : null,
    wanted: isKnown && spare < 0 ? length(room) : null,
  });
}

/** A layer's name, with its kind where the name does not tell. */
function layerName({ name, kind }: StackLayer, { words }: Pen): string {
  const isTold = kind === null || kind === "sheet" || name.toLowerCase().includes(kind);
  return isTold ? isolate(name) : words.contents.layers.named({ name: isolate(name), kind });
}

/** The layers from the front, with what is known of each. */
function layerTable(stack: ContentsStack, { materials }: FramePlan, pen: Pen): TableData {
  const { words, formats } = pen;
  const { caption, heads } = words.contents.layers;
  const parts = materials.parts.filter(({ layer }) => layer !== null);
  const isWeighed = parts.some(({ mass }) => mass !== null);
  const hasCosts = parts.some(({ cost }) => cost !== null);
  const known = (value: number | null | undefined, write: (value: number) => string): Cell =>
    value == null ? words.materials.notKnown : written(value, write);
  const rows = stack.layers.map((layer, index): Cell[] => [
    layerName(layer, pen),
    written(layer.thickness, formats.length),
    written(layer.behind, formats.length),
    ...(isWeighed ? [known(parts[index]!.mass, formats.mass)] : []),
    ...(hasCosts ? [known(parts[index]!.cost?.total, formats.money)] : []),
  ]);
  const columns = [
    column(heads.layer),
    column(heads.thickness, "length"),
    column(heads.behind, "length"),
    ...(isWeighed ? [column(heads.mass, "number")] : []),
    ...(hasCosts ? [column(heads.cost, "number")] : []),
  ];
  return plainTable(caption, columns, rows);
}

/** The seating of the contents in the rabbet. */
function seatingLines({ contents, brief }: FramePlan, pen: Pen): string[] {
  const { words, formats } = pen;
  const { length } = formats;
  const { seating, reason, hidden, visible, stack } = contents;
  if (reason !== null) return [words.contents.notHeld({ reason: reasonText(reason, pen) })];
  const seen = words.contents.hidden({ hidden: length(hidden), side: length(visible.side) });
  const stacked = stack === null ? [] : [stackLine(stack, brief.fastenerRoom, pen)];
  if (seating?.possible !== true) {
    const depth = brief.measured?.depth;
    const measured = depth === undefined ? [] : [words.contents.measuredDepth({ depth: length(depth) })];
    return [...(hidden > 0 ? [seen] : []), ...measured, ...stacked];
  }
  const wall = length(seating.depthUsed + seating.depthLeft);
  if (stack === null) return [seen, words.contents.wall({ wall })];
  const { roomLost } = seating;
  return [
    seen,
    words.contents.wallUsed({ used: length(seating.depthUsed), wall }),
    ...stacked,
    ...(roomLost > 0 ? [words.contents.roomLost({ room: length(roomLost), narrows: brief.slope < 0 })] : []),
  ];
}

/** What goes into the frame: the panel's size, what the lip hides, the layers, and the rabbet's depth. */
export function contentsSection(plan: FramePlan, pen: Pen): ReportSection[] {
  const { contents, brief } = plan;
  const { panel, box, contained, sheet, stack } = contents;
  const { words, formats } = pen;
  const { length } = formats;
  const boxText = ({ width, height }: NonNullable<typeof box>): { width: string; height: string } => ({
    width: length(width),
    height: length(height),
  });
  const lines = [
    ...(panel === null || box === null
      ? []
      : [
          words.contents.panel({
            sides: panel.sides,
            side: length(panel.side),
            acrossFlats: length(panel.acrossFlats),
            acrossCorners: length(panel.acrossCorners),
            box: stack === null ? null : boxText(box),
          }),
        ]),
    ...(brief.clearance > 0 ? [words.contents.clearance({ clearance: length(brief.clearance) })] : []),
    ...(contained === null ? [] : [words.contents.contained(boxText(contained))]),
    ...(sheet === null ? [] : [words.contents.sheet(boxText(sheet))]),
    ...seatingLines(plan, pen),
  ];
  return sectionOf("contents", pen, [
    ...listOf("seating", lines),
    ...(stack === null ? [] : tableOf("layers", layerTable(stack, plan, pen))),
  ]);
}
