import { describe, expect, test } from "vitest";
import type { Hazard, HazardCode } from "miterwright/errors";
import { planFrame, type FramePlan } from "miterwright/frame";
import { compoundMiterTable } from "miterwright/miter";
import { regularPolygon } from "miterwright/polygon";
import {
  tabulateChecks,
  tabulateLays,
  tabulateLengths,
  tabulateMiters,
  tabulatePolygons,
  type Table,
} from "miterwright/report";
import { tableSaw } from "miterwright/saw";
import {
  arrisLabel,
  english,
  frameCheckText,
  hazardText,
  layLabel,
  operationText,
  type Words,
} from "miterwright/words";
import { formatsWith, loose } from "../formats.js";
import { rabbeted } from "../frame/briefs.js";
import { HAZARD_CASES } from "../frame/hazard-cases.js";
import { marked, unmarked } from "../marked-words.js";

const formats = formatsWith();
/** English but for the names of things, which stand between marks. */
const labels: Words = { ...english, labels: marked(english.labels) };
const plan: FramePlan = planFrame({ sides: 6, slope: 20, profile: rabbeted, opening: { side: 100 }, at: "outerFace" });

/** The hazards of a code that its sample briefs raise. */
function raised(code: HazardCode): readonly Hazard[] {
  return HAZARD_CASES[code].raises.flatMap((brief) =>
    planFrame(brief).hazards.filter((hazard) => hazard.code === code),
  );
}

describe("one's own labels reach", () => {
  const tell = { formats, words: labels };

  test("edges, and the longest line", () => {
    expect(arrisLabel("outerBack", { words: labels })).toBe("⟦outer edge at the back⟧");
    expect(arrisLabel(null, { words: labels })).toBe("⟦longest line of the piece⟧");
    expect(arrisLabel("bead", { words: labels })).toBe("bead");
  });

  test("lays", () => {
    expect(layLabel("outer-edge-down", tell)).toBe("⟦on its outer edge⟧");
    expect(layLabel(12.5, tell)).toBe("⟦rolled by 12.5°⟧");
  });

  test("the surfaces and edges of an operation", () => {
    const [first, last] = [plan.sawing.operations[0]!, plan.sawing.operations.at(-1)!];
    const { down, atFence, tearOut } = first.placement;
    const lines = operationText(first, tell).lines;
    expect(lines[0]).toContain(`⟦${english.labels.surfaces[down]}⟧`);
    expect(lines[0]).toContain(`⟦${english.labels.surfaces[atFence]}⟧`);
    for (const { surface } of tearOut) expect(lines.at(-1)).toContain(`⟦${english.labels.surfaces[surface]}⟧`);
    expect(operationText(last, tell).lines.join(" ")).toContain(`along the ⟦${arrisLabel(last.measure!.arris)}⟧`);
  });

  test("the signal and the numbers of a hazard", () => {
    const [short] = raised("short-piece");
    const { title, sentence, numbers } = hazardText(short!, tell);
    expect(title).toBe("⟦Warning⟧");
    expect(loose(numbers)).toMatch(/^⟦length⟧ [\d.]+ mm, ⟦limit⟧ 300 mm$/);
    expect(sentence).toBe(hazardText(short!, { formats }).sentence);
  });

  test("the edge of a check", () => {
    const texts = plan.checks.map((check) => frameCheckText(check, { sides: 6, words: labels }));
    expect(texts.filter((text) => text.includes("⟦outer edge at the back⟧"))).not.toEqual([]);
    expect(texts.map((text) => text.replaceAll(/[⟦⟧]/g, ""))).toEqual(
      plan.checks.map((check) => frameCheckText(check, { sides: 6 })),
    );
  });

  test("the tables of a plan", () => {
    const firsts = (table: Table, column: number): readonly string[] => table.cells.map((cells) => cells[column]!);
    for (const edge of firsts(tabulateLengths(plan, tell), 1)) expect(edge).toMatch(/^⟦.*⟧$/);
    for (const lay of firsts(tabulateLays(plan, tell), 0)) expect(lay).toMatch(/^⟦.*⟧$/);
    expect(firsts(tabulateChecks(plan, tell), 0).join()).toContain("⟦outer edge at the back⟧");
  });
});

describe("a hazard says why in one's own words for", () => {
  test.each([
    ["capacity", "obstacles"],
    ["seating-impossible", "reasons"],
    ["shallow-rabbet", "stacks"],
  ] as const)("%s: those of %s", (code, area) => {
    const words: Words = { ...english, [area]: marked(english[area]) };
    const hazards = raised(code);
    expect(hazards).not.toEqual([]);
    for (const hazard of hazards) {
      const said = hazardText(hazard, { formats, words }).sentence;
      expect(said).toMatch(/⟦[A-Z][^⟧]*\.⟧/);
      expect(said.replaceAll(/[⟦⟧]/g, "")).toBe(hazardText(hazard, { formats }).sentence);
    }
  });
});

describe("nothing in a table comes from elsewhere than the catalog, but numbers with their units and the letters of edges:", () => {
  const tell = { formats, words: marked(english) };
  const blunt = tableSaw({ bevel: { left: 1, right: 1, reads: "from-vertical", step: 1 } });
  const noLay = planFrame({ sides: 6, slope: 20, profile: rabbeted, opening: { side: 100 }, saw: blunt, lay: "flat" });
  const polygons = [5, 6].map((sides) => regularPolygon({ sides, side: 100 }));
  const show = Object.keys(english.tables.polygons.quantities) as (keyof Words["tables"]["polygons"]["quantities"])[];
  const rows = compoundMiterTable({ sides: [4, 6], slopes: [30, 45] });

  test.each<[string, Table]>([
    ["lengths", tabulateLengths(plan, tell)],
    ["lays", tabulateLays(plan, tell)],
    ["lays of which none works", tabulateLays(noLay, tell)],
    ["checks", tabulateChecks(plan, tell)],
    ["polygons", tabulatePolygons(polygons, { ...tell, show })],
    ["miters", tabulateMiters(rows, tell)],
    ["miters crosswise", tabulateMiters(rows, { ...tell, show: "bevel" })],
  ])("%s", (_, { caption, columns, cells }) => {
    expect(unmarked(caption)).toBe("");
    for (const { label } of columns) expect(unmarked(label)).toBe("");
    for (const cell of cells.flat()) expect(unmarked(loose(cell))).toMatch(/^(?:|[a-z]|\d+|[\d.]+(?: mm²?|°)|[ ,]+)$/);
  });
});

test("every number of every hazard has a label in English", () => {
  const { hazardNumbers } = english.labels;
  for (const code of Object.keys(HAZARD_CASES) as HazardCode[]) {
    for (const { numbers } of raised(code)) {
      for (const name of Object.keys(numbers)) expect(hazardNumbers, `${code}: ${name}`).toHaveProperty(name);
    }
  }
});
