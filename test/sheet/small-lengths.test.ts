import { frameCheckText } from "miterwright/words";
import { expect, test } from "vitest";
import { shopSheet } from "miterwright/sheet";
import { formatters } from "miterwright/units";
import { plan } from "../drawing/frames.js";
import { formatsWith } from "../formats.js";
import { readSheet } from "./read-sheet.js";

const coarse = formatsWith({ length: (value) => `${Math.round(value)} mm`, angle: (degrees) => `${degrees}°` });
const small = (value: number): string => `${value.toFixed(3)} mm (finely)`;
const { smallAngle: firstDigit } = formatters({ unit: "mm" });
const frame = plan({ sides: 9, slope: 20, species: "white ash", acceptedGap: 0.3 });
const { sides } = frame.geometry;
const TABLE = "Measure on the loose pieces, dry without glue, and again once glued";

test("gaps, tolerances and what has one are written finely where the caller can, and everything else as before", () => {
  const fine = readSheet(shopSheet(frame, { formats: { ...coarse, small } }));
  const flats = frame.checks.find(({ code }) => code === "opening-across-flats")!;
  const row = fine.tables[TABLE]!.find(([what]) => what === frameCheckText(flats, { sides }))!;
  expect(row[2]).toBe(small(flats.value));
  const width = frame.checks.find(({ code }) => code === "level-width")!;
  expect(fine.tables[TABLE]!.find(([what]) => what === frameCheckText(width, { sides }))![2]).toBe(
    coarse.length(width.value),
  );
  expect(row[3]).toBe(`± ${small(flats.tolerance!)}`);
  expect(fine.text).toContain("0.300 mm (finely)");
  const rough = readSheet(shopSheet(frame, { formats: coarse }));
  expect(rough.tables[TABLE]!.find(([what]) => what === frameCheckText(flats, { sides }))![3]).toBe("a hair");
  expect(rough.text).not.toContain("finely");
});

test("a hazard about gaps writes them finely, one about pieces does not", () => {
  const { hazards } = frame;
  const { text } = readSheet(shopSheet(frame, { formats: { ...coarse, small } }));
  const reach = hazards.find(({ code }) => code === "reach")!;
  expect(text).toContain(`gap ${small(reach.numbers["jointGap"]!)}`);
  const short = hazards.find(({ code }) => code === "short-piece")!;
  expect(text).toContain(`(length ${coarse.length(short.numbers["length"]!)},`);
});

test("the limit of a gap is the same in hazards as elsewhere, also where a coarser one would tell the numbers apart", () => {
  const moving = plan({ sides: 8, species: "white ash", acceptedGap: 0.25 });
  const { inside, outside, limit } = moving.hazards.find(({ code }) => code === "season-gap")!.numbers;
  const tenths = { ...coarse, length: (value: number) => `${value.toFixed(1)} mm`, small };
  expect(new Set([inside, outside, limit].map((value) => tenths.length(value!))).size).toBe(3);
  const { text } = readSheet(shopSheet(moving, { formats: tenths }));
  expect(text).toContain(`limit ${small(0.25)}, moisture when fitted`);
  expect(text).toContain(`For a last joint within ${small(0.25)}`);
});

test("an angle that comes out as none is written down to its first digit", () => {
  const whole = (degrees: number): string => `${degrees.toFixed(0)}°`;
  const { text } = readSheet(shopSheet(frame, { formats: { ...coarse, angle: whole, smallAngle: firstDigit } }));
  const { shared, random } = frame.assembly.tolerance!;
  expect([shared.miter!.toFixed(2), random.miter!.toFixed(2)]).toEqual(["0.02", "0.05"]);
  expect(text).toContain("the miter to 0.02° where all cuts are off alike, 0.05° where each is off by its own");
  expect(text).toContain("(0.1°: ");
  expect(text).not.toMatch(/(?<!from |\d)(?:to|within|±) 0°/);
  // Large angles stay as they were.
  expect(text).toContain("slope 20°  opening");
});

test("angles rounded to thirty degrees do not stop the sheet", () => {
  const thirties = (degrees: number): string => `${Math.round(degrees / 30) * 30}°`;
  for (const [sides, slope] of [
    [3, 0],
    [9, 20],
    [24, 5],
    [8, -40],
  ] as const) {
    const { text } = readSheet(
      shopSheet(plan({ sides, slope, species: "white ash" }), {
        formats: { ...coarse, angle: thirties, smallAngle: firstDigit },
      }),
    );
    expect(text).toContain("miter");
  }
  expect(readSheet(shopSheet(frame, { formats: { ...coarse, angle: thirties, smallAngle: firstDigit } })).text).toMatch(
    /(?<!\d)[1-9]\d?°/,
  );
});

test("what is no function is refused", () => {
  expect(() => shopSheet(frame, { formats: { ...coarse, small: 2 as never } })).toThrow(
    "Expected `formats.small` to be a function that writes a small length as text, got 2 (number)",
  );
});
