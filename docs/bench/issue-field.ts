import type { FieldName, Values } from "./fields.js";

/** The field that an error of the library belongs to, by its path. What is not here belongs to the field of its own name, or to that of its first part. */
const PLACES: Readonly<Record<string, FieldName>> = {
  "opening.contains.width": "width",
  "opening.contains.height": "height",
  "opening.contains.allowance": "allowance",
  "opening.cutFrom.width": "width",
  "opening.cutFrom.height": "height",
  "opening.side": "size",
  "opening.acrossFlats": "size",
  "opening.acrossCorners": "size",
  "opening.apothem": "size",
  "opening.circumradius": "size",
  "opening.perimeter": "size",
  apothem: "size",
  side: "size",
  "measured.levelWidth": "levelWidth",
  "measured.lap": "lap",
  "measured.depth": "depth",
  "molding.thickness": "thickness",
  "molding.rabbet.width": "rabbetWidth",
  "molding.rabbet.depth": "rabbetDepth",
  "molding.rabbet": "rabbetDepth",
  "molding.madeFor.slope": "milled",
  "molding.madeFor": "milled",
  "rough.allowance": "roughAllowance",
  "saw.miter.left": "miterReach",
  "saw.miter.right": "miterReach",
  "saw.bevel.left": "bevelLeft",
  "saw.bevel.right": "bevelRight",
  "saw.miter.step": "scaleStep",
  "saw.bevel.step": "scaleStep",
  "saw.depth": "sawDepth",
  "saw.crosscut": "crosscut",
  "saw.gaugeReach": "gaugeReach",
  offPlumb: "slope",
  spring: "slope",
  "moisture.made": "made",
  "moisture.seasons[0]": "driest",
  "moisture.seasons[1]": "dampest",
  "cost.amount": "cost",
  "hanging.wireAngle": "wireAngle",
  "hanging.screwDepth": "screwDepth",
  "hanging.extraMass": "extraMass",
};

/** The field for whatever else is wrong with a part of the brief. */
const PARTS: Readonly<Record<string, FieldName>> = {
  opening: "width",
  molding: "moldingWidth",
  profile: "moldingWidth",
  measured: "levelWidth",
  moisture: "made",
  hanging: "hangs",
};

/** The lists of the form, by the names that the brief has for them. */
const LISTS: Readonly<Record<string, string>> = { sticks: "sticks", contents: "layers" };
/** The columns that the form calls otherwise than the brief. */
const COLUMNS: Readonly<Record<string, string>> = { id: "name", "material.density": "density" };

/**
 * The field of the form that a path of the library's errors belongs to.
 *
 * @param path - e.g. `opening.contains.width`, or `sticks[2].length`
 * @param holds - how the size is given, which decides where an opening's own trouble is shown
 * @returns the key of the field
 */
export function issueField(path: string, holds: Values["holds"]): string {
  const [, list = "", index = "", rest = ""] = /^(\w+)\[(\d+)\]\.(.+)$/.exec(path) ?? [];
  if (Object.hasOwn(LISTS, list)) {
    const column = COLUMNS[rest] ?? rest.replace(/\..*$/, "");
    return `${LISTS[list]!}.${index}.${column}`;
  }
  if (Object.hasOwn(PLACES, path)) return PLACES[path]!;
  const [part = ""] = path.split(/[.[]/);
  if (part === "opening" && holds === "measure") return "size";
  return Object.hasOwn(PARTS, part) ? PARTS[part]! : part;
}
