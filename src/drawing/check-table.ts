import { checkArray, checkNumber, checkObject, checkText, checkWord } from "../core/check.js";
import type { FramePlan } from "../frame/index.js";
import type { FrameTableOptions } from "./frame-table-options.js";
import type { Table } from "./table.js";
import { formatterOf } from "./table-options.js";
import { tabulate } from "./tabulate.js";

/**
 * A table of what to measure on the dry frame, with an empty column to write in what it is.
 *
 * @param plan - the plan; only its `checks` are read
 * @param options - formatters and caption
 * @returns the table; since lengths and angles stand in one column, its values are texts
 * @throws {InputError} when a check is none, or a formatter is missing
 * @example
 * ```ts
 * import { tabulateChecks } from "miterwright/drawing";
 * import { planFrame } from "miterwright/frame";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * const words = { length: (value: number) => `${value.toFixed(1)} mm`, angle: (degrees: number) => `${degrees}°` };
 * tabulateChecks(plan, words).cells.slice(1, 3);
 * //=> [["angle of every corner in plan, inside", "120°", ""], ["side of the opening, in the rabbet, corner to corner", "200.0 mm", ""]]
 * ```
 */
export function tabulateChecks(plan: Pick<FramePlan, "checks">, options: FrameTableOptions): Table {
  const checks = checkArray(checkObject(plan, "plan")["checks"], "checks", "an array of checks");
  const given = checkObject(options);
  const write = { length: formatterOf(given, "length"), angle: formatterOf(given, "angle") };
  const rows = checks.map((value, index) => {
    const path = `checks[${index}]`;
    const check = checkObject(value, path);
    const kind = checkWord(check["kind"], `${path}.kind`, ["length", "angle"]);
    const target = checkNumber(check["value"], `${path}.value`, -Number.MAX_VALUE, Number.MAX_VALUE, "a finite number");
    return [checkText(check["label"], `${path}.label`), write[kind](target), ""];
  });
  return tabulate({
    caption: options.caption ?? "Measure on the dry frame",
    columns: [{ label: "what" }, { label: "must be", kind: "number" }, { label: "is", kind: "number" }],
    rows,
  });
}
