import { describe, expect, test } from "vitest";
import { planFrame } from "miterwright/frame";
import { shopSheet } from "miterwright/sheet";
import { fitStock } from "miterwright/stock";
import { formatters } from "miterwright/units";
import { BRIEF, CHANGES, CODED, pastFormatters, textsOf } from "../coded-numbers.js";

describe.each(Object.entries(CHANGES))("%s", (_, changes) => {
  const plan = planFrame({ ...BRIEF, ...changes });

  test("prints no length and no angle past the formatters", () => {
    const [job] = plan.stockJobs;
    const fits = job === undefined ? [] : [fitStock(job, { stepLimit: 1e5 })];
    expect(pastFormatters(shopSheet(plan, { formats: CODED, fits, title: "Sheet" }))).toEqual([]);
  });

  test("ties numbers to their fractions and units", () => {
    const inches = planFrame({ ...BRIEF, ...changes, unit: "in" });
    for (const formats of [undefined, formatters({ unit: "in", denominator: 64, decimalMarker: "," })]) {
      // A drawing sets every text on one line.
      const texts = textsOf(shopSheet(inches, { formats }).replace(/<svg.*?<\/svg>/gs, ""));
      expect(texts.filter((text) => /\d \d+\/\d+/.test(text))).toEqual([]);
      expect(texts.some((text) => /\d\u00a0\d+\/\d+&quot;/.test(text))).toBe(true);
    }
  });
});
