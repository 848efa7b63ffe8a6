import { describe, expect, test } from "vitest";
import { drawStock } from "miterwright/drawing";
import { fitStock, type PlacedPiece, type StockJob } from "miterwright/stock";
import { SHORT, EXACT, SAY } from "./frames.js";
import { layoutFaults, readDrawing } from "./read-drawing.js";

const widthOf = (shape: readonly { readonly x: number }[]): number => {
  const xs = shape.map(({ x }) => x);
  return Math.max(...xs) - Math.min(...xs);
};

/** Each piece of a record at its place. */
function placesOf({ start, end, count, pitch = 0 }: PlacedPiece): { start: number; end: number }[] {
  return Array.from({ length: count }, (_, k) => ({ start: start + k * pitch, end: end + k * pitch }));
}

const job: StockJob = {
  pieces: [
    { id: "tray side", length: 246, count: 7 },
    { id: "lid side", length: 171, count: 4 },
  ],
  sticks: [
    { id: "larch", length: 1200 },
    { id: "rack", length: 700, count: 1 },
  ],
  kerf: 3,
  trim: 5,
  keep: 60,
};

describe("layouts", () => {
  const fit = fitStock(job);
  const read = readDrawing(drawStock(job, fit, EXACT));
  const texts = read.texts.map(({ text }) => text);

  test("are bars in one scale", () => {
    const lengths = fit.layouts.map(({ stick }) => job.sticks.find(({ id }) => id === stick)!.length);
    const bars = read.parts("stick").map(widthOf);
    expect(bars).toHaveLength(lengths.length);
    bars.forEach((bar, index) => {
      expect(bar / bars[0]!).toBeCloseTo(lengths[index]! / lengths[0]!, 3);
    });
  });

  test("have their pieces where the plan puts them", () => {
    const scale = widthOf(read.parts("stick")[0]!) / job.sticks.find(({ id }) => id === fit.layouts[0]!.stick)!.length;
    const wanted = fit.layouts.flatMap(({ pieces }) => pieces.flatMap(placesOf));
    read.parts("piece").forEach((piece, index) => {
      expect(Math.min(...piece.map(({ x }) => x))).toBeCloseTo(wanted[index]!.start * scale, 1);
      expect(Math.max(...piece.map(({ x }) => x))).toBeCloseTo(wanted[index]!.end * scale, 1);
    });
    expect(read.parts("piece")).toHaveLength(wanted.length);
  });

  test("say how often each is cut, from what, into what, and what is left", () => {
    for (const { stick, times } of fit.layouts) {
      const length = SAY.length(job.sticks.find(({ id }) => id === stick)!.length);
      expect(texts.some((text) => text.includes(`${times === 1 ? "" : `${times} times `}${stick} ${length}: `))).toBe(
        true,
      );
    }
    expect(texts.join(" ")).toContain(`tray side ${SAY.length(246)}`);
  });

  test("show the offcuts worth keeping", () => {
    const kept = fit.layouts.flatMap((layout) => layout.kept);
    expect(kept.length).toBeGreaterThan(0);
    expect(read.parts("kept-offcut")).toHaveLength(kept.length);
    expect(texts.join(" ")).toContain(`keep ${SAY.length(kept[0]!.end - kept[0]!.start)}`);
  });
});

test("neighbors that share a slanted cut meet in one line, leaning one way and the other in turn", () => {
  const shared: StockJob = {
    pieces: [{ id: "side", length: 246, count: 4, share: { key: "side", saving: 25 } }],
    sticks: [{ id: "larch", length: 1200 }],
    kerf: 3,
  };
  const pieces = readDrawing(drawStock(shared, fitStock(shared), SHORT)).parts("piece");
  expect(pieces).toHaveLength(4);
  pieces.slice(1).forEach((piece, index) => {
    const before = pieces[index]!;
    expect([before[1], before[2]]).toEqual([piece[0], piece[3]]);
    expect(Math.sign(piece[0]!.x - piece[3]!.x)).toBe(index % 2 === 0 ? 1 : -1);
  });
});

test("a sequence's parts are drawn one by one, with their own lengths", () => {
  const sequences: StockJob = {
    pieces: [{ id: "grain", sequence: [100, 150] }],
    sticks: [{ id: "larch", length: 1200 }],
    kerf: 3,
  };
  const read = readDrawing(drawStock(sequences, fitStock(sequences), SHORT));
  expect(read.parts("piece")).toHaveLength(2);
  expect(read.texts[0]!.text).toContain("1 × grain 100 mm, 1 × grain 150 mm");
});

test("very many equal pieces are one block with their number", () => {
  const pins: StockJob = { pieces: [{ id: "pin", length: 5, count: 200 }], sticks: [{ id: "larch", length: 1200 }] };
  const read = readDrawing(drawStock(pins, fitStock(pins), SHORT));
  expect(read.parts("piece")).toEqual([]);
  expect(read.texts.map(({ text }) => text)).toContain("200 × pin 5 mm");
});

test("nothing to cut is said", () => {
  const empty: StockJob = { pieces: [], sticks: [{ id: "larch", length: 1200 }] };
  const drawing = drawStock(empty, fitStock(empty), SHORT);
  expect(readDrawing(drawing).texts.map(({ text }) => text)).toEqual(["No stick is cut."]);
  expect(drawing.title).toBe("How 0 sticks are cut up");
});

test("names of any length are broken into lines, and none is lost", () => {
  const id = "a side of the tray for the tide-pool model ".repeat(9).trim();
  const long: StockJob = {
    pieces: [
      { id, length: 246, count: 2 },
      { id: "x".repeat(400), length: 100 },
    ],
    sticks: [{ id: "larch", length: 1200 }],
  };
  const drawing = drawStock(long, fitStock(long), SHORT);
  expect(layoutFaults(drawing)).toEqual([]);
  expect(drawing.width).toBeLessThan(710);
  const written = readDrawing(drawing).texts.map(({ text }) => text);
  expect(written.join(" ")).toContain(id);
  expect(written.join("")).toContain("x".repeat(400));
});

test("JSON changes nothing", () => {
  const fit = fitStock(job);
  const back = JSON.parse(JSON.stringify({ job, fit })) as { job: StockJob; fit: typeof fit };
  expect(drawStock(back.job, back.fit, SHORT).svg).toBe(drawStock(job, fit, SHORT).svg);
});

describe("what is too much to draw is counted", () => {
  test("a billion pieces in one stick are one block and one line", () => {
    const pins: StockJob = { pieces: [{ id: "pin", length: 1e-9, count: 1e9 }], sticks: [{ id: "larch", length: 1 }] };
    const drawing = drawStock(pins, fitStock(pins), SHORT);
    const read = readDrawing(drawing);
    expect(read.parts("pieces")).toHaveLength(1);
    expect(read.parts("piece")).toEqual([]);
    expect(read.texts[0]!.text).toContain("1000000000 × pin");
    expect(drawing.svg.length).toBeLessThan(2000);
  });

  test("rows of many equal pieces are blocks, sequences with all their parts, and pieces that follow keep their places", () => {
    const mixed: StockJob = {
      pieces: [
        { id: "pin", length: 2, count: 100 },
        { id: "pair", sequence: [3, 1], count: 60 },
      ],
      sticks: [{ id: "larch", length: 1200 }],
      kerf: 1,
    };
    const fit = fitStock(mixed);
    expect(fit.layouts.map(({ pieces }) => pieces.map(({ piece, count }) => [piece, count]))).toEqual([
      [
        ["pair", 60],
        ["pair", 60],
        ["pin", 100],
      ],
    ]);
    const read = readDrawing(drawStock(mixed, fit, SHORT));
    const blocks = read.parts("pieces");
    const scale = widthOf(read.parts("stick")[0]!) / 1200;
    expect(blocks.map((block) => widthOf(block) / scale)).toEqual([
      expect.closeTo(60 * 6 - 1, 0) as number,
      expect.closeTo(100 * 3 - 1, 0) as number,
    ]);
    expect(read.texts.map(({ text }) => text)).toEqual(expect.arrayContaining(["60 × pair", "100 × pin 2 mm"]));
  });

  test("many names, many ways of cutting and endless names take a moment", () => {
    const names = (count: number, name: (k: number) => string): StockJob => ({
      pieces: Array.from({ length: count }, (_, k) => ({ id: name(k), length: 1 })),
      sticks: [{ id: "larch", length: 50_000 }],
    });
    const many = names(20_000, (k) => `p${k}`);
    const whole = readDrawing(drawStock(many, fitStock(many, { stepLimit: 1e5 }), SHORT));
    expect(whole.texts.map(({ text }) => text).join(" ")).toContain("19976 other pieces");
    const long = names(3, (k) => `${k}${"x".repeat(1e6)}`);
    expect(drawStock(long, fitStock(long, { stepLimit: 1e5 }), SHORT).svg.length).toBeLessThan(20_000);
    const job: StockJob = { pieces: [{ id: "p", length: 10, count: 1e6 }], sticks: [{ id: "s", length: 10 }] };
    const layout = { stick: "s", times: 1, pieces: [{ piece: "p", start: 0, end: 10, count: 1 }], offcut: 0, kept: [] };
    const drawing = drawStock(job, { layouts: Array.from({ length: 100_000 }, () => layout) }, SHORT);
    expect(readDrawing(drawing).parts("stick")).toHaveLength(200);
    expect(drawing.description).toContain("99800 more sticks are cut in ways that are not drawn");
    expect(drawing.title).toBe("How 100000 sticks are cut up");
  });

  test("the longest and the shortest lengths there are", () => {
    for (const length of [1e-100, 1e100]) {
      const job: StockJob = { pieces: [{ id: "p", length, count: 3 }], sticks: [{ id: "s", length }] };
      expect(readDrawing(drawStock(job, fitStock(job), SHORT)).parts("piece")).toHaveLength(1);
    }
    const far: StockJob = {
      pieces: [
        { id: "a", length: 1e99, count: 5 },
        { id: "b", length: 1e-99, count: 5 },
      ],
      sticks: [{ id: "s", length: 7e99 }],
    };
    expect(drawStock(far, fitStock(far), SHORT).svg).not.toMatch(/NaN|Infinity/);
  });
});
