import type { FrameGeometry } from "miterwright/frame";
import { describe, expect, test } from "vitest";
import {
  tabulate,
  tabulateChecks,
  tabulateLays,
  tabulateLengths,
  tabulateMiters,
  tabulatePolygons,
} from "miterwright/report";
import { isInputError } from "miterwright/errors";
import { compoundMiterTable } from "miterwright/miter";
import { regularPolygon } from "miterwright/polygon";
import { plan } from "../drawing/frames.js";
import { formatsWith } from "../formats.js";

const TELL = { formats: formatsWith() };

/** What an error says: its code and its sentence, which names the path. */
function refusal(run: () => unknown): readonly [code: string, message: string] {
  try {
    run();
  } catch (error) {
    if (!isInputError(error)) throw error;
    expect(error.message).toContain(`\`${error.path}\``);
    return [error.code, error.message];
  }
  throw new Error("nothing was refused");
}

const WRITTEN = { length: "a length", area: "an area", angle: "an angle" };
const good = { caption: "x", columns: [{ label: "y" }], rows: [["z"]] };
const tabulateLoose = tabulate as (table: unknown, options?: unknown) => unknown;

describe("tabulate refuses", () => {
  test.each<readonly [unknown, string, string]>([
    [null, "type", "Expected `table` to be an object, got null"],
    [{ ...good, caption: undefined }, "missing", "Expected `caption` to be a string that is not empty, got undefined"],
    [{ ...good, caption: " \n" }, "range", 'Expected `caption` to be a string that is not empty, got "" (string)'],
    [{ ...good, columns: {} }, "type", "Expected `columns` to be an array of columns, got an object"],
    [{ ...good, columns: [] }, "range", "Expected `columns` to be an array of one column or more, got an empty array"],
    [{ ...good, columns: ["y"] }, "type", 'Expected `columns[0]` to be an object, got "y" (string)'],
    [
      { ...good, columns: [{ label: 5 }] },
      "type",
      "Expected `columns[0].label` to be a string that is not empty, got 5 (number)",
    ],
    [
      { ...good, columns: [{ label: "y", kind: "date" }] },
      "unknown",
      'Expected `columns[0].kind` to be one of "text", "number", "length", "area", "angle", got "date" (string)',
    ],
    [
      { ...good, columns: [{ label: "y", format: "0.0" }] },
      "type",
      'Expected `columns[0].format` to be a function that writes a number as text, got "0.0" (string)',
    ],
    [{ ...good, rows: undefined }, "missing", "Expected `rows` to be an array of rows, got undefined"],
    [{ ...good, rows: ["z"] }, "type", 'Expected `rows[0]` to be an array of cells, got "z" (string)'],
    [
      { ...good, rows: [["z"], ["z", 1]] },
      "conflict",
      "Expected `rows[1]` to have as many cells as there are columns, 1, got 2",
    ],
    [{ ...good, rows: [[NaN]] }, "range", "Expected `rows[0][0]` to be a finite number or a text, got NaN (number)"],
    [{ ...good, rows: [[true]] }, "type", "Expected `rows[0][0]` to be a finite number or a text, got true (boolean)"],
  ])("%j", (table, code, message) => {
    expect(refusal(() => tabulateLoose(table))).toEqual([code, message]);
  });

  test.each(["length", "area", "angle"] as const)("a column of kind %s without its formatter", (kind) => {
    const table = { ...good, columns: [{ label: "y", kind }], rows: [[1]] };
    const expected = `Expected \`formats.${kind}\` to be a function that writes`;
    expect(refusal(() => tabulate(table))).toEqual(["missing", `${expected} ${WRITTEN[kind]} as text, got undefined`]);
    const others = { ...formatsWith(), [kind]: undefined };
    expect(refusal(() => tabulateLoose(table, { formats: others }))[0]).toBe("missing");
    expect(refusal(() => tabulateLoose(table, { formats: { [kind]: () => 5 } }))).toEqual([
      "type",
      `${expected} ${WRITTEN[kind]} as text, but its result was not one, got 5 (number)`,
    ]);
    expect(refusal(() => tabulateLoose(table, 5))).toEqual([
      "type",
      "Expected `options` to be an object, got 5 (number)",
    ]);
  });
});

describe("refused are", () => {
  test("polygons that lack what is shown", () => {
    const hexagon = regularPolygon({ sides: 6, side: 10 });
    expect(refusal(() => tabulatePolygons([hexagon, { sides: 6, side: 10 }], TELL))).toEqual([
      "missing",
      "Expected `polygons[1].apothem` to be a finite number of 0 or more, got undefined",
    ]);
    expect(refusal(() => tabulatePolygons([{ ...hexagon, sides: 2 }], TELL))).toEqual([
      "range",
      "Expected `polygons[0].sides` to be an integer from 3 to 1000000, got 2 (number)",
    ]);
    expect(refusal(() => tabulatePolygons(hexagon as never, TELL))).toEqual([
      "type",
      "Expected `polygons` to be an array of polygons, got an object",
    ]);
  });

  test("quantities that a polygon has not, and those without a formatter", () => {
    const polygons = [regularPolygon({ sides: 6, side: 10 })];
    expect(refusal(() => tabulatePolygons(polygons, { ...TELL, show: ["side", "inradius" as never] }))).toEqual([
      "unknown",
      'Expected `show[1]` to be one of "side", "apothem", "circumradius", "acrossFlats", "acrossCorners", "perimeter", "area", "interiorAngle", "turn", "planMiter", got "inradius" (string)',
    ]);
    expect(refusal(() => tabulatePolygons(polygons, { ...TELL, show: "side" as never }))).toEqual([
      "type",
      'Expected `show` to be an array of names of quantities, got "side" (string)',
    ]);
    const formats = formatsWith({ area: undefined as never });
    expect(refusal(() => tabulatePolygons(polygons, { formats, show: ["area"] }))).toEqual([
      "missing",
      "Expected `formats.area` to be a function that writes an area as text, got undefined",
    ]);
  });

  test("rows that are no compound miters", () => {
    const [row] = compoundMiterTable({ sides: [6], slopes: [30] });
    expect(refusal(() => tabulateMiters({} as never, TELL))).toEqual([
      "type",
      "Expected `rows` to be an array of rows, got an object",
    ]);
    expect(refusal(() => tabulateMiters([{ ...row!, slope: 91 }], TELL))).toEqual([
      "range",
      "Expected `rows[0].slope` to be degrees from -90 to 90, got 91 (number)",
    ]);
    expect(refusal(() => tabulateMiters([{ ...row!, bevel: NaN }], TELL))).toEqual([
      "range",
      "Expected `rows[0].bevel` to be degrees from -180 to 180, got NaN (number)",
    ]);
    expect(refusal(() => tabulateMiters([], { ...TELL, show: "slope" as never }))).toEqual([
      "unknown",
      'Expected `show` to be one of "miter", "bevel", "dihedral", got "slope" (string)',
    ]);
    expect(refusal(() => tabulateMiters([], {} as never))).toEqual([
      "missing",
      "Expected `formats` to be an object, got undefined",
    ]);
  });

  test("frames and plans that lack what is shown", () => {
    const frame = plan({ slope: 20 });
    const { geometry, sawing } = frame;
    const [piece] = geometry.pieces;
    const short: FrameGeometry = { ...geometry, pieces: [{ ...piece, lengths: {} }] };
    expect(refusal(() => tabulateLengths(short, TELL))).toEqual([
      "missing",
      "Expected `geometry.pieces[0].lengths.sightFace` to be a finite number, got undefined",
    ]);
    expect(refusal(() => tabulateLengths(geometry, null as never))).toEqual([
      "type",
      "Expected `options` to be an object, got null",
    ]);
    expect(refusal(() => tabulateLays({ geometry, sawing: { ...sawing, lays: undefined } } as never, TELL))).toEqual([
      "missing",
      "Expected `sawing.lays` to be an array, got undefined",
    ]);
    const strange = { ...sawing.lays[0]!, lay: "askew" };
    expect(refusal(() => tabulateLays({ geometry, sawing: { ...sawing, lays: [strange] } } as never, TELL))).toEqual([
      "unknown",
      'Expected `sawing.lays[0].lay` to be one of "propped", "flat", "face-down", "sight-edge-down", "outer-edge-down", got "askew" (string)',
    ]);
    expect(refusal(() => tabulateLays(frame, { length: String } as never))).toEqual([
      "missing",
      "Expected `formats` to be an object, got undefined",
    ]);
    expect(refusal(() => tabulateChecks({} as never, TELL))).toEqual([
      "missing",
      "Expected `checks` to be an array, got undefined",
    ]);
    expect(refusal(() => tabulateChecks({ ...frame, checks: [{ ...frame.checks[0]!, value: NaN }] }, TELL))).toEqual([
      "range",
      "Expected `checks[0].value` to be a finite number, got NaN (number)",
    ]);
    expect(
      refusal(() =>
        tabulateChecks({ ...frame, checks: [{ ...frame.checks[0]!, tolerance: undefined as never }] }, TELL),
      ),
    ).toEqual(["missing", "Expected `checks[0].tolerance` to be a finite number, got undefined"]);
    expect(
      refusal(() => tabulateChecks({ ...frame, checks: [{ ...frame.checks[0]!, when: "wet" as never }] }, TELL)),
    ).toEqual(["unknown", 'Expected `checks[0].when` to be one of "pieces", "dry", "glued", got "wet" (string)']);
  });

  test("captions that are none", () => {
    for (const run of [
      () => tabulatePolygons([], { ...TELL, caption: "" }),
      () => tabulateMiters([], { ...TELL, caption: "" }),
      () => tabulateLengths(plan(), { ...TELL, caption: "" }),
      () => tabulateLays(plan(), { ...TELL, caption: "" }),
      () => tabulateChecks(plan(), { ...TELL, caption: "" }),
    ])
      expect(refusal(run)).toEqual(["range", 'Expected `caption` to be a string that is not empty, got "" (string)']);
  });
});
