import fc from "fast-check";
import { correctSetting } from "miterwright/closure";
import { InputError, isInputError } from "miterwright/errors";
import { correctFromGap, planFrame, type FrameBrief } from "miterwright/frame";
import { describeCorrection, describeFit, describePanel, describePlan, describeShopOrder } from "miterwright/report";
import { reportSheet } from "miterwright/sheet";
import { fitStock, type StockFit, type StockJob } from "miterwright/stock";
import { describe, expect, test } from "vitest";
import { throughJson } from "../frame/briefs.js";
import { BRIEFS, FORMATS, JOB, ORDER, PLANS, TOLD, fitsOf } from "./reports.js";

type Key = string | number;

/** The places of a value that hold something, each as the keys that lead there. */
function placesOf(value: unknown, place: readonly Key[] = []): (readonly Key[])[] {
  const own = place.length === 0 ? [] : [place];
  if (typeof value !== "object" || value === null) return own;
  const keys: readonly Key[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return [...own, ...keys.flatMap((key) => placesOf((value as Record<Key, unknown>)[key], [...place, key]))];
}

function at(value: unknown, place: readonly Key[]): unknown {
  return place.reduce<unknown>((holder, key) => (holder as Record<Key, unknown>)[key], value);
}

/** A copy with another value at a place. */
function replaced<T>(value: T, place: readonly Key[], other: unknown): T {
  const copy = structuredClone(value);
  const holder = at(copy, place.slice(0, -1)) as Record<Key, unknown>;
  holder[place.at(-1)!] = other;
  return copy;
}

/** Values of every other kind than the one that stands there. */
function strangers(value: unknown): readonly unknown[] {
  if (typeof value === "number") return ["7", {}, [7], true, NaN, Infinity];
  if (typeof value === "string") return [7, {}, ["x"], true];
  if (typeof value === "boolean") return ["yes", 1, {}];
  if (Array.isArray(value)) return [{}, 7, "x", new Array(3)];
  // What is missing may be anything but this.
  return value === null ? [NaN] : [7, "x", [], true];
}

/** A value of which one field is of another kind. */
function damagedOnes(value: unknown): fc.Arbitrary<{ readonly place: readonly Key[]; readonly other: unknown }> {
  return fc
    .constantFrom(...placesOf(value))
    .chain((place) => fc.constantFrom(...strangers(at(value, place))).map((other) => ({ place, other })));
}

/** Fields that may be of several kinds, so that another kind may be as good: a lay is a name or an angle, a cost a number or a rate, a cell a number or a text. */
const OF_KINDS = ["lay", "cost", "material", "rows"];

const KINDS: Readonly<Record<string, readonly [value: unknown, tell: (value: never) => unknown]>> = {
  ...Object.fromEntries(
    Object.entries(PLANS).map(([name, plan]) => [
      name,
      [throughJson({ plan, fits: fitsOf(plan) }), (value) => describePlan(value["plan"], { fits: value["fits"] })],
    ]),
  ),
  "a fit": [throughJson(fitStock(JOB)), (fit) => describeFit(JOB, fit, { formats: FORMATS })],
  "a panel": [throughJson(PLANS["a tray"]!.panel), (panel) => describePanel(panel, { formats: FORMATS })],
  "a shop order": [throughJson(ORDER), (order) => describeShopOrder(order, { formats: FORMATS })],
  "a correction": [
    throughJson(correctSetting({ sides: 8, slope: 20, width: 40, seenGap: 1.2, open: "outside" })),
    (correction) => describeCorrection(correction, { formats: FORMATS }),
  ],
  "a correction on the saw": [
    throughJson(correctFromGap(PLANS["a tray"]!, { seenGap: 1, open: "inside" })),
    (correction) => describeCorrection(correction, { formats: FORMATS }),
  ],
  "a report": [
    throughJson(describePlan(PLANS["a flat frame with everything"]!)),
    (report) => reportSheet(report, { figure: () => ({ svg: "<svg/>" }) as never }),
  ],
};

describe.each(Object.entries(KINDS))("%s", (_, [value, tell]) => {
  test("is refused with a typed error, and never told, where a field is of another kind", () => {
    fc.assert(
      fc.property(damagedOnes(value), ({ place, other }) => {
        fc.pre(!place.some((key) => OF_KINDS.includes(String(key))));
        const damaged = replaced(value, place, other);
        let refusal: unknown = "told";
        try {
          tell(damaged as never);
        } catch (error) {
          refusal = error;
        }
        expect([place.join("."), isInputError(refusal), String(refusal)]).toEqual([
          place.join("."),
          true,
          expect.anything(),
        ]);
      }),
      { numRuns: 150 },
    );
  });
});

describe("a fit", () => {
  const tray = PLANS["a tray"]!;
  const [fit] = fitsOf(tray) as [StockFit];
  const [job] = tray.stockJobs as [StockJob];

  test("is refused where one of its numbers is another", () => {
    const numbers = placesOf(throughJson(fit)).filter((place) => typeof at(fit, place) === "number");
    expect(numbers.length).toBeGreaterThan(12);
    for (const place of numbers) {
      // No fit says how far its bound may be from the truth, nor how fine its search was.
      if (["bound", "resolution"].includes(String(place[0]))) continue;
      const other = replaced(fit, place, (at(fit, place) as number) + 1);
      expect(() => describeFit(job, other, { formats: FORMATS })).toThrow(InputError);
      expect(() => describePlan(tray, { fits: [other] })).toThrow(/`fits\[0\]/);
    }
  });

  test.each([
    ["of another number of pieces", { sides: 8 }, ""],
    ["of shorter pieces", { opening: { acrossFlats: 280 } }, ""],
    ["of other sticks", { sticks: [{ id: "oak", length: 800 }] }, 'The job has no stick "oak"'],
  ] as const)("%s is refused, by the place of the fault", (_, changes, message) => {
    const [stale] = fitsOf(planFrame({ ...BRIEFS["a tray"]!, ...changes } as FrameBrief)) as [StockFit];
    expect(() => describePlan(tray, { fits: [stale] })).toThrow(
      `Expected \`fits[0]\` to be a fit of its stock job: ${message}`,
    );
    expect(() => describeFit(job, stale, { formats: FORMATS })).toThrow(
      `Expected \`fit\` to be a fit of its stock job: ${message}`,
    );
  });

  test("is refused where there is no job for it, and so is what is no array", () => {
    expect(() => describePlan(tray, { fits: [fit, fit] })).toThrow(
      "Expected `fits` to be at most as many as the plan has stock jobs, 1, got 2",
    );
    expect(() => describePlan(tray, { fits: fit as never })).toThrow("Expected `fits` to be an array of stock fits");
    expect(() => describePlan(tray, { fits: [undefined] as never })).toThrow("Expected `fits[0]` to be an object");
    expect(() => describePlan(tray, { fits: [null] as never })).toThrow("Expected `fits[0]` to be an object, got null");
  });
});

describe("options", () => {
  const [tray, formats] = [PLANS["a tray"]!, FORMATS];
  const correction = correctSetting({ sides: 8, width: 40, seenGap: 1.2, open: "outside" });
  const CALLS: Readonly<Record<string, (options: never) => unknown>> = {
    describePlan: (options) => describePlan(tray, options),
    describeFit: (options) => describeFit(JOB, fitStock(JOB), options),
    describePanel: (options) => describePanel(tray.panel!, options),
    describeShopOrder: (options) => describeShopOrder(ORDER, options),
    describeCorrection: (options) => describeCorrection(correction, options),
  };

  test.each(Object.entries(CALLS))("of %s are refused where a key is unknown or a value is not sound", (_, call) => {
    expect(() => call({ formats, lenght: 3 } as never)).toThrow(/^Expected no key but .*, got `lenght`/);
    expect(() => call({ formats: { length: String } } as never)).toThrow("Expected `formats.small` to be a function");
    expect(() => call({ formats, words: 3 } as never)).toThrow("Expected `words` to be an object, got 3 (number)");
    expect(() => call(null as never)).toThrow("Expected `options` to be an object, got null");
  });

  test("of a panel say how it is made", () => {
    expect(() => describePanel(tray.panel!, { formats, work: "none" as never })).toThrow(
      'Expected `work` to be one of "sawn", "glass", got "none" (string)',
    );
  });

  test("of a report's sheet are refused where its figures cannot be drawn or a key is unknown", () => {
    const report = describePlan(tray);
    expect(() => reportSheet(report, {} as never)).toThrow("Expected `figure` to be a function that draws a figure");
    expect(() => reportSheet(report, { figure: () => null as never, size: 3 } as never)).toThrow("got `size`");
    expect(() => reportSheet({ title: "Tray" } as never, { figure: () => null as never })).toThrow(
      "Expected `report.sections` to be an array, got undefined",
    );
    expect(() => reportSheet(report, { figure: () => "<svg/>" as never })).toThrow(
      'Expected `figure` to be a function that draws a figure, but its result was no drawing, got "<svg/>" (string)',
    );
  });
});

test("every kind of told things is damaged above", () => {
  expect(Object.keys(TOLD).filter((name) => !(name in KINDS))).toEqual(["a pane"]);
});
