import type { Hazard } from "../core/hazard.js";
import { readStored } from "../core/stored.js";
import { COMMON_PRACTICE } from "../frame/hazards/common-practice.js";
import { numberLabel } from "./number-label.js";
import { checkDescribeOptions, type DescribeOptions } from "./describe-operation.js";
import { quantityText } from "./quantity-text.js";
import { hazard as readHazard } from "../frame/stored/hazard.js";

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

/**
 * Writes a hazard for people: its signal word, what to heed, the numbers that raised it in the reader's units, and its printed source.
 *
 * @param hazard - one of a plan
 * @param options - how to write lengths, angles, masses and forces; `small` takes the place of `length` where that would round away what the numbers say
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
export function describeHazard(hazard: Hazard, options: DescribeOptions): HazardText {
  const { signal, sentence, numbers, kinds, source } = readStored(hazard, "hazard", readHazard);
  const words = checkDescribeOptions(options);
  const lengths = Object.entries(numbers).flatMap(([name, value]) => (kinds[name] === "length" ? [value] : []));
  const { small, length } = words;
  const writers = small !== undefined && isLost(lengths, length) ? { ...words, length: small } : words;
  const named = Object.entries(numbers).map(
    ([name, value]) => `${numberLabel(name)} ${quantityText(value, kinds[name], writers)}`,
  );
  return {
    title: SIGNALS[signal],
    sentence,
    numbers: named.join(", "),
    source: source === COMMON_PRACTICE ? "" : source,
  };
}
