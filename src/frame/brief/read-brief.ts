import { checkOneOf, checkWord, describeValue, inOrder, isRecord, type RunChecks } from "../../core/check.js";
import { fieldPath, readAny, readField, type AnyField, type AnyFields, type RecordField } from "../../core/field.js";
import { InputError } from "../../core/input-error.js";
import type { Filled } from "../../core/geometry-types.js";
import type { Profile } from "../../profile/index.js";
import { tableSaw } from "../../saw/index.js";
import { usualAcceptedGap, usualFastenerRoom, usualKerf } from "../sawing/usual-lengths.js";
import type { FilledBrief, FilledKey, FilledSizing, GivenBrief, MoldingOf, SizingBrief } from "./brief.js";
import { BRIEF_FIELDS, readVersion } from "./brief-fields.js";
import { BRIEF_KEYS, GEOMETRY_FIELDS, PROFILE } from "./geometry-fields.js";

type Given = Readonly<Record<string, unknown>>;

/** Refuses a brief with neither kind of molding, or with both. */
function checkMoldingKind(given: Given, path: string): string {
  if (given["profile"] === undefined && given["measured"] === undefined) {
    // A form has no field of an empty name, which is where `checkOneOf` would put it.
    const clause = "exactly one of `profile`, `measured`";
    const expected = { clause, kind: "exactly-one", keys: ["profile", "measured"] } as const;
    const message = `Expected ${clause}${path && ` in \`${path}\``}, got none`;
    throw new InputError({ code: "missing", path: fieldPath(path, "profile"), value: undefined, message, expected });
  }
  return checkOneOf(given, path, ["profile", "measured"]);
}

/** What `at` may be for the brief's molding; nothing where it is not known which molding that is. */
function arrisNames({ profile, measured }: Given): string[] | undefined {
  if (measured === undefined) {
    const arrises = isRecord(profile) ? profile["arrises"] : undefined;
    return isRecord(arrises) ? ["opening", ...Object.keys(arrises)] : undefined;
  }
  if (profile !== undefined || !isRecord(measured)) return undefined;
  return ["opening", "wall", "outer", ...(measured["lap"] === undefined ? [] : ["sight"])];
}

/** Reads where the opening is measured. */
function readAt(at: unknown, path: string, given: Given): string {
  const names = arrisNames(given);
  const name = names === undefined ? "opening" : checkWord(at, path, names);
  const { opening } = given;
  const holds = isRecord(opening) && (opening["contains"] ?? opening["cutFrom"]) !== undefined;
  if (name !== "opening" && holds) {
    const message = `Expected \`${path}\` to be "opening" where the opening is made to hold or to be filled by something, got ${describeValue(at)}`;
    const expected = { clause: '"opening"', kind: "one-of", words: ["opening"] } as const;
    throw new InputError({ code: "conflict", path, value: at, message, expected });
  }
  return name;
}

/** Reads a brief with these fields; the molding decides what two of them may be. */
function readFields(value: unknown, path: string, { fields, known }: RecordField, run: RunChecks): unknown {
  if (!isRecord(value)) {
    const what = path === "" ? "the brief" : `\`${path}\``;
    const message = `Expected ${what} to be an object, got ${describeValue(value)}`;
    const expected = { clause: "an object", kind: "object" } as const;
    throw new InputError({ code: value === undefined ? "missing" : "type", path, value, message, expected });
  }
  // In another form of brief every other field may be another.
  if (value["schemaVersion"] !== undefined) readVersion(value["schemaVersion"], fieldPath(path, "schemaVersion"), run);
  const narrowed: AnyFields = {
    ...fields,
    profile: (profile, at) => {
      const [, read] = run<unknown>([
        () => checkMoldingKind(value, path),
        () => readField<Profile | undefined>(PROFILE, profile, at, run),
      ]);
      return read;
    },
    at: (at, place) => (at === undefined ? readAny(fields["at"]!, at, place, run) : readAt(at, place, value)),
  };
  return readAny({ kind: "record", fields: narrowed, known: known ?? Object.keys(fields) }, value, path, run);
}

/** The molding of a brief that was read, by its section or by its level measures. */
function moldingOf({ profile, measured }: SizingBrief): MoldingOf {
  return profile === undefined ? { measured: measured! } : { profile };
}

/** Reads what decides a frame's geometry, and fills in its defaults; of the other fields only their names are looked at. */
export function readSizing(value: unknown): FilledSizing {
  const brief = readFields(
    value,
    "",
    { kind: "record", fields: GEOMETRY_FIELDS, known: BRIEF_KEYS },
    inOrder,
  ) as SizingBrief;
  const { sides, slope = 0, pose = "side-down", opening, at = "opening", contents = [], clearance = 0 } = brief;
  return { sides, slope, pose, opening, ...moldingOf(brief), at, contents, clearance };
}

/** Reads a brief from anywhere and fills in its defaults. */
export function readBrief(value: unknown, run: RunChecks): FilledBrief {
  const brief = readFields(value, "", { kind: "record", fields: BRIEF_FIELDS }, run) as GivenBrief;
  const { unit = "mm" } = brief;
  const usual: Filled<Pick<GivenBrief, FilledKey>> = {
    slope: 0,
    pose: "side-down",
    at: "opening",
    contents: [],
    clearance: 0,
    unit,
    saw: tableSaw(),
    kerf: usualKerf(unit),
    rough: { method: "none" },
    shows: "face",
    acceptedGap: usualAcceptedGap(unit),
    fastenerRoom: usualFastenerRoom(unit),
    schemaVersion: 1,
  };
  return { ...usual, ...brief } as FilledBrief;
}

/** The fields that have a default. */
const FILLED: readonly string[] = [
  "slope",
  "pose",
  "at",
  "contents",
  "clearance",
  "unit",
  "saw",
  "kerf",
  "rough",
  "shows",
  "acceptedGap",
  "fastenerRoom",
  "schemaVersion",
] satisfies readonly FilledKey[];

/** Reads a brief whose defaults are filled in, as plans hold it. */
export function readFilledBrief(value: unknown, path: string, run: RunChecks): FilledBrief {
  const fields: Record<string, AnyField> = {};
  for (const [key, field] of Object.entries<AnyField>(BRIEF_FIELDS)) {
    fields[key] = "kind" in field && field.kind === "optional" && FILLED.includes(key) ? field.of : field;
  }
  return readFields(value, path, { kind: "record", fields }, run) as FilledBrief;
}
