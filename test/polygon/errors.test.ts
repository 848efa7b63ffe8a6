import { isInputError } from "miterwright";
import {
  circleAround,
  circleWithin,
  onePolygonMeasure,
  offsetPolygon,
  polygonAround,
  polygonAroundCircle,
  polygonCorners,
  polygonExtent,
  polygonWithin,
  polygonWithinCircle,
  rectangleWithin,
  regularPolygon,
} from "miterwright/polygon";
import { describe, expect, test } from "vitest";

/** Calls a function with what its type does not allow. */
const loosely = (call: unknown, ...given: unknown[]): (() => unknown) => {
  return () => (call as (...given: unknown[]) => unknown)(...given);
};

/** What a call throws, in the order in which a reader wants it. */
function refusal(call: () => unknown): unknown[] {
  try {
    call();
  } catch (error) {
    if (isInputError(error)) return [error.code, error.path, error.value, error.message];
    throw error;
  }
  return ["nothing thrown"];
}

const octagon = { sides: 8, apothem: 10 };
const SIDES = "Expected `sides` to be an integer from 3 to 1000000, got";
const LENGTH = "to be a positive length (1e-100 to 1e100), got";
const MEASURES =
  "Expected exactly one of `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`, `perimeter`, `area`, got";

describe("a number of sides", () => {
  test.each([
    [2, "range", `${SIDES} 2 (number)`],
    [1_000_001, "range", `${SIDES} 1000001 (number)`],
    [NaN, "range", `${SIDES} NaN (number)`],
    [Infinity, "range", `${SIDES} Infinity (number)`],
    [6.5, "integer", `${SIDES} 6.5 (number)`],
    ["8", "type", `${SIDES} "8" (string)`],
    [undefined, "missing", `${SIDES} undefined`],
  ])("%s", (sides, code, message) => {
    const refused = [code, "sides", sides, message];
    expect(refusal(loosely(regularPolygon, { sides, side: 1 }))).toEqual(refused);
    expect(refusal(loosely(polygonAround, { sides, width: 1, height: 1 }))).toEqual(refused);
    expect(refusal(loosely(polygonWithin, { sides, width: 1, height: 1 }))).toEqual(refused);
    expect(refusal(loosely(polygonAroundCircle, { sides, diameter: 1 }))).toEqual(refused);
    expect(refusal(loosely(polygonWithinCircle, { sides, diameter: 1 }))).toEqual(refused);
  });
});

describe("options that are no object", () => {
  test.each([
    [undefined, "missing", "undefined"],
    [null, "type", "null"],
    [[8, 1], "type", "an array of 2"],
    [8, "type", "8 (number)"],
  ])("%s", (given, code, told) => {
    const refused = [code, "options", given, `Expected \`options\` to be an object, got ${told}`];
    for (const call of [regularPolygon, polygonAround, polygonWithin, polygonAroundCircle, polygonWithinCircle]) {
      expect(refusal(loosely(call, given))).toEqual(refused);
    }
    if (given !== undefined) expect(refusal(loosely(rectangleWithin, octagon, given))).toEqual(refused);
  });
});

describe("regularPolygon", () => {
  test("no measure, or two", () => {
    const none = { sides: 8 };
    expect(refusal(loosely(regularPolygon, none))).toEqual(["missing", "", none, `${MEASURES} none`]);
    const both = { sides: 8, side: 1, area: 2 };
    expect(refusal(loosely(regularPolygon, both))).toEqual([
      "conflict",
      "area",
      2,
      `${MEASURES} \`side\` and \`area\``,
    ]);
    const whole = regularPolygon({ sides: 8, side: 1 });
    expect(refusal(loosely(regularPolygon, whole))[0]).toBe("conflict");
  });

  test.each([
    ["side", 0, "range", `Expected \`side\` ${LENGTH} 0 (number)`],
    ["apothem", -1, "range", `Expected \`apothem\` ${LENGTH} -1 (number)`],
    ["circumradius", 9e-101, "range", `Expected \`circumradius\` ${LENGTH} 9e-101 (number)`],
    ["acrossFlats", 1.1e100, "range", `Expected \`acrossFlats\` ${LENGTH} 1.1e+100 (number)`],
    ["acrossCorners", NaN, "range", `Expected \`acrossCorners\` ${LENGTH} NaN (number)`],
    ["perimeter", "12", "type", `Expected \`perimeter\` ${LENGTH} "12" (string)`],
    ["area", 0, "range", "Expected `area` to be a positive area (1e-200 to 1e200), got 0 (number)"],
    ["area", Infinity, "range", "Expected `area` to be a positive area (1e-200 to 1e200), got Infinity (number)"],
    ["area", null, "type", "Expected `area` to be a positive area (1e-200 to 1e200), got null"],
  ])("%s %s", (measure, value, code, message) => {
    const refused = [code, measure, value, message];
    expect(refusal(loosely(regularPolygon, { sides: 8, [measure]: value }))).toEqual(refused);
    expect(refusal(loosely(onePolygonMeasure, measure, value))).toEqual(refused);
  });

  test("a measure nobody knows", () => {
    const list = '"side", "apothem", "circumradius", "acrossFlats", "acrossCorners", "perimeter", "area"';
    expect(refusal(loosely(onePolygonMeasure, "radius", 1))).toEqual([
      "unknown",
      "name",
      "radius",
      `Expected \`name\` to be one of ${list}, got "radius" (string)`,
    ]);
    expect(refusal(loosely(onePolygonMeasure, undefined, 1))[0]).toBe("missing");
  });
});

describe("a polygon", () => {
  const readers = [offsetPolygon, polygonCorners, polygonExtent, rectangleWithin, circleAround, circleWithin];

  test.each([
    [{ sides: 2, apothem: 1 }, "range", "polygon.sides", 2, "an integer from 3 to 1000000, got 2 (number)"],
    [{ apothem: 1 }, "missing", "polygon.sides", undefined, "an integer from 3 to 1000000, got undefined"],
    [{ sides: 8 }, "missing", "polygon.apothem", undefined, "an apothem from 1e-101 to 1e106, got undefined"],
    [{ sides: 8, apothem: 0 }, "range", "polygon.apothem", 0, "an apothem from 1e-101 to 1e106, got 0 (number)"],
    [
      { sides: 8, apothem: 2e106 },
      "range",
      "polygon.apothem",
      2e106,
      "an apothem from 1e-101 to 1e106, got 2e+106 (number)",
    ],
    [{ sides: 8, apothem: "1" }, "type", "polygon.apothem", "1", 'an apothem from 1e-101 to 1e106, got "1" (string)'],
    [null, "type", "polygon", null, "an object, got null"],
  ])("%j", (polygon, code, path, value, allowed) => {
    for (const call of readers) {
      expect(refusal(loosely(call, polygon, undefined))).toEqual([
        code,
        path,
        value,
        `Expected \`${path}\` to be ${allowed}`,
      ]);
    }
  });
});

describe("offsetPolygon", () => {
  test("a distance that leaves nothing", () => {
    for (const distance of [-10, -11, -1e100]) {
      expect(refusal(() => offsetPolygon(octagon, distance))).toEqual([
        "impossible",
        "distance",
        distance,
        `Expected \`distance\` to be a distance that leaves something of an apothem of 10, got ${distance} (number)`,
      ]);
    }
  });

  test("a distance that leads too far", () => {
    expect(refusal(() => offsetPolygon({ sides: 3, apothem: 1e106 }, 1e100))).toEqual([
      "range",
      "distance",
      1e100,
      "Expected `distance` to be a distance that leads to an apothem up to 1e106, got 1e+100 (number)",
    ]);
  });

  test.each([
    [NaN, "range", "NaN (number)"],
    [-Infinity, "range", "-Infinity (number)"],
    ["5", "type", '"5" (string)'],
    [undefined, "missing", "undefined"],
  ])("%s", (distance, code, told) => {
    const message = `Expected \`distance\` to be a finite distance (-1e100 to 1e100), got ${told}`;
    expect(refusal(loosely(offsetPolygon, octagon, distance))).toEqual([code, "distance", distance, message]);
  });
});

describe("a pose", () => {
  test.each([
    ["upright", "unknown", '"upright" (string)'],
    [7, "type", "7 (number)"],
  ])("%s as an option", (pose, code, told) => {
    const refused = [code, "pose", pose, `Expected \`pose\` to be one of "side-down", "corner-down", got ${told}`];
    expect(refusal(loosely(polygonAround, { sides: 8, width: 1, height: 1, pose }))).toEqual(refused);
    expect(refusal(loosely(polygonWithin, { sides: 8, width: 1, height: 1, pose }))).toEqual(refused);
    expect(refusal(loosely(rectangleWithin, octagon, { pose }))).toEqual(refused);
  });

  test.each([
    ["upright", "unknown", '"upright" (string)'],
    [361, "range", "361 (number)"],
    [NaN, "range", "NaN (number)"],
    [{}, "type", "an object"],
  ])("%s where a rotation will do as well", (pose, code, told) => {
    const message = `Expected \`pose\` to be "side-down", "corner-down" or degrees from -360 to 360, got ${told}`;
    expect(refusal(loosely(polygonCorners, octagon, pose))).toEqual([code, "pose", pose, message]);
    expect(refusal(loosely(polygonExtent, octagon, pose))).toEqual([code, "pose", pose, message]);
  });

  test("a rotation other than free, or together with a pose", () => {
    const size = { sides: 8, width: 1, height: 1 };
    const other = ["unknown", "rotation", "best", 'Expected `rotation` to be one of "free", got "best" (string)'];
    expect(refusal(loosely(polygonAround, { ...size, rotation: "best" }))).toEqual(other);
    expect(refusal(loosely(polygonWithin, { ...size, rotation: "best" }))).toEqual(other);
    expect(refusal(loosely(rectangleWithin, octagon, { rotation: "best" }))).toEqual(other);
    const two = { pose: "side-down", rotation: "free" };
    const both = ["conflict", "rotation", "free", "Expected at most one of `pose`, `rotation`, got both"];
    expect(refusal(loosely(polygonAround, { ...size, ...two }))).toEqual(both);
    expect(refusal(loosely(polygonWithin, { ...size, ...two }))).toEqual(both);
    expect(refusal(loosely(rectangleWithin, octagon, { ...two, aspect: 1 }))).toEqual(both);
  });
});

describe("sizes", () => {
  test.each([
    ["width", 0, "range", `Expected \`width\` ${LENGTH} 0 (number)`],
    ["width", "2", "type", `Expected \`width\` ${LENGTH} "2" (string)`],
    ["height", -2, "range", `Expected \`height\` ${LENGTH} -2 (number)`],
    ["height", NaN, "range", `Expected \`height\` ${LENGTH} NaN (number)`],
  ])("%s %s", (name, value, code, message) => {
    const options = { sides: 8, width: 1, height: 1, [name]: value };
    expect(refusal(loosely(polygonAround, options))).toEqual([code, name, value, message]);
    expect(refusal(loosely(polygonWithin, options))).toEqual([code, name, value, message]);
  });

  test("polygonAround needs both", () => {
    expect(refusal(loosely(polygonAround, { sides: 8, width: 1 }))).toEqual([
      "missing",
      "height",
      undefined,
      `Expected \`height\` ${LENGTH} undefined`,
    ]);
  });

  test("polygonWithin needs one", () => {
    const options = { sides: 8 };
    expect(refusal(loosely(polygonWithin, options))).toEqual([
      "missing",
      "",
      options,
      "Expected at least one of `width`, `height`, got none",
    ]);
  });

  test.each([
    [0, "range", "0 (number)"],
    ["1", "type", '"1" (string)'],
    [undefined, "missing", "undefined"],
  ])("a diameter of %s", (diameter, code, told) => {
    const refused = [code, "diameter", diameter, `Expected \`diameter\` ${LENGTH} ${told}`];
    expect(refusal(loosely(polygonAroundCircle, { sides: 8, diameter }))).toEqual(refused);
    expect(refusal(loosely(polygonWithinCircle, { sides: 8, diameter }))).toEqual(refused);
  });

  test.each([
    [-1, "range", "-1 (number)"],
    [1e101, "range", "1e+101 (number)"],
    ["1", "type", '"1" (string)'],
    [null, "type", "null"],
  ])("an allowance of %s", (allowance, code, told) => {
    const message = `Expected \`allowance\` to be zero or a positive length (up to 1e100), got ${told}`;
    const refused = [code, "allowance", allowance, message];
    expect(refusal(loosely(polygonAround, { sides: 8, width: 1, height: 1, allowance }))).toEqual(refused);
    expect(refusal(loosely(polygonAroundCircle, { sides: 8, diameter: 1, allowance }))).toEqual(refused);
  });

  test.each([
    [0, "range", "0 (number)"],
    [1e101, "range", "1e+101 (number)"],
    ["4:3", "type", '"4:3" (string)'],
  ])("an aspect of %s", (aspect, code, told) => {
    const message = `Expected \`aspect\` to be a positive ratio (1e-100 to 1e100), got ${told}`;
    expect(refusal(loosely(rectangleWithin, octagon, { aspect }))).toEqual([code, "aspect", aspect, message]);
  });
});
