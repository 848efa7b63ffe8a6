import { checkArray, checkNumber, checkObject, checkText, checkWord } from "../core/check.js";
import type { FramePlan } from "../frame/index.js";
import type { FrameTableOptions } from "./frame-table-options.js";
import type { Table } from "./table.js";
import { formatterOf } from "./table-options.js";
import { tabulate } from "./tabulate.js";

/**
 * A table of what to measure on the loose sticks, on the dry and on the glued frame, with an empty column to write in what it is.
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
 * tabulateChecks(plan, words).cells.slice(4, 6);
 * //=> [
 * //     ["gap of the last joint, its other end touching", "dry", "0.0 mm", "0.3 mm", ""],
 * //     ["opening, in the rabbet, side to opposite side", "dry", "346.4 mm", "0.4 mm", ""],
 * //   ]
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
    const when = checkWord(check["when"], `${path}.when`, ["sticks", "dry", "glued"]);
    const within =
      check["tolerance"] === null
        ? ""
        : write[kind](checkNumber(check["tolerance"], `${path}.tolerance`, 0, Number.MAX_VALUE, "0 or more, or null"));
    return [checkText(check["label"], `${path}.label`), when, write[kind](target), within, ""];
  });
  return tabulate({
    caption: options.caption ?? "Measure on the sticks, on the dry frame and on the glued one",
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
