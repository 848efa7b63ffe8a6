import { checkObject } from "../../core/check.js";
import { readStored } from "../../core/stored.js";
import { readGeometry } from "../../drawing/internal.js";
import type { FrameCheck, FramePlan } from "../../frame/index.js";
import { frameChecks } from "../../frame/internal.js";
import { finely } from "../../units/internal.js";
import { english, frameCheckText } from "../../words/index.js";
import { checkTellOptions } from "../../words/internal.js";
import type { Pen } from "../pen.js";
import type { FrameTableOptions } from "./frame-table-options.js";
import { captioned, column, plainTable } from "./plain-table.js";
import type { TableData } from "./table-data.js";
import type { Table } from "./table.js";

/** Checks that are made again on the glued frame, and those of the dry one in whose row they stand. */
const AGAIN: Readonly<Partial<Record<FrameCheck["code"], FrameCheck["code"]>>> = {
  "glued-across-flats": "opening-across-flats",
  "glued-across-corners": "opening-across-corners",
  "glued-flatness": "flatness",
};

/** A check's tolerance; one that is rounded away is not to be measured but felt. */
function withinText({ kind, tolerance }: FrameCheck, { words, fine }: Pen): string {
  const { checks, nothing } = words.closing;
  if (tolerance === null) return nothing;
  const text = fine[kind](tolerance);
  return text === fine[kind](0) ? checks.feel : checks.within({ tolerance: text });
}

/** What to measure on the loose pieces and on the dry frame, with room to write in what it is, then and once it is glued. */
export function checkTable(checks: readonly FrameCheck[], sides: number, pen: Pen): TableData {
  const { words, formats, fine } = pen;
  const { checks: own, nothing } = words.closing;
  const again = new Set(checks.map(({ code }) => AGAIN[code]));
  const rows = checks
    .filter(({ code }) => AGAIN[code] === undefined)
    .map((check) => [
      frameCheckText(check, { sides, words }),
      own.when[check.when],
      // Rounded to the marks of a rule, a value could be off by more than its tolerance.
      (check.tolerance === null ? formats : fine)[check.kind](check.value),
      withinText(check, pen),
      "",
      again.has(check.code) ? "" : nothing,
    ]);
  const { heads } = own;
  const columns = [
    column(heads.what),
    column(heads.when),
    // Lengths and angles stand in one column.
    column(heads.mustBe, "number"),
    column(heads.within, "number"),
    column(heads.is, "number"),
    column(heads.glued, "number"),
  ];
  return plainTable(own.caption, columns, rows);
}

/**
 * A table of what to measure on the pieces of a frame and on the dry frame, with empty columns to write in what it is, then and once it is glued.
 *
 * @param plan - the plan; only its `checks` and its geometry are read
 * @param options - formatters, words and caption
 * @returns the table; since lengths and angles stand in one column, its values are texts
 * @throws {InputError} when a check is none, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { tabulateChecks } from "miterwright/report";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * tabulateChecks(plan, { formats: formatters({ unit: "mm" }) }).cells.find(([what]) => what?.startsWith("overall"));
 * //=> ["overall, side to opposite side", "dry", "426.41 mm", "± 0.44 mm", "", "–"]
 * ```
 */
export function tabulateChecks(plan: Pick<FramePlan, "checks" | "geometry">, options: FrameTableOptions): Table {
  const checks = readStored(checkObject(plan, "plan")["checks"], "checks", frameChecks);
  const { sides } = readGeometry(plan);
  const { formats, words = english } = checkTellOptions(options);
  const table = checkTable(checks, sides, { formats, words, fine: finely(formats) });
  return captioned(table, options.caption);
}
