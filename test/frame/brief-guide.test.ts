import { expect, test } from "vitest";
import { briefJsonSchema, type Schema } from "../house/brief-schema.js";
import { readProjectFile } from "../house/project.js";

const GUIDE = "docs/guides/from-a-brief-to-a-sheet.md";

/** A bound as the guide writes it: 1e100, not 1e+100. */
function bound(value: unknown): string {
  const size = Number(value);
  return (size >= 1e6 ? size.toExponential() : String(size)).replace("e+", "e");
}

/** What a field may be, in a few words. */
function formOf(schema: Schema): string {
  const { type, minimum, maximum, enum: words, anyOf, items, properties, const: only } = schema;
  if (only !== undefined) return `\`${JSON.stringify(only)}\``;
  if (words !== undefined) return (words as readonly string[]).map((word) => `\`"${word}"\``).join(", ");
  if (anyOf !== undefined) return (anyOf as readonly Schema[]).map(formOf).join("; or ");
  if (items !== undefined) return `list of: ${formOf(items as Schema)}`;
  if (properties !== undefined) {
    const keys = Object.keys(properties as Schema).map((key) => `\`${key}\``);
    return `${schema["maxProperties"] === 1 ? "one of " : ""}${keys.join(", ")}`;
  }
  if (minimum !== undefined) return `${String(type)}, ${bound(minimum)} to ${bound(maximum)}`;
  return type === "string" ? "text" : String(type);
}

test("the guide's table of a brief's fields is the one that the library reads them by", () => {
  const { properties, required } = briefJsonSchema();
  const rows = Object.entries(properties as Readonly<Record<string, Schema>>).map(([key, schema]) => {
    const asked = (required as readonly string[]).includes(key) ? " (needed)" : "";
    return `| \`${key}\`${asked} | ${formOf(schema)} | ${String(schema["description"])} |`;
  });
  const table = readProjectFile(GUIDE)
    .split("\n")
    .filter((line) => line.startsWith("| `"))
    .map((line) => line.replace(/ +\| /g, " | ").replace(/ +\|$/, " |"));
  expect(table).toEqual(rows);
});
