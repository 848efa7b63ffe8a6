import { describe, expect, test } from "vitest";
import {
  preciseCompoundMiter,
  preciseCorner,
  precisePolygon,
  preciseSawSetting,
  preciseSection,
  precisePieceLength,
} from "miterwright/precise";

/** Calls that the types would forbid. */
const loose = (call: unknown): ((...given: unknown[]) => unknown) => call as (...given: unknown[]) => unknown;

const flat = { slope: 0, thickness: 20, width: 60 };
const tray = { slope: 30, thickness: 20, width: 60 };
const corner = { turn: 90, first: tray, second: tray };
const plane = { along: 1, across: 0, through: 0 };
const lying = { slope: 30, lay: "flat" };
const point = { x: 1, y: 2 };
const piece = { sides: 4, apothem: 100, slope: 0, on: point, at: point };
const polygon = { sides: 4, side: 1 };
const LENGTH = "a positive length (1e-100 to 1e100), as a number or a decimal text";
const SLOPE = "degrees from -90 to 90, as a number or a decimal text";
const TURN = "a number between -180 and 180, bounds excluded, as a number or a decimal text";

const wrong: readonly (readonly [
  call: { readonly name: string },
  given: readonly unknown[],
  code: string,
  path: string,
  message: string,
])[] = [
  [precisePolygon, [undefined], "missing", "options", "Expected `options` to be an object, got undefined"],
  [precisePolygon, [null], "type", "options", "Expected `options` to be an object, got null"],
  [precisePolygon, [[]], "type", "options", "Expected `options` to be an object, got an empty array"],
  [
    precisePolygon,
    [{ side: 1 }],
    "missing",
    "sides",
    "Expected `sides` to be an integer from 3 to 1000000, as a number or a decimal text, got undefined",
  ],
  [
    precisePolygon,
    [{ ...polygon, sides: 2 }],
    "range",
    "sides",
    "Expected `sides` to be an integer from 3 to 1000000, as a number or a decimal text, got 2 (number)",
  ],
  [
    precisePolygon,
    [{ ...polygon, sides: "4.5" }],
    "integer",
    "sides",
    'Expected `sides` to be an integer from 3 to 1000000, as a number or a decimal text, got "4.5" (string)',
  ],
  [
    precisePolygon,
    [{ ...polygon, sides: 1_000_001 }],
    "range",
    "sides",
    "Expected `sides` to be an integer from 3 to 1000000, as a number or a decimal text, got 1000001 (number)",
  ],
  [
    precisePolygon,
    [{ sides: 4 }],
    "missing",
    "",
    "Expected exactly one of `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`, `perimeter`, `area`, got none",
  ],
  [
    precisePolygon,
    [{ ...polygon, area: 1, apothem: 2 }],
    "conflict",
    "apothem",
    "Expected exactly one of `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`, `perimeter`, `area`, got `side` and `apothem` and `area`",
  ],
  [precisePolygon, [{ sides: 4, side: 0 }], "range", "side", `Expected \`side\` to be ${LENGTH}, got 0 (number)`],
  [
    precisePolygon,
    [{ sides: 4, side: "1e101" }],
    "range",
    "side",
    `Expected \`side\` to be ${LENGTH}, got "1e101" (string)`,
  ],
  [precisePolygon, [{ sides: 4, side: 5n }], "type", "side", `Expected \`side\` to be ${LENGTH}, got 5 (bigint)`],
  [
    precisePolygon,
    [{ sides: 4, side: Number.NaN }],
    "range",
    "side",
    `Expected \`side\` to be ${LENGTH}, got NaN (number)`,
  ],
  [
    precisePolygon,
    [{ sides: 4, side: Number.POSITIVE_INFINITY }],
    "range",
    "side",
    `Expected \`side\` to be ${LENGTH}, got Infinity (number)`,
  ],
  [precisePolygon, [{ sides: 4, side: "" }], "syntax", "side", `Expected \`side\` to be ${LENGTH}, got "" (string)`],
  [
    precisePolygon,
    [{ sides: 4, side: "1,5" }],
    "syntax",
    "side",
    `Expected \`side\` to be ${LENGTH}, got "1,5" (string)`,
  ],
  [
    precisePolygon,
    [{ sides: 4, side: "0x10" }],
    "syntax",
    "side",
    `Expected \`side\` to be ${LENGTH}, got "0x10" (string)`,
  ],
  [
    precisePolygon,
    [{ sides: 4, side: "Infinity" }],
    "syntax",
    "side",
    `Expected \`side\` to be ${LENGTH}, got "Infinity" (string)`,
  ],
  [
    precisePolygon,
    [{ sides: 4, side: " 1" }],
    "syntax",
    "side",
    `Expected \`side\` to be ${LENGTH}, got " 1" (string)`,
  ],
  [
    precisePolygon,
    [{ sides: 4, side: `1.${"0".repeat(1099)}` }],
    "range",
    "side",
    `Expected \`side\` to be a decimal text of at most 1100 characters, got "1.${"0".repeat(36)}… (string)`,
  ],
  [
    precisePolygon,
    [{ sides: 4, area: "1e-201" }],
    "range",
    "area",
    'Expected `area` to be a positive area (1e-200 to 1e200), as a number or a decimal text, got "1e-201" (string)',
  ],
  [
    precisePolygon,
    [{ ...polygon, digits: 0 }],
    "range",
    "digits",
    "Expected `digits` to be an integer from 1 to 1000, got 0 (number)",
  ],
  [
    precisePolygon,
    [{ ...polygon, digits: 1001 }],
    "range",
    "digits",
    "Expected `digits` to be an integer from 1 to 1000, got 1001 (number)",
  ],
  [
    precisePolygon,
    [{ ...polygon, digits: 2.5 }],
    "integer",
    "digits",
    "Expected `digits` to be an integer from 1 to 1000, got 2.5 (number)",
  ],
  [
    precisePolygon,
    [{ ...polygon, digits: "50" }],
    "type",
    "digits",
    'Expected `digits` to be an integer from 1 to 1000, got "50" (string)',
  ],

  [preciseCompoundMiter, [{ slope: 1 }], "missing", "", "Expected exactly one of `sides`, `turn`, got none"],
  [
    preciseCompoundMiter,
    [{ slope: 1, sides: 4, turn: 90 }],
    "conflict",
    "turn",
    "Expected exactly one of `sides`, `turn`, got `sides` and `turn`",
  ],
  [
    preciseCompoundMiter,
    [{ slope: 1, turn: 180 }],
    "range",
    "turn",
    `Expected \`turn\` to be ${TURN}, got 180 (number)`,
  ],
  [
    preciseCompoundMiter,
    [{ slope: 1, turn: "-180.0" }],
    "range",
    "turn",
    `Expected \`turn\` to be ${TURN}, got "-180.0" (string)`,
  ],
  [preciseCompoundMiter, [{ sides: 4 }], "missing", "slope", `Expected \`slope\` to be ${SLOPE}, got undefined`],
  [
    preciseCompoundMiter,
    [{ sides: 4, slope: `90.${"0".repeat(500)}1` }],
    "range",
    "slope",
    `Expected \`slope\` to be ${SLOPE}, got "90.${"0".repeat(35)}… (string)`,
  ],
  [
    preciseCompoundMiter,
    [{ sides: 4, slope: "1e-401" }],
    "range",
    "slope",
    'Expected `slope` to be 0 or of a magnitude of at least 1e-400, got "1e-401" (string)',
  ],
  [
    preciseCompoundMiter,
    [{ sides: 4, slope: "1e-99999999999999999999" }],
    "range",
    "slope",
    'Expected `slope` to be 0 or of a magnitude of at least 1e-400, got "1e-99999999999999999999" (string)',
  ],
  [
    preciseCompoundMiter,
    [{ sides: 4, slope: true }],
    "type",
    "slope",
    `Expected \`slope\` to be ${SLOPE}, got true (boolean)`,
  ],

  [preciseCorner, [{ ...corner, first: 5 }], "type", "first", "Expected `first` to be an object, got 5 (number)"],
  [
    preciseCorner,
    [{ ...corner, second: {} }],
    "missing",
    "second.slope",
    `Expected \`second.slope\` to be ${SLOPE}, got undefined`,
  ],
  [
    preciseCorner,
    [{ ...corner, second: { slope: 1, thickness: "-1" } }],
    "range",
    "second.thickness",
    `Expected \`second.thickness\` to be ${LENGTH}, got "-1" (string)`,
  ],
  [
    preciseCorner,
    [{ ...corner, joint: "dovetail" }],
    "unknown",
    "joint",
    'Expected `joint` to be one of "miter", "butt", got "dovetail" (string)',
  ],
  [
    preciseCorner,
    [{ ...corner, meet: 1 }],
    "type",
    "meet",
    'Expected `meet` to be one of "faces", "edges", got 1 (number)',
  ],
  [
    preciseCorner,
    [{ ...corner, first: { slope: 20, thickness: 1 }, meet: "edges" }],
    "missing",
    "first.width",
    `Expected \`first.width\` to be ${LENGTH}, got undefined`,
  ],
  [
    preciseCorner,
    [{ ...corner, second: flat }],
    "impossible",
    "second.slope",
    "Expected `second.slope` to be of the same sign as `first.slope`, as a flat board and a sloping one share no joint line, got 0 (number)",
  ],
  [
    preciseCorner,
    [{ ...corner, second: { ...tray, slope: "-30" } }],
    "impossible",
    "second.slope",
    'Expected `second.slope` to be of the same sign as `first.slope`, as boards that slope opposite ways share no joint line, got "-30" (string)',
  ],
  [
    preciseCorner,
    [{ ...corner, turn: 0, second: { ...tray, slope: 31 } }],
    "impossible",
    "second.slope",
    "Expected `second.slope` to be equal to `first.slope`, as sides that run straight on meet at no corner, got 31 (number)",
  ],
  [
    preciseCorner,
    [{ ...corner, second: { ...tray, slope: 90 }, meet: "edges" }],
    "impossible",
    "second.slope",
    "Expected `second.slope` to be between -90 and 90 to meet at edges, as an upright board shows none from above, got 90 (number)",
  ],
  [
    preciseCorner,
    [{ turn: 90, first: flat, second: flat, joint: "butt", meet: "faces" }],
    "impossible",
    "meet",
    'Expected `meet` to be "edges" for a butt joint of flat boards, as their faces look up, got "faces" (string)',
  ],
  [
    preciseCorner,
    [{ turn: 90, first: flat, second: { ...flat, thickness: 21 }, meet: "faces" }],
    "impossible",
    "second.thickness",
    "Expected `second.thickness` to be equal to `first.thickness`, as flat boards of two thicknesses meet at edges only, got 21 (number)",
  ],

  [preciseSawSetting, [undefined, lying], "missing", "plane", "Expected `plane` to be an object, got undefined"],
  [preciseSawSetting, [plane, 30], "type", "options", "Expected `options` to be an object, got 30 (number)"],
  [
    preciseSawSetting,
    [{ ...plane, along: 0 }, lying],
    "range",
    "along",
    "Expected `along` not to be 0: such a plane never crosses the stick",
  ],
  [
    preciseSawSetting,
    [{ ...plane, across: "1.01" }, lying],
    "range",
    "across",
    'Expected `across` to be a number from -1 to 1, as a number or a decimal text, got "1.01" (string)',
  ],
  [
    preciseSawSetting,
    [plane, { ...lying, lay: "upside-down" }],
    "unknown",
    "lay",
    'Expected `lay` to be one of "propped", "flat", "face-down", "sight-edge-down", "outer-edge-down", or degrees from -360 to 360, got "upside-down" (string)',
  ],
  [
    preciseSawSetting,
    [plane, { ...lying, lay: "400" }],
    "range",
    "lay",
    'Expected `lay` to be degrees from -360 to 360, as a number or a decimal text, got "400" (string)',
  ],
  [
    preciseSawSetting,
    [plane, { slope: 30 }],
    "missing",
    "lay",
    "Expected `lay` to be degrees from -360 to 360, as a number or a decimal text, got undefined",
  ],

  [
    preciseSection,
    [{ x: 1 }, { slope: 30 }],
    "missing",
    "point.y",
    "Expected `point.y` to be a finite distance (-1e100 to 1e100), as a number or a decimal text, got undefined",
  ],
  [preciseSection, [point, { slope: 91 }], "range", "slope", `Expected \`slope\` to be ${SLOPE}, got 91 (number)`],
  [
    precisePieceLength,
    [{ ...piece, at: { x: 1, y: "1e101" } }],
    "range",
    "at.y",
    'Expected `at.y` to be a finite distance (-1e100 to 1e100), as a number or a decimal text, got "1e101" (string)',
  ],
  [precisePieceLength, [{ ...piece, on: null }], "type", "on", "Expected `on` to be an object, got null"],
  [
    precisePieceLength,
    [{ ...piece, apothem: -5 }],
    "range",
    "apothem",
    `Expected \`apothem\` to be ${LENGTH}, got -5 (number)`,
  ],
];

describe("an InputError", () => {
  for (const [call, given, code, path, message] of wrong) {
    test(`of ${call.name}: ${message}`, () => {
      expect(() => loose(call)(...given)).toThrow(expect.objectContaining({ name: "InputError", code, path, message }));
    });
  }

  test("carries the value as it was given", () => {
    expect(() => preciseCompoundMiter({ sides: 4, slope: "090.5" })).toThrow(
      expect.objectContaining({ value: "090.5" }),
    );
  });
});

test("numbers at the ends of their ranges are taken", () => {
  const taken: readonly (() => unknown)[] = [
    () => precisePolygon({ sides: "1e6", side: "1e-100", digits: 1 }),
    () => precisePolygon({ sides: 3, area: 1e200, digits: 1 }),
    () => preciseCompoundMiter({ turn: "179.99999999999999999999999", slope: "90", digits: 1 }),
    () => preciseCompoundMiter({ sides: 3, slope: 5e-324, digits: 1 }),
    () => preciseCompoundMiter({ sides: 3, slope: "-1e-400", digits: 1 }),
    () => preciseCompoundMiter({ sides: 3, slope: `1.${"0".repeat(1098)}`, digits: 1 }),
    () => preciseSawSetting({ along: -1, across: 1, through: "-1.0" }, { slope: -90, lay: "-360" }),
  ];
  for (const call of taken) expect(call).not.toThrow();
});
