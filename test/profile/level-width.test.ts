import fc from "fast-check";
import {
  levelWidth,
  molding,
  rabbetSeating,
  sectionAt,
  sectionExtent,
  type LevelWidthOptions,
  type Profile,
} from "miterwright/profile";
import { describe, expect, test } from "vitest";
import { anyProfile, between, deepFrozen, numbersAreClean, rabbetedSizes, sizeOf, slopes } from "../laws/profile.js";
import { refuses } from "./refusals.js";
import { exact } from "../exact.js";
import { exactTrig, expectSum } from "./expect-sum.js";

const rabbeted = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
const plain = molding({ width: 40, thickness: 20 });

describe("levelWidth", () => {
  test("is the flat width lying flat and the thickness standing upright", () => {
    expect(levelWidth(plain, { slope: 0 })).toBe(40);
    expect(levelWidth(plain, { slope: 90 })).toBe(20);
    expect(levelWidth(plain, { slope: -90 })).toBe(20);
    expect(levelWidth(rabbeted, { slope: 0 })).toBe(32);
    expect(levelWidth(rabbeted, { slope: 0, from: "sightFace" })).toBe(40);
  });

  test("is more than the flat width times cos s: the thickness leans out too", () => {
    expect(levelWidth(plain, { slope: 30 })).toBeCloseTo(40 * Math.cos(Math.PI / 6) + 20 * Math.sin(Math.PI / 6), 12);
    expect(levelWidth(plain, { slope: -30 })).toBe(levelWidth(plain, { slope: 30 }));
  });

  test("starts at the point of the wall that decides the contents' size", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-89, 89), (profile, slope) => {
        const seating = rabbetSeating(profile, { slope, contents: [] });
        fc.pre(seating.possible);
        const { outer } = sectionExtent(profile, slope);
        expect(Math.abs(levelWidth(profile, { slope }) - (outer - seating.opening.out))).toBeLessThan(
          1e-13 * sizeOf(profile),
        );
      }),
    );
  });

  test("starts at the mouth of a reversed rabbet to the bit", () => {
    fc.assert(
      fc.property(rabbetedSizes, between(-90, -0.001), (sizes, slope) => {
        const reversed = molding(sizes);
        expect(levelWidth(reversed, { slope })).toBe(levelWidth(reversed, { slope, from: "wallMouth" }));
      }),
    );
  });

  test("of a square-cut rabbet it is what decimals say, to the last places", () => {
    fc.assert(
      fc.property(rabbetedSizes, between(0, 89.9), (sizes, slope) => {
        const { width, rabbet } = sizes;
        const { sin, cos, tan } = exactTrig(slope);
        const [w, d] = [exact(rabbet.width), exact(rabbet.depth)];
        const toBack = exact(width).mul(cos);
        const wall = w.mul(tan).lte(d) ? [w.div(cos).neg(), d.mul(sin)] : [w.mul(cos).neg()];
        expectSum(levelWidth(molding(sizes), { slope }), [toBack, ...wall]);
        // Reversed, the mouth decides and the face is outermost.
        const reversed = [toBack, exact(sizes.thickness).mul(sin), w.mul(cos).neg()];
        if (slope > 0) expectSum(levelWidth(molding(sizes), { slope: -slope }), reversed);
      }),
    );
  });

  test("never jumps as the slope grows, not even where the rabbet stops holding", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 89.99), (profile, slope) => {
        const before = levelWidth(profile, { slope });
        const after = levelWidth(profile, { slope: slope + 0.01 });
        // No point of the section moves faster than its distance from the others; the touching point slides by sec² at most.
        const speed = 4 * sizeOf(profile) * (Math.PI / 180) * 0.01;
        const { sightBack, wallLedge, wallMouth } = sectionAt(profile, slope).arrises;
        const drop = wallLedge.up - wallMouth.up;
        const slides = drop > 0 && wallLedge.up - sightBack.up <= drop ? (2 * sizeOf(profile)) / drop : 1;
        expect(Math.abs(after - before)).toBeLessThanOrEqual(speed * (1 + slides));
      }),
    );
  });

  test("stays within the section's extent, and from arris to arris it adds up", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 90), (profile, slope) => {
        const slack = 1e-13 * sizeOf(profile);
        const { width } = sectionExtent(profile, slope);
        const names = Object.keys(profile.arrises) as (keyof typeof profile.arrises)[];
        const whole = levelWidth({ ...profile, arrises: {} }, { slope });
        expect(whole).toBe(width);
        for (const from of names) {
          const toOutermost = levelWidth(profile, { slope, from });
          expect(toOutermost).toBeGreaterThanOrEqual(0);
          expect(toOutermost).toBeLessThanOrEqual(width);
          const detour =
            levelWidth(profile, { slope, from, to: "outerBack" }) + levelWidth(profile, { slope, from: "outerBack" });
          expect(Math.abs(detour - toOutermost)).toBeLessThanOrEqual(slack);
          expect(levelWidth(profile, { slope, from, to: "sightBack" })).toBe(
            -levelWidth(profile, { slope, from: "sightBack", to: from }) + 0,
          );
        }
      }),
    );
  });

  test("scales with the section bit for bit, and does not care where its origin or first corner is", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 90), between(-50, 50), (profile, slope, shift) => {
        const map = (change: (p: { x: number; y: number }) => { x: number; y: number }): Profile => ({
          outline: profile.outline.map(change),
          arrises: Object.fromEntries(Object.entries(profile.arrises).map(([name, point]) => [name, change(point)])),
        });
        const width = levelWidth(profile, { slope });
        expect(
          levelWidth(
            map(({ x, y }) => ({ x: 64 * x, y: 64 * y })),
            { slope },
          ),
        ).toBe(64 * width);
        const moved = levelWidth(
          map(({ x, y }) => ({ x: x + shift, y: y - shift })),
          { slope },
        );
        // Where ledge or wall are nearly parallel to the bench the touching point magnifies the shift's rounding.
        const { wallLedge, wallMouth } = sectionAt(profile, slope).arrises;
        if (wallLedge.up - wallMouth.up > 1) expect(Math.abs(moved - width)).toBeLessThan(1e-11 * sizeOf(profile));
        const outline = [...profile.outline.slice(2), ...profile.outline.slice(0, 2)];
        expect(Math.abs(levelWidth({ ...profile, outline }, { slope }) - width)).toBeLessThan(1e-13 * sizeOf(profile));
      }),
    );
  });

  test("takes frozen and parsed profiles and returns clean numbers", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 90), (profile, slope) => {
        const width = levelWidth(deepFrozen(profile), deepFrozen({ slope }));
        numbersAreClean(width);
        expect(levelWidth(JSON.parse(JSON.stringify(profile)) as Profile, { slope })).toBe(width);
      }),
    );
  });

  test("has only the profile's own arrises, in types too", () => {
    // @ts-expect-error -- a molding without a rabbet has no wall
    expect(() => levelWidth(plain, { slope: 0, from: "wallMouth" })).toThrow(
      expect.objectContaining({
        name: "InputError",
        code: "unknown",
        path: "from",
        message:
          'Expected `from` to be one of "sightFace", "sightBack", "outerFace", "outerBack", got "wallMouth" (string)',
      }),
    );
    expect(levelWidth(rabbeted, { slope: 0, from: "wallMouth" })).toBe(32);
  });
});

describe("levelWidth refuses", () => {
  const at = (profile: unknown, options: unknown) => () => levelWidth(profile as Profile, options as LevelWidthOptions);
  const names = '"sightFace", "sightBack", "outerFace", "outerBack"';
  const { outline } = plain;
  refuses([
    ["Expected `options` to be an object, got undefined", "missing", "options", at(plain, undefined)],
    ["Expected `slope` to be degrees from -90 to 90, got undefined", "missing", "slope", at(plain, {})],
    [
      "Expected `slope` to be degrees from -90 to 90, got -90.5 (number)",
      "range",
      "slope",
      at(plain, { slope: -90.5 }),
    ],
    [
      `Expected \`to\` to be one of ${names}, got "toString" (string)`,
      "unknown",
      "to",
      at(plain, { slope: 0, to: "toString" }),
    ],
    [`Expected \`to\` to be one of ${names}, got 3 (number)`, "type", "to", at(plain, { slope: 0, to: 3 })],
    [
      'Expected `from` to be left out, since the profile has no arrises, got "lip" (string)',
      "unknown",
      "from",
      at({ outline, arrises: {} }, { slope: 0, from: "lip" }),
    ],
    [
      "Expected `profile.arrises.lip` to be an object, got 1 (number)",
      "type",
      "profile.arrises.lip",
      at({ outline, arrises: { lip: 1 } }, { slope: 0, from: "lip" }),
    ],
    [
      "Expected `profile.outline` to be an array of three or more points, got an array of 2",
      "range",
      "profile.outline",
      at({ outline: outline.slice(2), arrises: {} }, { slope: 0 }),
    ],
  ]);
});
