import { afterEach, describe, expect, test, vi } from "vitest";
import { verifyFit, fitStock, fitStockAsync, type StockJob } from "miterwright/stock";
import { LARGE, randomJob } from "../bench/stock/overrun-jobs.js";
import { findPlan } from "../../src/stock/search/find-plan.js";
import { problemOf, searchOf } from "../laws/stated-problem.js";

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const PIECES = [
  { id: "p56", length: 56, count: 3 },
  { id: "p62", length: 62, count: 3 },
  { id: "p35", length: 35, count: 3 },
  { id: "p38", length: 38, count: 1 },
];

/** Ten pieces whose search of the patterns took a minute without a look at the clock. */
const CREDITED: StockJob = {
  pieces: PIECES,
  sticks: [
    { id: "s115", length: 115, count: 2, cost: 5 },
    { id: "s140", length: 140 },
    { id: "t140", length: 140, cost: 44 },
  ],
  kerf: 0,
  trim: { start: 1, end: 0 },
  credit: 1,
};

/** An ordinary production job, of many pieces. */
const PRODUCTION: StockJob = {
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
};

/** A clock that advances by a millisecond whenever somebody looks at it. */
function slowClock(): { looks: number } {
  const clock = { looks: 0 };
  const look = (): number => ++clock.looks;
  vi.spyOn(performance, "now").mockImplementation(look);
  vi.spyOn(Date, "now").mockImplementation(look);
  return clock;
}

/** Steps between two looks at the clock: a hundred thousand, and what one step of a kind can be more. */
const MOST_STEPS = 400_000;

describe("a search pauses after some steps, and ends at the next pause", () => {
  const jobs: [string, StockJob][] = [
    ...LARGE.map(({ name, make }): [string, StockJob] => [name, make()]),
    ...[1, 2, 3, 4, 5, 6].map((seed): [string, StockJob] => [`random #${seed}`, randomJob(seed)]),
  ];
  test.each(jobs)("%s", (_name, job) => {
    const search = searchOf(problemOf(job));
    const { budget } = search;
    const steps = findPlan(search);
    let last = 0;
    let ended = false;
    while (!ended && budget.steps < 3e6) {
      ended = steps.next().done === true;
      expect(budget.steps - last).toBeLessThan(MOST_STEPS);
      last = budget.steps;
    }
    if (ended) return;
    budget.stopped = "time";
    let pauses = 0;
    while (steps.next().done !== true) pauses++;
    expect(pauses).toBeLessThan(5);
    expect(budget.steps - last).toBeLessThan(MOST_STEPS);
  });
});

describe("time limits", () => {
  test.each([
    ["ten pieces", CREDITED, 200],
    ["a production job", PRODUCTION, 100],
  ])("%s", (_name, job, timeLimit) => {
    const clock = slowClock();
    const fit = fitStock(job, { timeLimit });
    expect(fit.stopped).toBe("time");
    expect(clock.looks).toBeGreaterThanOrEqual(timeLimit);
    expect(clock.looks).toBeLessThan(timeLimit + 5);
    expect(verifyFit(job, fit)).toEqual({ ok: true });
  });

  test("a plan is made even if time is up before the search begins", () => {
    slowClock();
    for (const job of [CREDITED, PRODUCTION, randomJob(1), LARGE[2]!.make()]) {
      const fit = fitStock(job, { timeLimit: 1 });
      expect([fit.status, fit.stopped]).toEqual(["feasible", "time"]);
      expect(verifyFit(job, fit)).toEqual({ ok: true });
    }
  });

  test("a clock that is set during the search changes nothing", () => {
    let hours = 0;
    vi.spyOn(Date, "now").mockImplementation(() => 3.6e6 * hours++);
    expect(
      fitStock({ pieces: PIECES, sticks: [{ id: "s", length: 140 }] }, { timeLimit: 3e6 }).stopped,
    ).toBeUndefined();
  });

  test("a host without a monotonic clock has the other one", () => {
    vi.stubGlobal("performance", undefined);
    let looks = 0;
    vi.spyOn(Date, "now").mockImplementation(() => ++looks);
    expect(fitStock(CREDITED, { timeLimit: 20 }).stopped).toBe("time");
    expect(looks).toBeLessThan(25);
  });
});

describe("answers during the search", () => {
  test.each([
    ["ten pieces", CREDITED],
    ["a production job", PRODUCTION],
  ])("%s: stop is heard, and nothing is told after it", (_name, job) => {
    const told: number[] = [];
    const fit = fitStock(job, {
      timeLimit: Infinity,
      onProgress: ({ steps }) => {
        told.push(steps);
        return steps > 3e6 ? "stop" : "go on";
      },
    });
    expect(fit.stopped).toBe("asked");
    expect(verifyFit(job, fit)).toEqual({ ok: true });
    // Told at every million steps.
    expect(told.at(-1)).toBeLessThan(3e6 + 1e6 + MOST_STEPS);
    expect(told.filter((steps) => steps > 3e6)).toHaveLength(1);
  });

  test.each([
    ["ten pieces", CREDITED],
    ["a production job", PRODUCTION],
  ])("%s: an abort is heard", async (_name, job) => {
    const clock = slowClock();
    let steps = 0;
    const signal = {
      reason: new Error("enough"),
      get aborted() {
        return clock.looks > 100;
      },
    };
    const onProgress = (progress: { readonly steps: number }): void => void ({ steps } = progress);
    await expect(fitStockAsync(job, { timeLimit: Infinity, signal, onProgress })).rejects.toBe(signal.reason);
    expect(clock.looks).toBeLessThan(105);
    expect(steps).toBeLessThan(100 * MOST_STEPS);
  });

  test("an abort is heard while a job is read and its plan is written", async () => {
    const pieces = Array.from({ length: 20_000 }, (_, k) => ({ id: `p${k}`, length: 200 + k / 100 }));
    const looks = [0, 0];
    let searched = 0;
    const signal = {
      get aborted() {
        looks[searched]!++;
        return false;
      },
    };
    const onProgress = (): void => {
      searched = 1;
      looks[1] = 0;
    };
    const fit = await fitStockAsync(
      { pieces, sticks: [{ id: "s", length: 700 }] },
      { timeLimit: 0, signal, onProgress },
    );
    expect(looks[0]).toBeGreaterThan(20);
    // The last report is before the plan is written.
    expect(looks[1]).toBeGreaterThan(fit.layouts.length / 1000);
  });
});
