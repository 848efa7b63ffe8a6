import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkFit, fitStock, type StockFit, type StockJob } from "miterwright/stock";
import { isInputError } from "miterwright/errors";
import { cheapestByForce, smallJob } from "../laws/stock.js";

/** The plan, or undefined for a job that has a piece which is longer than every stick. */
function tryFit(job: StockJob): StockFit | undefined {
  try {
    return fitStock(job, { workLimit: 1e6 });
  } catch (error) {
    if (isInputError(error) && error.code === "impossible") return undefined;
    throw error;
  }
}

describe("small jobs", () => {
  test("against brute force", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(smallJob, (job) => {
        const fit = tryFit(job);
        const least = cheapestByForce(job);
        if (fit === undefined) {
          expect(least).toBeUndefined();
          return;
        }
        seen.add(fit.status);
        expect(checkFit(job, fit)).toEqual({ ok: true });
        if (fit.status === "short") {
          if (fit.shortage === "proven") expect(least).toBeUndefined();
          return;
        }
        expect(least).toBeDefined();
        expect(fit.bound).toBeLessThanOrEqual(least! + 1e-9);
        expect(fit.cost).toBeGreaterThanOrEqual(least! - 1e-9);
        if (fit.status === "optimal") expect(fit.cost).toBeCloseTo(least!, 9);
      }),
    );
    expect([...seen].sort()).toContain("optimal");
  });
});
