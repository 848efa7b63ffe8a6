import { frameCheckText, obstacleText } from "miterwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  tabulateChecks,
  tabulateLays,
  tabulateLengths,
  tabulateMiters,
  tabulatePolygons,
  type Table,
} from "miterwright/report";
import { planFrame, type FrameGeometry } from "miterwright/frame";
import { compoundMiterTable } from "miterwright/miter";
import { regularPolygon } from "miterwright/polygon";
import { tableSaw } from "miterwright/saw";
import { anyBrief, measuredPlan, plan, SHORT, WORDS } from "../drawing/frames.js";
import { readHtml, readMarkdown, readPlainText } from "./read-table.js";

/** A column of a table by its head. */
function columnOf(table: Table, label: string): readonly (number | string)[] {
  const index = table.columns.findIndex((column) => column.label === label);
  return table.rows.map((row) => row[index]!);
}

describe("a table of polygons", () => {
  const polygons = [3, 4, 5, 6, 8, 12].map((sides) => regularPolygon({ sides, side: 1 }));

  test("shows the usual quantities, those of length and angle by their formatters", () => {
    const table = tabulatePolygons(polygons, SHORT);
    expect(table.columns.map(({ label }) => label)).toEqual([
      "sides",
      "side",
      "apothem",
      "circumradius",
      "across flats",
      "across corners",
      "interior angle",
      "plan miter",
    ]);
    expect(table.cells[3]).toEqual(["6", "1 mm", "0.86603 mm", "1 mm", "1.7321 mm", "2 mm", "120.00°", "30.00°"]);
  });

  test("agrees with a handbook's areas of regular polygons of side 1", () => {
    // Machinery's Handbook, 31st edition, Industrial Press 2020, page 82, area = k side squared; values from memory.
    const area = (value: number): string => value.toFixed(4);
    const table = tabulatePolygons(polygons, { area, show: ["area"], caption: "Areas" });
    expect(table.cells).toEqual([
      ["3", "0.4330"],
      ["4", "1.0000"],
      ["5", "1.7205"],
      ["6", "2.5981"],
      ["8", "4.8284"],
      ["12", "11.1962"],
    ]);
    expect(table.caption).toBe("Areas");
  });

  test("reads of a polygon only what it shows", () => {
    const table = tabulatePolygons([{ sides: 7, turn: 360 / 7 }], { angle: WORDS.angle, show: ["turn"] });
    expect(table.rows).toEqual([[7, 360 / 7]]);
  });

  test("shows nothing but the sides where nothing is asked for", () => {
    expect(tabulatePolygons(polygons, { show: [] }).cells.flat()).toEqual(["3", "4", "5", "6", "8", "12"]);
  });
});

describe("a table of compound miters", () => {
  const rows = compoundMiterTable({ sides: [4, 6, 8], slopes: [0, 45, 90] });

  test("has a row for every slope of every number of sides", () => {
    const table = tabulateMiters(rows, SHORT);
    expect(table.columns.map(({ label }) => label)).toEqual(["sides", "slope", "miter", "bevel", "dihedral"]);
    expect(table.rows).toEqual(
      rows.map(({ sides, slope, miter, bevel, dihedral }) => [sides, slope, miter, bevel, dihedral]),
    );
    // Four sides at 45 degrees, in any table of hopper cuts: 35.26 and 30.
    expect(table.cells[1]).toEqual(["4", "45.00°", "35.26°", "30.00°", "120.00°"]);
  });

  test.each(["miter", "bevel", "dihedral"] as const)("shows the %s crosswise", (show) => {
    const table = tabulateMiters(rows, { ...SHORT, show });
    expect(table.caption).toBe(`Compound miters, sticks lying flat: the ${show} by slope and number of sides`);
    expect(table.columns.map(({ label }) => label)).toEqual(["slope", "4 sides", "6 sides", "8 sides"]);
    for (const { sides, slope, ...angles } of rows) {
      const row = table.rows.find(([first]) => first === slope)!;
      expect(row[1 + [4, 6, 8].indexOf(sides)]).toBe(angles[show]);
    }
  });

  test("leaves a cell empty for which there is no row", () => {
    const table = tabulateMiters(rows.slice(0, 4), { ...SHORT, show: "miter" });
    expect(table.cells).toEqual([
      ["0.00°", "45.00°", "30.00°"],
      ["45.00°", "35.26°", ""],
      ["90.00°", "0.00°", ""],
    ]);
  });
});

describe("a table of lengths", () => {
  test("has every arris, where it lies, and the length there", () => {
    const { geometry } = plan({ slope: 20 });
    const table = tabulateLengths(geometry, SHORT);
    expect(columnOf(table, "length")).toEqual(Object.values(geometry.pieces[0].lengths));
    expect(columnOf(table, "out")).toEqual(Object.values(geometry.arrises).map(({ out }) => out));
    expect(columnOf(table, "up")).toEqual(Object.values(geometry.arrises).map(({ up }) => up));
    expect(columnOf(table, "edge").slice(0, 2)).toEqual(["sight edge at the face", "sight edge at the back"]);
    expect(columnOf(table, "letter").slice(0, 3)).toEqual(["a", "b", "c"]);
    expect(tabulateLengths(plan({ slope: 20 }), SHORT).cells).toEqual(table.cells);
  });

  test("has no heights where only level measures are known", () => {
    expect(tabulateLengths(measuredPlan(), SHORT).columns.map(({ label }) => label)).toEqual([
      "letter",
      "edge",
      "out",
      "length",
    ]);
  });

  test("has the longest and the shortest line where they have no name", () => {
    const { geometry } = plan({ slope: 20 });
    const [piece] = geometry.pieces;
    const nameless: FrameGeometry = {
      ...geometry,
      pieces: [{ ...piece, longest: { ...piece.longest, arris: null }, shortest: { ...piece.shortest, arris: null } }],
    };
    const { rows } = tabulateLengths(nameless, SHORT);
    expect(rows.slice(-2).map(([letter, arris]) => [letter, arris])).toEqual([
      ["–", "longest line of the piece"],
      ["–", "shortest line of the piece"],
    ]);
    expect(rows.slice(-2).map((row) => row.at(-1))).toEqual([piece.longest.length, piece.shortest.length]);
  });

  test("bears out that lengths differ by how far out the arrises lie", () => {
    fc.assert(
      fc.property(anyBrief, (brief) => {
        const { geometry } = planFrame(brief);
        const table = tabulateLengths(geometry, WORDS);
        const [out, length] = [columnOf(table, "out"), columnOf(table, "length")] as [number[], number[]];
        const tangent = Math.tan((geometry.corners[0].planMiter * Math.PI) / 180);
        const size = Math.max(...length, ...out.map(Math.abs));
        out.forEach((_, index) => {
          const difference = length[index]! - length[0]! - 2 * (out[index]! - out[0]!) * tangent;
          expect(Math.abs(difference)).toBeLessThan(1e-12 * size);
        });
      }),
      { numRuns: 60 },
    );
  });
});

describe("a table of lays", () => {
  test("says of every lay what the scales show, and which is used", () => {
    const frame = plan({ slope: 20 });
    const table = tabulateLays(frame, SHORT);
    expect(table.rows).toHaveLength(frame.sawing.lays.length);
    expect(columnOf(table, "rolled by")).toEqual(frame.sawing.lays.map(({ rotation }) => rotation));
    expect(columnOf(table, "miter scale")).toEqual(frame.sawing.lays.map(({ first }) => first.miter.reading));
    expect(columnOf(table, "bevel scale")).toEqual(frame.sawing.lays.map(({ first }) => first.bevel.reading));
    expect(columnOf(table, "possible").filter((text) => text === "used here")).toHaveLength(1);
    expect(columnOf(table, "the stick lies")[0]).toBe("flat on its back");
  });

  test("gives the reasons where a lay can't be used, and names no lay when none can", () => {
    const blunt = tableSaw({
      miter: { left: 1, right: 1, reads: "from-square", step: 1 },
      bevel: { left: 1, right: 1, reads: "from-vertical", step: 1 },
    });
    const frame = plan({ slope: 20, saw: blunt });
    const texts = columnOf(tabulateLays(frame, SHORT), "possible");
    expect(texts).toEqual(
      frame.sawing.lays.map(({ obstacles }) =>
        obstacles.map((obstacle) => obstacleText(obstacle, { angle: SHORT.angle })).join(" "),
      ),
    );
    expect(texts).not.toContain("");
  });

  test("names a lay of one's own by its angle", () => {
    const table = tabulateLays(plan({ slope: 20, lay: 12.5 }), SHORT);
    expect(columnOf(table, "the stick lies")).toContain("rolled by 12.50°");
  });
});

test("a table of checks has what must be when, within what, and room for what is", () => {
  const frame = plan({ slope: 20 });
  const table = tabulateChecks(frame, SHORT);
  const times = { pieces: "loose pieces", dry: "dry frame", glued: "glued frame" };
  expect(table.cells.map(([what, when, value, , is]) => [what, when, value, is])).toEqual(
    frame.checks.map((check) => [
      frameCheckText(check, frame.geometry),
      times[check.when],
      SHORT[check.kind](check.value),
      "",
    ]),
  );
  const within = columnOf(table, "within");
  frame.checks.forEach(({ kind, tolerance }, index) => {
    expect(within[index]).toBe(tolerance === null ? "–" : `± ${SHORT[kind](tolerance)}`.replaceAll(" ", "\u00a0"));
  });
  const [check] = frame.checks;
  const cellOf = (tolerance: number | null): string =>
    tabulateChecks({ ...frame, checks: [{ ...check!, kind: "angle", tolerance }] }, SHORT).cells[0]![3]!;
  expect([cellOf(null), cellOf(0.004), cellOf(0.006)]).toEqual(["–", "a hair", "±\u00a00.01°"]);
});

test("tables of any frame, or of its plan read back from JSON, read the same in all three forms", () => {
  fc.assert(
    fc.property(anyBrief, (brief) => {
      const frame = planFrame(brief);
      const copy = JSON.parse(JSON.stringify(frame)) as typeof frame;
      for (const [table, again] of [
        [tabulateLengths(frame, SHORT), tabulateLengths(copy, SHORT)],
        [tabulateLays(frame, SHORT), tabulateLays(copy, SHORT)],
        [tabulateChecks(frame, SHORT), tabulateChecks(copy, SHORT)],
      ] as const) {
        expect(again).toEqual(table);
        const expected = {
          caption: table.caption,
          heads: table.columns.map(({ label }) => label),
          rows: table.cells,
        };
        // HTML ties a number to its fraction and its unit.
        const html = readHtml(table.toHtml().replaceAll("\u00a0", " "));
        const ties = (cells: readonly string[]): string[] => cells.map((text) => text.replaceAll("\u00a0", " "));
        expect(html).toMatchObject({ ...expected, rows: table.cells.map(ties) });
        for (const read of [readMarkdown(table.toMarkdown()), readPlainText(String(table))])
          expect(read).toMatchObject(expected);
      }
    }),
    { numRuns: 40 },
  );
});
