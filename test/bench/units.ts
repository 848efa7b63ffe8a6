import Fraction from "fraction.js";
import { all, create } from "mathjs";
import { nearestFraction, parseLength } from "miterwright/units";
import { leastTimes } from "./measure.js";
import type { Row } from "./row.js";

/** A job done by ours and by another library. Both return something of it, so that none is optimized away. */
interface Duel {
  readonly name: string;
  readonly ours: () => number;
  readonly other: () => number;
}

const ITEMS = 500;

/** Adds up what a job makes of every item. */
function total<T>(items: readonly T[], job: (item: T) => number): () => number {
  return () => items.reduce((sum, item) => sum + job(item), 0);
}

/**
 * Compares `nearestFraction` and `parseLength` with two libraries of general use.
 *
 * The inputs are what people have: lengths on a tape, to a sixteenth, and decimals of few digits. mathjs reads no mixed
 * numbers with a unit, and fraction.js no units.
 *
 * @param budget - milliseconds of processor time in all
 * @returns a row a comparison
 */
export function benchUnits(budget: number): Row[] {
  const math = create(all!);
  const numbers = Array.from({ length: ITEMS }, (_, k) => 3 + k * 0.137);
  const mixed = numbers.map((_, k) => `${3 + k} ${1 + 2 * (k % 8)}/16`);
  const decimals = numbers.map((number) => number.toFixed(2));
  const metric = decimals.map((text) => `${text} mm`);
  const duels: Duel[] = [
    {
      name: "nearestFraction(number, 16).text / fraction.js",
      ours: total(numbers, (number) => nearestFraction(number, 16).text.length),
      other: total(numbers, (number) => new Fraction(number).roundTo("1/16").toFraction(true).length),
    },
    {
      name: "nearestFraction(number, 16).text / mathjs",
      ours: total(numbers, (number) => nearestFraction(number, 16).text.length),
      other: total(numbers, (number) => math.fraction(math.round(number * 16), 16).toFraction(true).length),
    },
    {
      name: 'parseLength("5 7/16", "in") / fraction.js',
      ours: total(mixed, (text) => parseLength(text, "in")),
      other: total(mixed, (text) => new Fraction(text).valueOf()),
    },
    {
      name: 'parseLength("5 7/16", "in") / mathjs',
      ours: total(mixed, (text) => parseLength(text, "in")),
      other: total(mixed, (text) => math.fraction(text).valueOf()),
    },
    {
      name: 'parseLength("90.50", "in") / fraction.js',
      ours: total(decimals, (text) => parseLength(text, "in")),
      other: total(decimals, (text) => new Fraction(text).valueOf()),
    },
    {
      name: 'parseLength("90.50 mm", "in") / mathjs',
      ours: total(metric, (text) => parseLength(text, "in")),
      other: total(metric, (text) => math.unit(text).toNumber("in")),
    },
  ];
  return duels.map(({ name, ours, other }) => {
    if (!(Math.abs(ours() - other()) <= 1e-6)) throw new Error(`${name}: the two do not agree`);
    const least = leastTimes({ ours, other }, budget / duels.length);
    return { name, meaning: "times as fast as the other library", value: least["other"]! / least["ours"]! };
  });
}
