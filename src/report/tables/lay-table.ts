import type { LayResult, SawPlan } from "../../frame/index.js";
import { readSawing } from "../../drawing/internal.js";
import type { SawingToDraw } from "../../drawing/index.js";
import { english, layLabel, obstacleText } from "../../words/index.js";
import { checkTellOptions } from "../../words/internal.js";
import { tellWith, type Pen } from "../pen.js";
import type { FrameTableOptions } from "./frame-table-options.js";
import { captioned, column, plainTable, written, type Cell } from "./plain-table.js";
import type { TableData } from "./table-data.js";
import type { Table } from "./table.js";

type Teller = Pick<Pen, "words" | "formats">;

/** Whether a lay is used or works, or why not: in a word or two where another is used, else in full. */
function verdict(result: LayResult, { lay: used }: SawPlan, teller: Teller): string {
  const { saws } = teller.words;
  const { lay, possible, obstacles, depthInDoubt: isInDoubt } = result;
  if (lay === used?.lay) return saws.used({ isInDoubt });
  if (possible) return saws.works({ isInDoubt });
  if (used === null) return obstacles.map((obstacle) => obstacleText(obstacle, tellWith(teller))).join(" ");
  return [...new Set(obstacles.map(({ code }) => saws.obstaclesInShort[code]))].join(", ");
}

/** Every way to lay the stick: what the scales must show, how high and wide the work is, and whether the saw can do it. */
export function layTable(sawing: SawPlan, teller: Teller): TableData {
  const { formats, words } = teller;
  const { caption, heads } = words.reports.lays;
  const isSized = sawing.lays.some(({ size }) => size !== null);
  const angle = (degrees: number): Cell => written(degrees, formats.angle);
  const rows = sawing.lays.map((result): Cell[] => {
    const { lay, first, size } = result;
    const sizes =
      size === null ? ["", ""] : [written(size.height, formats.length), written(size.depth, formats.length)];
    return [
      layLabel(lay, tellWith(teller)),
      angle(first.miter.reading),
      angle(first.bevel.reading),
      ...(isSized ? sizes : []),
      verdict(result, sawing, teller),
    ];
  });
  const columns = [
    column(heads.lay),
    column(heads.miter, "angle"),
    column(heads.bevel, "angle"),
    ...(isSized ? [column(heads.height, "length"), column(heads.depth, "length")] : []),
    column(heads.works),
  ];
  return plainTable(caption, columns, rows);
}

/**
 * A table of every way to lay the stick on the saw: what the scales must show, how high and wide the work then is, and whether the saw can do it.
 *
 * @param plan - a plan, or a geometry and its saw plan
 * @param options - formatters, words and caption
 * @returns the table
 * @throws {InputError} when the plan lacks its geometry or saw plan, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { tabulateLays } from "miterwright/report";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 6, slope: 40, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * tabulateLays(plan, { formats: formatters({ unit: "mm" }) }).cells[0];
 * //=> ["flat on its back", "23.86°", "18.75°", "used"]
 * ```
 */
export function tabulateLays(plan: SawingToDraw, options: FrameTableOptions): Table {
  const { sawing } = readSawing(plan);
  const { formats, words = english } = checkTellOptions(options);
  const table = layTable(sawing, { words, formats });
  return captioned(table, options.caption);
}
