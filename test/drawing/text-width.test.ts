import { describe, expect, test } from "vitest";
import { textWidth, wrapText } from "../../src/drawing/text-width.js";

describe("the width of a text", () => {
  test("is the sum of its characters' and grows with the size", () => {
    expect(textWidth("100 mm", 10)).toEqual({ width: 10 * (3 * 0.64 + 0.37 + 2 * 1.02), known: true });
    expect(textWidth("100 mm", 20).width).toBeCloseTo(2 * textWidth("100 mm", 10).width, 12);
    expect(textWidth("", 10)).toEqual({ width: 0, known: true });
  });

  test("counts an accented letter as its letter, however it is written", () => {
    expect(textWidth("Å", 10)).toEqual(textWidth("A", 10));
    expect(textWidth("A\u030a", 10)).toEqual(textWidth("A", 10));
  });

  test("of signs beyond the table is a guess, and said to be one", () => {
    expect(textWidth("Ж", 10)).toEqual({ width: 7.2, known: false });
    expect(textWidth("潮", 10)).toEqual({ width: 10, known: false });
    expect(textWidth("🌊", 10)).toEqual({ width: 14, known: false });
  });

  // Advance widths of Liberation Sans 2.1 in thousandths of the size, as a browser measures them, rounded down; those of Arial and Helvetica are the same.
  test.each([
    ["0123456789", 5561],
    ["across corners", 6557],
    ["5 7/16 in", 3836],
    ["22.5°", 2346],
    ["MWmw%@&", 5903],
    ["Ålesund, Žižkov", 7058],
  ])("of %s is no less than the font's", (text, advance) => {
    expect(textWidth(text, 1000).width).toBeGreaterThanOrEqual(advance);
    expect(textWidth(text, 1000).width).toBeLessThan(1.35 * advance);
  });
});

describe("wrapping", () => {
  test("breaks at spaces, and never beyond the width", () => {
    const lines = wrapText("a wedge that props a stick at its slope", 10, 80);
    expect(lines.join(" ")).toBe("a wedge that props a stick at its slope");
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(textWidth(line, 10).width).toBeLessThanOrEqual(80);
  });

  test("breaks a word that is wider than a line", () => {
    const lines = wrapText("xxxxxxxxxxxxxxxxxxxxxxxx end", 10, 40);
    expect(lines.join("")).toBe("xxxxxxxxxxxxxxxxxxxxxxxxend");
    expect(lines).not.toContain("");
    for (const line of lines) expect(textWidth(line, 10).width).toBeLessThanOrEqual(40);
  });

  test("does not break at tied spaces", () => {
    expect(wrapText("long 5\u00a07/16\u00a0in", 10, 60)).toEqual(["long", "5\u00a07/16\u00a0in"]);
  });
});
