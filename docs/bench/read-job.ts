import { isInputError } from "miterwright/errors";
import { tryParseBrief, type FrameBrief } from "miterwright/frame";
import {
  contentsPart,
  moldingPart,
  openingPart,
  optional,
  placePart,
  sawPart,
  slopePart,
  woodPart,
} from "./brief-parts.js";
import { issueField } from "./issue-field.js";
import { issueWords, type Refusal } from "./issue-words.js";
import type { JobState } from "./job-state.js";
import { filledRows, readFields, type FieldIssue, type PlacedRow, type ReadFields } from "./read-fields.js";
import type { Pen } from "./writers.js";

/** A form that was read. */
export interface ReadJob {
  /** The brief; `null` while a field is wrong or needed. */
  readonly brief: FrameBrief | null;
  /** How many such frames are made. */
  readonly frames: number;
  /** Shortest offcut worth keeping; 0 where none is marked. */
  readonly keep: number;
  /** What is wrong, field by field. */
  readonly issues: readonly FieldIssue[];
  /** The fields that are empty and needed, by key, in the order of the form. */
  readonly needed: readonly string[];
}

/** The form that is read, what is found wrong with it, and what that is written with. */
interface Reader {
  readonly fields: ReadFields;
  readonly issues: FieldIssue[];
  readonly pen: Pen;
}

/** Keeps an error of the library for the field that it is about. */
function keepIssue({ fields, issues, pen }: Reader, refusal: Refusal): void {
  const field = issueField(refusal.path, fields.values.holds);
  issues.push({ field, words: issueWords(refusal, field, pen) });
}

/** Runs what may be refused; a refusal goes to the field that it is about. */
function attempt<T>(reader: Reader, prefix: string, work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (!isInputError(error)) throw error;
    const { code, path, expected } = error;
    keepIssue(reader, { code, path: prefix + path, expected });
    return null;
  }
}

/** The sticks; those without a name are numbered where there are several. */
function readSticks({ fields: { numbers }, issues, pen }: Reader, rows: readonly PlacedRow[]): unknown[] {
  const { lists, errors } = pen.page;
  const taken = new Set<string>();
  return rows.map(({ row, index }, place) => {
    const typed = (row["name"] ?? "").trim();
    const id = typed === "" ? lists.sticks.unnamed({ number: place + 1, isOnly: rows.length === 1 }) : typed;
    if (taken.has(id)) issues.push({ field: `sticks.${index}.name`, words: errors.sameName });
    taken.add(id);
    const number = (column: string): number | undefined => numbers.get(`sticks.${index}.${column}`);
    return { id, length: number("length"), ...optional("count", number("count")), ...optional("cost", number("cost")) };
  });
}

/** What the layers lack to be weighed. */
function checkLayers({ fields: { values, numbers }, issues, pen }: Reader, layers: readonly PlacedRow[]): void {
  const { woodNeeded, densityNeeded } = pen.page.errors;
  for (const { row, index } of layers) {
    if (row["material"] === "molding" && values.species === "")
      issues.push({ field: `layers.${index}.material`, words: woodNeeded });
    if (row["material"] === "sheet" && !numbers.has(`layers.${index}.density`))
      issues.push({ field: `layers.${index}.density`, words: densityNeeded });
  }
}

/** The brief as the library checks it. */
function keepBriefIssues(
  reader: Reader,
  brief: unknown,
  rows: Readonly<Record<"sticks" | "contents", readonly PlacedRow[]>>,
): void {
  const outcome = tryParseBrief(brief);
  for (const issue of outcome.ok ? [] : outcome.issues) {
    // What is not there, because it is not typed or can't be read, has been said already.
    if (issue.code === "missing") continue;
    // So has a stick's name that another has.
    if (/^sticks\[\d+\]\.id$/.test(issue.path)) continue;
    // The brief has no blank rows; the form has.
    const path = issue.path.replace(
      /^(sticks|contents)\[(\d+)\]/,
      (_, list: keyof typeof rows, place: string) => `${list}[${rows[list][Number(place)]!.index}]`,
    );
    keepIssue(reader, { ...issue, path });
  }
}

/**
 * Reads the form: what is typed becomes a brief, or a sentence beside the field that is wrong.
 *
 * @param state - the form
 * @param pen - what the page writes with
 * @returns the brief, or the issues and the fields that are still needed
 */
export function readJob(state: JobState, pen: Pen): ReadJob {
  const fields = readFields(state, pen.page);
  const { values, numbers, needed } = fields;
  const issues = [...fields.issues];
  const reader: Reader = { fields, issues, pen };
  const [sticks, layers] = [filledRows(state, "sticks"), filledRows(state, "layers")];
  const stock = readSticks(reader, sticks);
  checkLayers(reader, layers);
  const frames = numbers.get("frames") ?? 1;
  if (frames < 1) issues.push({ field: "frames", words: pen.page.errors.noFrames });
  const slope = attempt(reader, "", () => slopePart(fields));
  const isSound = (name: string): boolean => !needed.includes(name) && !issues.some(({ field }) => field === name);
  const hasMolding = ["moldingWidth", "thickness", "rabbetWidth", "rabbetDepth", "slope"].every(isSound);
  const profile =
    values.known === "dimensions" && hasMolding
      ? attempt(reader, "molding.", () => moldingPart(fields, slope ?? 0))
      : null;

  const lap = optional("lap", numbers.get("lap"));
  const brief: unknown = {
    sides: numbers.get("sides"),
    slope: slope ?? 0,
    pose: values.pose,
    opening: openingPart(fields),
    ...(values.known === "level"
      ? { measured: { levelWidth: numbers.get("levelWidth"), ...lap, ...optional("depth", numbers.get("depth")) } }
      : { profile: profile ?? undefined }),
    at:
      profile === null && values.known === "dimensions"
        ? "opening"
        : placePart(values, profile, slope ?? 0, "lap" in lap),
    contents: contentsPart(fields, layers, pen.page),
    ...optional("clearance", numbers.get("clearance")),
    ...optional("fastenerRoom", numbers.get("fastenerRoom")),
    ...optional("acceptedGap", numbers.get("acceptedGap")),
    ...woodPart(fields),
    unit: values.unit,
    saw: sawPart(fields),
    ...optional("kerf", numbers.get("kerf")),
    rough:
      values.rough === "none" ? { method: "none" } : { method: values.rough, allowance: numbers.get("roughAllowance") },
    shows: values.shows,
    ...(values.lay === "" ? {} : { lay: values.lay }),
    ...(sticks.length === 0 ? {} : { sticks: stock }),
  };
  keepBriefIssues(reader, brief, { sticks, contents: layers });
  const isComplete = issues.length === 0 && needed.length === 0;
  return { brief: isComplete ? (brief as FrameBrief) : null, frames, keep: numbers.get("keep") ?? 0, issues, needed };
}
