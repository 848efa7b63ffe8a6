import type { Hazard, HazardCode } from "../core/hazard.js";
import { isolate } from "../core/isolate.js";
import { readStored } from "../core/stored.js";
import { COMMON_PRACTICE, hazard as readHazard } from "../frame/internal.js";
import { numberLabel } from "./number-label.js";
import { checkDescribeOptions, type DescribeOptions } from "./describe-operation.js";
import { quantityText } from "./quantity-text.js";
import type { HazardValue, HazardWords } from "./hazard-words.js";
import { englishHazards } from "./english-hazards.js";
import type { WordsOptions } from "./words.js";

/** A hazard in words. */
export interface HazardText {
  /** Its signal word: `Danger`. */
  readonly title: string;
  /** What to heed. */
  readonly sentence: string;
  /** The numbers that raised it, by their names; empty where there are none: `length 210 mm, limit 300 mm`. */
  readonly numbers: string;
  /** Where the rule is printed; empty for common practice, of which no printed source was found. */
  readonly source: string;
}

const SIGNALS: Readonly<Record<Hazard["signal"], string>> = {
  danger: "Danger",
  warning: "Warning",
  caution: "Caution",
  notice: "Notice",
};

/** Whether rounding hides what a hazard says: numbers that differ come out alike, or one that is there as none. */
function isLost(values: readonly number[], write: (value: number) => string): boolean {
  const texts = new Set([0, ...values].map(write));
  return texts.size < new Set([0, ...values]).size;
}

/** What the words for a code say. The reader has found the facts and names that the code has, which no type can tell. */
function sentenceOf(words: HazardWords, code: HazardCode, values: HazardValue): string {
  return (words[code] as (values: HazardValue) => string)(values);
}

/**
 * Writes a hazard for people: its signal word, what to heed, the numbers that raised it in the reader's units, and its printed source.
 *
 * @param hazard - one of a plan
 * @param options - the words, and how to write lengths, angles, masses and forces; `small` takes the place of `length` where that would round away what the numbers say
 * @returns the parts, as plain text
 * @throws {InputError} when the hazard is none, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { describeHazard } from "miterwright/words";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 100 }, measured: { levelWidth: 40 } });
 * const words = { length: (value: number) => `${value.toFixed(0)} mm`, angle: (degrees: number) => `${degrees.toFixed(1)}°` };
 * const { title, numbers } = describeHazard(plan.hazards[0]!, words);
 * [title, numbers]; //=> ["Danger", "length 146 mm, limit 150 mm"]
 * ```
 */
export function describeHazard(hazard: Hazard, options: DescribeOptions & WordsOptions): HazardText {
  const { code, signal, numbers, kinds, names = {}, facts, source } = readStored(hazard, "hazard", readHazard);
  const formats = checkDescribeOptions(options);
  const { words } = options;
  const lengths = Object.entries(numbers).flatMap(([name, value]) => (kinds[name] === "length" ? [value] : []));
  const { small, length } = formats;
  const writers = small !== undefined && isLost(lengths, length) ? { ...formats, length: small } : formats;
  const written = Object.entries(numbers).map(
    ([name, value]) => [name, quantityText(value, kinds[name], writers)] as const,
  );
  const isolated = Object.entries(names).map(([what, name]) => [what, isolate(name)] as const);
  const values = { ...facts, ...Object.fromEntries(isolated), signal, numbers: Object.fromEntries(written) };
  return {
    title: SIGNALS[signal],
    sentence: sentenceOf(words?.hazards ?? englishHazards, code, values),
    numbers: written.map(([name, value]) => `${numberLabel(name)} ${value}`).join(", "),
    source: source === COMMON_PRACTICE ? "" : source,
  };
}
