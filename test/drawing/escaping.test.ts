import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawPlanView, drawSection, drawPiece, drawStock, type Drawing } from "miterwright/drawing";
import { fitStock, type StockJob } from "miterwright/stock";
import { BATTEN, plan, writing } from "./frames.js";
import { layoutFaults, readDrawing } from "./read-drawing.js";
import { elementsOf, readXml } from "./read-xml.js";

const WORST = `<script>alert("1" & '2')</script>]]>`;

function drawWith(name: string): Drawing[] {
  const words = writing(
    (value) => `${value}${name}`,
    (degrees) => `${name}${degrees}`,
  );
  const profile = {
    ...BATTEN,
    arrises: {
      [name]: BATTEN.outline[1]!,
      wallLedge: { x: 8, y: 9 },
      wallMouth: { x: 8, y: 0 },
      sightBack: { x: 0, y: 9 },
    },
  };
  const frame = plan({ profile, slope: 10, contents: [{ name, thickness: 2 }] });
  const job: StockJob = { pieces: [{ id: name, length: 240, count: 3 }], sticks: [{ id: name, length: 1200 }] };
  return [
    drawPlanView(frame, words),
    drawSection(frame, words),
    drawPiece(frame, words),
    drawStock(job, fitStock(job), words),
  ];
}

describe("text of the caller", () => {
  test("is text in the drawing, whatever it says", () => {
    for (const drawing of drawWith(WORST)) {
      expect(elementsOf(readXml(drawing.svg)).map(({ name }) => name)).not.toContain("script");
      expect(
        readDrawing(drawing)
          .texts.map(({ text }) => text)
          .join(""),
      ).toContain("<script>");
      expect(layoutFaults(drawing)).toEqual([]);
    }
  });

  test("keeps the drawing well-formed and without overlaps, whatever its characters", () => {
    const names = fc.oneof(
      fc.string({ unit: "binary", minLength: 1, maxLength: 30 }),
      fc.string({ unit: "grapheme", minLength: 1, maxLength: 30 }),
      fc.constantFrom("\0\u0007\ufffe\ud800", "潮だまりの盆", "بركة المد", "👩‍🔬 tray", "a\n\tb"),
    );
    fc.assert(
      fc.property(
        names.filter((name) => name.trim() !== "" && name !== "__proto__"),
        (name) => {
          for (const drawing of drawWith(name)) expect(layoutFaults(drawing)).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("loses its line breaks, and characters that XML forbids become the replacement character", () => {
    const texts = readDrawing(drawWith("a\n\tb\0")[1]!).texts.map(({ text }) => text);
    expect(texts.join(" ")).toContain("a b\ufffd");
  });
});
