import { describe, expect, test } from "vitest";
import { checkFit, fitStock, type FitFault, type StockFit, type StockJob } from "miterwright/stock";

const job: StockJob = {
  pieces: [
    { id: "rail", length: 40, count: 2 },
    { id: "slat", length: 12.5, count: 3 },
    { id: "pair", run: [10, 8] },
  ],
  sticks: [
    { id: "long", length: 100 },
    { id: "rack", length: 60, cost: 5, count: 1, defects: [{ start: 20, end: 22 }] },
  ],
  kerf: 0.5,
  trim: 1,
  keep: 10,
};
const fit = fitStock(job, { workLimit: 1e6 });

/** The codes of the faults of a plan that was changed by hand. */
function codes(change: (fit: Mutable<StockFit>) => void, of: StockJob = job): FitFault["code"][] {
  const copy = JSON.parse(JSON.stringify(fit)) as Mutable<StockFit>;
  change(copy);
  const check = checkFit(of, copy);
  return check.ok ? [] : [...new Set(check.faults.map(({ code }) => code))];
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] extends object ? Mutable<T[K]> : T[K] };

/** Where a piece, or a part of a run, lies in the plan. */
function find(plan: Mutable<StockFit>, piece: string, part?: number) {
  for (const layout of plan.layouts) {
    const k = layout.cuts.findIndex((cut) => cut.piece === piece && cut.part === part);
    if (k >= 0) return { layout, k, cut: layout.cuts[k]! };
  }
  throw new Error(`no ${piece}`);
}

describe("checkFit", () => {
  test("passes a plan, also after JSON", () => {
    expect(checkFit(job, fit)).toEqual({ ok: true });
    expect(codes(() => undefined)).toEqual([]);
  });

  test("sees a piece of the wrong length", () => {
    expect(codes((plan) => (find(plan, "rail").cut.end -= 0.5))).toContain("length");
  });

  test("sees a piece that starts in the saw cut before it", () => {
    const faults = codes((plan) => {
      const { layout } = find(plan, "rail");
      const last = layout.cuts.at(-1)!;
      expect(layout.cuts.length).toBeGreaterThan(1);
      last.start -= 0.5;
      last.end -= 0.5;
    });
    expect(faults).toContain("gap");
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

  test("sees a run that is torn apart", () => {
    expect(codes((plan) => find(plan, "pair", 1).layout.cuts.reverse())).toContain("run");
    expect(
      codes((plan) => {
        const { layout, k } = find(plan, "pair", 1);
        layout.cuts.splice(k, 1);
      }),
    ).toContain("run");
  });

  test("sees a missing piece, and one too many", () => {
    expect(codes((plan) => find(plan, "slat").layout.times++)).toContain("demand");
    expect(codes((plan) => find(plan, "slat").layout.cuts.splice(find(plan, "slat").k, 1))).toContain("demand");
  });

  test("sees names that the job does not have", () => {
    expect(codes((plan) => (find(plan, "rail").cut.piece = "rial"))).toContain("unknown-piece");
    expect(codes((plan) => (plan.layouts[0]!.stick = "lnog"))).toContain("unknown-stick");
  });

  test("sees sticks that are listed and not there, and parts of what is no run", () => {
    expect(codes((plan) => plan.sticks.push({ stick: "ghost", count: 3 }))).toEqual(["unknown-stick"]);
    expect(codes((plan) => (find(plan, "rail").cut.part = 0))).toEqual(["run"]);
  });

  test("sees a bound of a short plan that is above nothing, and words that say nothing", () => {
    const few: StockJob = { ...job, sticks: [{ id: "rack", length: 60, count: 1 }] };
    const short = fitStock(few, { workLimit: 1e6 });
    expect(short).toMatchObject({ status: "short", bound: 0 });
    expect(checkFit(few, short)).toEqual({ ok: true });
    expect(checkFit(few, { ...short, bound: short.cost })).toMatchObject({ ok: false, faults: [{ code: "status" }] });
    expect(() => checkFit(few, { ...short, shortage: "perhaps" as never })).toThrow(
      'Expected `fit.shortage` to be one of "proven", "not found", got "perhaps" (string)',
    );
    expect(() => checkFit(job, { ...fit, stopped: "tired" as never })).toThrow(
      'Expected `fit.stopped` to be one of "time", "work", "asked", got "tired" (string)',
    );
  });

  test("sees more sticks than there are", () => {
    const fewer: StockJob = { ...job, sticks: job.sticks.map((stick) => ({ ...stick, count: 0 })) };
    expect(codes(() => undefined, fewer)).toContain("limit");
  });

  test.each(["cost", "used", "made", "kept", "waste", "gap", "resolution"] as const)("sees a wrong %s", (name) => {
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
