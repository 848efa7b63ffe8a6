import { isInputError } from "miterwright";
import {
  boardMeasure,
  equilibriumMoisture,
  miterMovement,
  panelRoom,
  seasonalMovement,
  sheetMass,
  thermalExpansion,
  woodDensity,
  woodMass,
  woodSpecies,
} from "miterwright/wood";
import { describe, expect, test } from "vitest";

/** What a call with options that its type does not allow throws. */
function refusal(call: unknown, options: unknown): unknown[] {
  try {
    (call as (options: unknown) => unknown)(options);
  } catch (error) {
    if (isInputError(error)) return [error.code, error.path, error.message];
    throw error;
  }
  return ["nothing thrown"];
}

const board = { species: "white oak", width: 100, grain: "flat-sawn", from: 8, to: 11 };
const joint = { sides: 4, ...board };
const panel = { box: { width: 300, height: 400 }, species: "white oak", grain: "flat-sawn", from: 8, seasons: [6, 12] };
const pane = { sheet: "glass", length: 300, from: 20, to: 30 };
const NAME = "to be a wood that `woodNames()` lists, got";
const MOISTURE = "to be a moisture content in percent (0 to 300) or a climate, got";
const TEMPERATURE = "to be degrees Celsius from -60 to 200, got";
const UNIT = 'Expected `unit` to be one of "mm", "cm", "m", "in", "ft", got';
const LENGTH = "to be a positive length (1e-100 to 1e100), got";

describe("a wood", () => {
  test.each([
    [
      "oak",
      `Expected \`name\` ${NAME} "oak" (string); the most like it are "white oak", "live oak" (without specific gravity), "post oak" (without specific gravity)`,
    ],
    ...["red oak", "Oak, Red", "northern red oak"].map((name) => [
      name,
      `Expected \`name\` ${NAME} "${name}" (string); the most like it are "California red oak" (without specific gravity), "commercial red oak" (without specific gravity), "white oak"`,
    ]),
    [
      "hard maple",
      `Expected \`name\` ${NAME} "hard maple" (string); the most like it are "sugar maple", "bigleaf maple", "red maple"`,
    ],
    ["wallnut", `Expected \`name\` ${NAME} "wallnut" (string); the most like it are "black walnut"`],
    ["toString", `Expected \`name\` ${NAME} "toString" (string)`],
    ["", `Expected \`name\` ${NAME} "" (string)`],
    ["z".repeat(1e6), `Expected \`name\` ${NAME} "${"z".repeat(38)}… (string)`],
  ])("of no name in the table is refused", (name, message) => {
    expect(refusal(woodSpecies, name)).toEqual(["unknown", "name", message]);
  });

  test.each([
    [5, "type", "name", "Expected `name` to be the name of a wood, got 5 (number)"],
    [undefined, "missing", "name", "Expected `name` to be the name of a wood, got undefined"],
  ])("%s is no name", (name, code, path, message) => {
    expect(refusal(woodSpecies, name)).toEqual([code, path, message]);
  });

  test.each([
    ["teak wood", "unknown", "species", `Expected \`species\` ${NAME} "teak wood" (string)`],
    [7, "type", "species", "Expected `species` to be the name of a wood or an object with its figures, got 7 (number)"],
    [
      undefined,
      "missing",
      "species",
      "Expected `species` to be the name of a wood or an object with its figures, got undefined",
    ],
    [null, "type", "species", "Expected `species` to be an object, got null"],
    [{}, "missing", "species.radial", "Expected `species.radial` to be a number from 0 to 30, got undefined"],
    [
      { radial: 4 },
      "missing",
      "species.tangential",
      "Expected `species.tangential` to be a number from 0 to 30, got undefined",
    ],
    [
      { radial: -1, tangential: 4 },
      "range",
      "species.radial",
      "Expected `species.radial` to be a number from 0 to 30, got -1 (number)",
    ],
    [
      { radial: 4, coefficients: { radial: 0.001, tangential: 0.002 } },
      "missing",
      "species.tangential",
      "Expected `species.tangential` to be a number from 0 to 30, got undefined",
    ],
    [
      { coefficients: { radial: 0.001, tangential: 0.02 } },
      "range",
      "species.coefficients.tangential",
      "Expected `species.coefficients.tangential` to be a number from 0 to 0.01, got 0.02 (number)",
    ],
    [
      { coefficients: 0.001 },
      "type",
      "species.coefficients",
      "Expected `species.coefficients` to be an object, got 0.001 (number)",
    ],
    [
      { radial: 4, tangential: 8, fiberSaturation: 50 },
      "range",
      "species.fiberSaturation",
      "Expected `species.fiberSaturation` to be a number from 15 to 40, got 50 (number)",
    ],
    [
      { radial: 4, tangential: 8, specificGravity: 0 },
      "range",
      "species.specificGravity",
      "Expected `species.specificGravity` to be a number from 0.01 to 2, got 0 (number)",
    ],
    [
      { radial: 4, tangential: 8, name: 3 },
      "type",
      "species.name",
      "Expected `species.name` to be a string that is not empty, got 3 (number)",
    ],
  ])("given as %j", (species, code, path, message) => {
    expect(refusal(seasonalMovement, { ...board, species })).toEqual([code, path, message]);
  });

  test("is refused in every function that takes one", () => {
    for (const [call, options] of [
      [miterMovement, joint],
      [panelRoom, panel],
      [woodDensity, {}],
      [woodMass, { volume: 1, unit: "m" }],
    ] as const) {
      expect(refusal(call, { ...options, species: "iron" })).toEqual([
        "unknown",
        "species",
        `Expected \`species\` ${NAME} "iron" (string)`,
      ]);
    }
  });

  test.each([woodDensity, woodMass])("without specific gravity has no mass: %o", (call) => {
    const rest = { volume: 1, unit: "m" };
    const give = "give an object with `specificGravity` as `species`";
    expect(refusal(call, { ...rest, species: "apple" })).toEqual([
      "missing",
      "species.specificGravity",
      `Expected the specific gravity of "apple" to be known; ${give}`,
    ]);
    expect(refusal(call, { ...rest, species: { radial: 4, tangential: 8 } })).toEqual([
      "missing",
      "species.specificGravity",
      `Expected the specific gravity to be known; ${give}`,
    ]);
  });
});

describe("a board", () => {
  test.each([
    [{ width: 0 }, "range", "width", `Expected \`width\` ${LENGTH} 0 (number)`],
    [
      { grain: "plain" },
      "unknown",
      "grain",
      'Expected `grain` to be one of "flat-sawn", "rift-sawn", "quarter-sawn", got "plain" (string)',
    ],
    [{ grain: 91 }, "range", "grain", "Expected `grain` to be degrees from 0 to 90, got 91 (number)"],
    [{ from: -1 }, "range", "from", `Expected \`from\` ${MOISTURE} -1 (number)`],
    [{ to: "dry" }, "type", "to", `Expected \`to\` ${MOISTURE} "dry" (string)`],
    [{ to: undefined }, "missing", "to", `Expected \`to\` ${MOISTURE} undefined`],
    [{ to: NaN }, "range", "to", `Expected \`to\` ${MOISTURE} NaN (number)`],
    [{ to: null }, "type", "to", "Expected `to` to be an object, got null"],
    [
      { to: { temperature: 20 } },
      "missing",
      "to.humidity",
      "Expected `to.humidity` to be percent from 0 to 100, got undefined",
    ],
    [
      { from: { temperature: 120, humidity: 50 } },
      "range",
      "from.temperature",
      "Expected `from.temperature` to be degrees Celsius from -20 to 100, got 120 (number)",
    ],
    [
      { method: "guess" },
      "unknown",
      "method",
      'Expected `method` to be one of "shrinkage", "coefficient", got "guess" (string)',
    ],
    [
      { method: "coefficient", from: 5 },
      "range",
      "from",
      "Expected `from` to be a moisture content from 6 to 14, where coefficients hold, got 5 (number)",
    ],
    [
      { method: "coefficient", to: 15 },
      "range",
      "to",
      "Expected `to` to be a moisture content from 6 to 14, where coefficients hold, got 15 (number)",
    ],
  ])("with %j", (change, code, path, message) => {
    expect(refusal(seasonalMovement, { ...board, ...change })).toEqual([code, path, message]);
  });

  test.each([
    [{ thickness: 0 }, "range", "thickness", `Expected \`thickness\` ${LENGTH} 0 (number)`],
    [{ width: -5 }, "range", "width", `Expected \`width\` ${LENGTH} -5 (number)`],
    [{ length: "long" }, "type", "length", `Expected \`length\` ${LENGTH} "long" (string)`],
    [{ unit: "yd" }, "unknown", "unit", `${UNIT} "yd" (string)`],
    [{ count: 1.5 }, "integer", "count", "Expected `count` to be an integer from 1 to 100000, got 1.5 (number)"],
  ])("is not counted with %j", (change, code, path, message) => {
    const lumber = { thickness: 1, width: 6, length: 96, unit: "in", ...change };
    expect(refusal(boardMeasure, lumber)).toEqual([code, path, message]);
  });
});

test.each([
  [
    { temperature: -21, humidity: 50 },
    "range",
    "temperature",
    "Expected `temperature` to be degrees Celsius from -20 to 100, got -21 (number)",
  ],
  [
    { temperature: 20, humidity: 101 },
    "range",
    "humidity",
    "Expected `humidity` to be percent from 0 to 100, got 101 (number)",
  ],
  [
    { humidity: 50 },
    "missing",
    "temperature",
    "Expected `temperature` to be degrees Celsius from -20 to 100, got undefined",
  ],
  [50, "type", "options", "Expected `options` to be an object, got 50 (number)"],
])("a climate given as %j", (climate, code, path, message) => {
  expect(refusal(equilibriumMoisture, climate)).toEqual([code, path, message]);
});

test.each([
  [{ turn: 90 }, "conflict", "turn", "Expected exactly one of `sides`, `turn`, got `sides` and `turn`"],
  [{ sides: undefined }, "missing", "", "Expected exactly one of `sides`, `turn`, got none"],
  [{ sides: 2 }, "range", "sides", "Expected `sides` to be an integer from 3 to 1000000, got 2 (number)"],
  [
    { sides: undefined, turn: 180 },
    "range",
    "turn",
    "Expected `turn` to be a number between 0 and 180, bounds excluded, got 180 (number)",
  ],
  [{ slope: 95 }, "range", "slope", "Expected `slope` to be degrees from -90 to 90, got 95 (number)"],
  [{ slope: 20 }, "missing", "thickness", `Expected \`thickness\` ${LENGTH} undefined`],
  [{ thickness: -1 }, "range", "thickness", `Expected \`thickness\` ${LENGTH} -1 (number)`],
  [{ from: 301 }, "range", "from", `Expected \`from\` ${MOISTURE} 301 (number)`],
])("a joint with %j", (change, code, path, message) => {
  expect(refusal(miterMovement, { ...joint, ...change })).toEqual([code, path, message]);
});

test.each([
  [{ box: undefined }, "missing", "", "Expected exactly one of `polygon`, `box`, got none"],
  [
    { polygon: { sides: 4, apothem: 1 } },
    "conflict",
    "box",
    "Expected exactly one of `polygon`, `box`, got `polygon` and `box`",
  ],
  [
    { box: undefined, polygon: { sides: 4 } },
    "missing",
    "polygon.apothem",
    `Expected \`polygon.apothem\` ${LENGTH} undefined`,
  ],
  [{ box: { width: 5 } }, "missing", "box.height", `Expected \`box.height\` ${LENGTH} undefined`],
  [{ sheet: "glass" }, "conflict", "sheet", "Expected exactly one of `species`, `sheet`, got `species` and `sheet`"],
  [{ species: undefined }, "missing", "", "Expected exactly one of `species`, `sheet`, got none"],
  [
    { grainDirection: 400 },
    "range",
    "grainDirection",
    "Expected `grainDirection` to be degrees from -360 to 360, got 400 (number)",
  ],
  [{ seasons: 6 }, "type", "seasons", "Expected `seasons` to be an array of one season or more, got 6 (number)"],
  [{ seasons: [] }, "range", "seasons", "Expected `seasons` to be an array of one season or more, got an empty array"],
  [{ seasons: [6, -2] }, "range", "seasons[1]", `Expected \`seasons[1]\` ${MOISTURE} -2 (number)`],
  [
    { species: undefined, sheet: "steel" },
    "unknown",
    "sheet",
    'Expected `sheet` to be "glass", "acrylic" or an object with `expansion`, got "steel" (string)',
  ],
  [
    { species: undefined, sheet: "glass", seasons: [300] },
    "range",
    "seasons[0]",
    `Expected \`seasons[0]\` ${TEMPERATURE} 300 (number)`,
  ],
])("a panel with %j", (change, code, path, message) => {
  expect(refusal(panelRoom, { ...panel, ...change })).toEqual([code, path, message]);
});

test.each([
  [
    { sheet: { density: 900 } },
    "missing",
    "sheet.expansion",
    "Expected `sheet.expansion` to be a fraction per kelvin from 0 to 0.001, got undefined",
  ],
  [
    { sheet: { expansion: 0.5 } },
    "range",
    "sheet.expansion",
    "Expected `sheet.expansion` to be a fraction per kelvin from 0 to 0.001, got 0.5 (number)",
  ],
  [{ sheet: 9e-6 }, "type", "sheet", "Expected `sheet` to be an object, got 0.000009 (number)"],
  [{ length: 0 }, "range", "length", `Expected \`length\` ${LENGTH} 0 (number)`],
  [{ from: -100 }, "range", "from", `Expected \`from\` ${TEMPERATURE} -100 (number)`],
  [{ to: "hot" }, "type", "to", `Expected \`to\` ${TEMPERATURE} "hot" (string)`],
])("a pane with %j", (change, code, path, message) => {
  expect(refusal(thermalExpansion, { ...pane, ...change })).toEqual([code, path, message]);
});

test.each([
  [
    { sheet: {} },
    "missing",
    "sheet.density",
    "Expected `sheet.density` to be kilograms per cubic meter from 1 to 100000, got undefined",
  ],
  [
    { sheet: "lead" },
    "unknown",
    "sheet",
    'Expected `sheet` to be "glass", "acrylic" or an object with `density`, got "lead" (string)',
  ],
  [{ area: -1 }, "range", "area", "Expected `area` to be a positive area (1e-200 to 1e200), got -1 (number)"],
  [{ thickness: 0 }, "range", "thickness", `Expected \`thickness\` ${LENGTH} 0 (number)`],
  [{ unit: undefined }, "missing", "unit", `${UNIT} undefined`],
])("a sheet's mass with %j", (change, code, path, message) => {
  const sheet = { sheet: "glass", area: 1, thickness: 1, unit: "m", ...change };
  expect(refusal(sheetMass, sheet)).toEqual([code, path, message]);
});

test.each([
  [{ volume: 0 }, "range", "volume", "Expected `volume` to be a positive volume (1e-300 to 1e300), got 0 (number)"],
  [{ moisture: 400 }, "range", "moisture", `Expected \`moisture\` ${MOISTURE} 400 (number)`],
  [{ unit: "l" }, "unknown", "unit", `${UNIT} "l" (string)`],
])("a mass of wood with %j", (change, code, path, message) => {
  const wood = { species: "white oak", volume: 1, unit: "m", ...change };
  expect(refusal(woodMass, wood)).toEqual([code, path, message]);
});
