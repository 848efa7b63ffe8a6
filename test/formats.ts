import { formatters, type Formats } from "miterwright/units";

/**
 * Formatters of millimeters, some of them one's own. A small length or angle is written like any other of one's own, unless it has its own formatter
 * too.
 */
export function formatsWith(own: Partial<Formats> = {}): Formats {
  const { length, angle } = own;
  return {
    ...formatters({ unit: "mm" }),
    ...(length === undefined ? {} : { small: length }),
    ...(angle === undefined ? {} : { smallAngle: angle }),
    ...own,
  };
}

/** Formatters whose texts say what lengths and angles they were given, to the last digit. */
export const EXACT: Formats = formatsWith({ length: (value) => `L${value}`, angle: (degrees) => `A${degrees}` });

/** Lengths to five figures and angles to a hundredth of a degree. */
export const SHORT: Formats = formatsWith({
  length: (value) => `${Number(value.toPrecision(5))} mm`,
  angle: (degrees) => `${degrees.toFixed(2)}°`,
});

/** A text, or texts, with spaces in the place of no-break spaces, for comparing. */
export function loose<T>(value: T): T {
  if (typeof value === "string") return value.replaceAll("\u00a0", " ") as T;
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).map(([key, item]) => [key, loose<unknown>(item)] as const);
  return (Array.isArray(value) ? entries.map(([, item]) => item) : Object.fromEntries(entries)) as T;
}
