import { describe, expect, test } from "vitest";
import { drawFigure } from "miterwright/drawing";
import { planFrame } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { describePlan, showReport } from "miterwright/report";
import { formatters } from "miterwright/units";
import { fakeDocument } from "../drawing/fake-document.js";
import { readXml } from "../drawing/read-xml.js";

const profile = molding({ width: 42, thickness: 18, rabbet: { width: 8, depth: 9 } });
const plan = planFrame({
  sides: 9,
  slope: 20,
  opening: { acrossFlats: 300 },
  profile,
  contents: [{ name: "<b>*chart*</b>", thickness: 2 }],
  unit: "mm",
});
const formats = formatters({ unit: "mm" });
const report = describePlan(plan, { formats });
const shown = showReport(report, { figure: (block) => drawFigure(plan, block, { formats }) });

describe("a shown report", () => {
  test("is the report, frozen, and its data alone are seen", () => {
    expect({ ...shown }).toEqual(report);
    expect(JSON.parse(JSON.stringify(shown))).toEqual(report);
    expect(Object.isFrozen(shown)).toBe(true);
  });

  test("writes well-formed HTML with a heading a section, every figure, and the caller's names escaped", () => {
    const html = shown.toHtml();
    expect(() => readXml(html)).not.toThrow();
    expect(html.match(/<h3>/g)).toHaveLength(report.sections.length + plan.sawing.operations.length);
    expect(html.match(/<svg/g)!.length).toBeGreaterThan(5);
    expect(html).toContain("&lt;b&gt;*chart*&lt;/b&gt;");
    expect(html).not.toContain("<b>");
  });

  test("writes Markdown whose lists and tables hold what the report says", () => {
    const text = String(shown);
    expect(text.split("\n")[0]).toBe("# Shop sheet: frame of 9 sides, sloping 20°");
    for (const { title } of report.sections) expect(text).toContain(`## ${title}`);
    expect(text).toContain("\\<b\\>\\*chart\\*\\</b\\>");
    expect(text).toContain("- Keep the part to the right of the blade.");
    expect(text).toContain("| letter | edge | length | tape |");
    expect(text).not.toContain("undefined");
  });

  test("shows itself in a notebook and as an element", () => {
    const bundle = (shown as unknown as Record<symbol, () => Record<string, string>>)[Symbol.for("Jupyter.display")]!();
    expect(Object.keys(bundle)).toEqual(["text/html", "text/markdown", "text/plain"]);
    expect(bundle["text/html"]).toBe(shown.toHtml());
    const element = shown.toElement(fakeDocument()) as { name: string };
    expect(element.name).toBe("article");
  });

  test("asks for what draws its figures", () => {
    expect(() => showReport(report, {} as never)).toThrow(
      "Expected `figure` to be a function that draws a figure, got undefined",
    );
  });
});
