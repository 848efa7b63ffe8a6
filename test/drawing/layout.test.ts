import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  drawCradle,
  drawCut,
  drawPanel,
  drawPanelCut,
  drawPlanView,
  drawSection,
  drawPiece,
  type Drawing,
  type DrawingOptions,
} from "miterwright/drawing";
import { planFrame, type FramePlan } from "miterwright/frame";
import { listCases, tray } from "../contact-sheet/cases.js";
import { anyBrief, SHORT, writing } from "./frames.js";
import { layoutFaults } from "./read-drawing.js";
import { elementsOf, readXml } from "./read-xml.js";

const cases = listCases();

function drawAll(plan: FramePlan, options: DrawingOptions): Drawing[] {
  return [
    drawPlanView(plan, options),
    drawPlanView(plan.geometry, options),
    drawSection(plan, options),
    drawSection(plan, { ...options, key: false }),
    drawPiece(plan, options),
    ...(plan.panel === null ? [] : [drawPanel(plan.panel, options)]),
    ...(plan.panel?.cuts ?? []).slice(0, 3).map(({ step }) => drawPanelCut(plan.panel!, { step, ...options })),
    ...(plan.sawing.cradle === null ? [] : [drawCradle(plan, options)]),
    ...plan.sawing.operations.map(({ step }) => drawCut(plan, { step, ...options })),
  ];
}

describe("the drawings of the contact sheet", () => {
  test("are of every kind, for 3 to 12 sides, slopes from -60 to 85, tiny and huge", () => {
    const names = cases.map(({ name }) => name);
    for (const name of [
      "3 sides, corner-down",
      "12 sides, side-down",
      "slope -60",
      "slope 85",
      "size 0.000001",
      "size 1000000",
    ]) {
      expect(names).toContain(name);
    }
    expect([...new Set(cases.map(({ kind }) => kind))].sort()).toEqual([
      "cradle",
      "cut",
      "panel",
      "panel-cut",
      "piece",
      "plan",
      "section",
      "stock",
    ]);
  });

  test("have no text that overlaps another or leaves the paper", () => {
    expect(
      cases.flatMap(({ kind, name, drawing }) => layoutFaults(drawing).map((fault) => `${kind}, ${name}: ${fault}`)),
    ).toEqual([]);
  });

  test("are well-formed, named and described, without ids or anything from elsewhere", () => {
    for (const { drawing } of cases) {
      const root = readXml(drawing.svg);
      expect(root.name).toBe("svg");
      expect(root.attributes["role"]).toBe("img");
      expect(root.children[0]).toEqual({ name: "title", attributes: {}, children: [drawing.title] });
      expect(root.children[1]).toEqual({ name: "desc", attributes: {}, children: [drawing.description] });
      expect(drawing.svg.replace(/>[^<]+</g, "><")).not.toMatch(/NaN|undefined|Infinity|null|\de[+-]/);
      for (const { name, attributes } of elementsOf(root)) {
        expect(["svg", "title", "desc", "rect", "path", "text"]).toContain(name);
        expect(Object.keys(attributes).filter((key) => /^(?:id|class|href|on.*)$/.test(key))).toEqual([]);
      }
      expect(drawing.svg.match(/https?:/g)).toEqual(["http:"]);
    }
  });

  test("write their numbers with two decimals at the most", () => {
    for (const { drawing } of cases) expect(drawing.svg.replace(/>[^<]*</g, "><")).not.toMatch(/\d\.\d{3}/);
  });
});

describe("any frame", () => {
  test("is drawn without overlaps, with labels of any length", () => {
    const words = fc.constantFrom(
      SHORT,
      writing(
        (value) => value.toExponential(12),
        (degrees) => `${degrees} degrees of arc`,
      ),
      writing(
        (value) => `« ${value} Ångström »`,
        (degrees) => `${Math.round(degrees)}`,
      ),
    );
    fc.assert(
      fc.property(anyBrief, words, fc.constantFrom(undefined, 160, 900), (brief, options, width) => {
        const plan = planFrame(brief);
        for (const drawing of drawAll(plan, { ...options, ...(width === undefined ? {} : { width }) })) {
          expect(layoutFaults(drawing)).toEqual([]);
        }
      }),
      { numRuns: 120 },
    );
  });

  test("is drawn alike after JSON, and alike twice", () => {
    fc.assert(
      fc.property(anyBrief, (brief) => {
        const plan = planFrame(brief);
        const back = JSON.parse(JSON.stringify(plan)) as FramePlan;
        expect(drawAll(back, SHORT).map(({ svg }) => svg)).toEqual(drawAll(plan, SHORT).map(({ svg }) => svg));
      }),
      { numRuns: 40 },
    );
  });

  test("is drawn alike in another unit, but for its labels", () => {
    const blank = writing(
      () => "length",
      (degrees) => degrees.toFixed(3),
    );
    const NUMBER = /-?\d+(?:\.\d+)?/g;
    fc.assert(
      fc.property(
        fc.constantFrom(1e-6, 25.4, 1e6),
        fc.integer({ min: 3, max: 12 }),
        fc.integer({ min: -60, max: 85 }),
        (factor, sides, slope) => {
          const [one, other] = [1, factor].map((size) =>
            // The graduations to set depend on the accepted gap.
            drawAll(tray({ sides, slope, acceptedGap: 0.25 * size }, size), blank).map(({ svg }) => svg),
          );
          one!.forEach((svg, index) => {
            expect(other![index]!.replace(NUMBER, "#")).toBe(svg.replace(NUMBER, "#"));
            const numbers = svg.match(NUMBER)!.map(Number);
            other![index]!.match(NUMBER)!.forEach((number, at) => {
              expect(Math.abs(Number(number) - numbers[at]!)).toBeLessThanOrEqual(0.011);
            });
          });
        },
      ),
      { numRuns: 20 },
    );
  });
});
