import { fileURLToPath } from "node:url";
import ts from "typescript";
import { MAX_LENGTH } from "../../src/core/check.js";
import type { AnyField, AnyFields, FieldCheck } from "../../src/core/field.js";
import { BRIEF_FIELDS, readVersion } from "../../src/frame/brief/brief-fields.js";
import { readRough, ROUGH } from "../../src/frame/brief/read-rough.js";
import { readProfile } from "../../src/profile/internal.js";
import { readSticks, STICKS } from "../../src/stock/internal.js";
import { readGivenWood, WOOD_FIGURES } from "../../src/wood/internal.js";

/** A JSON Schema, or a part of one. */
export interface Schema {
  readonly [keyword: string]: unknown;
}

/** What reads the type of a field, to find the comments of its fields. */
interface Reading {
  readonly checker: ts.TypeChecker;
  readonly type: ts.Type | undefined;
}

const COORDINATE: AnyField = { kind: "number", min: -MAX_LENGTH, max: MAX_LENGTH };
const POINT: AnyField = { kind: "record", fields: { x: COORDINATE, y: COORDINATE } };
const CORNERS: AnyField = { kind: "list", of: POINT, what: "an array of three or more points", least: 3 };
const SLOPE: AnyField = { kind: "optional", of: { kind: "number", min: -90, max: 90 } };

/** What code of its own reads, as schemas tell it; what such code asks beyond that, no schema can tell. */
const OWN: ReadonlyMap<FieldCheck<unknown>, (reading: Reading) => Schema> = new Map<
  FieldCheck<unknown>,
  (reading: Reading) => Schema
>([
  [readVersion, () => ({ const: 1 })],
  [readRough, (reading) => schemaOf({ kind: "record", fields: ROUGH }, reading)],
  [readSticks, (reading) => schemaOf(STICKS, reading)],
  [readGivenWood, (reading) => ({ anyOf: [schemaOf({ kind: "text" }, reading), schemaOf(WOOD_FIGURES, reading)] })],
  [
    readProfile,
    (reading) => {
      const { checker } = reading;
      const named = formsOf({ checker, type: tellOf(reading, "arrises").type });
      const [type] = named.flatMap((form) => checker.getIndexTypeOfType(form, ts.IndexKind.String) ?? []);
      const arrises = { type: "object", additionalProperties: open(schemaOf(POINT, { checker, type })) };
      const fields: AnyFields = { outline: CORNERS, arrises: () => undefined, madeFor: SLOPE };
      const { properties, ...rest } = open(objectSchema(fields, reading, { arrises }));
      const { outline, ...others } = properties as Readonly<Record<string, Schema>>;
      return { ...rest, properties: { outline: { ...outline, items: open(outline!["items"] as Schema) }, ...others } };
    },
  ],
]);

/** The same, for data that may hold more. */
function open(schema: Schema): Schema {
  const { additionalProperties, ...rest } = schema;
  return additionalProperties === false ? rest : schema;
}

/** The types that a type may be, nothing aside. */
function formsOf({ checker, type }: Reading): readonly ts.Type[] {
  if (type === undefined) return [];
  const given = checker.getNonNullableType(type);
  return given.isUnion() ? given.types : [given];
}

/** A field's comment as one text, and its type. */
function tellOf(reading: Reading, name: string): { readonly description?: string; readonly type: ts.Type | undefined } {
  const { checker } = reading;
  const symbols = formsOf(reading).flatMap((form) => checker.getPropertyOfType(form, name) ?? []);
  const typed = symbols.map((symbol) => ({
    symbol,
    type: checker.getNonNullableType(checker.getTypeOfSymbol(symbol)),
  }));
  const found = typed.find(({ type }) => (type.flags & ts.TypeFlags.Never) === 0);
  if (found === undefined) return { type: undefined };
  const parts = ts.displayPartsToString(found.symbol.getDocumentationComment(checker));
  const text = parts
    .replace(/\{@link (\w+)\}/g, "$1")
    .replace(/\s+/g, " ")
    .trim();
  return text === "" ? { type: found.type } : { description: text, type: found.type };
}

function objectSchema(fields: AnyFields, reading: Reading, own: Readonly<Record<string, Schema>> = {}): Schema {
  const entries = Object.entries(fields).map(([key, field]) => {
    const { description, type } = tellOf(reading, key);
    const schema = own[key] ?? schemaOf(field, { checker: reading.checker, type });
    return [key, description === undefined ? schema : { description, ...schema }] as const;
  });
  const needed = Object.entries(fields).flatMap(([key, field]) =>
    typeof field === "object" && field.kind === "optional" ? [] : [key],
  );
  return {
    type: "object",
    properties: Object.fromEntries(entries),
    ...(needed.length > 0 ? { required: needed } : {}),
    additionalProperties: false,
  };
}

/** The schema of a field. */
function schemaOf(field: AnyField, reading: Reading): Schema {
  if (typeof field === "function") {
    const own = OWN.get(field);
    if (own === undefined) throw new Error(`bug: no schema for what ${field.name} reads`);
    return own(reading);
  }
  switch (field.kind) {
    case "number":
    case "integer":
      return { type: field.kind, minimum: field.min, maximum: field.max };
    case "word":
      return { enum: field.words };
    case "text":
      return { type: "string", minLength: 1 };
    case "optional":
      return schemaOf(field.of, reading);
    case "nullable":
      return { anyOf: [schemaOf(field.of, reading), { type: "null" }] };
    case "either":
      return { anyOf: field.of.map((form) => schemaOf(form, reading)) };
    case "list": {
      const { checker } = reading;
      const [item] = formsOf(reading).flatMap((form) => checker.getIndexTypeOfType(form, ts.IndexKind.Number) ?? []);
      const { least, most } = field;
      return {
        type: "array",
        items: schemaOf(field.of, { checker, type: item }),
        ...(least === undefined ? {} : { minItems: least }),
        ...(most === undefined ? {} : { maxItems: most }),
      };
    }
    case "record": {
      const { properties, required, ...rest } = objectSchema(field.fields, reading);
      const unread = (field.known ?? []).filter((key) => !Object.hasOwn(field.fields, key));
      const all = { ...(properties as Schema), ...Object.fromEntries(unread.map((key) => [key, true])) };
      if (field.single) return { ...rest, properties: all, minProperties: 1, maxProperties: 1 };
      return { ...rest, properties: all, ...(required === undefined ? {} : { required }) };
    }
  }
}

/**
 * Writes the JSON Schema of a brief from the table that reads briefs, with the comments of the brief's type.
 *
 * @returns the schema
 */
export function briefJsonSchema(): Schema {
  const file = fileURLToPath(new URL("../../src/frame/brief/brief.ts", import.meta.url));
  const program = ts.createProgram([file], {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    strict: true,
    exactOptionalPropertyTypes: true,
    noEmit: true,
  });
  const checker = program.getTypeChecker();
  const exports = checker.getExportsOfModule(checker.getSymbolAtLocation(program.getSourceFile(file)!)!);
  const brief = exports.find(({ name }) => name === "GivenBrief")!;
  const type = checker.getDeclaredTypeOfSymbol(brief);
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "The brief of a mitered frame",
    // An arris may have any name.
    ...objectSchema(BRIEF_FIELDS, { checker, type }, { at: { type: "string" } }),
    oneOf: [{ required: ["profile"] }, { required: ["measured"] }],
  };
}
