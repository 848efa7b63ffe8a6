import { describe, expect, test } from "vitest";
import { fitStock, type StockFit } from "miterwright/stock";
import type { JobState } from "../../docs/bench/job-state.js";
import { LANGUAGE } from "../../docs/bench/language.js";
import { planJob } from "../../docs/bench/plan-job.js";
import { readyText, type Rack } from "../../docs/bench/ready-text.js";
import { penOf } from "../../docs/bench/writers.js";
import { jobOf } from "./jobs.js";
import { tellPage } from "./page-cards.js";

const FIELDS = {
  unit: "in",
  sides: "4",
  width: "16",
  height: "20",
  moldingWidth: "1 1/4",
  thickness: "3/4",
  rabbetWidth: "1/4",
  rabbetDepth: "3/8",
} as const;

/** What the page says of a job and its rack, its spaces untied. */
function said(state: JobState, rack: Rack = { kind: "none" }): string {
  const { plan } = planJob(state);
  const pen = penOf(state.values);
  const { notReady } = tellPage(plan!, pen, rack.kind === "fit" ? rack.fit : null);
  return readyText(plan!, notReady, rack, pen).replaceAll("\u00a0", " ");
}

/** The page's status of six pieces and a rack. */
function rackText(sticks: Parameters<typeof jobOf>[1]): { readonly page: string; readonly fit: StockFit } {
  const state = jobOf({ ...FIELDS, sides: "6" }, sticks);
  const fit = fitStock(planJob(state).plan!.stockJobs[0]!);
  return { fit, page: said(state, { kind: "fit", fit }) };
}

const status = (changes: Parameters<typeof jobOf>[0] = {}): string => said(jobOf({ ...FIELDS, ...changes }));

describe("what has to be mended stands where the page would say that the plan is ready", () => {
  test("contents that miss the lip", () => {
    expect(status()).toMatch(
      /^Not ready to cut\. The frame is square.*miss the lip at the left and the right.*\(left and right 1 3\/4"\)$/,
    );
    expect(status({ width: "20" })).toMatch(/^The plan is ready: 4 pieces/);
    expect(status({ sides: "6" })).toMatch(/^The plan is ready: 6 pieces/);
  });

  test("contents that the rabbet cannot hold", () => {
    expect(status({ sides: "6", slope: "80" })).toMatch(
      /^Not ready to cut\. The contents can't be held\. The rabbet is too/,
    );
  });

  test("a saw on which no lay suits", () => {
    expect(status({ width: "20", miterReach: "1", bevelLeft: "1" })).toBe(
      "Not ready to cut. No way to lay the stick suits this saw; the table says why.",
    );
  });
});

describe("sticks that do not give all pieces come before all else", () => {
  test("where the rack runs short", () => {
    const { fit, page } = rackText({ sticks: [{ name: "poplar", length: "40", count: "2" }] });
    const missing = fit.unplaced[0]!.count;
    expect([fit.status, fit.shortage, missing > 1]).toEqual(["short", "proven", true]);
    expect(page).toBe(`Not ready to cut. The sticks can't give all pieces: still missing ${missing} × side.`);
    const enough = rackText({ sticks: [{ name: "poplar", length: "40" }] });
    expect(enough.fit.status).toBe("optimal");
    expect(enough.page).toMatch(/^The plan is ready: 6 pieces/);
  });

  test("where no stick is long enough, and before it is known", () => {
    const short = jobOf({ ...FIELDS, sides: "6" }, { sticks: [{ length: "8" }] });
    for (const rack of [{ kind: "pending" }, { kind: "refused", why: "tooLong" }] as const)
      expect(said(short, rack)).toMatch(
        /^Not ready to cut\. No stick on offer is long enough for a piece[^.]*\.[^.]*$/,
      );
    const long = jobOf({ ...FIELDS, sides: "6" }, { sticks: [{ length: "96" }] });
    expect(said(long, { kind: "pending" })).toMatch(/^The sticks are still being fitted: 6 pieces/);
    expect(said(long, { kind: "refused", why: "numbers" })).toBe(
      `Not ready to cut. ${LANGUAGE.page.rack.refused.numbers}`,
    );
    expect(said(long)).toMatch(/^The plan is ready: 6 pieces/);
  });
});
