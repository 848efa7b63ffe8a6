import { expect, test } from "vitest";
import { parseBrief, parsePlan, planFrame, tryParseBrief } from "miterwright/frame";
import { fitStock, parseStockJob, tryParseStockJob, verifyFit } from "miterwright/stock";
import { plain, throughJson } from "./briefs.js";

const brief = { sides: 6, profile: plain, opening: { side: 200 }, sticks: [{ id: "ash", length: 2400 }] } as const;
const plan = planFrame(brief);
const [job] = plan.stockJobs;

test("what the library makes says which form it has", () => {
  expect(plan.brief.schemaVersion).toBe(1);
  expect(job!.schemaVersion).toBe(1);
  expect(fitStock(job!).schemaVersion).toBe(1);
});

test("briefs and jobs without it are of the first form", () => {
  const { schemaVersion, ...bare } = job!;
  expect(parseBrief({ ...brief, schemaVersion })).toEqual(parseBrief(brief));
  const fit = fitStock(bare);
  expect(fit).toEqual(fitStock(job!));
  expect(verifyFit(bare, fit)).toEqual({ ok: true });
  expect(parseStockJob(bare)).toEqual(bare);
});

test("a brief of another form is refused by that alone", () => {
  const other = { ...brief, schemaVersion: 2, sides: "six", lists: [] };
  const outcome = tryParseBrief(other);
  const message = "Expected `schemaVersion` to be 1, the form of brief that is known here, got 2 (number)";
  expect(outcome.ok ? [] : outcome.issues.map((issue) => [issue.code, issue.message])).toEqual([["unknown", message]]);
  expect(() => planFrame(other as never)).toThrow(message);
  const stored = throughJson(plan);
  expect(() => parsePlan({ ...stored, brief: { ...stored.brief, schemaVersion: 2 } })).toThrow(
    "Expected `plan.brief.schemaVersion` to be 1",
  );
});

test("a job or a fit of another form is refused by that alone", () => {
  const other = { ...job!, schemaVersion: 2, pieces: "many" };
  const message = "Expected `job.schemaVersion` to be 1, the form of job that is known here, got 2 (number)";
  const outcome = tryParseStockJob(other);
  expect(outcome.ok ? [] : outcome.issues.map((issue) => issue.message)).toEqual([message]);
  expect(() => fitStock(other as never)).toThrow(message);
  expect(() => verifyFit(job!, { ...fitStock(job!), schemaVersion: 2 } as never)).toThrow(
    "Expected `fit.schemaVersion` to be 1, the form of fit that is known here, got 2 (number)",
  );
});

test("a stored plan whose brief lacks a default is refused", () => {
  const stored = throughJson(plan);
  for (const key of Object.keys(plan.brief) as (keyof typeof plan.brief)[]) {
    if (key === "sticks") continue;
    expect(() => parsePlan({ ...stored, brief: { ...stored.brief, [key]: undefined } }), key).toThrow(
      /Expected `plan\.brief\.|in `plan\.brief`/,
    );
  }
});
