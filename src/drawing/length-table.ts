import { checkNumber, checkObject } from "../core/check.js";
import { arrisLabel } from "../words/index.js";
import type { FrameTableOptions } from "./frame-table-options.js";
import { arrisLetters } from "./arris-letters.js";
import { readGeometry, type FrameToDraw } from "./read-frame.js";
import type { Table } from "./table.js";
import { tabulate } from "./tabulate.js";

function finite(value: unknown, path: string): number {
  return checkNumber(value, path, -Number.MAX_VALUE, Number.MAX_VALUE, "a finite number");
}

/**
 * A table of the finished length of every piece of a frame, at every arris and along its longest and shortest line.
 *
 * A piece whose point r runs on a polygon of apothem A has at point p the length 2 (A + out(p) - out(r)) tan h, with h the plan miter. So the table also shows
 * how far out each arris lies.
 *
 * @param frame - the frame's geometry, or a plan that holds it
 * @param options - formatters and caption
 * @returns the table: the letter that the arris has in drawings, its name, how far out it lies from the section's origin and, where the section is known, how
 * far up, and the length
 * @throws {InputError} when it is no frame, or a formatter is missing
 * @example
 * ```ts
 * import { tabulateLengths } from "miterwright/drawing";
 * import { frameGeometry } from "miterwright/frame";
 *
 * const frame = frameGeometry({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * const words = { length: (value: number) => value.toFixed(1), angle: (degrees: number) => `${degrees}°` };
 * tabulateLengths(frame, words).cells;
 * //=> [["a", "rabbet wall", "0.0", "200.0"], ["b", "outermost point", "40.0", "246.2"]]
 * ```
 */
export function tabulateLengths(frame: FrameToDraw, options: FrameTableOptions): Table {
  const { pieces, arrises, overall } = readGeometry(frame);
  const piece = pieces[0];
  checkObject(options);
  const lengths = checkObject(piece.lengths, "geometry.pieces[0].lengths");
  const hasHeights = overall.height !== null;
  const letters = arrisLetters(Object.keys(arrises));
  const place = (value: unknown, path: string): number[] => {
    const { out, up } = checkObject(value, path);
    return [finite(out, `${path}.out`), ...(hasHeights ? [finite(up, `${path}.up`)] : [])];
  };
  const rows = Object.entries(arrises).map(([arris, point]): (number | string)[] => [
    letters[arris]!,
    arrisLabel(arris),
    ...place(point, `geometry.arrises.${arris}`),
    finite(lengths[arris], `geometry.pieces[0].lengths.${arris}`),
  ]);
  for (const end of ["longest", "shortest"] as const) {
    const line = piece[end];
    if (line.arris !== null) continue;
    rows.push(["–", `${end} line of the piece`, ...place(line, `geometry.pieces[0].${end}`), line.length]);
  }
  return tabulate(
    {
      caption: options.caption ?? "Finished length of every piece along every edge",
      columns: [
        { label: "letter" },
        { label: "edge" },
        { label: "out", kind: "length" },
        ...(hasHeights ? [{ label: "up", kind: "length" as const }] : []),
        { label: "length", kind: "length" },
      ],
      rows,
    },
    options,
  );
}
