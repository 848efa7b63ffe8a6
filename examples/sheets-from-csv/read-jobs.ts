/**
 * The rows of both tables as moldings and planned jobs. Every row stands for itself: what is wrong is said of its field, and the other rows go on.
 */
import { isInputError } from "miterwright/errors";
import { planFrame, tryParseBrief, type FramePlan } from "miterwright/frame";
import { molding, type Profile } from "miterwright/profile";
import type { StockStick } from "miterwright/stock";
import { tryParseAngle, tryParseLength, type ParseOutcome } from "miterwright/units";
import { readTable, type RowIssue, type TableRow } from "./read-table.js";

const MOLDING_COLUMNS: readonly string[] = [
  "molding",
  "width",
  "thickness",
  "rabbet width",
  "rabbet depth",
  "stick",
  "sticks",
];
const JOB_COLUMNS: readonly string[] = ["job", "frames", "sides", "slope", "width", "height", "clearance", "molding"];

/** The columns that the library's errors are about, by how it names them. */
const COLUMN_OF: Readonly<Record<string, string>> = {
  "rabbet.width": "rabbet width",
  "rabbet.depth": "rabbet depth",
  "opening.contains.width": "width",
  "opening.contains.height": "height",
  opening: "width",
};

/** A molding, and the sticks that there are of it. */
export interface Molding {
  readonly name: string;
  readonly profile: Profile;
  readonly stick: StockStick;
}

/** A job that can be planned. */
export interface PlannedJob {
  readonly name: string;
  /** Its row in the table, which no other job has. */
  readonly row: number;
  /** How many frames of it are made. */
  readonly frames: number;
  readonly molding: string;
  readonly plan: FramePlan;
}

/** What is sound in a table, and what is wrong with the rest. */
export interface Sound<T> {
  readonly sound: readonly T[];
  readonly issues: readonly RowIssue[];
}

/** Says what is wrong with a field. */
type Report = (field: string, sentence: string) => void;

/** A text as a number, or what is wrong with it. */
type Parse = (text: string) => number | string;

const outcome = (parsed: ParseOutcome): number | string => (parsed.ok ? parsed.value : parsed.error.message);
const millimeters: Parse = (text) => outcome(tryParseLength(text, "mm"));
const degrees: Parse = (text) => outcome(tryParseAngle(text));
const count: Parse = (text) => (/^[1-9]\d{0,2}$/.test(text) ? Number(text) : "Expected a whole number from 1 to 999");

/** A field's number; nothing where it is empty, and NaN where it cannot be read. */
function numberIn({ fields }: TableRow, field: string, parse: Parse, report: Report): number | undefined {
  const text = fields[field]!;
  const value = text === "" ? undefined : parse(text);
  if (typeof value !== "string") return value;
  report(field, value);
  return Number.NaN;
}

function readMolding(row: TableRow, report: Report): Molding | undefined {
  const name = row.fields["molding"]!;
  const [width, thickness, rabbetWidth, rabbetDepth, length] = MOLDING_COLUMNS.slice(1, 6).map(
    (field) => numberIn(row, field, millimeters, report) ?? Number.NaN,
  ) as [number, number, number, number, number];
  const sticks = numberIn(row, "sticks", count, report);
  if (!(length > 0)) report("stick", "Expected a length of more than zero");
  try {
    const profile = molding({ width, thickness, rabbet: { width: rabbetWidth, depth: rabbetDepth } });
    return { name, profile, stick: { id: name, length, ...(sticks === undefined ? {} : { count: sticks }) } };
  } catch (error) {
    if (!isInputError(error)) throw error;
    report(COLUMN_OF[error.path] ?? error.path, error.message);
    return undefined;
  }
}

function readJob(row: TableRow, moldings: readonly Molding[], report: Report): PlannedJob | undefined {
  const used = moldings.find(({ name }) => name === row.fields["molding"]);
  if (used === undefined) report("molding", `Expected one of ${moldings.map(({ name }) => name).join(", ")}`);
  const [width, height, clearance] = ["width", "height", "clearance"].map((field) =>
    numberIn(row, field, millimeters, report),
  );
  const brief = {
    sides: numberIn(row, "sides", count, report),
    slope: numberIn(row, "slope", degrees, report),
    opening: { contains: { width, height } },
    clearance,
    profile: (used ?? moldings[0])?.profile,
    // Crosscut square first, all pieces of a molding take the same kerf of it, whatever their miters.
    rough: { method: "square", allowance: 10 },
    sticks: used === undefined ? undefined : [used.stick],
  };
  const frames = numberIn(row, "frames", count, report) ?? 1;
  const outcome = tryParseBrief(brief);
  for (const { path, message } of outcome.ok ? [] : outcome.issues) report(COLUMN_OF[path] ?? path, message);
  if (!outcome.ok || used === undefined) return undefined;
  const plan = planFrame(outcome.value);
  return { name: row.fields["job"]!, row: row.row, frames, molding: used.name, plan };
}

/** Reads a table row by row, and keeps the rows with which nothing is wrong. The first column holds their names. */
function readRows<T extends { readonly name: string }>(
  text: string,
  columns: readonly string[],
  read: (row: TableRow, report: Report) => T | undefined,
): Sound<T> {
  const table = readTable(text, columns);
  const issues = [...table.issues];
  const sound: T[] = [];
  const naming = columns[0]!;
  for (const row of table.rows) {
    const own: RowIssue[] = [];
    // One sentence a field is enough.
    const report: Report = (field, sentence) => {
      if (!own.some((issue) => issue.field === field)) own.push({ row: row.row, field, sentence });
    };
    const name = row.fields[naming]!;
    if (name === "") report(naming, "Expected a name");
    if (sound.some((other) => other.name === name)) report(naming, "Expected a name that no row above has");
    const made = read(row, report);
    if (made !== undefined && own.length === 0) sound.push(made);
    issues.push(...own);
  }
  return { sound, issues: issues.sort((a, b) => a.row - b.row) };
}

/**
 * Reads the table of moldings. Lengths without a unit are millimeters.
 *
 * @param text - the CSV file
 * @returns the moldings, and what is wrong with the other rows
 */
export function readMoldings(text: string): Sound<Molding> {
  return readRows(text, MOLDING_COLUMNS, readMolding);
}

/**
 * Reads the table of jobs and plans every one. Lengths without a unit are millimeters.
 *
 * @param text - the CSV file
 * @param moldings - what the jobs are made of
 * @returns the planned jobs, and what is wrong with the other rows
 */
export function readJobs(text: string, moldings: readonly Molding[]): Sound<PlannedJob> {
  return readRows(text, JOB_COLUMNS, (row, report) => readJob(row, moldings, report));
}
