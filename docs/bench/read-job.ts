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
import { filledRows, readFields, type FieldIssue, type PlacedRow } from "./read-fields.js";

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

function fieldIssue(refusal: Refusal, holds: string): FieldIssue {
  return { field: issueField(refusal.path, holds), words: issueWords(refusal) };
}

/** Runs what may be refused; a refusal goes to the field that it is about. */
function attempt<T>(issues: FieldIssue[], holds: string, prefix: string, work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (!isInputError(error)) throw error;
    const { code, path, message, expected } = error;
    issues.push(fieldIssue({ code, path: prefix + path, message, expected }, holds));
    return null;
  }
}

/** Names of sticks as they are typed; those without one are numbered where there are several. */
function stickName(name: string, place: number, among: number): string {
  if (name.trim() !== "") return name.trim();
  return among === 1 ? "stick" : `stick ${place + 1}`;
}

function readSticks(rows: readonly PlacedRow[], numbers: ReadonlyMap<string, number>, issues: FieldIssue[]): unknown[] {
  const taken = new Set<string>();
  return rows.map(({ row, index }, place) => {
    const id = stickName(row["name"] ?? "", place, rows.length);
    if (taken.has(id)) issues.push({ field: `sticks.${index}.name`, words: "Another row has this name already." });
    taken.add(id);
    const number = (column: string): number | undefined => numbers.get(`sticks.${index}.${column}`);
    return { id, length: number("length"), ...optional("count", number("count")), ...optional("cost", number("cost")) };
  });
}

/**
 * Reads the form: what is typed becomes a brief, or a sentence beside the field that is wrong.
 *
 * @param state - the form
 * @returns the brief, or the issues and the fields that are still needed
 */
export function readJob(state: JobState): ReadJob {
  const fields = readFields(state);
  const { values, numbers, needed } = fields;
  const issues = [...fields.issues];
  const [sticks, layers] = [filledRows(state, "sticks"), filledRows(state, "layers")];
  const stock = readSticks(sticks, numbers, issues);
  for (const { row, index } of layers) {
    if (row["material"] === "molding" && values.species === "")
      issues.push({ field: `layers.${index}.material`, words: "Say which wood the molding is of." });
    if (row["material"] === "sheet" && !numbers.has(`layers.${index}.density`))
      issues.push({ field: `layers.${index}.density`, words: "Say how dense the sheet is." });
  }
  const frames = numbers.get("frames") ?? 1;
  if (frames < 1) issues.push({ field: "frames", words: "At least one frame has to be made." });
  const slope = attempt(issues, values.holds, "", () => slopePart(fields));
  const isSound = (name: string): boolean => !needed.includes(name) && !issues.some(({ field }) => field === name);
  const hasMolding = ["moldingWidth", "thickness", "rabbetWidth", "rabbetDepth", "slope"].every(isSound);
  const profile =
    values.known === "dimensions" && hasMolding
      ? attempt(issues, values.holds, "molding.", () => moldingPart(fields, slope ?? 0))
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
    contents: contentsPart(fields, layers),
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
  const rows = { sticks, contents: layers };
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
    issues.push(fieldIssue({ ...issue, path }, values.holds));
  }
  const isComplete = issues.length === 0 && needed.length === 0;
  return { brief: isComplete ? (brief as FrameBrief) : null, frames, keep: numbers.get("keep") ?? 0, issues, needed };
}
