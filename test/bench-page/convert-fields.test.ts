import fc from "fast-check";
import { parseLength, type LengthUnit } from "miterwright/units";
import { describe, expect, test } from "vitest";
import { convertJob, convertText, type Typed } from "../../docs/bench/convert-fields.js";
import { exampleJob } from "../../docs/bench/example-job.js";
import { FIELDS } from "../../docs/bench/field-table.js";
import type { FieldName } from "../../docs/bench/fields.js";
import type { JobState } from "../../docs/bench/job-state.js";
import { planJob } from "../../docs/bench/plan-job.js";
import { jobOf } from "./jobs.js";

const UNITS = ["mm", "cm", "in", "ft"] as const;

describe("a length as typed, when the form's unit changes", () => {
  test.each([
    // An inch is 25.4 mm (agreement of 1959), a foot 12 inches.
    ["25.4", "mm", "in", "1"],
    ["19.05", "mm", "in", "3/4"],
    ["300", "mm", "in", "11.811"],
    ["3.2", "mm", "in", "0.12598"],
    ["0.25", "mm", "in", "0.009843"],
    ["5 7/16", "in", "mm", "138.113"],
    ["1/64", "in", "mm", "0.3969"],
    ["300", "mm", "cm", "30"],
    ["340", "mm", "in", "13.3858"],
    ["1.234", "mm", "cm", "0.1234"],
    ["1 1/2", "ft", "in", "18"],
    ["14.5", "in", "ft", `1' 2 1/2"`],
    ["300", "mm", "ft", `11.811"`],
    ["0", "mm", "in", "0"],
  ] as const)("%s becomes, from %s to %s, %s", (text, from, to, expected) => {
    expect(convertText(text, from, to)).toBe(expected);
  });

  test.each(["90.5 mm", `5 7/16"`, "1' 2 1/2\"", "?!", "", " ", "1,234"])("%j stays", (text) => {
    expect(convertText(text, "mm", "in")).toBe(text);
  });

  test("comes back as it was typed, on every graduation of a rule", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500_000 }), fc.integer({ min: 1, max: 12_800 }), (hundredths, parts) => {
        const text = String(hundredths / 100);
        for (const unit of ["in", "cm"] as const)
          expect(convertText(convertText(text, "mm", unit), unit, "mm")).toBe(text);
        const inches = parts / 64;
        const back = convertText(convertText(String(inches), "in", "mm"), "mm", "in");
        expect(parseLength(back, "in")).toBe(inches);
      }),
    );
  });

  test("says the same within a few thousandths of a millimeter", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        fc.constantFrom(...UNITS),
        fc.constantFrom(...UNITS),
        (value, from, to) => {
          const text = value.toFixed(8);
          const before = parseLength(text, from);
          if (before === 0) return;
          const millimeters = (written: string, unit: LengthUnit): number =>
            parseLength(written, unit) * { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 }[unit];
          const was = millimeters(text, from);
          expect(Math.abs(millimeters(convertText(text, from, to), to) - was)).toBeLessThanOrEqual(
            Math.min(0.0025, 1.01e-4 * was),
          );
        },
      ),
    );
  });
});

describe("a whole form", () => {
  /** Every field that takes a length, filled in. */
  const filled = (): JobState =>
    jobOf(
      Object.fromEntries(
        Object.entries(FIELDS)
          .filter(([, { kind }]) => kind === "length" || kind === "room")
          .map(([name]) => [name, "25.4"]),
      ),
      {
        sticks: [{ length: "2540", count: "3", cost: "18.50", name: "2540" }],
        layers: [{ thickness: "2.54", density: "2500", cost: "4", name: "2" }],
      },
    );

  test("has every length converted, and nothing else", () => {
    const { values, lists } = convertJob(filled(), "mm", "in", new Map());
    for (const [name, { kind }] of Object.entries(FIELDS)) {
      if (kind === "length" || kind === "room") expect(values[name as FieldName], name).toBe("1");
    }
    expect(values.unit).toBe("in");
    expect(lists).toEqual({
      sticks: [{ length: "100", count: "3", cost: "18.50", name: "2540" }],
      layers: [{ thickness: "0.1", density: "2500", cost: "4", name: "2" }],
    });
  });

  test("keeps its plan", () => {
    const before = planJob(exampleJob()).plan!;
    const after = planJob(convertJob(exampleJob(), "mm", "in", new Map())).plan!;
    expect(after.geometry.pieces[0].longest.length * 25.4).toBeCloseTo(before.geometry.pieces[0].longest.length, 2);
    // Costs that stand beside a stick without one are counted in lengths, and the offcuts stay as cheap as they were.
    const share = ({ stockJobs: [job] }: typeof before): number => job!.sticks[1]!.cost! / job!.sticks[0]!.length;
    expect(share(after)).toBeCloseTo(share(before), 4);
  });

  test("has no other cost converted beside such sticks", () => {
    const state = jobOf(
      { cost: "50.8" },
      { sticks: [{ length: "2540" }], layers: [{ thickness: "2.54", cost: "25.4" }] },
    );
    const { values, lists } = convertJob(state, "mm", "in", new Map());
    expect(values.cost).toBe("50.8");
    expect(lists.layers).toEqual([{ thickness: "0.1", cost: "25.4" }]);
  });

  test("finds again what was typed, letter by letter, however often the unit changes", () => {
    const typed = new Map<string, Typed>();
    const start = jobOf(
      { width: "1/3", height: "4.25", thickness: "1,5" },
      { sticks: [{ length: "8 ft" }, { length: "96.0" }] },
    );
    let state: JobState = { ...start, values: { ...start.values, unit: "in" } };
    const first = state;
    const way: LengthUnit[] = ["mm", "ft", "cm", "mm", "in"];
    let from: LengthUnit = "in";
    for (const to of way) {
      state = convertJob(state, from, to, typed);
      from = to;
    }
    expect(state).toEqual(first);
    // What was typed since then counts.
    const inches = convertJob(jobOf({ width: "254" }), "mm", "in", typed);
    expect(inches.values.width).toBe("10");
  });
});
