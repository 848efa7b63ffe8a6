import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { verifyFit, fitStock, type StockFit, type StockJob } from "miterwright/stock";
import { isInputError } from "miterwright/errors";
import { cheapestByForce, scaleJob, smallJob } from "../laws/stock.js";

/** The plan, or undefined for a job that has a piece which is longer than every stick. */
function tryFit(job: StockJob): StockFit | undefined {
  try {
    return fitStock(job, { stepLimit: 1e6 });
  } catch (error) {
    if (isInputError(error) && error.code === "impossible") return undefined;
    throw error;
  }
}

describe("small jobs", () => {
  test("against brute force", () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(smallJob, (job) => {
        const fit = tryFit(job);
        const least = cheapestByForce(job);
        if (fit === undefined) {
          expect(least).toBeUndefined();
          return;
        }
        const name = fit.shortage ?? fit.status;
        seen.set(name, (seen.get(name) ?? 0) + 1);
        expect(verifyFit(job, fit)).toEqual({ ok: true });
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
    // Jobs this small are proven, but for a few whose credits make sticks earn.
    const proven = (seen.get("optimal") ?? 0) + (seen.get("proven") ?? 0);
    const open = (seen.get("feasible") ?? 0) + (seen.get("not-found") ?? 0);
    expect(seen.get("optimal")).toBeGreaterThan(20);
    expect(seen.get("proven")).toBeGreaterThan(5);
    expect(open).toBeLessThan(0.15 * proven);
  });

  test("one more kind of stick never raises a proven cost", () => {
    fc.assert(
      fc.property(smallJob, fc.integer({ min: 12, max: 40 }), fc.integer({ min: 1, max: 40 }), (job, length, cost) => {
        const before = tryFit(job);
        const after = tryFit({ ...job, sticks: [...job.sticks, { id: "more", length, cost }] });
        if (before?.status !== "optimal" || after === undefined) return;
        expect(after.status).not.toBe("short");
        expect(after.bound).toBeLessThanOrEqual(before.cost + 1e-9);
        if (after.status === "optimal") expect(after.cost).toBeLessThanOrEqual(before.cost + 1e-9);
      }),
    );
  });

  test("scaling all lengths scales the plan", () => {
    fc.assert(
      fc.property(smallJob, fc.constantFrom(10, 1 / 16, 25.4, 1 / 3, 1e-60, 1e60), (job, factor) => {
        const scaled = scaleJob(job, factor);
        const [before, after] = [tryFit(job), tryFit(scaled)];
        if (before === undefined || after === undefined) {
          expect(after).toBe(before);
          return;
        }
        expect(verifyFit(scaled, after)).toEqual({ ok: true });
        expect(after.status).toBe(before.status);
        const near = (a: number, b: number): void => {
          expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(a), Math.abs(b)));
        };
        near(after.sticksLength, before.sticksLength * factor);
        near(after.keptLength, before.keptLength * factor);
        near(after.cost, before.cost);
        expect(after.layouts.map(({ times, pieces }) => [times, pieces.map(({ piece }) => piece)])).toEqual(
          before.layouts.map(({ times, pieces }) => [times, pieces.map(({ piece }) => piece)]),
        );
      }),
    );
  });

  test("the order of the input does not change a proven cost", () => {
    fc.assert(
      fc.property(smallJob, (job) => {
        const turned = { ...job, pieces: [...job.pieces].reverse(), sticks: [...job.sticks].reverse() };
        const [before, after] = [tryFit(job), tryFit(turned)];
        expect(after === undefined).toBe(before === undefined);
        if (before?.status === "optimal" && after?.status === "optimal") expect(after.cost).toBeCloseTo(before.cost, 9);
        if (before?.shortage === "proven") expect(after?.status).toBe("short");
      }),
    );
  });

  test("a piece given as two entries is cut all the same", () => {
    fc.assert(
      fc.property(smallJob, (job) => {
        const split = {
          ...job,
          pieces: job.pieces.flatMap((piece) => {
            const count = piece.count ?? 1;
            return count < 2
              ? [piece]
              : [
                  { ...piece, count: count - 1 },
                  { ...piece, id: `${piece.id}'`, count: 1 },
                ];
          }),
        };
        const [before, after] = [tryFit(job), tryFit(split)];
        if (after === undefined) {
          expect(before).toBeUndefined();
          return;
        }
        expect(verifyFit(split, after)).toEqual({ ok: true });
        expect(after.cost).toBe(before?.cost);
      }),
    );
  });
});
