import { describe, expect, test } from "vitest";
import { type FrameBrief } from "miterwright/frame";
import { movementLines } from "miterwright/words";
import { shopSheet } from "miterwright/sheet";
import { measuredPlan, plan } from "../drawing/frames.js";
import { textOf } from "../drawing/read-xml.js";
import { loose, SHORT } from "../formats.js";
import { readSheet } from "./read-sheet.js";

const TELL = { formats: SHORT };

const moving: Partial<FrameBrief> = {
  species: "black cherry",
  clearance: 2,
  contents: [{ name: "lid <oak>", thickness: 4, material: { species: "white oak" } }],
};

describe("a year on the sheet", () => {
  test("is what the plan says in words, beside the checks", () => {
    const frame = plan(moving);
    const { text, elements } = readSheet(shopSheet(frame, TELL));
    const heads = elements.filter(({ name }) => /^h[23]$/.test(name)).map((element) => textOf(element));
    expect(heads.slice(-3)).toEqual(["How true the saw must be", "Over the year", "The panel"]);
    const lines = loose(movementLines(frame, TELL));
    expect(lines).toHaveLength(3);
    for (const line of lines) expect(text).toContain(line);
  });

  test("is left out where nothing is known to move", () => {
    for (const frame of [plan(), measuredPlan(), plan({ contents: [{ name: "print", thickness: 1 }] })]) {
      expect(shopSheet(frame, TELL)).not.toContain("Over the year");
    }
  });

  test("breaks no line between a number and its unit", () => {
    const html = shopSheet(plan({ contents: [{ name: "pane", thickness: 2, material: "acrylic" }] }), TELL);
    expect(html).toContain("40\u00a0°C");
    expect(html.replace(/<svg.*?<\/svg>/gs, "")).not.toMatch(/\d (?:mm|°C)/);
  });
});
