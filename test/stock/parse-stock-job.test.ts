import { describe, expect, test } from "vitest";
import { fitStock, parseStockJob, stockJobSchema, tryParseStockJob, type StockJob } from "miterwright/stock";

const job: StockJob = {
  pieces: [
    { id: "side", length: 500, count: 4 },
    { id: "pair", sequence: [200, 100] },
    { id: "miter", length: 300, share: { key: "k", saving: 20 } },
  ],
  sticks: [{ id: "ash", length: 2400, cost: 3, defects: [{ start: 10, end: 20 }] }],
  kerf: 3,
  trim: { start: 10, end: 5 },
  keep: 300,
};

function issues(value: unknown): (readonly [string, string])[] {
  const outcome = tryParseStockJob(value);
  return outcome.ok ? [] : outcome.issues.map(({ path, code }) => [path, code] as const);
}

describe("tryParseStockJob", () => {
  test("gives a copy of a sound job, which fits alike", () => {
    const outcome = tryParseStockJob(JSON.parse(JSON.stringify(job)));
    expect(outcome).toEqual({ ok: true, value: job });
    const same = tryParseStockJob(job);
    expect(same.ok && same.value.pieces[0] !== job.pieces[0]).toBe(true);
    expect(fitStock(parseStockJob(job))).toEqual(fitStock(job));
  });

  test("tells of every field of every piece and stick, unknown keys and all", () => {
    const wrong = {
      pieces: [{ id: "", length: 500, cuont: 2 }, { id: "a" }, { id: "a", length: 0, count: -1 }, 7],
      sticks: [{ id: "ash", length: "long", count: 1.5 }],
      kerf: -1,
      trim: { start: -2, end: 0 },
      credit: NaN,
    };
    expect(issues(wrong)).toEqual([
      ["job.pieces[0].cuont", "unknown"],
      ["job.pieces[0].id", "range"],
      ["job.pieces[1]", "missing"],
      ["job.pieces[2].id", "conflict"],
      ["job.pieces[2].length", "range"],
      ["job.pieces[2].count", "range"],
      ["job.pieces[3]", "type"],
      ["job.sticks[0].length", "type"],
      ["job.sticks[0].count", "integer"],
      ["job.kerf", "range"],
      ["job.trim.start", "range"],
      ["job.credit", "range"],
    ]);
  });

  test("tells what sound fields say together that cannot be", () => {
    const share = (saving: number): object => ({ length: 300, share: { key: "k", saving } });
    const apart = {
      ...job,
      pieces: [
        { id: "a", ...share(20) },
        { id: "b", ...share(10) },
      ],
    };
    expect(issues(apart)).toEqual([["job.pieces[1].share.saving", "conflict"]]);
    expect(issues({ ...job, pieces: [1, 2].map((id) => ({ id: `p${id}`, length: 1, count: 6e8 })) })).toEqual([
      ["job.pieces", "range"],
    ]);
  });

  test("refuses as fitStock does, with the same first words", () => {
    for (const value of [null, 3, { pieces: [], sticks: [] }, { ...job, kerf: "3" }, { ...job, grid: 1 }]) {
      const outcome = tryParseStockJob(value);
      const first = outcome.ok ? "" : outcome.issues[0]!.message;
      expect(() => fitStock(value as never)).toThrow(first);
      expect(() => parseStockJob(value)).toThrow(first);
    }
  });
});

test("the schema of a job gives the keys that lead to an issue", () => {
  const { validate } = stockJobSchema["~standard"];
  expect(validate(job)).toEqual({ value: job });
  expect(validate({ ...job, sticks: [{ id: "ash", length: -1 }] })).toMatchObject({
    issues: [{ path: ["sticks", 0, "length"] }],
  });
});

test("tells of every issue within a field too, and of the nearest known name", () => {
  const wrong = {
    pieces: [
      { id: "a", lenght: 0, sequence: [0, -1], share: { key: "", saving: -1, by: 2 } },
      { id: "b", length: 10, count: null, share: { key: "k", saving: 6 } },
    ],
    sticks: [{ id: "ash", lenght: 3 }],
    trim: { start: -1, end: -1, ends: 2 },
    resolutoin: 1,
  };
  expect(issues(wrong)).toEqual([
    ["job.resolutoin", "unknown"],
    ["job.pieces[0].lenght", "unknown"],
    ["job.pieces[0].sequence[0]", "range"],
    ["job.pieces[0].sequence[1]", "range"],
    ["job.pieces[0].share.by", "unknown"],
    ["job.pieces[0].share.key", "range"],
    ["job.pieces[0].share.saving", "range"],
    ["job.pieces[0].share", "conflict"],
    ["job.pieces[1].count", "type"],
    ["job.pieces[1].share.saving", "range"],
    ["job.sticks[0].lenght", "unknown"],
    ["job.sticks[0].length", "missing"],
    ["job.trim.ends", "unknown"],
    ["job.trim.start", "range"],
    ["job.trim.end", "range"],
  ]);
  const outcome = tryParseStockJob(wrong);
  const meant = outcome.ok
    ? []
    : outcome.issues.flatMap(({ message }) => /did you mean `(\w+)`/.exec(message)?.[1] ?? []);
  expect(meant).toEqual(["resolution", "length", "length", "end"]);
});
