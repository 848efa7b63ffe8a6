import { describe, expect, test } from "vitest";
import { planJob } from "../../docs/bench/plan-job.js";
import { fitStock, type StockFit, type StockStick } from "miterwright/stock";
import { readyText, type Rack } from "../../docs/bench/ready-text.js";
import { writersOf } from "../../docs/bench/writers.js";
import { jobOf } from "./jobs.js";

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

/** The page's status of six pieces and a rack. */
function rackText(sticks: StockStick[]): { readonly page: string; readonly fit: StockFit } {
  const rows = sticks.map(({ length, count, cost, id }) => ({
    name: id,
    length: String(length),
    ...(count === undefined ? {} : { count: String(count) }),
    ...(cost === undefined ? {} : { cost: String(cost) }),
  }));
  const state = jobOf({ ...FIELDS, sides: "6" }, { sticks: rows });
  const plan = planJob(state).plan!;
  const fit = fitStock(plan.stockJobs[0]!);
  return {
    fit,
    page: readyText(plan, writersOf(state.values), { kind: "fit", fit }),
  };
}

function status(changes: Parameters<typeof jobOf>[0] = {}): string {
  const state = jobOf({ ...FIELDS, ...changes });
  return readyText(planJob(state).plan!, writersOf(state.values)).replaceAll("\u00a0", " ");
}

describe("contents that miss the lip come before all else", () => {
  test("on the page, instead of saying that the plan is ready", () => {
    expect(status()).toMatch(
      /^Not ready yet\. The frame is square.*miss the lip at the left and the right.*\(left and right 1 3\/4"\)$/,
    );
    expect(status({ width: "20" })).toMatch(/^The plan is ready: 4 pieces/);
    expect(status({ sides: "6" })).toMatch(/^The plan is ready: 6 pieces/);
  });

  test("and the page calls no plan ready whose rabbet cannot hold what goes in", () => {
    expect(status({ sides: "6", slope: "80" })).toMatch(
      /^Not ready yet\. The contents can't be held\. The rabbet is too/,
    );
  });
});

describe("sticks that do not give all pieces come before all else", () => {
  test("where the rack runs short", () => {
    const { fit, page } = rackText([{ id: "poplar", length: 40, count: 2 }]);
    const missing = fit.unplaced[0]!.count;
    expect([fit.status, fit.shortage, missing > 1]).toEqual(["short", "proven", true]);
    expect(page).toBe(`Not ready yet. The rack is too small: however it is cut up, ${missing} pieces are missing.`);
    const enough = rackText([{ id: "poplar", length: 40 }]);
    expect(enough.fit.status).toBe("optimal");
    expect(enough.page).toMatch(/^The plan is ready: 6 pieces/);
  });

  test("where no stick is long enough, and before it is known", () => {
    const state = jobOf({ ...FIELDS, sides: "6" }, { sticks: [{ length: "8" }] });
    const { plan } = planJob(state);
    const said = (rack: Rack): string => readyText(plan!, writersOf(state.values), rack);
    expect(said({ kind: "pending" })).toMatch(/^Not ready yet\. No stick on offer is long enough for a piece/);
    const long = jobOf({ ...FIELDS, sides: "6" }, { sticks: [{ length: "96" }] });
    const saidOf = (rack: Rack): string => readyText(planJob(long).plan!, writersOf(long.values), rack);
    expect(saidOf({ kind: "pending" })).toMatch(/^The sticks are still being fitted: 6 pieces/);
    expect(saidOf({ kind: "refused", why: "they are odd." })).toBe(
      "Not ready yet. The sticks don't suit: they are odd.",
    );
    expect(saidOf({ kind: "none" })).toMatch(/^The plan is ready: 6 pieces/);
  });
});
