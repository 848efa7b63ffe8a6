import { checkObject } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { FrameCheck, FramePlan } from "../frame/index.js";
import { describeCheck } from "../words/index.js";
import { frameChecks } from "../frame/internal.js";
import type { FrameTableOptions } from "./frame-table-options.js";
import { readGeometry } from "./read-frame.js";
import type { Table } from "./table.js";
import { formatterOf } from "./table-options.js";
import { tabulate } from "./tabulate.js";
import { withinText } from "./within-text.js";

/** When a check is made, for people. */
const TIMES: Readonly<Record<FrameCheck["when"], string>> = {
  pieces: "loose pieces",
  dry: "dry frame",
  glued: "glued frame",
};

/**
 * A table of what to measure on the pieces of a frame, on the dry frame and on the glued one, with an empty column to write in what it is.
 *
 * @param plan - the plan; only its `checks` and its geometry are read
 * @param options - formatters and caption
 * @returns the table; since lengths and angles stand in one column, its values are texts
 * @throws {InputError} when a check is none, or a formatter is missing
 * @example
 * ```ts
 * import { tabulateChecks } from "miterwright/drawing";
 * import { planFrame } from "miterwright/frame";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * const words = { length: (value: number) => `${value.toFixed(1)} mm`, angle: (degrees: number) => `${degrees.toFixed(2)}°` };
 * tabulateChecks(plan, words).cells.find(([what]) => what?.startsWith("overall"));
 * //=> ["overall, side to opposite side", "dry frame", "426.4 mm", "± 0.4 mm", ""]
 * ```
 */
export function tabulateChecks(plan: Pick<FramePlan, "checks" | "geometry">, options: FrameTableOptions): Table {
  const checks = readStored(checkObject(plan, "plan")["checks"], "checks", frameChecks);
  const { sides } = readGeometry(plan);
  const given = checkObject(options);
  const write = { length: formatterOf(given, "length"), angle: formatterOf(given, "angle") };
  const rows = checks.map((check) => [
    describeCheck(check, { sides }),
    TIMES[check.when],
    write[check.kind](check.value),
    withinText(check, write),
    "",
  ]);
  return tabulate({
    caption: options.caption ?? "What to measure, and when",
    columns: [
      { label: "what" },
      { label: "when" },
      { label: "must be", kind: "number" },
      { label: "within", kind: "number" },
      { label: "is", kind: "number" },
    ],
    rows,
  });
}
