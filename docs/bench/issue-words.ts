import type { InputIssue } from "miterwright/errors";
import { FIELDS, LISTS } from "./field-table.js";
import type { Field, FieldName, ListName } from "./fields.js";
import type { BoundValues, Impossible } from "./labels/error-words.js";
import type { Pen } from "./writers.js";

/** What the page goes by to say an error of the library in its own words. */
export type Refusal = Pick<InputIssue, "code" | "path" | "expected">;

/** What cannot be made, by the path of its error. */
const IMPOSSIBLE: Readonly<Record<string, Impossible>> = {
  opening: "opening-too-small",
  "molding.rabbet.width": "rabbet-too-wide",
  "molding.rabbet.depth": "rabbet-too-deep",
  "molding.width": "molding-too-narrow",
  "molding.thickness": "molding-too-thin",
  "molding.madeFor.slope": "milled-too-steep",
};

/** The field of a key: one that stands alone, or a column of a list. A path that no field has gives none. */
function fieldOf(key: string): Field | undefined {
  const [name = "", , column] = key.split(".");
  return column === undefined ? FIELDS[name as FieldName] : LISTS[name as ListName][column];
}

/** A number out of bounds, in the words for what its field takes. */
function boundsText({ kind, quantity }: Field, bounds: BoundValues, least: number, { errors }: Pen["page"]): string {
  if (kind === "angle") return errors.angle(bounds);
  if (kind === "length" || kind === "room") return errors.length[least > 0 ? "positive" : "zero"];
  return quantity === undefined ? errors.wholeNumber(bounds) : errors.number[quantity](bounds);
}

/**
 * Says an error of the library in the words of the form, for a place beside the field that it is about.
 *
 * The library's own sentence is for programmers: it names fields as they do. What was expected is told as data, and that is all that is read of it.
 *
 * @param refusal - the error
 * @param key - the field
 * @param pen - what the page writes with
 * @returns a sentence
 */
export function issueWords({ code, path, expected }: Refusal, key: string, { page, formats }: Pen): string {
  const field = fieldOf(key);
  const { impossible } = page.errors;
  const isBounded = expected.kind === "number" || expected.kind === "integer";
  // A slope for which nothing can be milled lies at a bound that the form has no field for.
  if (!isBounded || field === undefined || field.kind === "choice") {
    const known = code === "impossible" || field?.kind === "choice" ? IMPOSSIBLE[path] : undefined;
    return impossible[known ?? "unsuitable"];
  }
  const bounds = { from: formats.number(expected.min), to: formats.number(expected.max) };
  return boundsText(field, bounds, expected.min, page);
}
