import { describe, expect, test } from "vitest";
import { verifyFit, fitStock, type FitFault, type StockFit, type StockJob, type StockLayout } from "miterwright/stock";

const job: StockJob = {
  pieces: [
    { id: "rail", length: 40, count: 2 },
    { id: "slat", length: 12.5, count: 3 },
    { id: "pair", sequence: [10, 8] },
  ],
  sticks: [
    { id: "long", length: 100 },
    { id: "rack", length: 60, cost: 5, count: 1, defects: [{ start: 20, end: 22 }] },
  ],
  kerf: 0.5,
  trim: 1,
  keep: 10,
};
const fit = fitStock(job, { stepLimit: 1e6 });

/** The codes of the faults of a plan. */
function codesOf(of: StockJob, plan: StockFit): FitFault["code"][] {
  const check = verifyFit(of, plan);
  return check.ok ? [] : [...new Set(check.faults.map(({ code }) => code))];
}

/** The codes of the faults of a plan that was changed by hand. */
function codes(change: (fit: Mutable<StockFit>) => void, of: StockJob = job): FitFault["code"][] {
  const copy = JSON.parse(JSON.stringify(fit)) as Mutable<StockFit>;
  change(copy);
  const check = verifyFit(of, copy);
  return check.ok ? [] : [...new Set(check.faults.map(({ code }) => code))];
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] extends object ? Mutable<T[K]> : T[K] };

/** Where a piece, or a part of a sequence, lies in the plan. */
function find(plan: Mutable<StockFit>, piece: string, part?: number) {
  for (const layout of plan.layouts) {
    const k = layout.pieces.findIndex((cut) => cut.piece === piece && cut.part === part);
    if (k >= 0) return { layout, k, cut: layout.pieces[k]! };
  }
  throw new Error(`no ${piece}`);
}

describe("verifyFit", () => {
  test("passes a plan, also after JSON", () => {
    expect(verifyFit(job, fit)).toEqual({ ok: true });
    expect(codes(() => undefined)).toEqual([]);
  });

  test("sees a piece of the wrong length", () => {
    expect(codes((plan) => (find(plan, "rail").cut.end -= 0.5))).toContain("length");
  });

  test("sees a piece that starts in the saw cut before it", () => {
    const faults = codes((plan) => {
      const { layout } = find(plan, "rail");
      const last = layout.pieces.at(-1)!;
      expect(layout.pieces.length).toBeGreaterThan(1);
      last.start -= 0.5;
      last.end -= 0.5;
    });
    expect(faults).toContain("spacing");
  });

  test("sees a piece in a trim and one in a defect", () => {
    const move = (to: number) => (plan: Mutable<StockFit>) => {
      const { cut } = find(plan, "slat");
      [cut.start, cut.end] = [to, to + 12.5];
    };
    expect(codes(move(0.5))).toContain("clear");
    const knotted: StockJob = {
      ...job,
      sticks: job.sticks.map((stick) => ({ ...stick, defects: [{ start: 5, end: 6 }] })),
    };
    expect(codes(() => undefined, knotted)).toContain("clear");
  });

  test("sees a sequence that is torn apart", () => {
    expect(codes((plan) => find(plan, "pair", 1).layout.pieces.reverse())).toContain("sequence");
    expect(
      codes((plan) => {
        const { layout, k } = find(plan, "pair", 1);
        layout.pieces.splice(k, 1);
      }),
    ).toContain("sequence");
  });

  test("sees parts of a sequence in another order, a sequence without its first or last part, and one part twice", () => {
    const matched: StockJob = {
      pieces: [{ id: "front", sequence: [20, 20, 20] }],
      sticks: [{ id: "s", length: 100 }],
      kerf: 2,
    };
    const part = (n: number, start: number) => ({ piece: "front", part: n, start, end: start + 20, count: 1 });
    const whole = fitStock(matched, { stepLimit: 1e6 });
    expect(whole.layouts[0]!.pieces).toEqual([part(0, 0), part(1, 22), part(2, 44)]);
    const cutAs = (...parts: number[]): FitFault["code"][] =>
      codesOf(matched, { ...whole, layouts: [{ ...whole.layouts[0]!, pieces: parts.map((n, k) => part(n, 22 * k)) }] });
    expect(cutAs(0, 1, 2)).toEqual([]);
    for (const parts of [
      [1, 0, 2],
      [0, 2, 1],
      [2, 1, 0],
      [0, 1],
      [1, 2],
      [0, 0, 1, 2],
      [0, 1, 1],
      [0, 1, 2, 2],
    ])
      expect(cutAs(...parts)).toContain("sequence");
    // Whole sequences one after another are more than are wanted, and nothing else.
    expect(cutAs(0, 1, 2, 0)).toContain("sequence");
  });

  test("sees a part of one sequence that goes on as another", () => {
    const two: StockJob = {
      pieces: [
        { id: "a", sequence: [20, 20] },
        { id: "b", sequence: [20, 20] },
      ],
      sticks: [{ id: "s", length: 100 }],
      kerf: 2,
    };
    const whole = fitStock(two, { stepLimit: 1e6 });
    const cutAs = (...ids: string[]): FitFault["code"][] => {
      const pieces = ids.map((piece, k) => ({ piece, part: k % 2, start: 22 * k, end: 22 * k + 20, count: 1 }));
      return codesOf(two, { ...whole, layouts: [{ ...whole.layouts[0]!, pieces }] });
    };
    expect(cutAs("a", "a", "b", "b")).toEqual([]);
    expect(cutAs("a", "b", "b", "a")).toContain("sequence");
  });

  test("sees parts of a sequence that lie apart, or with a knot between them", () => {
    const matched: StockJob = {
      pieces: [{ id: "front", sequence: [20, 20] }],
      sticks: [{ id: "s", length: 100, count: 1 }],
      kerf: 2,
    };
    const whole = fitStock(matched, { stepLimit: 1e6 });
    const apart = (from: number) => {
      const [first, second] = whole.layouts[0]!.pieces;
      const pieces = [first!, { ...second!, start: from, end: from + 20 }];
      return { ...whole, layouts: [{ ...whole.layouts[0]!, pieces, offcut: 100 - from - 22 }] };
    };
    expect(codesOf(matched, apart(22))).toEqual([]);
    expect(codesOf(matched, apart(40))).toEqual(["sequence"]);
    expect(codesOf(matched, apart(21.5))).toEqual(["spacing"]);
    // Two millimeters of knot where the cut is: no wood is lost, and still it is not one stretch of grain.
    const knotty: StockJob = { ...matched, sticks: [{ id: "s", length: 100, defects: [{ start: 20, end: 22 }] }] };
    expect(codesOf(knotty, apart(22))).toContain("clear");
  });

  test("lets only neighbors of one key share a cut, by the saving of that key", () => {
    const share = (key: string, saving: number) => ({ share: { key, saving } });
    const shared: StockJob = {
      pieces: [
        { id: "a", length: 50, ...share("frame", 12) },
        { id: "b", length: 50, ...share("frame", 12) },
        { id: "c", length: 50, ...share("box", 12) },
        { id: "d", length: 50 },
      ],
      sticks: [{ id: "s", length: 300 }],
      kerf: 4,
    };
    const whole = fitStock(shared, { stepLimit: 1e6 });
    const inRow = (from: number, ...ids: string[]): FitFault[] => {
      const pieces = ids.map((piece, k) => ({ piece, start: k * from, end: k * from + 50, count: 1 }));
      const check = verifyFit(shared, { ...whole, layouts: [{ ...whole.layouts[0]!, pieces }] });
      return check.ok ? [] : check.faults.filter(({ code }) => code === "spacing");
    };
    expect(inRow(42, "a", "b")).toEqual([]);
    expect(inRow(42, "b", "a")).toEqual([]);
    expect(inRow(41.5, "a", "b")).toHaveLength(1);
    for (const pair of [
      ["a", "c"],
      ["c", "b"],
      ["a", "d"],
      ["d", "a"],
      ["d", "d"],
    ]) {
      expect(inRow(42, ...pair)).toHaveLength(1);
      expect(inRow(54, ...pair)).toEqual([]);
    }
    // Cuts are not shared across a knot.
    const knot: StockJob = { ...shared, sticks: [{ id: "s", length: 300, defects: [{ start: 50, end: 50 }] }] };
    const over = [
      { piece: "a", start: 0, end: 50, count: 1 },
      { piece: "b", start: 50, end: 100, count: 1 },
    ];
    expect(codesOf(knot, { ...whole, layouts: [{ ...whole.layouts[0]!, pieces: over }] })).toContain("clear");
  });

  test("refuses a job whose saving lets the first piece reach the third", () => {
    const job: StockJob = {
      pieces: [{ id: "p", length: 30, count: 3, share: { key: "k", saving: 20 } }],
      sticks: [{ id: "s", length: 50 }],
    };
    const text = "Expected `job.pieces[0].share.saving` to be a number from 0 to 15, got 20 (number)";
    expect(() => fitStock(job)).toThrow(text);
    expect(() => verifyFit(job, fit)).toThrow(text);
    const half = {
      ...job,
      pieces: [{ ...job.pieces[0]!, share: { key: "k", saving: 15 } }],
      sticks: [{ id: "s", length: 60 }],
    };
    const touching = fitStock(half, { stepLimit: 1e6 });
    expect(touching.layouts[0]!.pieces).toEqual([{ piece: "p", start: 0, end: 30, count: 3, pitch: 15 }]);
    expect(verifyFit(half as StockJob, touching)).toEqual({ ok: true });
  });

  test("looks at every piece of a record", () => {
    const row: StockJob = { pieces: [{ id: "p", length: 10, count: 5 }], sticks: [{ id: "s", length: 70 }], kerf: 2 };
    const whole = fitStock(row, { stepLimit: 1e6 });
    const cut = { piece: "p", start: 0, end: 10, count: 5, pitch: 12 };
    expect(whole.layouts).toEqual([{ stick: "s", times: 1, pieces: [cut], offcut: 10, kept: [] }]);
    const changed = (change: object, offcut = 10): FitFault["code"][] =>
      codesOf(row, { ...whole, layouts: [{ ...whole.layouts[0]!, pieces: [{ ...cut, ...change }], offcut }] });
    expect(changed({ pitch: 11.5 }, 12)).toEqual(["spacing"]);
    // Wider apart than they must be they are sound as long as they are on the stick.
    expect(changed({ pitch: 13 }, 6)).toEqual([]);
    expect(changed({ pitch: 16 }, 0)).toContain("clear");
    expect(changed({ count: 4 }, 22)).toContain("demand");
    expect(changed({ start: 1, end: 11 }, 9)).toEqual([]);
    expect(changed({ start: 13, end: 23 }, 0)).toContain("clear");
    expect(() => changed({ pitch: undefined })).toThrow(
      "Expected `fit.layouts[0].pieces[0].pitch` to be a number from",
    );
    expect(() => changed({ count: 0 })).toThrow("Expected `fit.layouts[0].pieces[0].count` to be an integer from 1 to");
    const sequences: StockJob = {
      pieces: [{ id: "r", sequence: [10, 5], count: 3 }],
      sticks: [{ id: "s", length: 70 }],
      kerf: 2,
    };
    const plan = fitStock(sequences, { stepLimit: 1e6 });
    const [first, second] = plan.layouts[0]!.pieces;
    const withParts = (one: object, other: object): FitFault["code"][] =>
      codesOf(sequences, {
        ...plan,
        layouts: [
          {
            ...plan.layouts[0]!,
            pieces: [
              { ...first!, ...one },
              { ...second!, ...other },
            ],
          },
        ],
      });
    expect(withParts({}, {})).toEqual([]);
    expect(withParts({}, { pitch: 20 })).toContain("sequence");
    expect(withParts({}, { count: 2 })).toContain("sequence");
    expect(withParts({ pitch: 18 }, { pitch: 18 })).toContain("spacing");
  });

  test("sees a place before the stick", () => {
    const change = (plan: Mutable<StockFit>) => {
      const { cut } = find(plan, "slat");
      [cut.start, cut.end] = [-12.5, 0];
    };
    expect(codes(change)).toContain("clear");
    expect(codes((plan) => (find(plan, "slat").cut.start = -1))).toContain("length");
    expect(codes((plan) => (find(plan, "slat").cut.end = 0))).toContain("length");
  });

  test("sees a shortage where sticks never run out, and one said to be proven that is none", () => {
    const endless: StockJob = { pieces: [{ id: "p", length: 40, count: 4 }], sticks: [{ id: "s", length: 100 }] };
    const nothing: StockFit = {
      ...{ schemaVersion: 1, status: "short", layouts: [], cost: 0, bound: 0, relativeGap: 1, resolution: 20 },
      ...{
        unplaced: [{ piece: "p", count: 4 }],
        shortage: "not-found",
        sticks: [],
        sticksLength: 0,
        piecesLength: 0,
        keptLength: 0,
        wasteLength: 0,
      },
    };
    expect(codesOf(endless, nothing)).toEqual(["status"]);
    const rack = (length: number, count: number): StockJob => ({ ...endless, sticks: [{ id: "s", length, count }] });
    expect(codesOf(rack(100, 2), nothing)).toEqual([]);
    expect(codesOf(rack(100, 2), { ...nothing, shortage: "proven" })).toEqual(["status"]);
    expect(codesOf(rack(100, 1), { ...nothing, shortage: "proven" })).toEqual([]);
    // Sticks without end that are too short for the piece don't help.
    const short: StockJob = {
      ...rack(100, 1),
      sticks: [
        { id: "s", length: 100, count: 1 },
        { id: "t", length: 20 },
      ],
    };
    expect(codesOf(short, nothing)).toEqual([]);
    // 6 5 4 and 6 5 4 fill two sticks of 15; the longest first, each where it fits best or first, does not find it.
    const tight: StockJob = {
      pieces: [4, 5, 6].map((length) => ({ id: `p${length}`, length, count: 2 })),
      sticks: [{ id: "s", length: 15, count: 2 }],
    };
    const found = fitStock(tight, { stepLimit: 1e6 });
    expect(found.status).toBe("optimal");
    const none = {
      ...nothing,
      resolution: 1,
      unplaced: [4, 5, 6].map((length) => ({ piece: `p${length}`, count: 2 })),
    };
    expect(codesOf(tight, { ...none, shortage: "proven" })).toEqual(["status"]);
    expect(codesOf(tight, none)).toEqual([]);
  });

  test("uses the job's own lengths, whatever grid the plan was made on", () => {
    const kerf = 3 / Math.cos(Math.PI / 5);
    const odd: StockJob = {
      pieces: [
        { id: "p", length: 476.29, count: 5 },
        { id: "r", sequence: [100 / 3, 50], count: 2 },
      ],
      sticks: [{ id: "s", length: 2600 }],
      kerf,
      keep: 10,
    };
    const plan = fitStock(odd, { stepLimit: 1e6 });
    expect(plan.resolution).toBe(0.01);
    expect(codesOf(odd, plan)).toEqual([]);
    const [layout] = plan.layouts;
    const withPieces = (change: (pieces: Mutable<StockLayout>["pieces"]) => void): FitFault["code"][] => {
      const pieces = structuredClone(layout!.pieces) as Mutable<StockLayout>["pieces"];
      change(pieces);
      return codesOf(odd, { ...plan, layouts: [{ ...layout!, pieces }] });
    };
    const k = layout!.pieces.findIndex(({ piece }) => piece === "p");
    expect(withPieces((pieces) => (pieces[k]!.pitch = 476.29 + kerf))).not.toContain("spacing");
    expect(withPieces((pieces) => (pieces[k]!.pitch = 476.29 + kerf - 1e-6))).toContain("spacing");
    expect(withPieces((pieces) => (pieces[k]!.end += 1e-6))).toContain("length");
    const coarser = { ...plan, resolution: 1 };
    expect(codesOf(odd, coarser)).toContain("total");
    expect(codesOf({ ...odd, resolution: 0.5 }, plan)).toContain("total");
  });

  test("holds for any number of pieces", () => {
    for (const [count, length] of [
      [1e7, 1e-7],
      [1e9, 1e-9],
    ] as const) {
      const many: StockJob = { pieces: [{ id: "p", length, count }], sticks: [{ id: "s", length: 1 }] };
      const plan = fitStock(many, { stepLimit: 1e6 });
      expect(plan.layouts).toEqual([
        {
          stick: "s",
          times: 1,
          pieces: [{ piece: "p", start: 0, end: length, count, pitch: length }],
          offcut: 0,
          kept: [],
        },
      ]);
      expect(codesOf(many, plan)).toEqual([]);
      const [cut] = plan.layouts[0]!.pieces;
      const closer = { ...plan.layouts[0]!, pieces: [{ ...cut!, pitch: length * (1 - 1e-12) }] };
      expect(codesOf(many, { ...plan, layouts: [closer] })).toContain("spacing");
    }
  });

  test("sees a missing piece, and one too many", () => {
    expect(codes((plan) => find(plan, "slat").layout.times++)).toContain("demand");
    expect(codes((plan) => find(plan, "slat").layout.pieces.splice(find(plan, "slat").k, 1))).toContain("demand");
  });

  test("sees names that the job does not have", () => {
    expect(codes((plan) => (find(plan, "rail").cut.piece = "rial"))).toContain("unknown-piece");
    expect(codes((plan) => (plan.layouts[0]!.stick = "lnog"))).toContain("unknown-stick");
  });

  test("sees sticks that are listed and not there, and parts of what is no sequence", () => {
    expect(codes((plan) => plan.sticks.push({ stick: "ghost", count: 3 }))).toEqual(["unknown-stick"]);
    expect(codes((plan) => (find(plan, "rail").cut.part = 0))).toEqual(["sequence"]);
  });

  test("sees a bound of a short plan that is above nothing, and words that say nothing", () => {
    const few: StockJob = { ...job, sticks: [{ id: "rack", length: 60, count: 1 }] };
    const short = fitStock(few, { stepLimit: 1e6 });
    expect(short).toMatchObject({ status: "short", bound: 0 });
    expect(verifyFit(few, short)).toEqual({ ok: true });
    expect(verifyFit(few, { ...short, bound: short.cost })).toMatchObject({ ok: false, faults: [{ code: "status" }] });
    expect(() => verifyFit(few, { ...short, shortage: "perhaps" as never })).toThrow(
      'Expected `fit.shortage` to be one of "proven", "not-found", got "perhaps" (string)',
    );
    expect(() => verifyFit(job, { ...fit, stopped: "tired" as never })).toThrow(
      'Expected `fit.stopped` to be one of "time", "steps", "asked", got "tired" (string)',
    );
  });

  test("sees more sticks than there are", () => {
    const fewer: StockJob = { ...job, sticks: job.sticks.map((stick) => ({ ...stick, count: 0 })) };
    expect(codes(() => undefined, fewer)).toContain("limit");
    // A stick with a defect is there once, unless more are said to be.
    const knotty = { id: "s", length: 50, defects: [{ start: 45, end: 46 }] };
    const pair: StockJob = { pieces: [{ id: "p", length: 40, count: 2 }], sticks: [{ ...knotty, count: 2 }] };
    const twice = fitStock(pair, { stepLimit: 1e6 });
    expect(codesOf(pair, twice)).toEqual([]);
    expect(codesOf({ ...pair, sticks: [knotty] }, twice)).toEqual(["limit"]);
  });

  test.each([
    "cost",
    "sticksLength",
    "piecesLength",
    "keptLength",
    "wasteLength",
    "relativeGap",
    "resolution",
  ] as const)("sees a wrong %s", (name) => {
    expect(codes((plan) => (plan[name] += 0.25))).toContain("total");
  });

  test("sees a wrong offcut and a wrong list of sticks", () => {
    expect(codes((plan) => (plan.layouts[0]!.offcut += 1))).toContain("offcut");
    expect(codes((plan) => (plan.sticks[0]!.count += 1))).toContain("total");
    const kept = fit.layouts.findIndex((layout) => layout.kept.length > 0);
    expect(codes((plan) => plan.layouts[kept]!.kept.pop())).toEqual(["offcut"]);
    expect(codes((plan) => (plan.layouts[kept]!.kept[0]!.start += 1))).toEqual(["offcut"]);
  });

  test("sees a status that does not go with the numbers", () => {
    expect(codes((plan) => (plan.bound = plan.cost + 1))).toContain("status");
    expect(
      codes((plan) => {
        plan.bound = plan.cost - 1;
        plan.status = "optimal";
      }),
    ).toContain("status");
    expect(codes((plan) => (plan.status = "short"))).toContain("status");
  });

  test("refuses a plan that lacks a field", () => {
    expect(() => codes((plan) => delete (plan as Partial<Mutable<StockFit>>).layouts)).toThrow(
      "Expected `fit.layouts` to be an array, got undefined",
    );
  });
});
