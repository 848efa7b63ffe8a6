import { describe, expect, test } from "vitest";
import { drawingStyles, type DrawingInk } from "miterwright/drawing";
import { listCases } from "../contact-sheet/cases.js";
import { elementsOf, readXml } from "./read-xml.js";

/** Every ink; the compiler sees to it that none is missing. */
const INKS: Readonly<Record<DrawingInk, true>> = {
  ink: true,
  paper: true,
  accent: true,
  wood: true,
  "end-grain": true,
  section: true,
  layer: true,
  "next-layer": true,
  saw: true,
};
const inks = Object.keys(INKS) as DrawingInk[];
/** What is drawn and written with, on what it is drawn and written. */
const grounds = inks.filter((ink) => ink !== "ink" && ink !== "accent");
const styles = drawingStyles();

/** The colors that the style sheet has for an ink where no variable is set. */
function colorsOf(ink: DrawingInk): { readonly light: string; readonly dark: string } {
  const [, light, dark] = new RegExp(`var\\(--miterwright-${ink}, light-dark\\((#\\w+), (#\\w+)\\)\\)`).exec(styles)!;
  return { light: light!, dark: dark! };
}

/** Relative luminance: Web Content Accessibility Guidelines 2.2, definition of relative luminance. */
function luminance(color: string): number {
  const digits = color.length === 4 ? color.slice(1).replace(/./g, "$&$&") : color.slice(1);
  const [red, green, blue] = [0, 2, 4].map((at) => {
    const share = Number.parseInt(digits.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((one, other) => one - other);
  return (high! + 0.05) / (low! + 0.05);
}

describe("a drawing", () => {
  test("names the ink of every color that it has, and has that ink's light color", () => {
    const used = new Set<string>();
    for (const { drawing } of listCases()) {
      for (const { name, attributes } of elementsOf(readXml(drawing.svg))) {
        for (const kind of ["fill", "stroke"]) {
          const [color, ink] = [attributes[kind], attributes[`data-${kind}`]];
          if (ink === undefined) {
            expect([undefined, "none"]).toContain(color);
            continue;
          }
          used.add(ink);
          expect(color).toBe(colorsOf(ink as DrawingInk).light);
        }
        // The rim of letters is as the paper.
        if (name === "text") expect(attributes["data-stroke"]).toBe("paper");
      }
    }
    expect([...used].sort()).toEqual([...inks].sort());
  });
});

describe("the style sheet", () => {
  test("reaches the drawing and what is in it, for every ink as fill and as stroke", () => {
    for (const ink of inks) {
      for (const kind of ["fill", "stroke"]) {
        const selector = `svg[data-drawing][data-${kind}="${ink}"], svg[data-drawing] [data-${kind}="${ink}"]`;
        const { light, dark } = colorsOf(ink);
        expect(styles).toContain(`${selector} { ${kind}: var(--miterwright-${ink}, ${light}); }`);
        expect(styles).toContain(`${selector} { ${kind}: var(--miterwright-${ink}, light-dark(${light}, ${dark})); }`);
      }
    }
  });

  test("selects nothing but drawings", () => {
    const selectors = [...styles.matchAll(/^([^@{}\n]+)\{/gm)].flatMap(([, list]) => list!.split(","));
    expect(selectors.length).toBe(inks.length * 8);
    for (const selector of selectors) expect(selector.trim()).toMatch(/^svg\[data-drawing\]/);
  });

  test.each(["light", "dark"] as const)("keeps text and lines readable on every ground, %s", (scheme) => {
    for (const ground of grounds) {
      for (const ink of ["ink", "accent"] as const) {
        // 4.5 for text, 3 for lines (the same guidelines, criteria 1.4.3 and 1.4.11); letters have a rim of paper round them.
        const least = ground === "paper" || ink === "ink" ? 4.5 : 3;
        expect(contrast(colorsOf(ink)[scheme], colorsOf(ground)[scheme])).toBeGreaterThan(least);
      }
    }
  });
});
