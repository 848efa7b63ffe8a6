import { describe, expect, test } from "vitest";
import { fitStock, fitStockAsync, type StockJob } from "miterwright/stock";
import { InputError } from "miterwright/errors";

const sticks = [{ id: "s", length: 100 }];
const pieces = [{ id: "p", length: 10 }];

/** Code, path and message of what a job throws; what a form would send need not have the right type. */
function refusal(job: unknown, options: object = {}): [string, string, string] {
  try {
    fitStock(job as StockJob, options);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    const { code, path, message } = error as InputError;
    return [code, path, message];
  }
  throw new Error("nothing was thrown");
}

describe("jobs that are refused", () => {
  const cases: [string, unknown, [string, string, string]][] = [
    ["no job", undefined, ["missing", "job", "Expected `job` to be an object, got undefined"]],
    [
      "no pieces",
      { sticks },
      ["missing", "job.pieces", "Expected `job.pieces` to be an array of pieces, got undefined"],
    ],
    [
      "no sticks",
      { pieces, sticks: [] },
      ["range", "job.sticks", "Expected `job.sticks` to be an array of one stick or more, got an empty array"],
    ],
    [
      "an unknown key",
      { pieces, sticks, kerfs: 3 },
      [
        "unknown",
        "job.kerfs",
        "Expected `job` to have no key but `pieces`, `sticks`, `kerf`, `trim`, `keep`, `credit`, `resolution`, `schemaVersion`, got `kerfs`; did you mean `kerf`?",
      ],
    ],
    [
      "an unknown key of a piece",
      { pieces: [{ id: "p", lenght: 10 }], sticks },
      [
        "unknown",
        "job.pieces[0].lenght",
        "Expected `job.pieces[0]` to have no key but `id`, `length`, `sequence`, `count`, `share`, got `lenght`; did you mean `length`?",
      ],
    ],
    [
      "a piece without a length",
      { pieces: [{ id: "p" }], sticks },
      ["missing", "job.pieces[0]", "Expected exactly one of `length`, `sequence` in `job.pieces[0]`, got none"],
    ],
    [
      "a length of zero",
      { pieces: [{ id: "p", length: 0 }], sticks },
      [
        "range",
        "job.pieces[0].length",
        "Expected `job.pieces[0].length` to be a positive length (1e-100 to 1e100), got 0 (number)",
      ],
    ],
    [
      "a length that is no number",
      { pieces: [{ id: "p", length: NaN }], sticks },
      [
        "range",
        "job.pieces[0].length",
        "Expected `job.pieces[0].length` to be a positive length (1e-100 to 1e100), got NaN (number)",
      ],
    ],
    [
      "half a piece",
      { pieces: [{ id: "p", length: 1, count: 0.5 }], sticks },
      [
        "integer",
        "job.pieces[0].count",
        "Expected `job.pieces[0].count` to be an integer from 0 to 1000000000, got 0.5 (number)",
      ],
    ],
    [
      "too many pieces",
      {
        pieces: [
          { id: "p", length: 1, count: 1e9 },
          { id: "q", length: 1 },
        ],
        sticks,
      },
      ["range", "job.pieces", "Expected `job.pieces` to be at most 1000000000 pieces in all, got 1000000001 (number)"],
    ],
    [
      "an empty sequence",
      { pieces: [{ id: "p", sequence: [] }], sticks },
      [
        "range",
        "job.pieces[0].sequence",
        "Expected `job.pieces[0].sequence` to be an array of one length or more, got an empty array",
      ],
    ],
    [
      "a sequence that shares",
      { pieces: [{ id: "p", sequence: [1, 2], share: { key: "k", saving: 1 } }], sticks },
      [
        "conflict",
        "job.pieces[0].share",
        "Expected exactly one of `sequence`, `share` in `job.pieces[0]`, got `sequence` and `share`",
      ],
    ],
    [
      "a saving longer than half its piece",
      { pieces: [{ id: "p", length: 2, share: { key: "k", saving: 3 } }], sticks },
      [
        "range",
        "job.pieces[0].share.saving",
        "Expected `job.pieces[0].share.saving` to be a number from 0 to 1, got 3 (number)",
      ],
    ],
    [
      "two savings of one key",
      {
        pieces: [
          { id: "p", length: 9, share: { key: "k", saving: 3 } },
          { id: "q", length: 9, share: { key: "k", saving: 4 } },
        ],
        sticks,
      },
      [
        "conflict",
        "job.pieces[1].share.saving",
        "Expected `job.pieces[1].share.saving` to be 3, the saving of its key, got 4 (number)",
      ],
    ],
    [
      "two pieces of one name",
      { pieces: [...pieces, ...pieces], sticks },
      [
        "conflict",
        "job.pieces[1].id",
        'Expected `job.pieces[1].id` to be another name than `job.pieces[0].id`, got "p" (string)',
      ],
    ],
    [
      "two sticks of one name",
      { pieces, sticks: [...sticks, ...sticks] },
      [
        "conflict",
        "job.sticks[1].id",
        'Expected `job.sticks[1].id` to be another name than `job.sticks[0].id`, got "s" (string)',
      ],
    ],
    [
      "a defect beyond its stick",
      { pieces, sticks: [{ id: "s", length: 100, defects: [{ start: 90, end: 101 }] }] },
      [
        "range",
        "job.sticks[0].defects[0].end",
        "Expected `job.sticks[0].defects[0].end` to be a number from 90 to 100, got 101 (number)",
      ],
    ],
    [
      "a resolution that would need too many digits",
      { pieces, sticks, resolution: 1e-30 },
      ["range", "job.resolution", "Expected `job.resolution` to be at least 9.094947017729282e-11, got 1e-30 (number)"],
    ],
    [
      "costs too far apart to be compared on one grid",
      {
        pieces: [{ id: "p", length: 10, count: 6 }],
        sticks: [
          { id: "a", length: 30, cost: 9.6 },
          { id: "never", length: 60, cost: 1e15 },
        ],
      },
      [
        "range",
        "job.sticks",
        "Expected `job.sticks` to be costs nearer to 9.6, or no such stick, got 1000000000000000 (number)",
      ],
    ],
    [
      "a piece longer than every stick",
      { pieces: [{ id: "rail", length: 95 }], sticks, trim: 3 },
      [
        "impossible",
        "job.pieces[0].length",
        'Expected `job.pieces[0].length` to be 94 at most for "rail", 95 long, got 95 (number)',
      ],
    ],
    [
      "a sequence longer than every stick",
      { pieces: [{ id: "rails", sequence: [50, 50] }], sticks, kerf: 1 },
      [
        "impossible",
        "job.pieces[0].sequence",
        'Expected `job.pieces[0].sequence` to be 100 at most for "rails", 101 long, got an array of 2',
      ],
    ],
  ];
  test.each(cases)("%s", (_, job, expected) => {
    expect(refusal(job)).toEqual(expected);
  });

  test("options", () => {
    expect(refusal({ pieces, sticks }, { timelimit: 5 })).toEqual([
      "unknown",
      "timelimit",
      "Expected no key but `timeLimit`, `stepLimit`, `onProgress`, got `timelimit`; did you mean `timeLimit`?",
    ]);
    expect(refusal({ pieces, sticks }, { timeLimit: -1 })).toEqual([
      "range",
      "timeLimit",
      "Expected `timeLimit` to be a number from 0 to Infinity, got -1 (number)",
    ]);
    expect(refusal({ pieces, sticks }, { onProgress: 3 })).toEqual([
      "type",
      "onProgress",
      "Expected `onProgress` to be a function, got 3 (number)",
    ]);
  });

  test("the asynchronous search rejects", async () => {
    await expect(fitStockAsync({ pieces, sticks: [] })).rejects.toBeInstanceOf(InputError);
    await expect(fitStockAsync({ pieces, sticks }, { signal: 3 as never })).rejects.toMatchObject({
      message: "Expected `signal` to be an object, got 3 (number)",
    });
    await expect(fitStockAsync({ pieces, sticks }, { abort: 3 } as never)).rejects.toMatchObject({
      path: "abort",
      message: "Expected no key but `timeLimit`, `stepLimit`, `onProgress`, `signal`, got `abort`",
    });
  });
});
