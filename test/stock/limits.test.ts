import { describe, expect, test, vi } from "vitest";
import { verifyFit, fitStock, fitStockAsync, type FitProgress } from "miterwright/stock";
import { trade, triplets } from "../bench/stock/generate.js";

const [{ job: hard }] = trade("own costs", 5).slice(4) as [ReturnType<typeof trade>[number]];
const [{ job: packing }] = triplets(120, 1) as [ReturnType<typeof triplets>[number]];

describe("limits", () => {
  test("the same limit of steps gives the same plan, at once or in turns", async () => {
    const fit = fitStock(hard, { stepLimit: 3e6 });
    expect(fit.stopped).toBe("steps");
    expect(verifyFit(hard, fit)).toEqual({ ok: true });
    expect(fitStock(hard, { stepLimit: 3e6 })).toEqual(fit);
    expect(await fitStockAsync(hard, { stepLimit: 3e6 })).toEqual(fit);
  });

  test("the same limit takes the same steps, and ends with the first that goes beyond it", () => {
    const steps = (stepLimit: number): number[] => {
      const told: number[] = [];
      fitStock(hard, { stepLimit, onProgress: ({ steps: taken }) => told.push(taken) });
      return told;
    };
    for (const stepLimit of [1e5, 4e5, 1.6e6]) {
      const told = steps(stepLimit);
      expect(steps(stepLimit)).toEqual(told);
      expect(told.filter((taken) => taken >= stepLimit).length).toBeLessThanOrEqual(1);
    }
  });

  test("a clock that jumps about changes nothing where only the steps are limited", async () => {
    const told: FitProgress[] = [];
    const onProgress = (progress: FitProgress): void => void told.push(progress);
    const fit = fitStock(hard, { stepLimit: 3e6, onProgress });
    const steady = told.splice(0);
    expect(fit.stopped).toBe("steps");
    for (const seed of [1, 2, 3]) {
      let state = seed;
      let looks = 0;
      // Hours forward and back from one look to the next, and each time different.
      const jump = (): number => {
        looks++;
        state = (state * 48_271) % 2_147_483_647;
        return state;
      };
      const clocks = [vi.spyOn(Date, "now"), vi.spyOn(performance, "now")].map((clock) =>
        clock.mockImplementation(jump),
      );
      try {
        expect(fitStock(hard, { stepLimit: 3e6, onProgress })).toEqual(fit);
        expect(told.splice(0)).toEqual(steady);
        expect(await fitStockAsync(hard, { stepLimit: 3e6, onProgress })).toEqual(fit);
        expect(told.splice(0)).toEqual(steady);
        expect(looks).toBeGreaterThan(0);
      } finally {
        for (const clock of clocks) clock.mockRestore();
      }
    }
  });

  test("more steps never makes a plan worse or a bound lower", () => {
    let last = fitStock(hard, { stepLimit: 0 });
    for (const stepLimit of [1e5, 1e6, 1e7]) {
      const fit = fitStock(hard, { stepLimit });
      expect(fit.cost).toBeLessThanOrEqual(last.cost);
      expect(fit.bound).toBeGreaterThanOrEqual(last.bound);
      last = fit;
    }
  });

  test("no time at all still gives a plan", () => {
    const fit = fitStock(hard, { timeLimit: 0 });
    expect(fit.stopped).toBe("time");
    expect(verifyFit(hard, fit)).toEqual({ ok: true });
  });

  test("progress is told, rising and falling the right way, and can end the search", () => {
    const told: FitProgress[] = [];
    const fit = fitStock(hard, { stepLimit: 1e7, onProgress: (progress) => void told.push(progress) });
    expect(told.length).toBeGreaterThan(2);
    told.slice(1).forEach((progress, k) => {
      expect(progress.cost).toBeLessThanOrEqual(told[k]!.cost);
      expect(progress.bound).toBeGreaterThanOrEqual(told[k]!.bound);
      expect(progress.steps).toBeGreaterThanOrEqual(told[k]!.steps);
    });
    expect(fit.cost).toBeLessThanOrEqual(told.at(-1)!.cost);
    const early = fitStock(hard, { stepLimit: 1e9, onProgress: () => "stop" });
    expect(early.stopped).toBe("asked");
    expect(verifyFit(hard, early)).toEqual({ ok: true });
  });

  test("what progress throws passes through", () => {
    const fail = (): never => {
      throw new TypeError("no more paper");
    };
    expect(() => fitStock(hard, { onProgress: fail })).toThrow(new TypeError("no more paper"));
  });
});

describe("fitStockAsync", () => {
  test("lets others have their turns", async () => {
    let turns = 0;
    const timer = setInterval(() => turns++, 1);
    const fit = await fitStockAsync(packing, { stepLimit: 1e9 });
    clearInterval(timer);
    expect(fit.status).toBe("optimal");
    expect(turns).toBeGreaterThan(0);
  });

  test("rejects with the reason when aborted before or during the search", async () => {
    const reason = new Error("another order came in");
    await expect(fitStockAsync(hard, { signal: AbortSignal.abort(reason) })).rejects.toBe(reason);
    const controller = new AbortController();
    setTimeout(() => {
      controller.abort(reason);
    }, 5);
    await expect(fitStockAsync(hard, { stepLimit: 1e12, signal: controller.signal })).rejects.toBe(reason);
    await expect(fitStockAsync(hard, { signal: { aborted: true, reason: "tea" } })).rejects.toMatchObject({
      name: "AbortError",
      message: "The search was aborted",
      cause: "tea",
    });
  });
});
