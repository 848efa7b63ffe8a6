import fc from "fast-check";
import { molding, sectionAt, type Profile, type SectionPoint } from "miterwright/profile";
import { describe, expect, expectTypeOf, test } from "vitest";
import { anyProfile, deepFrozen, numbersAreClean, sectionIsRotated, slopes } from "../laws/profile.js";
import { refuses } from "./refusals.js";
import { exact } from "../exact.js";
import { exactTrig, expectSum } from "./expect-sum.js";

const rabbeted = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });

describe("sectionAt", () => {
  test("is exact lying flat and standing upright either way", () => {
    expect(sectionAt(rabbeted, 0).arrises.wallLedge).toEqual({ out: 8, up: 10 });
    expect(sectionAt(rabbeted, 90).arrises.wallLedge).toEqual({ out: -10, up: 8 });
    expect(sectionAt(rabbeted, -90).arrises.wallLedge).toEqual({ out: 10, up: -8 });
    expect(sectionAt(rabbeted, -0).slope).toBe(0);
  });

  test("raises the outer edge at a positive slope and the sight edge at a negative one", () => {
    const tray = sectionAt(rabbeted, 30).arrises;
    expect(tray.outerBack.up).toBeGreaterThan(tray.sightBack.up);
    const reverse = sectionAt(rabbeted, -30).arrises;
    expect(reverse.outerBack.up).toBeLessThan(reverse.sightBack.up);
  });

  test("rotates the section", () => {
    fc.assert(fc.property(anyProfile, slopes(-90, 90), sectionIsRotated));
  });

  test("stands every point where decimals say, to the last places", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 90), (profile, slope) => {
        const { sin, cos } = exactTrig(slope);
        sectionAt(profile, slope).outline.forEach(({ out, up }, index) => {
          const { x, y } = profile.outline[index]!;
          expectSum(out, [exact(x).mul(cos), exact(y).mul(sin).neg()]);
          expectSum(up, [exact(x).mul(sin), exact(y).mul(cos)]);
        });
      }),
    );
  });

  test("mirrors bit for bit: upside down, the other slope stands the same way out and opposite in height", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 90), (profile, slope) => {
        const mirrored = { outline: profile.outline.map(({ x, y }) => ({ x, y: -y })).reverse(), arrises: {} };
        const upright = sectionAt({ ...profile, arrises: {} }, slope).outline;
        expect(sectionAt(mirrored, -slope).outline).toEqual(
          upright.map(({ out, up }) => ({ out, up: -up + 0 })).reverse(),
        );
      }),
    );
  });

  test("takes frozen and parsed profiles and returns clean numbers", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 90), (profile, slope) => {
        const section = sectionAt(deepFrozen(profile), slope);
        numbersAreClean(section);
        expect(sectionAt(JSON.parse(JSON.stringify(profile)) as Profile, slope)).toEqual(section);
        expect(JSON.parse(JSON.stringify(section))).toEqual(section);
      }),
    );
  });

  test("reads only the outline and the arrises, and keeps arrises of any name", () => {
    const profile = JSON.parse(
      '{"outline":[{"x":0,"y":0},{"x":1,"y":0},{"x":0,"y":1}],"arrises":{"__proto__":{"x":1,"y":0}},"madeFor":"x"}',
    ) as Profile;
    expect(Object.entries(sectionAt(profile, 0).arrises)).toEqual([["__proto__", { out: 1, up: 0 }]]);
  });

  test("types its arrises like the profile's", () => {
    expectTypeOf(sectionAt(rabbeted, 30).arrises.wallMouth).toEqualTypeOf<SectionPoint>();
    const plain = molding({ width: 40, thickness: 20 });
    // @ts-expect-error -- a molding without a rabbet has no wall
    expect(sectionAt(plain, 30).arrises.wallMouth).toBeUndefined();
  });
});

describe("sectionAt refuses", () => {
  const triangle = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 0, y: 1 },
  ];
  const at = (profile: unknown, slope: unknown) => () => sectionAt(profile as Profile, slope as number);
  refuses([
    ["Expected `slope` to be degrees from -90 to 90, got 91 (number)", "range", "slope", at(rabbeted, 91)],
    ["Expected `slope` to be degrees from -90 to 90, got NaN (number)", "range", "slope", at(rabbeted, NaN)],
    ['Expected `slope` to be degrees from -90 to 90, got "30" (string)', "type", "slope", at(rabbeted, "30")],
    ["Expected `slope` to be degrees from -90 to 90, got undefined", "missing", "slope", at(rabbeted, undefined)],
    ["Expected `profile` to be an object, got undefined", "missing", "profile", at(undefined, 0)],
    ["Expected `profile` to be an object, got an empty array", "type", "profile", at([], 0)],
    [
      "Expected `profile.arrises` to be an object, got undefined",
      "missing",
      "profile.arrises",
      at({ outline: triangle }, 0),
    ],
    [
      'Expected `profile.outline` to be an array of three or more points, got "round" (string)',
      "type",
      "profile.outline",
      at({ outline: "round", arrises: {} }, 0),
    ],
    [
      "Expected `profile.outline` to be an array of three or more points, got an array of 2",
      "range",
      "profile.outline",
      at({ outline: triangle.slice(1), arrises: {} }, 0),
    ],
    [
      "Expected `profile.outline[3].y` to be a finite distance (-1e100 to 1e100), got undefined",
      "missing",
      "profile.outline[3].y",
      at({ outline: [...triangle, { x: 1 }], arrises: {} }, 0),
    ],
    [
      "Expected `profile.outline[3]` to be an object, got null",
      "type",
      "profile.outline[3]",
      at({ outline: [...triangle, null], arrises: {} }, 0),
    ],
    [
      "Expected `profile.arrises.lip.x` to be a finite distance (-1e100 to 1e100), got Infinity (number)",
      "range",
      "profile.arrises.lip.x",
      at({ outline: triangle, arrises: { lip: { x: Infinity, y: 0 } } }, 0),
    ],
  ]);
});
