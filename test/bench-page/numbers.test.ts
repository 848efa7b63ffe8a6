import { describe, expect, test } from "vitest";
import { planFrame, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw } from "miterwright/saw";
import { fitStock } from "miterwright/stock";
import type { Formats } from "miterwright/units";
import { LANGUAGE } from "../../docs/bench/language.js";
import { penOf, type Pen } from "../../docs/bench/writers.js";
import { tellPage } from "./page-cards.js";

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

const PEN: Pen = { ...LANGUAGE, formats: FORMATS, fine: FORMATS };

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
    contents: [{ name: "pane", thickness: 2.5, material: "acrylic", cost: { amount: 8.5, per: "square-foot" } }],
  },
};

/** Every text of a document, an element each. */
function textsOf(html: string): string[] {
  return html
    .replace(/<style>.*?<\/style>/s, "")
    .split(/<[^>]*>/)
    .map((text) => text.trim());
}

/** Lengths and angles have decimals or signs; counts, years and printed sources are written as they are. */
const PAST_FORMATTERS = /\d\.\d|\d\/\d|\d\s?°(?!\s?C)|\d degrees/;
const SOURCE = "Wood Handbook";

describe.each(Object.entries(BRIEFS))("%s", (_, changes) => {
  const plan = planFrame({ ...BRIEF, ...changes });
  const past = (texts: readonly string[]): string[] =>
    texts.filter((text) => PAST_FORMATTERS.test(text) && !text.includes(SOURCE));

  test("shows none past them on the page", () => {
    const [job] = plan.stockJobs;
    const { cards: told, notReady } = tellPage(plan, PEN, job === undefined ? null : fitStock(job));
    const cards = [...notReady, ...Object.values(told).map((html) => html ?? "")];
    expect(past(cards.flatMap(textsOf))).toEqual([]);
  });

  test("ties numbers to their fractions and units on the page", () => {
    const inches = planFrame({ ...BRIEF, ...changes, unit: "in" });
    const { cards: told } = tellPage(inches, penOf({ unit: "in", fineness: "usual" }));
    const cards = Object.values(told).map((html) => html ?? "");
    // A drawing sets every text on one line.
    const texts = cards.map((html) => html.replace(/<svg.*?<\/svg>/gs, ""));
    const all = texts.flatMap(textsOf);
    expect(all.filter((text) => /\d \d+\/\d+/.test(text))).toEqual([]);
    expect(all.some((text) => /\d\u00a0\d+\/\d+&quot;/.test(text))).toBe(true);
  });
});
