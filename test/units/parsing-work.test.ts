import { tryParseAngle, tryParseLength } from "miterwright/units";
import { afterEach, describe, expect, test } from "vitest";

/** The methods through which a text is looked at, as they were. */
const METHODS = ["charCodeAt", "charAt", "normalize", "slice", "at"] as const;
const untouched = METHODS.map((name) => [name, Object.getOwnPropertyDescriptor(String.prototype, name)!] as const);
const bigInt = globalThis.BigInt;

afterEach(() => {
  for (const [name, descriptor] of untouched) Object.defineProperty(String.prototype, name, descriptor);
  globalThis.BigInt = bigInt;
});

/** How many characters a job looks at, and how long the texts are that it makes integers of, in all. */
function workOf(job: () => unknown): number {
  let work = 0;
  for (const [name, descriptor] of untouched) {
    const method = descriptor.value as (this: string, ...args: unknown[]) => unknown;
    Object.defineProperty(String.prototype, name, {
      ...descriptor,
      value: function (this: string, ...args: unknown[]): unknown {
        work += name === "normalize" ? this.length : 1;
        return Reflect.apply(method, this, args);
      },
    });
  }
  const counting = (value: string | number | bigint): bigint => {
    // Making an integer of n digits can take n * n steps.
    if (typeof value === "string") work += value.length ** 2;
    return bigInt(value);
  };
  globalThis.BigInt = counting as BigIntConstructor;
  try {
    job();
  } finally {
    for (const [name, descriptor] of untouched) Object.defineProperty(String.prototype, name, descriptor);
    globalThis.BigInt = bigInt;
  }
  return work;
}

/** Texts of a given length that would trouble a reader that goes back, or that computes with all it is given. */
const HOSTILE: Readonly<Record<string, (length: number) => string>> = {
  spaces: (length) => " ".repeat(length),
  "spaces before a number": (length) => `${" ".repeat(length)}5`,
  "spaces after a number": (length) => `5${" ".repeat(length)}`,
  "spaces in a mixed number": (length) => `5${" ".repeat(length / 2)}7${" ".repeat(length / 2)}/16`,
  "wide spaces": (length) => "\u2009".repeat(length),
  digits: (length) => "9".repeat(length),
  zeros: (length) => "0".repeat(length),
  decimals: (length) => `0.${"9".repeat(length)}`,
  "raised digits": (length) => "⁷".repeat(length),
  "a long denominator": (length) => `1/${"3".repeat(length)}`,
  "a long exponent": (length) => `1e${"9".repeat(length)}`,
  "a long exponent of zeros": (length) => `1e-${"0".repeat(length)}`,
  letters: (length) => `5 ${"m".repeat(length)}`,
  "e's": (length) => `5${"e".repeat(length)}`,
  hyphens: (length) => "-".repeat(length),
  commas: (length) => `1${",1".repeat(length / 2)}`,
  points: (length) => `5 in${".".repeat(length)}`,
  primes: (length) => `5${"'".repeat(length)}`,
  slashes: (length) => "1/".repeat(length / 2),
  "vulgar fractions": (length) => "½".repeat(length),
  "numbers in a row": (length) => "5 ".repeat(length / 2),
  "units that go on": (length) => "1 ft 1 in ".repeat(length / 10),
  "lone surrogates": (length) => "\uD800".repeat(length),
};

describe("reading takes work in proportion to the text", () => {
  test.each(Object.entries(HOSTILE))("%s", (_, make) => {
    const readers = [
      [1_000_000, (text: string) => tryParseLength(text, "mm")],
      [100_000, tryParseAngle],
    ] as const;
    for (const [length, read] of readers) {
      const [part, whole] = [make(length / 4), make(length)];
      const [less, more] = [workOf(() => read(part)), workOf(() => read(whole))];
      expect(less).toBeGreaterThan(0);
      // Four times the text, at most four times the work: what it takes to stop is as much for both.
      expect(more).toBeLessThanOrEqual(4 * less + 100);
      expect(more).toBeLessThan(4 * whole.length);
    }
  });

  test("and the longest numbers take no more than their digits squared", () => {
    const text = `${"9".repeat(1000)} ${"8".repeat(1000)}/${"9".repeat(1000)}`;
    expect(workOf(() => tryParseLength(text, "in"))).toBeLessThan(4 * 1000 ** 2);
  });

  test("the counter counts", () => {
    expect(workOf(() => "abc".charCodeAt(1) + "abc".slice(1).length)).toBe(2);
    expect(workOf(() => BigInt("123"))).toBe(9);
  });
});
