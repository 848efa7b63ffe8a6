import { pathToFileURL } from "node:url";
import Fraction from "fraction.js";
import { all, create } from "mathjs";
import { nearestFraction, parseLength } from "miterwright/units";

/** One comparison. */
export interface UnitsRow {
  /** What is compared with what. */
  readonly name: string;
  /** Median time of the other library over the median time of ours, in one run: above 1, ours is faster. */
  readonly ratioOfMedians: number;
}

/** A job done by ours and by another library. Both return something of it, so that none is optimized away. */
interface Duel {
  readonly name: string;
  readonly ours: () => number;
  readonly other: () => number;
}

/** Calls of each side, taken in turns so that whatever else the machine does falls on both. */
const ROUNDS = 41;
const WARM_UPS = 10;
const ITEMS = 500;

function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
}

function timeOf(job: () => number): number {
  const start = performance.now();
  if (Number.isNaN(job())) throw new Error("a job of the benchmark came to nothing");
  return performance.now() - start;
}

function ratioOfMedians({ ours, other }: Duel): number {
  for (let k = 0; k < WARM_UPS; k++) if (Math.abs(ours() - other()) > 1e-6) throw new Error("the two do not agree");
  const times: [number, number][] = Array.from({ length: ROUNDS }, () => [timeOf(ours), timeOf(other)]);
  return median(times.map(([, theirs]) => theirs)) / median(times.map(([mine]) => mine));
}

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
 * @returns a row for every comparison, of this run
 */
export function benchUnits(): UnitsRow[] {
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
  return duels.map((duel) => ({ name: duel.name, ratioOfMedians: ratioOfMedians(duel) }));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) console.table(benchUnits());
