import type { FrameGeometry, SawPlan } from "../../frame/index.js";
import { arrisLetters, readFrame, type FrameToTell } from "../../drawing/internal.js";
import { arrisLabel, english } from "../../words/index.js";
import { checkTellOptions } from "../../words/internal.js";
import type { Pen } from "../pen.js";
import type { FrameTableOptions } from "./frame-table-options.js";
import { captioned, column, plainTable, written, type Cell } from "./plain-table.js";
import type { TableData } from "./table-data.js";
import type { Table } from "./table.js";

/** The finished length of every piece along every edge, with where the tape goes; `sawing` is `null` where that is not known. */
export function lengthTable(
  geometry: FrameGeometry,
  sawing: SawPlan | null,
  { words, formats }: Pick<Pen, "words" | "formats">,
): TableData {
  const { caption, heads, measureHere } = words.frame.lengths;
  const [piece] = geometry.pieces;
  const arrises = Object.keys(geometry.arrises);
  const letters = arrisLetters(arrises);
  const last = sawing?.operations.at(-1);
  const measured = last === undefined ? undefined : (last.measure?.arris ?? null);
  const tape = (arris: string | null): string => (arris === measured ? measureHere : "");
  const row = (letter: string, edge: string, length: number, arris: string | null): Cell[] => [
    letter,
    edge,
    written(length, formats.length),
    ...(sawing === null ? [] : [tape(arris)]),
  ];
  const { longestLine, shortestLine } = words.labels;
  const { nothing } = words.closing;
  const rows = arrises.map((arris) => row(letters[arris]!, arrisLabel(arris, { words }), piece.lengths[arris]!, arris));
  if (piece.longest.arris === null) rows.push(row(nothing, longestLine, piece.longest.length, null));
  if (piece.shortest.arris === null) {
    rows.push([
      nothing,
      shortestLine,
      written(piece.shortest.length, formats.length),
      ...(sawing === null ? [] : [""]),
    ]);
  }
  const columns = [
    column(heads.letter),
    column(heads.edge),
    column(heads.length, "length"),
    ...(sawing === null ? [] : [column(heads.tape)]),
  ];
  return plainTable(caption, columns, rows);
}

/**
 * A table of the finished length of every piece of a frame, along every edge and along its longest and shortest line.
 *
 * A piece whose point r runs on a polygon of apothem A has at point p the length 2 (A + out(p) - out(r)) tan h, with h the plan miter.
 *
 * @param frame - the frame's geometry, or a plan that holds it; of a plan it also shows where the tape goes
 * @param options - formatters, words and caption
 * @returns the table: the letter that the edge has in drawings, its name, and the length
 * @throws {InputError} when it is no frame, or a formatter is missing
 * @example
 * ```ts
 * import { frameGeometry } from "miterwright/frame";
 * import { tabulateLengths } from "miterwright/report";
 * import { formatters } from "miterwright/units";
 *
 * const frame = frameGeometry({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * tabulateLengths(frame, { formats: formatters({ unit: "mm" }) }).cells;
 * //=> [["a", "rabbet wall", "200 mm"], ["b", "outermost point", "246.2 mm"]]
 * ```
 */
export function tabulateLengths(frame: FrameToTell, options: FrameTableOptions): Table {
  const { geometry, sawing } = readFrame(frame);
  const { formats, words = english } = checkTellOptions(options);
  const table = lengthTable(geometry, sawing, { words, formats });
  return captioned(table, options.caption);
}
