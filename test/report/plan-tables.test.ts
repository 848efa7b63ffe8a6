import { english, frameCheckText, obstacleText } from "miterwright/words";
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
import { anyBrief, measuredPlan, plan } from "../drawing/frames.js";
import { EXACT, formatsWith, loose, SHORT } from "../formats.js";
import { readHtml, readMarkdown, readPlainText } from "./read-table.js";

const TELL = { formats: SHORT };

/** A column of a table by its head. */
function columnOf(table: Table, label: string): readonly (number | string)[] {
  const index = table.columns.findIndex((column) => column.label === label);
  return table.rows.map((row) => row[index]!);
}

describe("a table of polygons", () => {
  const polygons = [3, 4, 5, 6, 8, 12].map((sides) => regularPolygon({ sides, side: 1 }));

  test("shows the usual quantities, those of length and angle by their formatters", () => {
    const table = tabulatePolygons(polygons, TELL);
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
    expect(loose(table.cells[3])).toEqual([
      "6",
      "1 mm",
      "0.86603 mm",
      "1 mm",
      "1.7321 mm",
      "2 mm",
      "120.00°",
      "30.00°",
    ]);
  });

  test("agrees with a handbook's areas of regular polygons of side 1", () => {
    // Machinery's Handbook, 31st edition, Industrial Press 2020, page 82, area = k side squared; values from memory.
    const formats = formatsWith({ area: (value) => value.toFixed(4) });
    const table = tabulatePolygons(polygons, { formats, show: ["area"], caption: "Areas" });
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
    const table = tabulatePolygons([{ sides: 7, turn: 360 / 7 }], { ...TELL, show: ["turn"] });
    expect(table.rows).toEqual([[7, 360 / 7]]);
  });

  test("shows nothing but the sides where nothing is asked for", () => {
    expect(tabulatePolygons(polygons, { ...TELL, show: [] }).cells.flat()).toEqual(["3", "4", "5", "6", "8", "12"]);
  });
});

describe("a table of compound miters", () => {
  const rows = compoundMiterTable({ sides: [4, 6, 8], slopes: [0, 45, 90] });

  test("has a row for every slope of every number of sides", () => {
    const table = tabulateMiters(rows, TELL);
    expect(table.columns.map(({ label }) => label)).toEqual(["sides", "slope", "miter", "bevel", "dihedral"]);
    expect(table.rows).toEqual(
      rows.map(({ sides, slope, miter, bevel, dihedral }) => [sides, slope, miter, bevel, dihedral]),
    );
    // Four sides at 45 degrees, in any table of hopper cuts: 35.26 and 30.
    expect(table.cells[1]).toEqual(["4", "45.00°", "35.26°", "30.00°", "120.00°"]);
  });

  test.each(["miter", "bevel", "dihedral"] as const)("shows the %s crosswise", (show) => {
    const table = tabulateMiters(rows, { ...TELL, show });
    expect(table.caption).toBe(`Compound miters, sticks lying flat: the ${show} by slope and number of sides`);
    expect(table.columns.map(({ label }) => label)).toEqual(["slope", "4 sides", "6 sides", "8 sides"]);
    for (const { sides, slope, ...angles } of rows) {
      const row = table.rows.find(([first]) => first === slope)!;
      expect(row[1 + [4, 6, 8].indexOf(sides)]).toBe(angles[show]);
    }
  });

  test("leaves a cell empty for which there is no row", () => {
    const table = tabulateMiters(rows.slice(0, 4), { ...TELL, show: "miter" });
    expect(table.cells).toEqual([
      ["0.00°", "45.00°", "30.00°"],
      ["45.00°", "35.26°", ""],
      ["90.00°", "0.00°", ""],
    ]);
  });
});

describe("a table of lengths", () => {
  test("has every edge with its letter and the length there", () => {
    const { geometry } = plan({ slope: 20 });
    const table = tabulateLengths(geometry, TELL);
    expect(table.columns.map(({ label }) => label)).toEqual(["letter", "edge", "length"]);
    expect(columnOf(table, "length")).toEqual(Object.values(geometry.pieces[0].lengths));
    expect(columnOf(table, "edge").slice(0, 2)).toEqual(["sight edge at the face", "sight edge at the back"]);
    expect(columnOf(table, "letter").slice(0, 3)).toEqual(["a", "b", "c"]);
    expect(table.cells.map((cells) => cells.at(-1))).toEqual(
      Object.values(geometry.pieces[0].lengths).map((length) => SHORT.length(length).replace(" ", "\u00a0")),
    );
  });

  test("of a plan says too where the tape goes", () => {
    const frame = plan({ slope: 20 });
    const table = tabulateLengths(frame, TELL);
    const { measure } = frame.sawing.operations.at(-1)!;
    expect(table.columns.map(({ label }) => label)).toEqual(["letter", "edge", "length", "tape"]);
    expect(columnOf(table, "tape")).toEqual(
      Object.keys(frame.geometry.arrises).map((arris) => (arris === measure!.arris ? "measure here" : "")),
    );
    expect(columnOf(table, "length")).toEqual(columnOf(tabulateLengths(frame.geometry, TELL), "length"));
  });

  test("has the rabbet's wall and the outermost point where only level measures are known", () => {
    expect(columnOf(tabulateLengths(measuredPlan(), TELL), "edge")).toEqual([
      "rabbet wall",
      "outermost point",
      "sight edge",
    ]);
  });

  test("has the longest and the shortest line where they have no name", () => {
    const { geometry } = plan({ slope: 20 });
    const [piece] = geometry.pieces;
    const nameless: FrameGeometry = {
      ...geometry,
      pieces: [{ ...piece, longest: { ...piece.longest, arris: null }, shortest: { ...piece.shortest, arris: null } }],
    };
    const { rows } = tabulateLengths(nameless, TELL);
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
        const out = Object.values(geometry.arrises).map((arris) => arris.out);
        const length = columnOf(tabulateLengths(geometry, { formats: EXACT }), "length") as number[];
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

test("an edge that the brief names stays on one line of its table, and cannot turn the text round", () => {
  const named = {
    outline: [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: 20 },
      { x: 0, y: 20 },
    ],
    arrises: { " bead\n\u202ebelow ": { x: 0, y: 20 } },
  };
  const table = tabulateLengths(plan({ profile: named }), { ...TELL, caption: " Lengths\n of all " });
  expect(table.cells[0]![1]).toBe("bead below");
  expect(table.caption).toBe("Lengths of all");
});

describe("a table of lays", () => {
  test("says of every lay what the scales show, how large the work is, and which is used", () => {
    const frame = plan({ slope: 20 });
    const { lays } = frame.sawing;
    const table = tabulateLays(frame, TELL);
    expect(table.rows).toHaveLength(lays.length);
    expect(columnOf(table, "miter")).toEqual(lays.map(({ first }) => first.miter.reading));
    expect(columnOf(table, "bevel")).toEqual(lays.map(({ first }) => first.bevel.reading));
    expect(columnOf(table, "height")).toEqual(lays.map(({ size }) => size!.height));
    expect(columnOf(table, "depth")).toEqual(lays.map(({ size }) => size!.depth));
    expect(columnOf(table, "works?").filter((text) => text === "used")).toHaveLength(1);
    expect(columnOf(table, "the stick lies")[0]).toBe("flat on its back");
  });

  test("has no sizes of the work where only level measures are known", () => {
    const heads = tabulateLays(measuredPlan(), TELL).columns.map(({ label }) => label);
    expect(heads).toEqual(["the stick lies", "miter", "bevel", "works?"]);
  });

  test("says in short why a lay can't be used where another can", () => {
    const frame = plan({ slope: 50, saw: tableSaw({ depth: 25 }) });
    const texts = columnOf(tabulateLays(frame, TELL), "works?");
    const { obstaclesInShort } = english.saws;
    frame.sawing.lays.forEach(({ lay, possible, obstacles }, index) => {
      if (lay === frame.sawing.lay!.lay) expect(texts[index]).toBe("used");
      else if (possible) expect(texts[index]).toBe("yes");
      else for (const { code } of obstacles) expect(texts[index]).toContain(obstaclesInShort[code]);
    });
    expect(texts).toContain("too high for the blade");
  });

  test("gives the reasons in full where no lay can be used", () => {
    const blunt = tableSaw({
      miter: { left: 1, right: 1, reads: "from-square", step: 1 },
      bevel: { left: 1, right: 1, reads: "from-vertical", step: 1 },
    });
    const frame = plan({ slope: 20, saw: blunt });
    const texts = columnOf(tabulateLays(frame, TELL), "works?");
    expect(texts).toEqual(
      frame.sawing.lays.map(({ obstacles }) => obstacles.map((obstacle) => obstacleText(obstacle, TELL)).join(" ")),
    );
    expect(texts).not.toContain("");
  });

  test("names a lay of one's own by its angle", () => {
    const table = tabulateLays(plan({ slope: 20, lay: 12.5 }), TELL);
    expect(columnOf(table, "the stick lies")).toContain("rolled by 12.50°");
  });
});

describe("a table of checks", () => {
  const frame = plan({ slope: 20 });
  const table = tabulateChecks(frame, TELL);
  /** Those that have a row of their own; what is measured again on the glued frame stands in the row of the dry one. */
  const checks = frame.checks.filter(({ when }) => when !== "glued");

  test("has what must be when, within what, and room for what is", () => {
    const times = { pieces: "loose", dry: "dry", glued: "glued" };
    expect(checks.length).toBeLessThan(frame.checks.length);
    expect(table.cells.map(([what, when, value, , is]) => [what, when, loose(value), is])).toEqual(
      checks.map((check) => [
        frameCheckText(check, frame.geometry),
        times[check.when],
        SHORT[check.kind](check.value),
        "",
      ]),
    );
    const within = columnOf(table, "within");
    checks.forEach(({ kind, tolerance }, index) => {
      expect(within[index]).toBe(tolerance === null ? "–" : `± ${SHORT[kind](tolerance)}`.replaceAll(" ", "\u00a0"));
    });
  });

  test("has room for what is once glued only where that is measured again", () => {
    const glued = columnOf(table, "glued");
    const again = checks.filter((_, index) => glued[index] === "").map(({ code }) => code);
    expect(again).toEqual(["opening-across-flats", "opening-across-corners", "flatness"]);
    expect(glued.filter((text) => text !== "")).toEqual(Array(checks.length - 3).fill("–"));
  });

  test("writes tolerances finely, and says which is only to be felt", () => {
    const [check] = frame.checks;
    const formats = formatsWith({
      angle: (degrees) => `${degrees.toFixed(2)}°`,
      smallAngle: (degrees) => `${degrees}°`,
    });
    const cellOf = (tolerance: number | null): string =>
      tabulateChecks({ ...frame, checks: [{ ...check!, kind: "angle", tolerance }] }, { formats }).cells[0]![3]!;
    expect([cellOf(null), cellOf(1e-7), cellOf(0.004), cellOf(0.006)]).toEqual([
      "–",
      "a hair",
      "±\u00a00.004°",
      "±\u00a00.01°",
    ]);
  });
});

test("tables of any frame, or of its plan read back from JSON, read the same in all three forms", () => {
  fc.assert(
    fc.property(anyBrief, (brief) => {
      const frame = planFrame(brief);
      const copy = JSON.parse(JSON.stringify(frame)) as typeof frame;
      for (const [table, again] of [
        [tabulateLengths(frame, TELL), tabulateLengths(copy, TELL)],
        [tabulateLays(frame, TELL), tabulateLays(copy, TELL)],
        [tabulateChecks(frame, TELL), tabulateChecks(copy, TELL)],
      ] as const) {
        expect(again).toEqual(table);
        const expected = {
          caption: table.caption,
          heads: table.columns.map(({ label }) => label),
          rows: table.cells,
        };
        for (const read of [readHtml(table.toHtml()), readMarkdown(table.toMarkdown()), readPlainText(String(table))])
          expect(read).toMatchObject(expected);
      }
    }),
    { numRuns: 40 },
  );
});
