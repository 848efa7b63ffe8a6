import { describe, expect, test } from "vitest";
import { isInputError } from "miterwright/errors";
import { checkBrief, planFrame, type FrameBrief } from "miterwright/frame";
import { tableSaw } from "miterwright/saw";
import { plain, rabbeted, throughJson } from "./briefs.js";

const sound = { sides: 6, profile: plain, opening: { side: 200 } };

/** The message of the one issue that a change to a sound brief raises, seen by the form's check and thrown by the planner. */
function onlyIssue(changes: Record<string, unknown>): string {
  const brief = { ...sound, ...changes };
  const issues = checkBrief(brief);
  expect(issues).toHaveLength(1);
  try {
    planFrame(brief as unknown as FrameBrief);
  } catch (error) {
    if (!isInputError(error)) throw error;
    expect({ code: error.code, path: error.path, value: error.value, message: error.message }).toEqual(issues[0]);
    return error.message;
  }
  throw new Error("planFrame took what checkBrief refuses");
}

describe("checkBrief", () => {
  test("finds nothing wrong with a sound brief, nor with its copy from JSON", () => {
    expect(checkBrief(sound)).toEqual([]);
    expect(checkBrief(throughJson(sound))).toEqual([]);
  });

  test("takes wood, moisture, prices and hanging in every form", () => {
    const brief = {
      ...sound,
      gap: 0.3,
      fastenerRoom: 0,
      species: { radial: 4, tangential: 8 },
      grain: "quarter-sawn",
      moisture: { made: 9, seasons: [{ temperature: 20, humidity: 30 }, 12] },
      price: { amount: 4.5, per: "board foot" },
      hanging: { by: "wire", wireAngle: 35, screwDepth: 12, extraMass: 2 },
      contents: [
        { name: "pane", thickness: 2, material: "glass", price: { amount: 38, per: "square meter" } },
        { name: "board", thickness: 3, material: { density: 750 } },
        { name: "panel", thickness: 6, material: { species: "white ash", grain: 30, grainDirection: 90 } },
      ],
    };
    expect(checkBrief(brief)).toEqual([]);
    expect(checkBrief(throughJson(brief))).toEqual([]);
    expect(planFrame(brief as FrameBrief).brief).toMatchObject(brief);
  });

  test("reports every issue at once, in the order of the fields", () => {
    const issues = checkBrief({
      sides: 2.5,
      slope: "steep",
      pose: "upright",
      opening: { side: 200, area: 3 },
      measured: { levelWidth: 0 },
      contents: [{ name: "", thickness: 2 }],
      clearance: -1,
      unit: "yd",
      kerf: Number.NaN,
      rough: { method: "square" },
      lay: "standing",
      sticks: [{ id: "ash", length: 0 }],
      colour: "oak",
    });
    expect(issues.map(({ path, code }) => [path, code])).toEqual([
      ["sides", "range"],
      ["slope", "type"],
      ["pose", "unknown"],
      ["opening.area", "conflict"],
      ["measured.levelWidth", "range"],
      ["contents[0].name", "range"],
      ["clearance", "range"],
      ["unit", "unknown"],
      ["kerf", "range"],
      ["rough.allowance", "missing"],
      ["lay", "unknown"],
      ["sticks[0].length", "range"],
      ["colour", "unknown"],
    ]);
  });

  test("reports every issue within a field too", () => {
    const issues = checkBrief({
      ...sound,
      opening: { contains: { width: 0, height: -1, allowance: -2 } },
      contents: [
        { thickness: 0, price: { amount: -1, per: "kg" } },
        { name: "pane", thickness: 2, material: { density: 0, expansion: 1 } },
        { name: "panel", thickness: "thin", material: { species: 3, grain: 91, grainDirection: 400 } },
      ],
      moisture: { made: -1, seasons: [6, 301, { temperature: 200, humidity: 40 }] },
      hanging: { by: "nail", wireAngle: 1, screwDepth: 0, extraMass: -1 },
      price: { amount: "dear", per: "yard" },
      sticks: [{ id: "", length: 0, count: -1, cost: -1 }, 5],
    });
    expect(issues.map(({ path }) => path)).toEqual([
      "opening.contains.width",
      "opening.contains.height",
      "opening.contains.allowance",
      "contents[0].name",
      "contents[0].thickness",
      "contents[0].price.amount",
      "contents[0].price.per",
      "contents[1].material.density",
      "contents[1].material.expansion",
      "contents[2].thickness",
      "contents[2].material.species",
      "contents[2].material.grain",
      "contents[2].material.grainDirection",
      "sticks[0].id",
      "sticks[0].length",
      "sticks[0].count",
      "sticks[0].cost",
      "sticks[1]",
      "moisture.made",
      "moisture.seasons[1]",
      "moisture.seasons[2].temperature",
      "price.amount",
      "price.per",
      "hanging.by",
      "hanging.wireAngle",
      "hanging.screwDepth",
      "hanging.extraMass",
    ]);
    const level = checkBrief({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 0, lap: -1, depth: 0 } });
    expect(level.map(({ path }) => path)).toEqual(["measured.levelWidth", "measured.lap", "measured.depth"]);
  });

  test("takes anything at all", () => {
    for (const value of [undefined, null, 5, "brief", [], () => 0]) {
      expect(checkBrief(value).map((issue) => issue.path)).toEqual(["brief"]);
    }
    expect(checkBrief({}).map((issue) => issue.code)).toEqual(["missing", "missing", "missing"]);
  });
});

test.each([
  [{ sides: 1001 }, "Expected `sides` to be an integer from 3 to 1000, got 1001 (number)"],
  [{ sides: 3.5 }, "Expected `sides` to be an integer from 3 to 1000, got 3.5 (number)"],
  [{ slope: -91 }, "Expected `slope` to be degrees from -90 to 90, got -91 (number)"],
  [{ pose: "lying" }, 'Expected `pose` to be one of "side-down", "corner-down", got "lying" (string)'],
  [{ opening: 300 }, "Expected `opening` to be an object, got 300 (number)"],
  [
    { opening: {} },
    "Expected exactly one of `contains`, `cutFrom`, `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`, `perimeter`, `area` in `opening`, got none",
  ],
  [
    { opening: { side: 1, perimeter: 6 } },
    "Expected exactly one of `contains`, `cutFrom`, `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`, `perimeter`, `area` in `opening`, got `side` and `perimeter`",
  ],
  [
    { opening: { side: Infinity } },
    "Expected `opening.side` to be a positive length (1e-100 to 1e100), got Infinity (number)",
  ],
  [{ opening: { area: -4 } }, "Expected `opening.area` to be a positive area (1e-200 to 1e200), got -4 (number)"],
  [
    { opening: { contains: { width: 3 } } },
    "Expected `opening.contains.height` to be a positive length (1e-100 to 1e100), got undefined",
  ],
  [
    { opening: { contains: { width: 3, height: 4, allowance: -2 } } },
    "Expected `opening.contains.allowance` to be zero or a positive length (up to 1e100), got -2 (number)",
  ],
  [
    { opening: { cutFrom: { width: "3", height: 4 } } },
    'Expected `opening.cutFrom.width` to be a positive length (1e-100 to 1e100), got "3" (string)',
  ],
  [
    { at: "bead" },
    'Expected `at` to be one of "contents", "sightFace", "sightBack", "outerFace", "outerBack", got "bead" (string)',
  ],
  [
    { at: "outerBack", opening: { contains: { width: 3, height: 4 } } },
    'Expected `at` to be "contents" where the opening is made to hold or to be filled by something, got "outerBack" (string)',
  ],
  [{ profile: undefined }, "Expected exactly one of `profile`, `measured`, got none"],
  [{ measured: { levelWidth: 4 } }, "Expected exactly one of `profile`, `measured`, got `profile` and `measured`"],
  [
    { profile: { outline: [], marks: {} } },
    "Expected `profile.outline` to be an array of three or more points, got an array",
  ],
  [
    { contents: "glass" },
    'Expected `contents` to be an array of layers, each with a name and a thickness, got "glass" (string)',
  ],
  [
    { contents: [{ name: "glass", thickness: 0 }] },
    "Expected `contents[0].thickness` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
  [{ clearance: null }, "Expected `clearance` to be zero or a positive length (up to 1e100), got null"],
  [{ unit: "inch" }, 'Expected `unit` to be one of "mm", "cm", "m", "in", "ft", got "inch" (string)'],
  [{ kerf: -3 }, "Expected `kerf` to be zero or a positive length (up to 1e100), got -3 (number)"],
  [{ saw: { ...tableSaw(), bevel: 45 } }, "Expected `saw.bevel` to be an object, got 45 (number)"],
  [
    { rough: { method: "mitered", allowance: 0 } },
    "Expected `rough.allowance` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
  [{ lay: 400 }, "Expected `lay` to be degrees from -360 to 360, got 400 (number)"],
  [{ sticks: {} }, "Expected `sticks` to be an array of sticks, each with an id and a length, got an object"],
  [
    { sticks: [{ id: "ash", length: 2000, count: 0.5 }] },
    "Expected `sticks[0].count` to be an integer from 0 to 1000000000, got 0.5 (number)",
  ],
  [
    { sticks: [{ id: "ash", length: 2000, cost: -1 }] },
    "Expected `sticks[0].cost` to be zero or a positive length (up to 1e100), got -1 (number)",
  ],
  [{ gap: 0 }, "Expected `gap` to be a positive length (1e-100 to 1e100), got 0 (number)"],
  [{ fastenerRoom: -1 }, "Expected `fastenerRoom` to be zero or a positive length (up to 1e100), got -1 (number)"],
  [{ species: 7 }, "Expected `species` to be the name of a wood or an object with its figures, got 7 (number)"],
  [{ grain: 91 }, "Expected `grain` to be degrees from 0 to 90, got 91 (number)"],
  [
    { moisture: { made: 8, seasons: [] } },
    "Expected `moisture.seasons` to be an array of one or more moistures, got an array",
  ],
  [
    { moisture: { made: 8, seasons: [6, { temperature: 21, humidity: 101 }] } },
    "Expected `moisture.seasons[1].humidity` to be percent from 0 to 100, got 101 (number)",
  ],
  [
    { moisture: { seasons: [6] } },
    "Expected `moisture.made` to be a moisture content in percent (0 to 300) or a climate, got undefined",
  ],
  [
    { price: { amount: 3, per: "square meter" } },
    'Expected `price.per` to be one of "meter", "foot", "cubic meter", "board foot", got "square meter" (string)',
  ],
  [{ price: { amount: -3, per: "foot" } }, "Expected `price.amount` to be an amount from 0 to 1e12, got -3 (number)"],
  [{ hanging: { by: "nail" } }, 'Expected `hanging.by` to be one of "wire", "two-hooks", got "nail" (string)'],
  [
    { hanging: { by: "wire", wireAngle: 0 } },
    "Expected `hanging.wireAngle` to be degrees from 5 to 85, got 0 (number)",
  ],
  [
    { hanging: { by: "two-hooks", screwDepth: 0 } },
    "Expected `hanging.screwDepth` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
  [
    { hanging: { by: "wire", extraMass: 1001 } },
    "Expected `hanging.extraMass` to be kilograms from 0 to 1000, got 1001 (number)",
  ],
  [
    { contents: [{ name: "pane", thickness: 2, material: "mica" }] },
    'Expected `contents[0].material` to be "glass", "acrylic" or an object with `density`, got "mica" (string)',
  ],
  [
    { contents: [{ name: "board", thickness: 2, material: { density: 0 } }] },
    "Expected `contents[0].material.density` to be kilograms per cubic meter from 1 to 100000, got 0 (number)",
  ],
  [
    { contents: [{ name: "panel", thickness: 6, material: { species: "white ash", grainDirection: 361 } }] },
    "Expected `contents[0].material.grainDirection` to be degrees from -360 to 360, got 361 (number)",
  ],
  [
    { contents: [{ name: "pane", thickness: 2, price: { amount: 40, per: "meter" } }] },
    'Expected `contents[0].price.per` to be one of "piece", "square meter", "square foot", got "meter" (string)',
  ],
  [
    { opening: { side: 2 }, at: "outerFace" },
    "Expected `opening` to leave the sticks a length at every edge, but at sightFace it would be -44.1880215352",
  ],
  [
    { colour: "oak" },
    "Expected only known fields in the brief (sides, slope, pose, opening, at, contents, clearance, unit, saw, kerf, rough, lay, sticks, gap, fastenerRoom, species, grain, moisture, price, hanging, profile, measured), got `colour`",
  ],
])("brief with %j", (changes, message) => {
  expect(onlyIssue(changes)).toBe(message);
});

test.each([
  [
    { levelWidth: 40, lap: -1 },
    "Expected `measured.lap` to be zero or a positive length (up to 1e100), got -1 (number)",
  ],
  [{ levelWidth: 40, depth: 0 }, "Expected `measured.depth` to be a positive length (1e-100 to 1e100), got 0 (number)"],
  [{}, "Expected `measured.levelWidth` to be a positive length (1e-100 to 1e100), got undefined"],
])("level measures %j", (measured, message) => {
  expect(onlyIssue({ profile: undefined, measured })).toBe(message);
});

test("a lay of -0 is 0 in the plan", () => {
  expect(Object.is(planFrame({ ...sound, lay: -0 }).brief.lay, 0)).toBe(true);
});

test("what is well-formed but cannot be made is data, not an error", () => {
  const plan = planFrame({
    sides: 6,
    slope: 70,
    profile: rabbeted,
    opening: { side: 300 },
    contents: [{ name: "glass", thickness: 3 }],
  });
  expect(plan.contents).toMatchObject({ possible: false });
  expect(plan.contents.why).toMatch(/too shallow/);
  expect(plan.cautions.map((caution) => caution.code)).toContain("seat");
});
