import {
  checkInteger,
  checkLength,
  checkLengthOrZero,
  checkOneOf,
  checkSlope,
  checkWord,
  describeValue,
  isRecord,
  MAX_FRAME_SIDES,
  reject,
} from "../../core/check.js";
import { InputError } from "../../core/input-error.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import { layRotation, type Lay } from "../../miter/index.js";
import { readProfile } from "../../profile/internal.js";
import { tableSaw } from "../../saw/index.js";
import type { StockStick } from "../../stock/index.js";
import type { Grain, Wood } from "../../wood/index.js";
import type { Cost, FilledBrief, FrameBrief, FrameMoisture, Hanging, RoughMethod } from "./brief.js";
import { checkRough } from "../sawing/check-rough.js";
import { attempt, type InputIssue } from "../../core/input-issue.js";
import { readContents } from "./read-contents.js";
import { checkCost } from "./read-cost.js";
import { readHanging } from "./read-hanging.js";
import { readMoisture } from "./read-moisture.js";
import { arrisNames, readMeasured, readOpening } from "./read-opening.js";
import { readSaw } from "../../saw/internal.js";
import { readGrain, readSpecies } from "./read-species.js";
import { readSticks } from "./read-sticks.js";
import { knownKeys, together } from "../../core/together.js";
import { usualFastenerRoom, usualAcceptedGap, usualKerf } from "../sawing/usual-lengths.js";

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
  "shows",
  "lay",
  "sticks",
  "acceptedGap",
  "fastenerRoom",
  "species",
  "grain",
  "moisture",
  "cost",
  "hanging",
  "profile",
  "measured",
];

/** A brief after checking: every issue found, and the filled brief when there is none. */
export interface ReadBrief {
  /** Every issue, in the order of the fields. */
  readonly issues: readonly InputIssue[];
  /** The brief with its defaults filled in; absent when there are issues. */
  readonly brief?: FilledBrief;
}

/** The fields of a brief that stay absent when they are not given. */
interface OptionalFields {
  lay?: Lay;
  sticks?: readonly StockStick[];
  species?: Wood;
  grain?: Grain;
  moisture?: FrameMoisture;
  cost?: Cost;
  hanging?: Hanging;
}

/** Refuses a brief with neither kind of molding, or with both. */
function checkMoldingKind(given: Readonly<Record<string, unknown>>): void {
  const { profile, measured } = given;
  // A form has no field of an empty name, which is where `checkOneOf` would put it.
  if (profile === undefined && measured === undefined) {
    const message = "Expected exactly one of `profile`, `measured`, got none";
    const expected = {
      clause: "exactly one of `profile`, `measured`",
      kind: "exactly-one",
      keys: ["profile", "measured"],
    } as const;
    reject("missing", "profile", undefined, message, expected);
  }
  checkOneOf(given, "", ["profile", "measured"]);
}

/** Checks how pieces are parted, and that nothing else is said of it. */
function readRough(value: unknown): RoughMethod {
  const [rough] = together<unknown>([() => checkRough(value), knownKeys(value, "rough", ["method", "allowance"])]);
  return rough as RoughMethod;
}

/**
 * Checks a brief from anywhere and fills in its defaults.
 *
 * @param value - the brief
 * @returns every issue, or the filled brief
 */
export function readBrief(value: unknown): ReadBrief {
  const issues: InputIssue[] = [];
  if (!isRecord(value)) {
    const message = `Expected the brief to be an object, got ${describeValue(value)}`;
    return {
      issues: [
        {
          code: value === undefined ? "missing" : "type",
          path: "",
          value,
          message,
          expected: { clause: "an object", kind: "object" },
        },
      ],
    };
  }
  const given = value;
  const read = <T>(key: string, fallback: T, check: (field: unknown) => T): T | undefined =>
    given[key] === undefined ? fallback : attempt(issues, () => check(given[key]));

  const sides = attempt(issues, () => checkInteger(given["sides"], "sides", 3, MAX_FRAME_SIDES));
  const slope = read("slope", 0, checkSlope);
  const pose = read("pose", "side-down" as const, (field) => checkWord(field, "pose", ["side-down", "corner-down"]));
  const opening = attempt(issues, () => readOpening(given["opening"]));
  attempt(issues, () => {
    checkMoldingKind(given);
  });
  const profile = read("profile", undefined, (field) => readProfile(field, "profile"));
  const measured = read("measured", undefined, readMeasured);
  const at =
    (profile === undefined) === (measured === undefined)
      ? "opening"
      : read("at", "opening", (field) => checkWord(field, "at", arrisNames(profile, measured)));
  if (at !== undefined && at !== "opening" && opening !== undefined && (opening.contains ?? opening.cutFrom)) {
    issues.push({
      code: "conflict",
      path: "at",
      value: at,
      message: `Expected \`at\` to be "opening" where the opening is made to hold or to be filled by something, got ${describeValue(at)}`,
      expected: { clause: '"opening"', kind: "one-of", words: ["opening"] },
    });
  }
  const contents = read("contents", [], readContents);
  const clearance = read("clearance", 0, (field) => checkLengthOrZero(field, "clearance"));
  const unit = read<LengthUnit>("unit", "mm", (field) => checkWord(field, "unit", ["mm", "cm", "m", "in", "ft"]));
  const saw = read("saw", tableSaw(), (field) => readSaw(field, "saw"));
  const kerf = read("kerf", usualKerf(unit ?? "mm"), (field) => checkLengthOrZero(field, "kerf"));
  const rough = read<RoughMethod>("rough", { method: "none" }, readRough);
  const shows = read("shows", "face" as const, (field) => checkWord(field, "shows", ["face", "back"]));
  const acceptedGap = read("acceptedGap", usualAcceptedGap(unit ?? "mm"), (field) => checkLength(field, "acceptedGap"));
  const room = usualFastenerRoom(unit ?? "mm");
  const fastenerRoom = read("fastenerRoom", room, (field) => checkLengthOrZero(field, "fastenerRoom"));
  const optional: OptionalFields = {};
  const take = <K extends keyof OptionalFields>(key: K, check: (field: unknown) => OptionalFields[K]): void => {
    const value = given[key] === undefined ? undefined : attempt(issues, () => check(given[key]));
    if (value !== undefined) optional[key] = value;
  };
  take("lay", (field) => {
    const wanted = field as Lay;
    layRotation(wanted, 0);
    return typeof wanted === "number" ? wanted + 0 : wanted;
  });
  take("sticks", readSticks);
  take("species", (field) => readSpecies(field, "species"));
  take("grain", (field) => readGrain(field, "grain"));
  take("moisture", readMoisture);
  take("cost", (field) => checkCost(field, "cost", ["meter", "foot", "cubic-meter", "board-foot"]));
  take("hanging", readHanging);
  attempt(issues, knownKeys(given, "", BRIEF_KEYS));
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
    shows,
    acceptedGap,
    fastenerRoom,
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
