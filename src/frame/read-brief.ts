import {
  checkArray,
  checkInteger,
  checkLength,
  checkLengthOrZero,
  checkNumber,
  checkObject,
  checkOneOf,
  checkSlope,
  checkText,
  checkWord,
  describeValue,
} from "../core/check.js";
import { InputError, type InputErrorCode } from "../core/input-error.js";
import type { LengthUnit } from "../core/geometry-types.js";
import { layRotation, type Lay } from "../miter/index.js";
import { POLYGON_MEASURES } from "../polygon/index.js";
import { checkProfile } from "../profile/index.js";
import { checkSaw, tableSaw } from "../saw/index.js";
import { convertLength } from "../units/index.js";
import type { ContentsLayer, FilledBrief, FrameBrief, MeasuredMolding, Opening, RoughMethod } from "./brief.js";

/** Most sides that a frame may have: beyond that the closed forms of `polygon` and `miter` still answer, but nobody saws. */
const MAX_FRAME_SIDES: number = 1000;

const BRIEF_KEYS: readonly string[] = [
  "sides",
  "slope",
  "pose",
  "opening",
  "at",
  "contents",
  "clearance",
  "unit",
  "saw",
  "kerf",
  "rough",
  "lay",
  "sticks",
  "profile",
  "measured",
];

/** One thing that is wrong with a brief, for the form field it belongs to. */
export interface InputIssue {
  /** What is wrong, in one word. */
  readonly code: InputErrorCode;
  /** The field, e.g. `opening.contains.width`. */
  readonly path: string;
  /** The offending value, as it was given. */
  readonly value: unknown;
  /** The sentence that says what is allowed. */
  readonly message: string;
}

/** A brief after checking: every issue found, and the filled brief when there is none. */
export interface ReadBrief {
  /** Every issue, in the order of the fields. */
  readonly issues: readonly InputIssue[];
  /** The brief with its defaults filled in; absent when there are issues. */
  readonly brief?: FilledBrief;
}

/**
 * Runs checks one by one and keeps what each of them has to say.
 *
 * @param issues - where the issues go
 * @param check - one check
 * @returns the checked value, or `undefined` when it was refused
 */
export function attempt<T>(issues: InputIssue[], check: () => T): T | undefined {
  try {
    return check();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    issues.push({ code: error.code, path: error.path, value: error.value, message: error.message });
    return undefined;
  }
}

function readOpening(value: unknown): Opening {
  const opening = checkObject(value, "opening");
  const key = checkOneOf(opening, "opening", ["contains", "cutFrom", ...POLYGON_MEASURES] as const);
  if (key !== "contains" && key !== "cutFrom") {
    const what = key === "area" ? "a positive area (1e-200 to 1e200)" : undefined;
    const size =
      what === undefined
        ? checkLength(opening[key], `opening.${key}`)
        : checkNumber(opening[key], "opening.area", 1e-200, 1e200, what);
    return { [key]: size } as unknown as Opening;
  }
  const box = checkObject(opening[key], `opening.${key}`);
  const width = checkLength(box["width"], `opening.${key}.width`);
  const height = checkLength(box["height"], `opening.${key}.height`);
  if (key === "cutFrom") return { cutFrom: { width, height } };
  const allowance = box["allowance"];
  if (allowance === undefined) return { contains: { width, height } };
  return { contains: { width, height, allowance: checkLengthOrZero(allowance, "opening.contains.allowance") } };
}

function readContents(value: unknown): readonly ContentsLayer[] {
  return checkArray(value, "contents", "an array of layers, each with a name and a thickness").map((item, index) => {
    const layer = checkObject(item, `contents[${index}]`);
    return {
      name: checkText(layer["name"], `contents[${index}].name`),
      thickness: checkLength(layer["thickness"], `contents[${index}].thickness`),
    };
  });
}

function readMeasured(value: unknown): MeasuredMolding {
  const measured = checkObject(value, "measured");
  const levelWidth = checkLength(measured["levelWidth"], "measured.levelWidth");
  const optional: { lap?: number; depth?: number } = {};
  if (measured["lap"] !== undefined) optional.lap = checkLengthOrZero(measured["lap"], "measured.lap");
  if (measured["depth"] !== undefined) optional.depth = checkLength(measured["depth"], "measured.depth");
  return { levelWidth, ...optional };
}

/**
 * Checks how pieces are parted from the stick.
 *
 * @param value - the method and its allowance
 * @returns the checked method
 */
export function checkRough(value: unknown): RoughMethod {
  const rough = checkObject(value, "rough");
  const method = checkWord(rough["method"], "rough.method", ["none", "square", "mitered"]);
  if (method === "none") return { method };
  return { method, allowance: checkLength(rough["allowance"], "rough.allowance") };
}

function readSticks(value: unknown): unknown[] {
  return checkArray(value, "sticks", "an array of sticks, each with an id and a length").map((item, index) => {
    const stick = checkObject(item, `sticks[${index}]`);
    checkText(stick["id"], `sticks[${index}].id`);
    checkLength(stick["length"], `sticks[${index}].length`);
    if (stick["count"] !== undefined) checkInteger(stick["count"], `sticks[${index}].count`, 0, 1e9);
    if (stick["cost"] !== undefined) checkLengthOrZero(stick["cost"], `sticks[${index}].cost`);
    return stick;
  });
}

/** The arris names that a brief's molding has, plus "contents". */
function markNames(profile: unknown, measured: MeasuredMolding | undefined): string[] {
  if (measured !== undefined) return ["contents", "wall", "outer", ...(measured.lap === undefined ? [] : ["sight"])];
  return ["contents", ...Object.keys((profile as { marks: object }).marks)];
}

/** A full carbide kerf of 1/8 in, in any unit. Common practice, no printed source. */
function usualKerf(unit: LengthUnit): number {
  return convertLength(0.125, "in", unit);
}

/**
 * Checks a brief from anywhere and fills in its defaults.
 *
 * @param value - the brief
 * @returns every issue, or the filled brief
 */
export function readBrief(value: unknown): ReadBrief {
  const issues: InputIssue[] = [];
  const given = attempt(issues, () => checkObject(value, "brief"));
  if (given === undefined) return { issues };
  const read = <T>(key: string, fallback: T, check: (field: unknown) => T): T | undefined =>
    given[key] === undefined ? fallback : attempt(issues, () => check(given[key]));

  const sides = attempt(issues, () => checkInteger(given["sides"], "sides", 3, MAX_FRAME_SIDES));
  const slope = read("slope", 0, checkSlope);
  const pose = read("pose", "side-down" as const, (field) => checkWord(field, "pose", ["side-down", "corner-down"]));
  const opening = attempt(issues, () => readOpening(given["opening"]));
  const molding = attempt(issues, () => checkOneOf(given, "", ["profile", "measured"] as const));
  const profile = molding === "profile" ? attempt(issues, () => checkProfile(given["profile"], "profile")) : undefined;
  const measured = molding === "measured" ? attempt(issues, () => readMeasured(given["measured"])) : undefined;
  const at =
    profile === undefined && measured === undefined
      ? "contents"
      : read("at", "contents", (field) => checkWord(field, "at", markNames(profile, measured)));
  if (at !== undefined && at !== "contents" && opening !== undefined && (opening.contains ?? opening.cutFrom)) {
    issues.push({
      code: "conflict",
      path: "at",
      value: at,
      message: `Expected \`at\` to be "contents" where the opening is made to hold or to be filled by something, got ${describeValue(at)}`,
    });
  }
  const contents = read("contents", [], readContents);
  const clearance = read("clearance", 0, (field) => checkLengthOrZero(field, "clearance"));
  const unit = read<LengthUnit>("unit", "mm", (field) => checkWord(field, "unit", ["mm", "cm", "m", "in", "ft"]));
  const saw = read("saw", tableSaw(), (field) => checkSaw(field, "saw"));
  const kerf = read("kerf", usualKerf(unit ?? "mm"), (field) => checkLengthOrZero(field, "kerf"));
  const rough = read<RoughMethod>("rough", { method: "none" }, checkRough);
  const optional: { lay?: Lay; sticks?: unknown[] } = {};
  if (given["lay"] !== undefined) {
    const lay = attempt(issues, () => {
      const wanted = given["lay"] as Lay;
      layRotation(wanted, 0);
      return typeof wanted === "number" ? wanted + 0 : wanted;
    });
    if (lay !== undefined) optional.lay = lay;
  }
  if (given["sticks"] !== undefined) {
    const sticks = attempt(issues, () => readSticks(given["sticks"]));
    if (sticks !== undefined) optional.sticks = sticks;
  }
  for (const key of Object.keys(given)) {
    if (BRIEF_KEYS.includes(key)) continue;
    const message = `Expected only known fields in the brief (${BRIEF_KEYS.join(", ")}), got \`${key}\``;
    issues.push({ code: "unknown", path: key, value: given[key], message });
  }
  if (issues.length > 0) return { issues };
  const brief = {
    sides,
    slope,
    pose,
    opening,
    ...(profile === undefined ? { measured } : { profile }),
    at,
    contents,
    clearance,
    unit,
    saw,
    kerf,
    rough,
    ...optional,
  };
  return { issues, brief: brief as unknown as FilledBrief };
}

/**
 * Checks a brief and throws its first issue.
 *
 * @param value - the brief
 * @returns the filled brief
 * @throws {InputError} the first issue
 */
export function filledBrief(value: FrameBrief): FilledBrief {
  const { issues, brief } = readBrief(value);
  if (brief !== undefined) return brief;
  throw new InputError(issues[0]!);
}
