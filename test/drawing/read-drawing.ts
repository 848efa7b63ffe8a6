import type { Point } from "miterwright/errors";
import type { Drawing } from "miterwright/drawing";
import { textWidth } from "../../src/drawing/text-width.js";
import { elementsOf, readXml, textOf, type XmlElement } from "./read-xml.js";

/** A line of text of a drawing, with the room it takes by the library's own measuring. */
export interface ReadText {
  readonly text: string;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** What a drawing's SVG says. */
export interface ReadDrawing {
  readonly root: XmlElement;
  readonly box: { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number };
  readonly texts: readonly ReadText[];
  /** The lines of every path with this `data-part`, as corner points. */
  readonly parts: (part: string) => readonly (readonly Point[])[];
}

function pathLines(data: string): Point[][] {
  if (!/^(?:[ML]-?[\d.]+ -?[\d.]+|Z)+$/.test(data)) throw new Error(`path of another grammar: ${data}`);
  return data
    .split("M")
    .slice(1)
    .map((line) =>
      line
        .replace("Z", "")
        .split("L")
        .map((pair) => {
          const [x, y] = pair.split(" ").map(Number);
          return { x: x!, y: y! };
        }),
    );
}

function readText(element: XmlElement): ReadText {
  const { attributes } = element;
  const size = Number(attributes["font-size"]);
  const text = textOf(element);
  const { width, known } = textWidth(text, size);
  if (!known && Math.abs(Number(attributes["textLength"]) - width) > 0.01) throw new Error(`unmeasured text: ${text}`);
  const anchor = attributes["text-anchor"] ?? "start";
  const before = anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width;
  const [x, y] = [Number(attributes["x"]), Number(attributes["y"])];
  const [above, below] = [0.78 * size, 0.22 * size];
  if (attributes["transform"] === undefined)
    return { text, x0: x - before, x1: x - before + width, y0: y - above, y1: y + below };
  if (attributes["transform"] !== `rotate(-90 ${attributes["x"]!} ${attributes["y"]!})`)
    throw new Error("another turn");
  return { text, x0: x - above, x1: x + below, y0: y + before - width, y1: y + before };
}

/** Reads a drawing's SVG back. */
export function readDrawing({ svg }: Pick<Drawing, "svg">): ReadDrawing {
  const root = readXml(svg);
  const elements = elementsOf(root);
  const [x, y, width, height] = root.attributes["viewBox"]!.split(" ").map(Number) as [number, number, number, number];
  return {
    root,
    box: { x0: x, y0: y, x1: x + width, y1: y + height },
    texts: elements.filter(({ name }) => name === "text").map(readText),
    parts: (part) =>
      elements
        .filter(({ name, attributes }) => name === "path" && attributes["data-part"] === part)
        .flatMap(({ attributes }) => pathLines(attributes["d"]!)),
  };
}

/**
 * What is wrong with how a drawing is laid out, as sentences: texts that overlap, and texts or lines that leave the paper.
 */
export function layoutFaults(drawing: Pick<Drawing, "svg">): string[] {
  const { box, texts, root } = readDrawing(drawing);
  const faults: string[] = [];
  texts.forEach((a, index) => {
    if (a.x0 < box.x0 || a.y0 < box.y0 || a.x1 > box.x1 || a.y1 > box.y1) faults.push(`"${a.text}" leaves the paper`);
    for (const b of texts.slice(index + 1)) {
      if (a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1) faults.push(`"${a.text}" meets "${b.text}"`);
    }
  });
  for (const { name, attributes } of elementsOf(root)) {
    if (name !== "path") continue;
    for (const { x, y } of pathLines(attributes["d"]!).flat()) {
      if (x < box.x0 || x > box.x1 || y < box.y0 || y > box.y1)
        faults.push(`${attributes["data-part"]!} leaves the paper`);
    }
  }
  return faults;
}
