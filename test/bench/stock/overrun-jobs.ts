/** Jobs that are hard to end in time: many pieces of few lengths, and jobs of sizes that no shop has. */
import type { StockJob } from "miterwright/stock";
import { randomFrom, wholeFrom } from "./generate.js";

const several = <T>(count: number, make: (k: number) => T): T[] => Array.from({ length: count }, (_, k) => make(k));

/** A random job: up to six lengths of up to 500 pieces, up to four kinds of sticks. */
export function randomJob(seed: number): StockJob {
  const random = randomFrom(seed);
  const whole = wholeFrom(random);
  const one = <T>(...choices: readonly T[]): T => choices[whole(0, choices.length - 1)]!;
  const steps = one(1, 10);
  const most = one(3, 20, 500, 500);
  const [shortest, longest] = one<readonly [number, number]>([1000, 3000], [1000, 6000], [100, 200]);
  const pieces = several(whole(1, 6), (k) => ({
    id: `p${k}`,
    length: whole(steps * Math.ceil(shortest / one(10, 4)), steps * shortest) / steps,
    count: whole(1, most),
  }));
  const sticks = several(whole(1, 4), (k) => {
    const length = whole(shortest, longest);
    const cost = one(undefined, undefined, 1, whole(1, longest), 10 * Math.round(length / 31));
    const count = k === 0 ? undefined : one(undefined, undefined, whole(1, 3), whole(1, most));
    return { id: `s${k}`, length: k === 0 ? longest : length, cost, count };
  });
  return {
    pieces,
    sticks,
    kerf: one(0, 1, 3, 3.2),
    trim: one<StockJob["trim"]>(0, 0, 1, { start: 1, end: 0 }, { start: 5, end: 5 }),
    credit: one(0, 0, 0.25, 0.5, 1),
    keep: one(undefined, undefined, shortest / 2),
  };
}

/** Jobs that overran before their loops looked at the clock, and jobs of sizes that no shop has. */
export const LARGE: readonly { readonly name: string; readonly make: () => StockJob }[] = [
  {
    name: "ten pieces, all of an offcut's length credited",
    make: () => ({
      pieces: [
        { id: "p56", length: 56, count: 3 },
        { id: "p62", length: 62, count: 3 },
        { id: "p35", length: 35, count: 3 },
        { id: "p38", length: 38 },
      ],
      sticks: [
        { id: "s115", length: 115, count: 2, cost: 5 },
        { id: "s140", length: 140 },
        { id: "t140", length: 140, cost: 44 },
      ],
      trim: { start: 1, end: 0 },
      credit: 1,
    }),
  },
  {
    name: "1231 pieces of six lengths from two",
    make: () => ({
      pieces: [
        { id: "a", length: 315.1, count: 275 },
        { id: "b", length: 275.6, count: 112 },
        { id: "c", length: 812, count: 180 },
        { id: "d", length: 361.3, count: 154 },
        { id: "e", length: 416.4, count: 57 },
        { id: "f", length: 678.3, count: 453 },
      ],
      sticks: [
        { id: "s1822", length: 1822 },
        { id: "s2905", length: 2905 },
      ],
      kerf: 3,
    }),
  },
  {
    name: "20,000 lengths from 50 kinds",
    make: () => ({
      pieces: several(20_000, (k) => ({ id: `p${k}`, length: 200 + k / 10, count: 1 + (k % 3) })),
      sticks: several(50, (k) => ({ id: `s${k}`, length: 2400 + 37 * k, cost: 2400 + 36 * k })),
      kerf: 3,
    }),
  },
  {
    name: "700 lengths from one",
    make: () => ({
      pieces: several(700, (k) => ({ id: `p${k}`, length: 200 + 2.7 * k, count: 1 + (k % 7) })),
      sticks: [{ id: "s", length: 6000 }],
      kerf: 3,
    }),
  },
  {
    name: "a stick of 2000 knots",
    make: () => ({
      pieces: several(60, (k) => ({ id: `p${k}`, length: 20 + k, count: 40 })),
      sticks: [
        { id: "clear", length: 2400 },
        {
          id: "knotty",
          length: 400_000,
          cost: 1,
          defects: several(2000, (k) => ({ start: 200 * k, end: 200 * k + 30 })),
        },
      ],
      kerf: 1,
    }),
  },
  {
    name: "a rack of 36 kinds, a million of each",
    make: () => ({
      pieces: several(20, (k) => ({ id: `p${k}`, length: 31 + 17 * k, count: 1_000_000 })),
      sticks: several(36, (k) => ({ id: `s${k}`, length: 900 + 41 * k, cost: 700 + 37 * k, count: 1_000_000 })),
      kerf: 3,
    }),
  },
];
