import { describe, expect, test } from "vitest";
import { checkFit, fitStock, type StockFit, type StockJob } from "miterwright/stock";
import { randomFrom, wholeFrom } from "../../bench/stock/generate.js";

function fitted(job: StockJob, workLimit: number): StockFit {
  const fit = fitStock(job, { workLimit });
  expect(checkFit(job, fit)).toEqual({ ok: true });
  return fit;
}

const several = <T>(count: number, make: (k: number) => T): T[] => Array.from({ length: count }, (_, k) => make(k));

describe("hostile jobs", () => {
  test("a million pieces of thirty lengths are thirty rows", () => {
    const whole = wholeFrom(randomFrom(1));
    const pieces = several(30, (k) => ({ id: `p${k}`, length: whole(200, 2000), count: 33_333 }));
    const fit = fitted({ pieces, sticks: [{ id: "s", length: 2400, cost: 1 }], kerf: 3 }, 1e8);
    expect(fit.gap).toBeLessThan(1e-4);
    expect(fit.layouts.length).toBeLessThan(200);
  });

  test("twenty thousand pieces of a name each", () => {
    const pieces = several(20_000, (k) => ({ id: `p${k}`, length: 200 + ((k * 7919) % 30) * 60 }));
    const fit = fitted({ pieces, sticks: [{ id: "s", length: 2400 }], kerf: 3 }, 1e7);
    expect(fit.gap).toBeLessThan(0.01);
  });

  test("lengths in the ratio of a billion", () => {
    const pieces = [
      { id: "a", length: 1, count: 1000 },
      { id: "b", length: 3e8, count: 5 },
      { id: "c", length: 123_456_789, count: 7 },
    ];
    expect(fitted({ pieces, sticks: [{ id: "s", length: 1e9 }], kerf: 0.5 }, 1e7).status).toBe("optimal");
    const irrational = pieces.map((piece) => ({ ...piece, length: piece.length * Math.SQRT2 }));
    expect(fitted({ pieces: irrational, sticks: [{ id: "s", length: 1.5e9 }], kerf: 0.5 }, 1e7).gap).toBeLessThan(0.7);
  });

  test("the shortest and the longest lengths there are", () => {
    const pieces = [
      { id: "a", length: 1e99, count: 5 },
      { id: "b", length: 1e-99, count: 5 },
    ];
    expect(fitted({ pieces, sticks: [{ id: "s", length: 7e99 }] }, 1e6).sticks).toEqual([{ stick: "s", count: 1 }]);
  });

  test("a kerf longer than a stick", () => {
    const job = { pieces: [{ id: "p", length: 10, count: 5 }], sticks: [{ id: "s", length: 30 }], kerf: 100 };
    expect(fitted(job, 1e6).sticks).toEqual([{ stick: "s", count: 5 }]);
  });

  test("ten thousand kinds of sticks, endless or one of each", () => {
    const whole = wholeFrom(randomFrom(2));
    const pieces = several(30, (k) => ({ id: `p${k}`, length: whole(200, 2000), count: 5 }));
    const endless = several(10_000, (k) => ({ id: `s${k}`, length: whole(1000, 4000) }));
    expect(fitted({ pieces, sticks: endless, kerf: 3 }, 1e6).gap).toBeLessThan(0.1);
    const rack = several(10_000, (k) => ({ id: `s${k}`, length: whole(300, 3000), count: 1 }));
    expect(fitted({ pieces, sticks: rack, kerf: 3 }, 1e6).gap).toBeLessThan(0.1);
  });

  test("two thousand lengths that have no grid in common", () => {
    const random = randomFrom(3);
    const pieces = several(2000, (k) => ({ id: `p${k}`, length: 200 + random() * 1800 }));
    expect(fitted({ pieces, sticks: [{ id: "s", length: 2400 }], kerf: 3 }, 1e7).gap).toBeLessThan(0.05);
  });

  test("costs beyond any sense", () => {
    const pieces = [{ id: "p", length: 30, count: 20 }];
    const sticks = [
      { id: "a", length: 100, cost: 1e100 },
      { id: "b", length: 70, cost: 1e-100 },
      { id: "free", length: 40, cost: 0, count: 3 },
    ];
    expect(fitted({ pieces, sticks }, 1e6).cost).toBeCloseTo(0, 99);
    expect(fitted({ pieces, sticks: [{ id: "free", length: 100, cost: 0 }] }, 1e6).status).toBe("optimal");
  });

  test("a stick that earns more than it costs is still used for something", () => {
    const job = { pieces: [{ id: "p", length: 5, count: 3 }], sticks: [{ id: "s", length: 100, cost: 1 }], credit: 1 };
    expect(fitted(job, 1e7).sticks).toEqual([{ stick: "s", count: 3 }]);
  });
});
