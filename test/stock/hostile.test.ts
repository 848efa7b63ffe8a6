import { describe, expect, test } from "vitest";
import { verifyFit, fitStock, type StockFit, type StockJob } from "miterwright/stock";
import { randomFrom, wholeFrom } from "../bench/stock/generate.js";

function fitted(job: StockJob, stepLimit: number): StockFit {
  const fit = fitStock(job, { stepLimit });
  expect(verifyFit(job, fit)).toEqual({ ok: true });
  return fit;
}

const several = <T>(count: number, make: (k: number) => T): T[] => Array.from({ length: count }, (_, k) => make(k));

describe("hostile jobs", () => {
  test("a million pieces of thirty lengths are thirty rows", () => {
    const whole = wholeFrom(randomFrom(1));
    const pieces = several(30, (k) => ({ id: `p${k}`, length: whole(200, 2000), count: 33_333 }));
    const fit = fitted({ pieces, sticks: [{ id: "s", length: 2400, cost: 1 }], kerf: 3 }, 1e8);
    expect(fit.relativeGap).toBeLessThan(1e-4);
    expect(fit.layouts.length).toBeLessThan(200);
  });

  test("twenty thousand pieces of a name each", () => {
    const pieces = several(20_000, (k) => ({ id: `p${k}`, length: 200 + ((k * 7919) % 30) * 60 }));
    const fit = fitted({ pieces, sticks: [{ id: "s", length: 2400 }], kerf: 3 }, 1e7);
    expect(fit.relativeGap).toBeLessThan(0.01);
  });

  test("lengths in the ratio of a billion", () => {
    const pieces = [
      { id: "a", length: 1, count: 1000 },
      { id: "b", length: 3e8, count: 5 },
      { id: "c", length: 123_456_789, count: 7 },
    ];
    expect(fitted({ pieces, sticks: [{ id: "s", length: 1e9 }], kerf: 0.5 }, 1e7).status).toBe("optimal");
    const irrational = pieces.map((piece) => ({ ...piece, length: piece.length * Math.SQRT2 }));
    expect(
      fitted({ pieces: irrational, sticks: [{ id: "s", length: 1.5e9 }], kerf: 0.5 }, 1e7).relativeGap,
    ).toBeLessThan(0.7);
  });

  test("the shortest and the longest lengths there are", () => {
    const pieces = [
      { id: "a", length: 1e99, count: 5 },
      { id: "b", length: 1e-99, count: 5 },
    ];
    expect(fitted({ pieces, sticks: [{ id: "s", length: 7e99 }] }, 1e6).sticks).toEqual([{ stick: "s", count: 1 }]);
  });

  test("a kerf longer than a stick, however long", () => {
    for (const kerf of [31, 100, 1e6, 1e15, 1e16, 1e20, 1e100]) {
      const job = { pieces: [{ id: "p", length: 10, count: 5 }], sticks: [{ id: "s", length: 30 }], kerf };
      expect(fitted(job, 1e6).sticks).toEqual([{ stick: "s", count: 5 }]);
      const whole = { ...job, pieces: [{ id: "whole", length: 30, count: 2 }] };
      expect(fitted(whole, 1e6)).toMatchObject({ status: "optimal", piecesLength: 60, wasteLength: 0 });
      const longer = { ...job, pieces: [{ id: "long", length: 31 }] };
      expect(() => fitStock(longer)).toThrow('Expected `job.pieces[0].length` to be 30 at most for "long", 31 long');
      const sequence = { ...job, pieces: [{ id: "sequence", sequence: [10, 10] }] };
      expect(() => fitStock(sequence)).toThrow(/Expected `job\.pieces\[0\]\.sequence` to be 30 at most for "sequence"/);
    }
  });

  test("ten thousand kinds of sticks, endless or one of each", () => {
    const whole = wholeFrom(randomFrom(2));
    const pieces = several(30, (k) => ({ id: `p${k}`, length: whole(200, 2000), count: 5 }));
    const endless = several(10_000, (k) => ({ id: `s${k}`, length: whole(1000, 4000) }));
    expect(fitted({ pieces, sticks: endless, kerf: 3 }, 1e6).relativeGap).toBeLessThan(0.1);
    const rack = several(10_000, (k) => ({ id: `s${k}`, length: whole(300, 3000), count: 1 }));
    expect(fitted({ pieces, sticks: rack, kerf: 3 }, 1e6).relativeGap).toBeLessThan(0.1);
  });

  test("two thousand lengths that have no grid in common", () => {
    const random = randomFrom(3);
    const pieces = several(2000, (k) => ({ id: `p${k}`, length: 200 + random() * 1800 }));
    expect(fitted({ pieces, sticks: [{ id: "s", length: 2400 }], kerf: 3 }, 1e7).relativeGap).toBeLessThan(0.05);
  });

  test("costs beyond any sense are counted exactly, or refused", () => {
    const pieces = [{ id: "p", length: 30, count: 20 }];
    const free = { id: "free", length: 40, cost: 0, count: 3 };
    const dear = (cost: number): StockJob => ({
      pieces,
      sticks: [free, { id: "usual", length: 70, cost: 9.6 }, { id: "never", length: 100, cost }],
    });
    // 3 pieces are free, and 17 take nine sticks.
    for (const cost of [1e3, 1e6, 1e9, 1e11]) {
      const fit = fitted(dear(cost), 1e6);
      expect([fit.status, fit.cost, fit.bound]).toEqual(["optimal", 86.4, 86.4]);
    }
    for (const cost of [1e13, 1e15, 1e100])
      expect(() => fitStock(dear(cost))).toThrow(/costs nearer to 9\.6, or no such stick/);
    expect(fitted({ pieces, sticks: [{ id: "tiny", length: 70, cost: 1e-100 }] }, 1e6).cost).toBe(1e-99);
    expect(fitted({ pieces, sticks: [{ id: "free", length: 100, cost: 0 }] }, 1e6).status).toBe("optimal");
    const odd = [Math.SQRT2, Math.PI, Math.E].map((cost, k) => ({ id: `s${k}`, length: 70 + 30 * k, cost }));
    // Four to a stick of 130 for e; the cost of the plan is the sum of the costs as they are given.
    expect(fitted({ pieces, sticks: odd }, 1e6).cost).toBeCloseTo(5 * Math.E, 12);
  });

  test("a stick that earns more than it costs is still used for something", () => {
    const job = { pieces: [{ id: "p", length: 5, count: 3 }], sticks: [{ id: "s", length: 100, cost: 1 }], credit: 1 };
    expect(fitted(job, 1e7).sticks).toEqual([{ stick: "s", count: 3 }]);
  });
});
