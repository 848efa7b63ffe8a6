import { describe, expect, test } from "vitest";
import {
  drawCradle,
  drawCut,
  drawPanel,
  drawPanelCut,
  drawPiece,
  drawPlanView,
  drawSection,
  drawStock,
  type Drawing,
  type DrawingOptions,
} from "miterwright/drawing";
import { tableSaw } from "miterwright/saw";
import { fitStock, type StockJob } from "miterwright/stock";
import { english, type Words } from "miterwright/words";
import { measuredPlan, plan, writing } from "./frames.js";
import { readDrawing } from "./read-drawing.js";

/** A catalog like another, with every text between brackets. */
function bracketed<T>(catalog: T): T {
  if (typeof catalog === "string") return `[${catalog}]` as T;
  if (typeof catalog === "function") {
    const write = catalog as unknown as (...values: unknown[]) => unknown;
    return ((...values: unknown[]) => bracketed(write(...values))) as T;
  }
  if (Array.isArray(catalog)) return catalog.map(bracketed) as T;
  return Object.fromEntries(Object.entries(catalog as object).map(([key, value]) => [key, bracketed(value)])) as T;
}

/** What of a text stands outside all brackets. */
function outside(text: string): string {
  let depth = 0;
  let rest = "";
  for (const character of text) {
    if (character === "]") depth--;
    if (depth < 0) throw new Error(`a bracket too many: ${text}`);
    if (depth === 0 && character !== "]" && character !== "[") rest += character;
    if (character === "[") depth++;
  }
  if (depth > 0) throw new Error(`a text is torn apart: ${text}`);
  return rest;
}

/** Numbers without units, so that every letter outside of brackets belongs to a text that is in no catalog. */
function numbersOnly(words: Words): DrawingOptions {
  return {
    ...writing(
      (value) => value.toFixed(1),
      (degrees) => degrees.toFixed(2),
    ),
    words,
  };
}

/** Drawings of every kind, in every state that has a text of its own; what the caller names has no letters. */
function drawAll(options: DrawingOptions): Drawing[] {
  const contents = [
    { name: "11", thickness: 2 },
    { name: "12", thickness: 0.5 },
  ];
  const frames = [
    plan({ slope: 20, contents }),
    plan({ slope: 45, contents }),
    plan({ slope: 75, contents }),
    plan({ sides: 5, pose: "corner-down", opening: { contains: { width: 200, height: 120 } } }),
    plan({ sides: 8, opening: { cutFrom: { width: 420, height: 297 } } }),
    plan({ opening: { cutFrom: { width: 4200, height: 297 } } }),
    plan({ sides: 1000, opening: { acrossFlats: 3e5 } }),
    plan({ slope: 25, lay: "propped" }),
    plan({ slope: 70, lay: "propped" }),
    plan({ slope: 30, lay: "face-down", rough: { method: "square", allowance: 15 } }),
    plan({ slope: 30, lay: 17 }),
    plan({
      slope: 20,
      saw: tableSaw({
        miter: { left: 1, right: 1, reads: "from-square", step: 1 },
        bevel: { left: 1, right: 1, reads: "from-vertical", step: 1 },
      }),
    }),
    measuredPlan(),
  ];
  const job: StockJob = {
    pieces: [
      { id: "21", length: 246, count: 7 },
      { id: "22", length: 5, count: 200 },
    ],
    sticks: [{ id: "23", length: 1200 }],
    kerf: 3,
    keep: 60,
  };
  const kinds: StockJob = {
    pieces: Array.from({ length: 30 }, (_, k) => ({ id: `3${k}`, length: 10 + k })),
    sticks: job.sticks,
  };
  const one = { stick: "23", times: 1, pieces: [{ piece: "21", start: 0, end: 246, count: 1 }], offcut: 0, kept: [] };
  return [
    ...frames.flatMap((frame) => [
      drawPlanView(frame, options),
      drawSection(frame, options),
      drawPiece(frame, options),
      ...frame.sawing.operations.map(({ step }) => drawCut(frame, { ...options, step })),
      ...(frame.sawing.cradle === null ? [] : [drawCradle(frame, options)]),
      ...(frame.panel === null ? [] : [drawPanel(frame.panel, options)]),
      ...(frame.panel?.cuts ?? []).slice(0, 4).map(({ step }) => drawPanelCut(frame.panel!, { ...options, step })),
    ]),
    drawStock(job, fitStock(job), options),
    drawStock(kinds, fitStock(kinds), options),
    drawStock(job, { layouts: [] }, options),
    drawStock(job, { layouts: Array.from({ length: 201 }, () => one) }, options),
  ];
}

describe("every text of a drawing", () => {
  const drawings = drawAll(numbersOnly(bracketed(english)));

  test("comes whole from the catalog, but for numbers and the letters of arrises and corners", () => {
    for (const drawing of drawings) {
      const labels = readDrawing(drawing).texts.map(({ text }) => text);
      const free = outside(labels.join(" "))
        .split(/[\s,]+/)
        .filter((word) => /\p{L}/u.test(word) && !/^(?:[a-z]|P\d+)$/.test(word));
      expect(free).toEqual([]);
    }
  });

  test("is one or several whole texts of the catalog in titles and descriptions", () => {
    for (const { title, description } of drawings) {
      expect(outside(title).trim()).toBe("");
      expect(outside(description).trim()).toBe("");
    }
  });

  test("is English without a catalog, and the same with the English one", () => {
    const given = drawAll(numbersOnly(english)).map(({ svg }) => svg);
    const { formats } = numbersOnly(english);
    expect(drawAll({ formats }).map(({ svg }) => svg)).toEqual(given);
  });
});

test("a catalog of one's own changes what it changes, and no more", () => {
  const above = { ...english.drawings.above, side: ({ value }: { readonly value: string }) => `Seite ${value}` };
  const words: Words = { ...english, drawings: { ...english.drawings, above } };
  const texts = readDrawing(drawPlanView(plan(), numbersOnly(words))).texts.map(({ text }) => text);
  expect(texts).toContain(`Seite ${plan().geometry.overall.polygon.side.toFixed(1)}`);
  expect(texts.some((text) => text.startsWith("across corners"))).toBe(true);
});

test("counts, fractions and units stay on one line", () => {
  const job: StockJob = {
    pieces: [3, 4, 5, 6, 7].map((length) => ({ id: `rail number ${"i".repeat(length)}`, length, count: 12 })),
    sticks: [{ id: "larch", length: 48 }],
  };
  for (let width = 160; width < 300; width += 7) {
    const options = writing(
      () => "5 7/16 in",
      (degrees) => `${degrees} °`,
    );
    const { texts } = readDrawing(drawStock(job, fitStock(job), { ...options, width }));
    for (const { text } of texts) expect(text).not.toMatch(/(?:^|\s)(?:5|5 7\/16|\d+)$|^(?:7\/16|in\b|×)/);
  }
});
