import type { ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw } from "miterwright/saw";
import type { Formats } from "miterwright/units";

/** Letters for digits, so that every digit that is left has come past the formatters. */
const coded = (text: string): string => text.replace(/\d/g, (digit) => "abcdefghij"[Number(digit)]!).replace(".", "~");
/** Formatters that write letters for digits. */
export const CODED: Formats = {
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

/** A tray. */
export const BRIEF: ProfileBrief = {
  sides: 7,
  slope: 25,
  opening: { contains: { width: 301.7, height: 222.3 } },
  profile: molding({ width: 55, thickness: 20, rabbet: { width: 8, depth: 12 } }),
  clearance: 1.5,
  contents: [{ name: "pane", thickness: 2 }],
};
const BLADE = miterSaw();
/** Frames that between them print every kind of number, as changes of {@link BRIEF}. */
export const CHANGES: Readonly<Record<string, Partial<Omit<ProfileBrief, "profile" | "measured">>>> = {
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
export function textsOf(html: string): string[] {
  return html
    .replace(/<style>.*?<\/style>/s, "")
    .split(/<[^>]*>/)
    .map((text) => text.trim());
}

/** What is written has decimals or signs; counts, years and printed sources are written as they are. */
const PAST_FORMATTERS = /\d\.\d|\d\/\d|\d\s?°|\d degrees/;
const SOURCE = "Wood Handbook";

/** The texts of a document, an element each, with numbers that came past the formatters. */
export function pastFormatters(html: string): string[] {
  return textsOf(html).filter((text) => PAST_FORMATTERS.test(text) && !text.includes(SOURCE));
}
