import { describe, expect, expectTypeOf, test } from "vitest";
import { drawPlanView, drawSection, type Drawing } from "miterwright/drawing";
import { frameGeometry, planFrame } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { fakeDocument, type MadeElement } from "./fake-document.js";
import { plan, SHORT } from "./frames.js";
import { elementsOf, readXml, type XmlElement } from "./read-xml.js";

const drawing = drawPlanView(plan(), SHORT);

describe("a drawing", () => {
  test("is frozen data: SVG, words and size", () => {
    expect(Object.isFrozen(drawing)).toBe(true);
    expect(Object.keys(drawing)).toEqual(["svg", "title", "description", "width", "height"]);
    expect(structuredClone(drawing)).toEqual({ ...drawing });
    expect(drawing.svg).toContain(`width="${drawing.width}" height="${drawing.height}"`);
  });

  test("is its SVG as a string", () => {
    expect(String(drawing)).toBe(drawing.svg);
    expect(drawing.svg.startsWith("<svg xmlns=")).toBe(true);
  });

  test("shows itself in notebooks", () => {
    const show = Symbol.for("Jupyter.display");
    const bundle = (drawing as unknown as Record<symbol, () => unknown>)[show]!();
    expect(bundle).toEqual({
      "image/svg+xml": drawing.svg,
      "text/plain": `${drawing.title}. ${drawing.description}`,
    });
    expect(Object.getOwnPropertyDescriptor(drawing, show)?.enumerable).toBe(false);
  });

  test("becomes an element of the document that is given", () => {
    const made = drawing.toElement(fakeDocument()) as MadeElement;
    const svg = readXml(drawing.svg);
    /** The same as the markup says, in the namespace of SVG. */
    const expectSame = (element: MadeElement, { name, attributes, children }: XmlElement): void => {
      const { xmlns, ...others } = attributes;
      expect([element.name, element.namespace]).toEqual([name, "http://www.w3.org/2000/svg"]);
      expect(element.attributes).toEqual(others);
      expect(element.children).toHaveLength(children.length);
      if (name !== "svg") expect(xmlns).toBe(undefined);
      element.children.forEach((child, index) => {
        const written = children[index]!;
        if (typeof child === "string" || typeof written === "string") expect(child).toBe(written);
        else expectSame(child, written);
      });
    };
    expectSame(made, svg);
    expect(made.style).toEqual({ "max-width": "100%", height: "auto" });
  });

  test("has no style attribute, which a page may forbid", () => {
    expect(elementsOf(readXml(drawing.svg)).filter(({ attributes }) => "style" in attributes)).toEqual([]);
  });

  test("without a document says so", () => {
    expect(() => drawing.toElement()).toThrow(
      "Expected `document` to be given where there is no global one, got undefined",
    );
  });
});

describe("types", () => {
  const profile = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
  const brief = { sides: 6, opening: { side: 200 } } as const;

  test("frames with typed arrises, with level measures and of either kind can be drawn", () => {
    expectTypeOf(drawPlanView(planFrame({ ...brief, profile }), SHORT)).toEqualTypeOf<Drawing>();
    expectTypeOf(drawPlanView(frameGeometry({ ...brief, profile }), SHORT)).toEqualTypeOf<Drawing>();
    expectTypeOf(drawSection(planFrame({ ...brief, measured: { levelWidth: 30 } }), SHORT)).toEqualTypeOf<Drawing>();
    expectTypeOf(
      drawSection(frameGeometry({ ...brief, measured: { levelWidth: 30 } }), SHORT),
    ).toEqualTypeOf<Drawing>();
  });

  test("formatters are asked for", () => {
    // @ts-expect-error the formatters are missing
    expect(() => drawPlanView(plan(), {})).toThrow("Expected `formats` to be an object");
  });
});
