import { FIELDS, LISTS } from "./field-table.js";
import type { ListName } from "./fields.js";
import { canHold, isFieldName, JOB_VERSION, MOST_ROWS, versionTrouble, type OpenedJob } from "./job-link.js";
import type { OpenedWords } from "./labels/opened-words.js";
import { emptyJob, isBlank, type JobState, type Row } from "./job-state.js";

/** What tells a file of ours from any other JSON. */
const FORMAT: string = "miterwright-bench-job";

/**
 * A job as the text of a file: JSON with its format and version, and every field as it was typed.
 *
 * @param state - the job
 * @returns the text
 */
export function jobToFile(state: JobState): string {
  const { values, lists } = state;
  const filled = (list: ListName): Row[] => lists[list].filter((row) => !isBlank(row));
  const file = {
    format: FORMAT,
    version: JOB_VERSION,
    fields: values,
    layers: filled("layers"),
    sticks: filled("sticks"),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function readRows(list: ListName, given: unknown, leftOut: string[]): Row[] | null {
  if (given === undefined) return [];
  if (!Array.isArray(given) || given.length > MOST_ROWS) return null;
  return given.map((row: unknown, index) => {
    const read: Record<string, string> = {};
    for (const [column, text] of Object.entries(isRecord(row) ? row : {})) {
      const field = Object.hasOwn(LISTS[list], column) ? LISTS[list][column] : undefined;
      if (field !== undefined && typeof text === "string" && canHold(field, text)) read[column] = text;
      else leftOut.push(`${list}[${index}].${column}`);
    }
    return read;
  });
}

/**
 * Reads a job from the text of a file.
 *
 * @param text - the text
 * @param words - what is said of links and files
 * @returns the job, or why it can't be read
 */
export function jobFromFile(text: string, words: OpenedWords): OpenedJob {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return { ok: false, why: words.notJson };
  }
  if (!isRecord(file) || file["format"] !== FORMAT) {
    return { ok: false, why: words.otherFormat({ format: FORMAT }) };
  }
  const why = versionTrouble("file", file["version"], words);
  if (why !== null) return { ok: false, why };
  if (!isRecord(file["fields"])) return { ok: false, why: words.noFields };
  const leftOut: string[] = [];
  const values: Record<string, string> = { ...emptyJob().values };
  for (const [name, value] of Object.entries(file["fields"])) {
    if (isFieldName(name) && typeof value === "string" && canHold(FIELDS[name], value)) values[name] = value;
    else leftOut.push(name);
  }
  const layers = readRows("layers", file["layers"], leftOut);
  const sticks = readRows("sticks", file["sticks"], leftOut);
  if (layers === null || sticks === null) {
    return { ok: false, why: words.badList({ most: MOST_ROWS }) };
  }
  return { ok: true, state: { values: values as JobState["values"], lists: { layers, sticks } }, leftOut };
}
