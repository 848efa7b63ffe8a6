import { describe, expect, test } from "vitest";
import { FIGURES } from "../../docs/figures/every-figure.js";
import { isAllowed, valuesFrom, type Control, type Figure, type Values } from "../../docs/figures/figure.js";
import { figureFor, placeFigures, stillMarkup } from "../../docs/figures/place.js";
import { READERS, readerOf, type ReaderName } from "../../docs/figures/reader.js";
import { readXml, type XmlElement } from "../drawing/read-xml.js";
import { listFiles, readProjectFile } from "../house/project.js";

const figures = [...FIGURES.values()];
const mm = readerOf("mm");

/** Values at which a control is tried: its own, both ends and some between, or every word. */
function trials(control: Control): (number | string)[] {
  if (control.kind === "choice") return Object.keys(control.words);
  const { min, max, step, value } = control;
  const between = [0.25, 0.5, 0.75].map((share) => min + Math.round((share * (max - min)) / step) * step);
  return [...new Set([value, min, max, ...between, ...(min < 0 && max > 0 ? [0] : [])])];
}

/** Every pair of controls tried together, all others at their own values. */
function* settings(figure: Figure): Generator<Values> {
  const start = valuesFrom(figure);
  const names = Object.keys(figure.controls);
  for (const [index, first] of names.entries()) {
    for (const second of names.slice(index)) {
      for (const a of trials(figure.controls[first]!)) {
        for (const b of trials(figure.controls[second]!)) yield { ...start, [first]: a, [second]: b };
      }
    }
  }
}

function elements(element: XmlElement): XmlElement[] {
  return [element, ...element.children.flatMap((child) => (typeof child === "string" ? [] : elements(child)))];
}

function textOf(element: XmlElement): string {
  return element.children.map((child) => (typeof child === "string" ? child : textOf(child))).join("");
}

/** The coordinates of a path or text. */
function points(element: XmlElement): [number, number][] {
  const { d, x, y } = element.attributes;
  if (element.name === "text") return [[Number(x), Number(y)]];
  return [...(d ?? "").matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, a, b]) => [Number(a), Number(b)]);
}

describe.each(figures.map((figure) => ({ name: figure.name, figure })))("figure $name", ({ figure }) => {
  test("is drawn for every setting of its controls, in its own size and with the same numbers", () => {
    const names = figure.draw(valuesFrom(figure), mm).facts.map(([name]) => name);
    const { width, height } = figure.size;
    for (const values of settings(figure)) {
      const { svg, facts } = figure.draw(values, mm);
      const at = JSON.stringify(values);
      expect(
        facts.map(([name]) => name),
        at,
      ).toEqual(names);
      expect(
        facts.filter(([, text]) => text === "" || /NaN|Infinity|undefined/.test(text)),
        at,
      ).toEqual([]);
      const root = readXml(svg);
      expect(root.attributes["viewBox"], at).toBe(`0 0 ${width} ${height}`);
      const [title, description] = root.children as XmlElement[];
      expect([title?.name, description?.name], at).toEqual(["title", "desc"]);
      expect(textOf(title!).length * textOf(description!).length, at).toBeGreaterThan(0);
      const outside = elements(root)
        .flatMap(points)
        .filter(([x, y]) => !(x >= -1 && x <= width + 1 && y >= -1 && y <= height + 1));
      expect(outside, at).toEqual([]);
    }
  });

  test("changes when a control does", () => {
    const start = valuesFrom(figure);
    const before = stillMarkup({ figure, values: start }, mm);
    for (const [name, control] of Object.entries(figure.controls)) {
      const others = trials(control).filter((value) => value !== start[name]);
      const same = others.filter(
        (value) => stillMarkup({ figure, values: { ...start, [name]: value } }, mm) === before,
      );
      expect(same, name).not.toEqual(others);
    }
  });

  test("asks for the reader's unit where that changes something, and nowhere else", () => {
    const values = valuesFrom(figure);
    const inches = readerOf("in-16");
    const asks = Object.values(figure.controls).some(({ kind }) => kind === "length");
    const changes = stillMarkup({ figure, values }, mm) !== stillMarkup({ figure, values }, inches);
    expect(figure.hasLengths ?? true).toBe(asks || changes);
  });

  test("starts with values that its controls can have", () => {
    for (const [name, control] of Object.entries(figure.controls)) {
      expect(isAllowed(control, control.value), name).toBe(true);
      if (control.kind !== "choice") expect(isAllowed(control, control.max + control.step), name).toBe(false);
    }
  });
});

describe("guides", () => {
  const guides = listFiles("docs/guides", ".md").map((file) => ({ file, text: readProjectFile(file) }));
  const asked = guides.flatMap(({ text }) =>
    [...text.matchAll(/<figure[^>]*data-figure="([^"]*)"/g)].map(([, name]) => name!),
  );

  test("ask only for figures that there are, and every figure is asked for", () => {
    expect(asked.filter((name) => !FIGURES.has(name))).toEqual([]);
    expect([...FIGURES.keys()].filter((name) => !asked.includes(name))).toEqual([]);
  });

  test.each(guides)("$file gets a picture for every figure it asks for", ({ text }) => {
    const count = [...text.matchAll(/<figure[^>]*data-figure=/g)].length;
    const placed = placeFigures(text, FIGURES, mm);
    expect([...placed.matchAll(/<div class="figure-picture"><svg /g)]).toHaveLength(count);
  });
});

describe("a page's figure", () => {
  test("starts with the page's values", () => {
    const { values } = figureFor({ figure: "polygon", sides: "9", measure: "side" }, FIGURES);
    expect(values).toMatchObject({ sides: 9, measure: "side", value: 400 });
  });

  test.each([
    [{ figure: "polygone" }, 'there is no figure "polygone"'],
    [{ figure: "polygon", side: "9" }, 'figure polygon has no control "side"'],
    [{ figure: "polygon", sides: "2" }, 'figure polygon takes no sides of "2"'],
    [{ figure: "polygon", sides: "4.5" }, 'figure polygon takes no sides of "4.5"'],
    [{ figure: "polygon", measure: "area" }, 'figure polygon takes no measure of "area"'],
  ])("is refused with a reason: %j", (data, message) => {
    expect(() => figureFor(data, FIGURES)).toThrow(message);
  });
});

test("the figure of lays says how the stick lies in the shop sheet's words", () => {
  const { svg, facts } = FIGURES.get("lays")!.draw(valuesFrom(FIGURES.get("lays")!), mm);
  const names = ["propped at its slope", "flat on its back", "face down", "on its sight edge", "on its outer edge"];
  expect(facts.map(([name]) => name)).toEqual(names.map((name) => `${name}, miter and bevel`));
  for (const name of names) expect(svg).toContain(`>${name}</text>`);
});

describe("the ring's figure", () => {
  const ring = FIGURES.get("ring")!;
  const drawn = (values: Values): ReturnType<Figure["draw"]> => ring.draw({ ...valuesFrom(ring), ...values }, mm);
  const still = { sides: 8, slope: 0, width: 45, miter: 0, bevel: 0 };

  test("says what the gap of a flat octagon comes from, as the guide works it out", () => {
    const { facts, says } = drawn({ ...still, miter: -0.1 });
    expect(facts.slice(0, 4)).toEqual([
      ["the last joint", "opens outside"],
      ["joint gap g at the last joint", "1.36 mm"],
      ["open angle", "1.6°"],
      ["slope reached", "0°"],
    ]);
    expect(says).toEqual([
      "Open outside: the inside angles of the corners are too large, so the ring does not come round.",
      "Miter: 0.1° more, further from a square cut.",
      "Bevel: leave it.",
    ]);
  });

  test("undoes errors of both angles, and shows where they leave the slope", () => {
    const { facts, says } = drawn({ ...still, slope: 30, miter: -0.2, bevel: 0.37 });
    expect(facts[3]).toEqual(["slope reached", "31.09°"]);
    expect(says!.slice(1)).toEqual([
      "Miter: 0.2° more, further from a square cut.",
      "Bevel: 0.37° less, the blade more upright.",
    ]);
  });

  test("says that there is nothing to correct where the ring closes", () => {
    expect(drawn({ ...still, slope: 30 }).says).toEqual([
      "The last joint closes, and the slope is as planned.",
      "Miter: leave it.",
      "Bevel: leave it.",
    ]);
  });
});

test("the figure of cut-up sticks shows the library's plan, with its proof", () => {
  const stock = FIGURES.get("stock")!;
  const { svg, facts } = stock.draw({ ...valuesFrom(stock), battens: 0 }, mm);
  expect(Object.fromEntries(facts)).toMatchObject({ sticks: "6", bound: "14400 mm", "least cost": "proven" });
  expect(readXml(svg).children.map((child) => typeof child === "object" && child.name)).toContain("svg");
  expect(svg).toContain("rail 865 mm");
  expect(svg).not.toContain("batten");
});

describe("readers", () => {
  const names = Object.keys(READERS) as ReaderName[];

  // Half of what the last written place is worth, in millimeters.
  test.each<[ReaderName, number]>([
    ["mm", 0.05],
    ["cm", 0.05],
    ["in-8", 25.4 / 16],
    ["in-16", 25.4 / 32],
    ["in-32", 25.4 / 64],
    ["in-64", 25.4 / 128],
    ["in-decimal", 0.0254 / 2],
  ])("%s reads back what it writes, within %d mm", (name, half) => {
    const reader = readerOf(name);
    const errors = [0.43, 24, 300.07, 1234.5].map((value) => Math.abs(reader.readLength(reader.length(value)) - value));
    expect(Math.max(...errors)).toBeLessThanOrEqual(half * (1 + 1e-9));
    expect(Math.max(...errors)).toBeGreaterThan(half / 8);
    expect(reader.readAngle(reader.angle(22.5))).toBe(22.5);
  });

  test("a number without a unit is in the reader's unit", () => {
    expect(names.map((name) => readerOf(name).readLength("2"))).toEqual([2, 20, 50.8, 50.8, 50.8, 50.8, 50.8]);
  });

  test("lengths are written in the reader's denominator", () => {
    expect(names.map((name) => readerOf(name).length(81))).toEqual([
      "81 mm",
      "8.1 cm",
      "3 1/4 in",
      "3 3/16 in",
      "3 3/16 in",
      "3 3/16 in",
      "3.189 in",
    ]);
  });
});
