import { describe, expect, test } from "vitest";
import { drawSection, drawPiece, drawStock } from "miterwright/drawing";
import { tabulate, tabulateLengths } from "miterwright/report";
import { planFrame, type FramePlan } from "miterwright/frame";
import { hazardText, movementLines, arrisLabel } from "miterwright/words";
import { shopSheet } from "miterwright/sheet";
import { fitStock, type StockFit } from "miterwright/stock";
import { BATTEN } from "../drawing/frames.js";
import { formatsWith, loose } from "../formats.js";

const tell = {
  formats: formatsWith({
    length: (value) => `${value.toFixed(0)} mm`,
    angle: (degrees) => `${degrees.toFixed(1)}°`,
  }),
};

/** A plan whose every name is the caller's. */
function named(name: string): { plan: FramePlan; fit: StockFit } {
  const profile = { ...BATTEN, arrises: { ...BATTEN.arrises, [name]: BATTEN.outline[1]! } };
  const plan = planFrame({
    sides: 6,
    slope: 10,
    opening: { side: 240 },
    profile,
    sticks: [{ id: name, length: 2400 }],
    species: "black walnut",
    contents: [{ name, thickness: 4, material: { species: "white ash" }, cost: 3 }],
  });
  return { plan, fit: fitStock(plan.stockJobs[0]!) };
}

/** All that is written about a plan: each text that stands for itself, as it is read. */
function writtenTexts(name: string): string[] {
  const { plan, fit } = named(name);
  const sheet = shopSheet(plan, { ...tell, fits: [fit], title: name, note: name });
  const drawings = [drawSection(plan, tell), drawPiece(plan, tell), drawStock(plan.stockJobs[0]!, fit, tell)];
  const table = tabulateLengths(plan, tell);
  const own = tabulate(
    { caption: name, columns: [{ label: name }, { label: "long", kind: "length" }], rows: [[name, 2400]] },
    tell,
  );
  const markup = [sheet, ...drawings.map(({ svg }) => svg), table.toHtml(), own.toHtml()];
  const bare = [...table.toString().split("\n"), ...own.toString().split("\n"), ...own.toMarkdown().split("\n")];
  const said = [
    ...movementLines(plan, tell),
    arrisLabel(name),
    ...plan.hazards.map((hazard) => hazardText(hazard, tell).sentence),
  ];
  return loose([...markup.flatMap((text) => text.split(/<[^>]*>/)), ...bare, ...said]).filter((text) => text !== "");
}

/** What may turn a text round that is not its own, by Unicode Standard Annex 9: an override, or an isolate that is not closed. */
function openDirections(text: string): boolean {
  let open = 0;
  for (const sign of text) {
    if (sign >= "\u202a" && sign <= "\u202e") return true;
    if (sign >= "\u2066" && sign <= "\u2068") open++;
    if (sign === "\u2069") open--;
    if (open < 0) return true;
  }
  return open > 0;
}

describe("a name", () => {
  test.each(["\u202eash", "a\u202bsh", "ash\u2067", "\u2069ash\u202d", "\u2066\u2067\u202ea\u202csh"])(
    "that holds signs for directions, %j, changes no text after it",
    (name) => {
      const texts = writtenTexts(name);
      expect(texts.filter(openDirections)).toEqual([]);
      expect(texts.some((text) => text.includes("2400 mm"))).toBe(true);
      expect(texts.some((text) => text.includes("ash"))).toBe(true);
    },
  );

  test("that runs from right to left is isolated wherever other words stand beside it", () => {
    const name = "بركة";
    const beside = writtenTexts(name).filter((text) => text.includes(name) && text.trim() !== name);
    expect(beside.length).toBeGreaterThan(10);
    for (const text of beside) {
      expect(openDirections(text)).toBe(false);
      for (const part of text.split(name).slice(0, -1)) expect(part.endsWith("\u2068")).toBe(true);
    }
  });

  test("of plain letters stays as it is", () => {
    expect(writtenTexts("ash").filter((text) => /[\u2066-\u2069]/.test(text))).toEqual([]);
  });
});
