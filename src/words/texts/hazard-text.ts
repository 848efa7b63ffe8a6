import type { Hazard, HazardCode, QuantityKind } from "../../core/hazard.js";
import { isolate } from "../../core/isolate.js";
import { readStored } from "../../core/stored.js";
import { COMMON_PRACTICE, COMPUTED, hazard as readHazard } from "../../frame/internal.js";
import type { Formats } from "../../units/index.js";
import { englishHazards } from "../catalog/english-hazards.js";
import type { HazardValue, HazardWords } from "../catalog/hazard-words.js";
import { englishLabels } from "../catalog/label-words.js";
import { englishObstacles } from "../catalog/obstacle-words.js";
import { englishReasons, type Reason } from "../catalog/reason-words.js";
import { englishStacks } from "../catalog/stack-words.js";
import { checkTellOptions, type TellOptions } from "../tell-options.js";
import type { Words } from "../words.js";

/** A hazard in words. */
export interface HazardText {
  /** Its signal word: `Danger`. */
  readonly title: string;
  /** What to heed. */
  readonly sentence: string;
  /** The numbers that raised it, by their names; empty where there are none: `length 210 mm, limit 300 mm`. */
  readonly numbers: string;
  /** Where the rule is printed; empty for common practice, of which no printed source was found, and for what is computed. */
  readonly source: string;
}

/** Hazards of joints that open. Their lengths are gaps, for which the marks of a rule are too coarse. */
const OF_GAPS: readonly HazardCode[] = ["reach", "season-gap"];

/** Whether rounding hides what a hazard says: numbers that differ come out alike, or one that is there as none. */
function isLost(values: readonly number[], write: (value: number) => string): boolean {
  const texts = new Set([0, ...values].map(write));
  return texts.size < new Set([0, ...values]).size;
}

/** A number with its unit. */
function quantityText(value: number, kind: QuantityKind | undefined, formats: Formats): string {
  return kind === undefined ? formats.number(value) : formats[kind](value);
}

/** What words of other areas say of the codes among the facts: obstacles to a lay, why something cannot be held, how the layers fill the rabbet. */
function becauseOf(facts: Hazard["facts"], words: Words | undefined): readonly string[] {
  const { obstacles = [], reason, verdict } = facts ?? {};
  const obstacleWords = words?.obstacles ?? englishObstacles;
  const named = obstacles as readonly (keyof typeof englishObstacles)[];
  return [
    ...named.map((code) => obstacleWords[code]({ degrees: null })),
    ...(reason === undefined ? [] : [(words?.reasons ?? englishReasons)[reason as Reason]()]),
    ...(verdict === undefined ? [] : [(words?.stacks ?? englishStacks)[verdict as keyof typeof englishStacks]()]),
  ];
}

/** What the words for a code say. The reader has found the facts and names that the code has, which no type can tell. */
function sentenceOf(words: HazardWords, code: HazardCode, values: HazardValue): string {
  return (words[code] as (values: HazardValue) => string)(values);
}

/**
 * Writes a hazard for people: its signal word, what to heed, the numbers that raised it in the reader's units, and its printed source.
 *
 * @param hazard - one of a plan
 * @param options - formatters and words; `small` takes the place of `length` for gaps, and where that would round away what the numbers say
 * @returns the parts, as plain text
 * @throws {InputError} when the hazard is none, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { formatters } from "miterwright/units";
 * import { hazardText } from "miterwright/words";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 100 }, measured: { levelWidth: 40 } });
 * const { title, numbers } = hazardText(plan.hazards[0]!, { formats: formatters({ unit: "mm", digits: 0 }) });
 * [title, numbers]; //=> ["Danger", "length 146 mm, limit 150 mm"]
 * ```
 */
export function hazardText(hazard: Hazard, options: TellOptions): HazardText {
  const { code, signal, numbers, kinds, names = {}, facts, source } = readStored(hazard, "hazard", readHazard);
  const { formats, words } = checkTellOptions(options);
  const { signals, hazardNumbers } = words?.labels ?? englishLabels;
  const lengths = Object.entries(numbers).flatMap(([name, value]) => (kinds[name] === "length" ? [value] : []));
  const isFine = OF_GAPS.includes(code) || isLost(lengths, formats.length);
  const writers = isFine ? { ...formats, length: formats.small } : formats;
  const written = Object.entries(numbers).map(
    ([name, value]) => [name, quantityText(value, kinds[name], writers)] as const,
  );
  const isolated = Object.entries(names).map(([what, name]) => [what, isolate(name)] as const);
  const values = {
    ...facts,
    ...Object.fromEntries(isolated),
    signal,
    numbers: Object.fromEntries(written),
    because: becauseOf(facts, words),
  };
  return {
    title: signals[signal],
    sentence: sentenceOf(words?.hazards ?? englishHazards, code, values),
    numbers: written
      .map(([name, value]) => `${Object.hasOwn(hazardNumbers, name) ? hazardNumbers[name]! : isolate(name)} ${value}`)
      .join(", "),
    source: source === COMMON_PRACTICE || source === COMPUTED ? "" : source,
  };
}
