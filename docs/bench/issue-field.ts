/** The field that an error of the library belongs to, where its name is not just the last part of the path. */
const PLACES: readonly (readonly [path: RegExp, field: string])[] = [
  [/^opening\.(?:contains|cutFrom)\.(width|height)$/, "$1"],
  [/^opening\.contains\.allowance$/, "allowance"],
  [/^(?:opening\..+|apothem|side)$/, "size"],
  [/^opening$/, "opening"],
  [/^measured\.(levelWidth|lap|depth)$/, "$1"],
  [/^molding\.width$/, "moldingWidth"],
  [/^molding\.thickness$/, "thickness"],
  [/^molding\.rabbet\.width$/, "rabbetWidth"],
  [/^molding\.rabbet(?:\.depth)?$/, "rabbetDepth"],
  [/^molding\.madeFor(?:\..+)?$/, "milled"],
  [/^rough\.allowance$/, "roughAllowance"],
  [/^saw\.miter\.(?:left|right)$/, "miterReach"],
  [/^saw\.bevel\.left$/, "bevelLeft"],
  [/^saw\.bevel\.right$/, "bevelRight"],
  [/^saw\.(?:miter|bevel)\.step$/, "scaleStep"],
  [/^saw\.depth$/, "sawDepth"],
  [/^saw\.crosscut$/, "crosscut"],
  [/^saw\.gaugeReach$/, "gaugeReach"],
  [/^(?:offPlumb|spring)$/, "slope"],
  [/^moisture\.made$/, "made"],
  [/^moisture\.seasons\[0\]$/, "driest"],
  [/^moisture\.seasons\[1\]$/, "dampest"],
  [/^cost\.amount$/, "cost"],
  [/^hanging\.(wireAngle|screwDepth|extraMass)$/, "$1"],
];

/**
 * The field of the form that a path of the library's errors belongs to.
 *
 * @param path - e.g. `opening.contains.width`, or `sticks[2].length`
 * @param holds - how the size is given, which decides where an opening's own trouble is shown
 * @returns the key of the field
 */
export function issueField(path: string, holds: string): string {
  const row = /^(sticks|contents)\[(\d+)\]\.(\w+)(?:\.\w+)?$/.exec(path);
  if (row !== null) {
    const column = row[3] === "id" ? "name" : path.endsWith(".material.density") ? "density" : row[3]!;
    return `${row[1] === "contents" ? "layers" : "sticks"}.${row[2]!}.${column}`;
  }
  const place = PLACES.find(([pattern]) => pattern.test(path));
  const field = place === undefined ? path : path.replace(place[0], place[1]);
  return field === "opening" ? (holds === "measure" ? "size" : "width") : field;
}
