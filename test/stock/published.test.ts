import { describe, expect, test } from "vitest";
import { verifyFit, fitStock } from "miterwright/stock";
import { planted, triplets } from "../bench/stock/generate.js";
import { knownJobs } from "../bench/stock/known-jobs.js";
import { PUBLISHED_JOBS } from "../published/stock.js";

describe("jobs with a known optimum", () => {
  test.each(PUBLISHED_JOBS)("$name", ({ stick, pieces, sticks }) => {
    const job = {
      pieces: pieces.map(([length, count]) => ({ id: `${length}`, length, count })),
      sticks: [{ id: "roll", length: stick, cost: 1 }],
    };
    const fit = fitStock(job, { stepLimit: 1e9 });
    expect(verifyFit(job, fit)).toEqual({ ok: true });
    expect([fit.status, fit.cost]).toEqual(["optimal", sticks]);
    expect(fit.wasteLength / fit.sticksLength).toBeCloseTo(0.00401, 5);
  });

  test.each([...triplets(60, 3), ...triplets(120, 2), ...planted(60, 3), ...planted(6000, 1)])(
    "$name",
    ({ job, optimum }) => {
      const fit = fitStock(job, { stepLimit: 2e9 });
      expect(verifyFit(job, fit)).toEqual({ ok: true });
      expect([fit.status, fit.cost]).toEqual(["optimal", optimum]);
    },
  );
});

describe("jobs that other solvers have worked on", () => {
  test.each(knownJobs())("$name", ({ job, best, needed }) => {
    const fit = fitStock(job, { stepLimit: 1e8 });
    expect(verifyFit(job, fit)).toEqual({ ok: true });
    expect(fit.cost).toBeLessThanOrEqual(best);
    expect(fit.cost).toBeGreaterThanOrEqual(needed);
    expect(fit.bound).toBeLessThanOrEqual(best);
  });
});
