import { describe, expect, test } from "vitest";
import { verifyFit, fitStock, type StockJob } from "miterwright/stock";
import { randomFrom, trade, wholeFrom } from "../bench/stock/generate.js";

/** Sticks of several lengths, each cut into pieces until nothing is left: no plan may be proven that costs more. */
function planted(seed: number): { job: StockJob; cost: number } {
  const whole = wholeFrom(randomFrom(seed));
  const kerf = 3;
  const fresh = [2400, 3000, 3600];
  const rack = Array.from({ length: whole(2, 4) }, () => whole(700, 1900));
  const used = [...rack.slice(1), ...Array.from({ length: whole(10, 20) }, () => fresh[whole(0, 2)]!)];
  const lengths = Array.from({ length: whole(5, 9) }, () => 5 * whole(50, 260));
  const counts = new Map<number, number>();
  for (const stick of used) {
    let left = stick;
    while (left > 200) {
      const fitting = lengths.filter((length) => length <= left - 200);
      // The last piece takes all that is left.
      const length = fitting.length === 0 ? left : fitting[whole(0, fitting.length - 1)]!;
      counts.set(length, (counts.get(length) ?? 0) + 1);
      left -= length + kerf;
    }
  }
  const pieces = [...counts].map(([length, count]) => ({ id: `p${length}`, length, count }));
  const sticks = [
    ...fresh.map((length) => ({ id: `new ${length}`, length })),
    ...rack.map((length, k) => ({ id: `rack ${k}`, length, count: 1 })),
  ];
  return { job: { pieces, sticks, kerf }, cost: used.reduce((sum, length) => sum + length, 0) };
}

describe("combinations of sticks", () => {
  test("no bound is above a plan that is known", () => {
    let proven = 0;
    for (let seed = 1; seed <= 25; seed++) {
      const { job, cost } = planted(seed);
      const fit = fitStock(job, { stepLimit: 2e7 });
      expect(verifyFit(job, fit)).toEqual({ ok: true });
      expect(fit.bound).toBeLessThanOrEqual(cost);
      if (fit.status === "optimal") proven++;
    }
    expect(proven).toBeGreaterThan(20);
  });

  test("two searches that branch in other orders agree on the cost", () => {
    for (const costs of ["all by length", "own costs"] as const) {
      for (const { job } of trade(costs, 6)) {
        const fit = fitStock(job, { stepLimit: 1e8 });
        const turned = fitStock(
          { ...job, pieces: [...job.pieces].reverse(), sticks: [...job.sticks].reverse() },
          { stepLimit: 1e8 },
        );
        expect([fit.status, turned.status]).toEqual(["optimal", "optimal"]);
        expect(turned.cost).toBe(fit.cost);
      }
    }
  });
});
