import { expect, test } from "vitest";
import { verifyFit, fitStock, type StockJob, type StockPiece, type StockStick } from "miterwright/stock";
import { isInputError } from "miterwright/errors";
import { randomFrom } from "../bench/stock/generate.js";

const several = <T>(count: number, make: (k: number) => T): T[] => Array.from({ length: count }, (_, k) => make(k));

/** A job of everything there is, in lengths that often share no grid, and costs that often share none either. */
function oddJob(random: () => number): StockJob {
  const pick = <T>(...choices: readonly T[]): T => choices[Math.floor(random() * choices.length)]!;
  const scale = pick(1, 25.4, 1e-6, 1e6, Math.PI, 1 / 3);
  const per = pick(Infinity, 1, 10, 64);
  const round = (value: number): number => (per === Infinity ? value : Math.round(value * per) / per);
  const length = (from: number, to: number): number => scale * Math.max(1, round(from + random() * (to - from)));
  const savings = several(2, () => scale * round(random() * 20));
  const pieces = several(pick(1, 2, 3, 5), (k): StockPiece => {
    const count = pick(1, 2, 5, 40, 1000);
    if (random() < 0.2) return { id: `p${k}`, sequence: several(pick(1, 2, 3), () => length(30, 300)), count };
    const key = pick(0, 1);
    const share = random() < 0.4 ? { key: `k${key}`, saving: savings[key]! } : undefined;
    return { id: `p${k}`, length: length(50, 900), count, share };
  });
  const sticks = several(pick(1, 2, 3), (k): StockStick => {
    const size = length(900, 3000);
    const defects = several(pick(0, 0, 1, 2), () => {
      const start = random() * size;
      return { start, end: Math.min(size, start + random() * 20 * scale) };
    });
    return {
      id: `s${k}`,
      length: size,
      defects,
      count: pick(undefined, 1, 3, 20),
      cost: pick(undefined, 1, 9.6, 44, Math.E),
    };
  });
  return {
    pieces,
    sticks,
    kerf: scale * pick(0, 3, 0.125, 3 / Math.cos(Math.PI / 7)),
    trim: scale * pick(0, 3, 11.3),
    keep: pick(undefined, length(1, 300)),
    credit: pick(0, 0, 0.001, 0.5, 1),
    resolution: pick(undefined, undefined, undefined, undefined, 0.5 * scale, 0.1 * scale),
  };
}

test("plans of jobs that share no grid hold in the job's own lengths", () => {
  const random = randomFrom(5);
  const seen = new Map<string, number>();
  for (let k = 0; k < 250; k++) {
    const job = oddJob(random);
    try {
      const fit = fitStock(job, { stepLimit: 1e5 });
      expect([job, verifyFit(job, fit)]).toEqual([job, { ok: true }]);
      seen.set(fit.status, (seen.get(fit.status) ?? 0) + 1);
    } catch (error) {
      // Some piece is longer than every stick, or some costs are too far apart.
      if (!isInputError(error)) throw error;
    }
  }
  for (const status of ["optimal", "feasible", "short"]) expect(seen.get(status)).toBeGreaterThan(10);
});

test("a credit that is worth as much as a whole stick does not make sticks earn by its rounding", () => {
  const length = 1000 + 1 / 7;
  for (const [stick, other] of [
    [108, 152.7336],
    [216, 305.4672],
    [182.07963267948966, 257.49701653533424],
    [length, 2 * length],
  ] as const) {
    const job: StockJob = {
      pieces: [
        { id: "p", length: stick / 3.3, count: 5 },
        { id: "q", length: stick / 4.1, count: 3 },
      ],
      sticks: [
        { id: "s", length: stick },
        { id: "t", length: other },
      ],
      kerf: 3,
      credit: 1,
    };
    expect(verifyFit(job, fitStock(job, { stepLimit: 1e5 }))).toEqual({ ok: true });
  }
});
