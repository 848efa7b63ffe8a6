import { describe, expect, test } from "vitest";
import { verifyFit, fitStock, type PlacedPiece, type StockFit, type StockJob } from "miterwright/stock";

/** A plan that the verifier passed. */
function fitted(job: StockJob): StockFit {
  const fit = fitStock(job, { stepLimit: 1e8 });
  expect(verifyFit(job, fit)).toEqual({ ok: true });
  return fit;
}

describe("fitStock", () => {
  test("takes kerfs between pieces only", () => {
    const job = { pieces: [{ id: "p", length: 49, count: 2 }], kerf: 2 };
    expect(fitted({ ...job, sticks: [{ id: "s", length: 100 }] }).layouts[0]!.pieces).toEqual([
      { piece: "p", start: 0, end: 49, count: 2, pitch: 51 },
    ]);
    expect(fitted({ ...job, sticks: [{ id: "s", length: 99 }] }).sticks).toEqual([{ stick: "s", count: 2 }]);
  });

  test("leaves the trims", () => {
    const fit = fitted({
      pieces: [{ id: "p", length: 40, count: 2 }],
      sticks: [{ id: "s", length: 93 }],
      trim: { start: 3, end: 5 },
      kerf: 2,
    });
    expect(fit.layouts[0]!.pieces[0]!.start).toBe(3);
    // The cut before the offcut takes 2; of the trim of 5 the cut behind it is not made.
    expect(fit.layouts[0]!.offcut).toBe(93 - 3 - 40 - 2 - 40 - 2 - 3);
  });

  test("computes on the grid of the lengths", () => {
    const inches = { pieces: [{ id: "p", length: 5.4375, count: 3 }], sticks: [{ id: "s", length: 96 }], kerf: 0.125 };
    expect(fitted(inches).resolution).toBe(1 / 16);
    const fit = fitted({
      pieces: [{ id: "p", length: 433.3, count: 3 }],
      sticks: [{ id: "s", length: 2400 }],
      kerf: 3,
    });
    expect(fit.resolution).toBe(0.1);
    expect(fit.layouts[0]!.pieces).toEqual([{ piece: "p", start: 0, end: 433.3, count: 3, pitch: 436.3 }]);
    expect([fit.layouts[0]!.offcut, fit.sticksLength, fit.piecesLength, fit.wasteLength]).toEqual([
      1091.1, 2400, 1299.9, 1100.1,
    ]);
  });

  test("rounds lengths that have no grid in common the safe way, and says how finely", () => {
    const kerf = 3 / Math.cos(Math.PI / 5);
    const job = { pieces: [{ id: "p", length: 476.29, count: 5 }], sticks: [{ id: "s", length: 2400 }], kerf };
    const fit = fitted(job);
    expect(fit.resolution).toBe(0.01);
    const { pieces } = fit.layouts[0]!;
    expect(pieces).toHaveLength(1);
    const [{ start, end, count, pitch = 0 }] = pieces as [PlacedPiece];
    expect(end - start).toBeCloseTo(476.29, 9);
    expect(count).toBe(5);
    expect(pitch - (end - start)).toBeGreaterThanOrEqual(kerf - 1e-12);
    expect(pitch - (end - start)).toBeLessThan(kerf + 0.02);
  });

  test("computes on the grid that is asked for", () => {
    const job = { pieces: [{ id: "p", length: 33.4, count: 3 }], sticks: [{ id: "s", length: 100.9 }] };
    expect(fitted(job).sticks).toEqual([{ stick: "s", count: 1 }]);
    const coarse = fitted({ ...job, resolution: 1 });
    expect([coarse.resolution, coarse.sticks]).toEqual([1, [{ stick: "s", count: 2 }]]);
  });

  test("uses the cheapest sticks, by length unless they have a cost", () => {
    const pieces = [{ id: "p", length: 50, count: 6 }];
    const sticks = [
      { id: "short", length: 110, cost: 5 },
      { id: "long", length: 160, cost: 9 },
    ];
    expect(fitted({ pieces, sticks }).cost).toBe(15);
    expect(fitted({ pieces, sticks: sticks.map(({ id, length }) => ({ id, length })) }).cost).toBe(320);
    const fewest = fitted({ pieces, sticks: sticks.map((stick) => ({ ...stick, cost: 1 })) });
    expect(fewest.sticks).toEqual([{ stick: "long", count: 2 }]);
  });

  test("uses up cheap offcuts from the rack, but no more than there are", () => {
    const fit = fitted({
      pieces: [{ id: "p", length: 50, count: 6 }],
      sticks: [
        { id: "new", length: 200 },
        { id: "rack", length: 60, cost: 1, count: 2 },
      ],
    });
    expect(fit.sticks).toEqual([
      { stick: "new", count: 1 },
      { stick: "rack", count: 2 },
    ]);
    expect([fit.status, fit.cost]).toEqual(["optimal", 202]);
  });

  test("says what there is no room for, and that it is proven", () => {
    const fit = fitted({
      pieces: [
        { id: "long", length: 90, count: 2 },
        { id: "short", length: 30, count: 5 },
      ],
      sticks: [{ id: "s", length: 100, count: 3 }],
    });
    expect([fit.status, fit.shortage, fit.relativeGap, fit.bound]).toEqual(["short", "proven", 1, 0]);
    expect(fit.unplaced).toEqual([{ piece: "short", count: 2 }]);
    expect(fit.cost).toBe(300);
  });

  test("proves a shortage that the sticks' total length does not show", () => {
    const fit = fitted({
      pieces: [
        { id: "p", length: 45, count: 8 },
        { id: "q", length: 28, count: 5 },
      ],
      sticks: [{ id: "s", length: 100, count: 5 }],
    });
    expect([fit.status, fit.shortage]).toEqual(["short", "proven"]);
  });

  test("finds room for everything where filling the longest first does not", () => {
    const fit = fitted({
      pieces: [5, 4, 3, 2].map((length) => ({ id: `p${length}`, length, count: length === 3 ? 3 : 1 })),
      sticks: [{ id: "s", length: 10, count: 2 }],
    });
    expect([fit.status, fit.cost]).toEqual(["optimal", 20]);
  });

  test("keeps what is cut from a short rack as cheap as can be", () => {
    const fit = fitted({
      pieces: [
        { id: "p", length: 50, count: 1 },
        { id: "q", length: 95, count: 3 },
      ],
      sticks: [
        { id: "dear", length: 100, cost: 9, count: 2 },
        { id: "cheap", length: 50, cost: 1, count: 5 },
      ],
    });
    expect([fit.unplaced, fit.cost]).toEqual([[{ piece: "q", count: 1 }], 19]);
  });

  test("credits the offcuts that are worth keeping", () => {
    const job: StockJob = {
      pieces: [{ id: "p", length: 40, count: 4 }],
      sticks: [
        { id: "short", length: 100, cost: 100 },
        { id: "long", length: 190, cost: 195 },
      ],
      keep: 25,
    };
    expect(fitted(job).cost).toBe(195);
    const credited = fitted({ ...job, credit: 0.5 });
    expect([credited.cost, credited.keptLength]).toEqual([180, 30]);
    expect(credited.layouts[0]!.kept).toEqual([{ start: 160, end: 190 }]);
  });

  test("subtracts one kerf from an offcut for each cut that is made", () => {
    const job = { pieces: [{ id: "p", length: 23, count: 4 }], sticks: [{ id: "s", length: 96 }], kerf: 0.125 };
    // Four cuts part four pieces; trims add the one at the start, but none behind the offcut.
    expect(fitted(job).layouts[0]!.offcut).toBe(96 - 92 - 4 * 0.125);
    expect(fitted({ ...job, trim: 0.125 }).layouts[0]!.offcut).toBe(96 - 92 - 5 * 0.125);
    // An inch of each end is bad: an eighth of it is the cut, which is not made behind an offcut.
    expect(fitted({ ...job, trim: 1 }).layouts[0]!.offcut).toBe(96 - 92 - 1 - 0.875 - 4 * 0.125);
    // The last piece ends at the trim: one cut parts the piece and takes the trim.
    expect(fitted({ ...job, sticks: [{ id: "s", length: 94.375 }], trim: 1 }).layouts[0]!.offcut).toBe(0);
    const kept = fitted({ ...job, trim: 0.125, keep: 3, credit: 0.5 });
    expect(kept.layouts[0]!.kept).toEqual([{ start: 92.625, end: 96 }]);
    expect([kept.keptLength, kept.cost]).toEqual([3.375, 96 - 1.6875]);
    // A defect ends an offcut as it ends a piece.
    const knotty = { id: "s", length: 96, defects: [{ start: 94, end: 95 }] };
    expect(fitted({ ...job, sticks: [knotty], trim: 0.125 }).layouts[0]!.offcut).toBe(94 - 92.625);
  });

  test("takes costs that are those of the credit, on a grid that holds neither", () => {
    const pieces = [25, 68, 71, 36, 41].map((length, k) => ({ id: `p${length}`, length, count: [7, 8, 9, 9, 3][k]! }));
    const sticks = [
      { id: "s", length: 161, cost: 111.95389558559502 },
      { id: "t", length: 700, cost: 487.18525941538866 },
    ];
    const credit = 0.695365811090621;
    const job = { pieces, sticks, credit, keep: 70 };
    const fit = fitStock(job, { stepLimit: 1e6 });
    expect(verifyFit(job, fit)).toEqual({ ok: true });
    expect(fit.bound <= fit.cost && fit.bound > 0.9 * fit.cost).toBe(true);
    // Whatever the last digits of the costs are, a bound that is not reached lies below the cost.
    for (let k = -5; k <= 5; k++) {
      const near = { ...job, sticks: [{ ...sticks[0]!, cost: 161 * credit * (1 + k * 1e-15) }, sticks[1]!] };
      const { status, relativeGap } = fitStock(near, { stepLimit: 1e6 });
      expect(relativeGap === 0).toBe(status === "optimal");
    }
  });

  test("keeps clear of defects", () => {
    const fit = fitted({
      pieces: [{ id: "p", length: 30, count: 3 }],
      sticks: [
        { id: "new", length: 100 },
        { id: "knotty", length: 100, cost: 10, defects: [{ start: 35, end: 38 }] },
      ],
      kerf: 1,
    });
    expect(fit.sticks).toEqual([{ stick: "knotty", count: 1 }]);
    expect(fit.layouts[0]!.pieces.map(({ start, count, pitch }) => [start, count, pitch])).toEqual([
      [0, 1, undefined],
      [38, 2, 31],
    ]);
  });

  test("keeps a sequence together and in order", () => {
    const fit = fitted({
      pieces: [
        { id: "front", sequence: [20, 40, 10], count: 2 },
        { id: "p", length: 25, count: 2 },
      ],
      sticks: [{ id: "s", length: 100 }],
      kerf: 1,
    });
    expect(fit.sticks).toEqual([{ stick: "s", count: 2 }]);
    const sequence = fit.layouts[0]!.pieces.filter(({ piece }) => piece === "front");
    expect(sequence.map(({ part, start, end }) => [part, end - start])).toEqual([
      [0, 20],
      [1, 40],
      [2, 10],
    ]);
  });

  test("writes sequences that follow one another as one record for each part", () => {
    const fit = fitted({
      pieces: [{ id: "front", sequence: [20, 10], count: 3 }],
      sticks: [{ id: "s", length: 100 }],
      kerf: 1,
    });
    expect(fit.layouts[0]!.pieces).toEqual([
      { piece: "front", part: 0, start: 0, end: 20, count: 3, pitch: 32 },
      { piece: "front", part: 1, start: 21, end: 31, count: 3, pitch: 32 },
    ]);
  });

  test("lets neighbors of one key share a cut", () => {
    const side = { length: 50, count: 2 };
    const share = { key: "frame", saving: 12 };
    const sticks = [{ id: "s", length: 92 }];
    const kerf = 4;
    expect(fitted({ pieces: [{ id: "p", ...side }], sticks, kerf }).cost).toBe(184);
    const shared = fitted({ pieces: [{ id: "p", ...side, share }], sticks, kerf });
    expect(shared.cost).toBe(92);
    expect(shared.layouts[0]!.pieces).toEqual([{ piece: "p", start: 0, end: 50, count: 2, pitch: 42 }]);
    const other = { id: "q", length: 50, share: { key: "box", saving: 12 } };
    expect(fitted({ pieces: [{ id: "p", length: 50, share }, other], sticks, kerf }).cost).toBe(184);
  });

  test("of two plans of one cost takes the one with the longer offcut", () => {
    const fit = fitted({
      pieces: [50, 45, 30, 25, 20].map((length) => ({ id: `p${length}`, length })),
      sticks: [{ id: "s", length: 100 }],
    });
    // 50 and 45 fit together, which leaves 25 in the other stick.
    expect(fit.layouts.map(({ offcut }) => offcut)).toEqual([0, 30]);
  });

  test("has nothing to do for nothing", () => {
    const fit = fitted({ pieces: [], sticks: [{ id: "s", length: 100 }] });
    expect([fit.status, fit.layouts, fit.cost, fit.relativeGap]).toEqual(["optimal", [], 0, 0]);
    expect(fitted({ pieces: [{ id: "p", length: 500, count: 0 }], sticks: [{ id: "s", length: 100 }] }).cost).toBe(0);
  });

  test("survives JSON, and changes no input", () => {
    const job: StockJob = {
      pieces: [{ id: "p", length: 30, count: 7, share: { key: "k", saving: 3 } }],
      sticks: [{ id: "s", length: 100, defects: [{ start: 40, end: 41 }], count: 5 }],
      keep: 5,
    };
    const before = structuredClone(job);
    const fit = fitted(job);
    expect(job).toEqual(before);
    expect(JSON.parse(JSON.stringify(fit))).toEqual(fit);
  });
});
