import { INKS, type DrawingInk } from "./looks.js";

/** The inks on dark paper. */
const DARK_INKS: Readonly<Record<DrawingInk, string>> = {
  ink: "#e9e8e4",
  paper: "#242525",
  accent: "#7cc4d1",
  wood: "#4a3f2e",
  "end-grain": "#6b5739",
  section: "#574930",
  layer: "#242525",
  "next-layer": "#3b4344",
  saw: "#4b4c4b",
};

/** What a drawing is found by: any drawing of the library, and none of another's elements. */
const DRAWING: string = "svg[data-drawing]";

/** The rules by which all inks get their colors. */
function inkRules(colorOf: (ink: DrawingInk) => string): string {
  const names = Object.keys(INKS) as DrawingInk[];
  return names
    .flatMap((ink) =>
      (["fill", "stroke"] as const).map((kind) => {
        const named = `[data-${kind}="${ink}"]`;
        return `${DRAWING}${named}, ${DRAWING} ${named} { ${kind}: var(--miterwright-${ink}, ${colorOf(ink)}); }`;
      }),
    )
    .join("\n");
}

/**
 * A style sheet for a page with drawings: it gives every ink the color of its CSS variable, such as `--miterwright-wood`, or else the usual color for the page's
 * color scheme.
 *
 * A drawing has its colors in attributes, so it needs no style sheet; attributes yield to any rule. Dark colors come where the `color-scheme` of the drawing's
 * place is dark: a page that has no dark theme keeps its drawings light, and so does paper.
 *
 * @returns the text of the style sheet, for a file or a `CSSStyleSheet`
 * @example
 * ```ts
 * import { drawingStyles } from "miterwright/drawing";
 *
 * drawingStyles().includes("var(--miterwright-wood, #f4ebdc)"); //=> true
 * ```
 */
export function drawingStyles(): string {
  const follows = inkRules((ink) => `light-dark(${INKS[ink]}, ${DARK_INKS[ink]})`);
  // Where the browser does not know light-dark(), a rule with a variable and that function would take the color away.
  return `${inkRules((ink) => INKS[ink])}\n@supports (color: light-dark(#000, #fff)) {\n${follows}\n}\n`;
}
