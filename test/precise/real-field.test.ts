import { Decimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { realField, type Real, type RealField } from "../../src/precise/real-field.js";
import { cosine, fix, inverseTangent, over, PI, root, sine, text, times } from "./oracle.js";
import { spread } from "./arbitraries.js";

/** An operation on three numbers that were computed before. */
type Step = (field: RealField, a: Real, b: Real, c: Real) => Real;

const steps: readonly Step[] = [
  (field, a, b) => field.add(a, b),
  (field, a, b) => field.sub(a, b),
  (field, a, b) => field.mul(a, b),
  (field, a, b) => field.div(a, b),
  (field, a) => field.sqrt(field.mul(a, a)),
  (field, a, b) => field.sqrt(field.add(field.mul(a, a), field.mul(b, b))),
  (field, a) => field.sinCos(field.div(a, field.exact(1000)))[0],
  (field, a) => field.sinCos(field.div(a, field.exact(1000)))[1],
  (field, a, b) => field.atan2(a, field.sqrt(field.mul(b, b))),
  (field, a, b, c) => field.choose(a, b, c),
  (field, a) => field.neg(a),
];

/** Numbers that cancel each other at many places. */
const STARTS = ["1", "1.00000000000000000000000000001", "0.999999999999", "30", "1e-20", "180", "45.5", "0.3", "7e12"];

function runProgram(digits: number, program: readonly (readonly [number, number, number, number])[]): Real[] {
  const field = realField(digits);
  const numbers = STARTS.map((start) => field.exact(new Decimal(start)));
  for (const [step, i, j, k] of program) {
    const at = (index: number): Real => numbers[index % numbers.length]!;
    const next = steps[step % steps.length]!(field, at(i), at(j), at(k));
    // Angles of wild numbers are no use, and lost numbers stay lost.
    numbers.push(next.mid.abs().lt(1e40) ? next : field.exact(1));
  }
  return numbers;
}

const index = fc.nat({ max: 1000 });
const programs = fc.array(fc.tuple(index, index, index, index), { minLength: 5, maxLength: 40 });

describe("a real number", () => {
  test("lies within its bound, as three times the digits show", () => {
    fc.assert(
      fc.property(programs, (program) => {
        const coarse = runProgram(30, program);
        const fine = runProgram(90, program);
        coarse.forEach(({ mid, slack }, k) => {
          const difference = fine[k]!.mid.minus(mid).abs();
          const size = difference.isZero() ? -Infinity : Decimal.log10(difference).toNumber();
          expect(size).toBeLessThanOrEqual(Math.max(slack, fine[k]!.slack) + 0.31);
        });
      }),
    );
  });

  test("covers the results of all numbers within its operands' bounds", () => {
    const size = spread(-2, 2).filter((x) => Math.abs(x) > 0.01);
    const slack = spread(-12, -3);
    const shift = spread(-1, 1);
    fc.assert(
      fc.property(
        fc.nat(steps.length - 1),
        fc.array(fc.tuple(size, slack, shift), { minLength: 3, maxLength: 3 }),
        (k, given) => {
          const [coarse, fine] = [realField(40), realField(60)];
          const bounds = given.map(([value, log]): Real => ({ mid: coarse.exact(value).mid, slack: log }));
          const within = given.map(([value, log, part]) => fine.add(fine.exact(value), fine.exact(part * 10 ** log)));
          const said = steps[k]!(coarse, bounds[0]!, bounds[1]!, bounds[2]!);
          const { mid } = steps[k]!(fine, within[0]!, within[1]!, within[2]!);
          expect(mid.minus(said.mid).abs().toNumber()).toBeLessThanOrEqual(10 ** said.slack);
          // And none is much too wide: every step multiplies an error by less than a million here.
          expect(said.slack).toBeLessThan(Math.max(...given.map(([, log]) => log)) + 6);
        },
      ),
      { numRuns: 2000 },
    );
  });

  test("has a bound near the working precision after a harmless computation", () => {
    const field = realField(30);
    const [sin, cos] = field.sinCos(field.exact(20));
    const angle = field.atan2(field.mul(sin, field.exact(3)), field.mul(cos, field.exact(3)));
    expect(angle.mid.minus(20).abs().lt("1e-23")).toBe(true);
    expect(angle.slack).toBeLessThan(-20);
    expect(angle.slack).toBeGreaterThan(-30);
  });

  test("is exact where the result has room, and only there", () => {
    const field = realField(30);
    const [third, half] = [field.div(field.exact(1), field.exact(3)), field.div(field.exact(1), field.exact(2))];
    expect([third.slack === -Infinity, half]).toEqual([false, { mid: half.mid, slack: -Infinity }]);
    const big = field.exact(new Decimal("1e30"));
    expect(field.add(big, field.exact(1)).slack).toBeGreaterThan(-1);
    expect(field.add(field.exact(new Decimal("1e27")), field.exact(1)).slack).toBe(-Infinity);
    expect(field.sqrt(field.exact(new Decimal("2.25")))).toMatchObject({ slack: -Infinity });
    expect(field.sqrt(field.exact(2)).slack).toBeGreaterThan(-31);
    expect(field.exact(0.1).mid.toFixed()).toBe("0.100000000000000005551115123126");
    expect(field.exact(new Decimal(`0.${"3".repeat(31)}`)).slack).toBeGreaterThan(-31);
  });

  test("covers both of a choice whose sign is unknown", () => {
    const field = realField(30);
    const third = field.div(field.exact(1), field.exact(3));
    const unknown = field.sub(field.mul(third, field.exact(3)), field.exact(1));
    const chosen = field.choose(unknown, field.exact(1), field.exact(-1));
    expect(10 ** chosen.slack).toBeGreaterThanOrEqual(2);
    expect(field.choose(field.neg(third), field.exact(1), field.exact(-1)).mid.toNumber()).toBe(-1);
    expect(field.choose(field.exact(0), field.exact(1), field.exact(-1)).mid.toNumber()).toBe(1);
  });

  test("is anything after a division by what may be zero", () => {
    const field = realField(30);
    const third = field.div(field.exact(1), field.exact(3));
    const nothing = field.sub(field.mul(third, field.exact(3)), field.exact(1));
    expect(field.div(third, nothing).slack).toBeGreaterThan(1e6);
    expect(field.atan2(nothing, nothing).slack).toBeGreaterThan(2.5);
  });
});

describe("sine, cosine and direction", () => {
  const field = realField(120);
  const close = ({ mid, slack }: Real, wanted: string): void => {
    expect(mid.minus(wanted).abs().lt("1e-108")).toBe(true);
    expect(slack).toBeLessThan(-108);
  };

  test.each([
    "0.001",
    "1",
    "17.5",
    "44.999",
    "45.001",
    "89",
    "91",
    "133",
    "180.5",
    "269.9",
    "-33",
    "-250",
    "359.99",
    "1000.25",
  ])("agree with the series at %s degrees", (degrees) => {
    const [sin, cos] = field.sinCos(field.exact(new Decimal(degrees)));
    close(sin, text(sine(fix(degrees)), 140));
    close(cos, text(cosine(fix(degrees)), 140));
  });

  test.each([
    ["1e-50", "1"],
    ["0.3", "0.7"],
    ["5", "1"],
    ["99999999", "1"],
  ])("agree with the series in the direction of %s beside %s", (y, x) => {
    const angle = inverseTangent(over(fix(y), fix(x)));
    const real = (value: string): Real => field.exact(new Decimal(value));
    close(field.atan2(real(y), real(x)), text(angle, 140));
    close(field.atan2(real(`-${y}`), real(x)), text(-angle, 140));
    close(field.atan2(real(y), real(`-${x}`)), text(fix(180) - angle, 140));
    close(field.atan2(real(`-${y}`), real(`-${x}`)), text(angle - fix(180), 140));
  });

  test("are exact where they are rational", () => {
    const bare = (real: Real): number => (real.slack === -Infinity ? real.mid.toNumber() : Number.NaN);
    const sin = (degrees: number): number => bare(field.sinCos(field.exact(degrees))[0]);
    const cos = (degrees: number): number => bare(field.sinCos(field.exact(degrees))[1]);
    expect([0, 30, 90, 150, 180, 210, 270, 330, -30].map((x) => sin(x) + 0)).toEqual([
      0, 0.5, 1, 0.5, 0, -0.5, -1, -0.5, -0.5,
    ]);
    expect([0, 60, 90, 120, 180, 240, 270, 300, -60].map((x) => cos(x) + 0)).toEqual([
      1, 0.5, 0, -0.5, -1, -0.5, 0, 0.5, 0.5,
    ]);
    const toward = (y: number, x: number): number => bare(field.atan2(field.exact(y), field.exact(x)));
    expect([
      toward(0, 2),
      toward(3, 3),
      toward(2, 0),
      toward(2, -2),
      toward(0, -1),
      toward(-1, -1),
      toward(-5, 0),
    ]).toEqual([0, 45, 90, 135, 180, -135, -90]);
  });
});

describe("the oracle", () => {
  // OEIS A000796 (pi), A002193 (square root of 2); values from memory.
  test("has the published digits", () => {
    expect(text(PI, 76)).toBe("3.141592653589793238462643383279502884197169399375105820974944592307816406286");
    expect(text(root(fix(2)), 60)).toBe("1.41421356237309504880168872420969807856967187537694807317668");
    expect(text(sine(fix(30)), 100)).toBe("0.5");
    expect(text(inverseTangent(fix(1)), 100)).toBe("45");
    expect(text(times(fix("0.1"), fix(0.5)), 9)).toBe("0.05");
  });
});
