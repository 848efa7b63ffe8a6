import { describe, expect, test } from "vitest";
import { planFrame, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw } from "miterwright/saw";
import { shopSheet } from "miterwright/sheet";
import { fitStock } from "miterwright/stock";
import { formatters, type Formats } from "miterwright/units";

/** Letters for digits, so that every digit that is left has come past the formatters. */
const coded = (text: string): string => text.replace(/\d/g, (digit) => "abcdefghij"[Number(digit)]!).replace(".", "~");
const FORMATS: Formats = {
  length: (value: number): string => `${coded(value.toFixed(1))}L`,
  small: (value: number): string => `${coded(value.toFixed(3))}S`,
  angle: (degrees: number): string => `${coded(degrees.toFixed(2))}A`,
  smallAngle: (degrees: number): string => `${coded(degrees.toFixed(6))}B`,
  mass: (kilograms: number): string => `${coded(kilograms.toFixed(2))}M`,
  force: (newtons: number): string => `${coded(newtons.toFixed(2))}F`,
  percent: (percent: number): string => `${coded(percent.toFixed(1))}P`,
  temperature: (celsius: number): string => `${coded(celsius.toFixed(1))}T`,
  area: (area: number): string => `${coded(area.toFixed(1))}Q`,
  number: (value: number): string => `${coded(value.toFixed(3))}N`,
  money: (amount: number): string => `${coded(amount.toFixed(2))}C`,
};

const BRIEF: ProfileBrief = {
  sides: 7,
  slope: 25,
  opening: { contains: { width: 301.7, height: 222.3 } },
  profile: molding({ width: 55, thickness: 20, rabbet: { width: 8, depth: 12 } }),
  clearance: 1.5,
  contents: [{ name: "pane", thickness: 2 }],
};
const BLADE = miterSaw();
const BRIEFS: Readonly<Record<string, Partial<Omit<ProfileBrief, "profile" | "measured">>>> = {
  "a tray": {},
  "a frame that no lay suits": { sides: 3, saw: BLADE },
  "a frame that some lays do not suit": {
    slope: 80,
    saw: miterSaw({ bevel: { ...BLADE.bevel, left: 20.25, right: 20.25 } }),
  },
  "a frame of many sides": { sides: 60, slope: 3.3 },
  "a frame with tolerances under every formatter": { sides: 8, acceptedGap: 0.001 },
  "a stick in its cradle": { lay: "propped" },
  "a frame with everything": {
    sticks: [{ id: "pine", length: 2400, cost: 7.25 }],
    species: "white ash",
    cost: { amount: 3.5, per: "meter" },
    hanging: { by: "wire", screwDepth: 8.5 },
    contents: [
      { name: "pane", thickness: 2.5, material: "acrylic", cost: { amount: 8.5, per: "square-foot" } },
      { name: "board", thickness: 3.5, material: { species: "white oak" } },
    ],
  },
};

/** Every text of a document, an element each. */
function textsOf(html: string): string[] {
  return html
    .replace(/<style>.*?<\/style>/s, "")
    .split(/<[^>]*>/)
    .map((text) => text.trim());
}

/** What is written has decimals or signs; counts, years and printed sources are written as they are. */
const PAST_FORMATTERS = /\d\.\d|\d\/\d|\d\s?°(?!\s?C)|\d degrees/;
const SOURCE = "Wood Handbook";

describe.each(Object.entries(BRIEFS))("%s", (_, changes) => {
  const plan = planFrame({ ...BRIEF, ...changes });
  const past = (texts: readonly string[]): string[] =>
    texts.filter((text) => PAST_FORMATTERS.test(text) && !text.includes(SOURCE));

  test("prints no length and no angle past the formatters", () => {
    const [job] = plan.stockJobs;
    const fits = job === undefined ? [] : [fitStock(job, { stepLimit: 1e5 })];
    expect(past(textsOf(shopSheet(plan, { formats: FORMATS, fits, title: "Sheet" })))).toEqual([]);
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
