import { checkObject, refuse } from "../core/check.js";
import type { Formats } from "./formatters.js";

/** Every formatter, by what it writes. */
const FORMATS: Readonly<Record<keyof Formats, string>> = {
  length: "a length",
  small: "a small length",
  angle: "an angle",
  smallAngle: "a small angle",
  mass: "a mass",
  force: "a force",
  percent: "a share in percent",
  temperature: "a temperature",
  area: "an area",
  number: "a number",
  money: "an amount of money",
};

/** Checks one formatter. What it writes is checked too, and stays on one line: its spaces become no-break spaces. */
export function checkFormatter(value: unknown, path: string, kind: keyof Formats): (value: number) => string {
  const expected = `a function that writes ${FORMATS[kind]} as text`;
  if (typeof value !== "function") return refuse("type", path, value, expected);
  return (number) => {
    const text: unknown = (value as (value: number) => unknown)(number);
    if (typeof text === "string") return text.replaceAll(" ", "\u00a0");
    return refuse("type", path, text, `${expected}, but its result was not one`);
  };
}

/** Checks the formatters that a caller passes. */
export function checkFormats(value: unknown, path: string = "formats"): Formats {
  const given = checkObject(value, path);
  const names = Object.keys(FORMATS) as (keyof Formats)[];
  return Object.fromEntries(
    names.map((name) => [name, checkFormatter(given[name], `${path}.${name}`, name)]),
  ) as unknown as Formats;
}

/** Angles under a millionth of a degree are none. */
const LEAST_ANGLE: number = 1e-6;

/** Formatters for sentences in which lengths and angles may be small: lengths are written finely, and so is an angle that would come out as none. */
export function finely(formats: Formats): Formats {
  const { small, smallAngle } = formats;
  const angle = (degrees: number): string => {
    const text = formats.angle(degrees);
    return Math.abs(degrees) < LEAST_ANGLE || text !== formats.angle(0) ? text : smallAngle(degrees);
  };
  return { ...formats, length: small, angle };
}
