import fc from "fast-check";
import {
  parseProfile,
  tryParseProfile,
  innermostPoint,
  levelWidth,
  molding,
  outermostPoint,
  sectionArea,
  sectionAt,
  sectionCentroid,
  sectionExtent,
  type Profile,
} from "miterwright/profile";
import { describe, expect, expectTypeOf, test } from "vitest";
import { anyProfile, between, deepFrozen, numbersAreClean, rabbetedSizes, sizeOf, slopes } from "../laws/profile.js";
import { refuses } from "./refusals.js";

const rabbeted = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
const line = {
  outline: [
    { x: 0, y: 0 },
    { x: 1, y: 1 },
    { x: 2, y: 2 },
  ],
  arrises: {},
};

describe("sectionExtent", () => {
  test("bounds the tilted section tightly", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 90), (profile, slope) => {
        const extent = sectionExtent(profile, slope);
        const { outline } = sectionAt(profile, slope);
        const outs = outline.map(({ out }) => out);
        const ups = outline.map(({ up }) => up);
        const slack = 1e-15 * sizeOf(profile);
        expect(Math.abs(extent.inner - Math.min(...outs))).toBeLessThanOrEqual(slack);
        expect(Math.abs(extent.outer - Math.max(...outs))).toBeLessThanOrEqual(slack);
        expect(Math.abs(extent.bottom - Math.min(...ups))).toBeLessThanOrEqual(slack);
        expect(Math.abs(extent.top - Math.max(...ups))).toBeLessThanOrEqual(slack);
        expect(Math.abs(extent.width - (extent.outer - extent.inner))).toBeLessThanOrEqual(4 * slack);
        expect(Math.abs(extent.height - (extent.top - extent.bottom))).toBeLessThanOrEqual(4 * slack);
        numbersAreClean(extent);
      }),
    );
  });

  test("is the same half a turn round, and changes places a quarter turn round", () => {
    fc.assert(
      fc.property(anyProfile, between(-180, 180), (profile, tilt) => {
        const { width, height } = sectionExtent(profile, tilt);
        const half = sectionExtent(profile, tilt + 180);
        expect(half.width).toBeCloseTo(width, 10);
        expect(half.height).toBeCloseTo(height, 10);
        const quarter = sectionExtent(profile, tilt - 90);
        expect(quarter.width).toBeCloseTo(height, 10);
        expect(quarter.height).toBeCloseTo(width, 10);
      }),
    );
  });

  test("is exact in quarter turns", () => {
    expect(sectionExtent(rabbeted, 0)).toEqual({ width: 40, height: 20, inner: 0, outer: 40, bottom: 0, top: 20 });
    expect(sectionExtent(rabbeted, 180)).toEqual({ width: 40, height: 20, inner: -40, outer: 0, bottom: -20, top: 0 });
    expect(sectionExtent(rabbeted, -90)).toEqual({ width: 20, height: 40, inner: 0, outer: 20, bottom: -40, top: 0 });
  });
});

describe("outermostPoint and innermostPoint", () => {
  test("stand where the extent ends", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 90), (profile, slope) => {
        const { inner, outer } = sectionExtent(profile, slope);
        expect(outermostPoint(profile, slope).out).toBe(outer);
        expect(innermostPoint(profile, slope).out).toBe(inner);
      }),
    );
  });

  test("have the name of the arris that they are, and none if they are none", () => {
    expect(outermostPoint(rabbeted, 20)).toEqual({ ...sectionAt(rabbeted, 20).arrises.outerBack, arris: "outerBack" });
    expect(outermostPoint(rabbeted, -20)).toEqual({
      ...sectionAt(rabbeted, -20).arrises.outerFace,
      arris: "outerFace",
    });
    // Of the two ends of a plumb edge it is the first in the outline.
    expect(outermostPoint(rabbeted, 0).arris).toBe("outerBack");
    expect(innermostPoint(rabbeted, 20).arris).toBe("sightFace");
    expect(innermostPoint(rabbeted, -20).arris).toBe("sightBack");
    expect(outermostPoint({ ...rabbeted, arrises: {} }, 20)).not.toHaveProperty("arris");
    expectTypeOf(outermostPoint(molding({ width: 4, thickness: 2 }), 20).arris).toEqualTypeOf<
      "sightFace" | "sightBack" | "outerFace" | "outerBack" | undefined
    >();
  });
});

describe("sectionArea and sectionCentroid", () => {
  test("are those of the rectangles that the section is made of", () => {
    fc.assert(
      fc.property(rabbetedSizes, (sizes) => {
        const { width, thickness, rabbet } = sizes;
        const [whole, taken] = [width * thickness, rabbet.width * rabbet.depth];
        const { x, y } = sectionCentroid(molding(sizes));
        const slack = 1e-13 * (width + thickness) * (whole / (whole - taken));
        expect(Math.abs(sectionArea(molding(sizes)) - (whole - taken))).toBeLessThan(1e-14 * whole);
        expect(Math.abs(x - ((whole * width) / 2 - (taken * rabbet.width) / 2) / (whole - taken))).toBeLessThan(slack);
        expect(Math.abs(y - ((whole * thickness) / 2 - (taken * rabbet.depth) / 2) / (whole - taken))).toBeLessThan(
          slack,
        );
      }),
    );
  });

  test("move, mirror and scale with the section, from whichever corner it runs", () => {
    fc.assert(
      fc.property(anyProfile, between(-1e6, 1e6), (profile, shift) => {
        const { x, y } = sectionCentroid(profile);
        const area = sectionArea(profile);
        const moved = { outline: profile.outline.map((point) => ({ x: point.x + shift, y: 3 - point.y })).reverse() };
        expect(sectionCentroid(moved).x).toBeCloseTo(x + shift, 6);
        expect(sectionCentroid(moved).y).toBeCloseTo(3 - y, 6);
        expect(sectionArea(moved)).toBeCloseTo(area, 5);
        const renumbered = { outline: [...profile.outline.slice(1), profile.outline[0]!] };
        expect(sectionCentroid(renumbered).x).toBeCloseTo(x, 10);
        expect(sectionArea(renumbered)).toBeCloseTo(area, 9);
        const grown = { outline: profile.outline.map((point) => ({ x: 128 * point.x, y: 128 * point.y })) };
        expect(sectionCentroid(grown)).toEqual({ x: 128 * x, y: 128 * y });
        expect(sectionArea(grown)).toBe(128 * 128 * area);
      }),
    );
  });

  test("hold at both ends of the range of lengths", () => {
    for (const unit of [1e-100, 1e99]) {
      const profile = molding({ width: 4 * unit, thickness: 2 * unit });
      expect(sectionArea(profile) / unit / unit).toBeCloseTo(8, 12);
      expect(sectionCentroid(profile).x / unit).toBeCloseTo(2, 12);
    }
  });

  test("take frozen profiles and return clean numbers", () => {
    fc.assert(
      fc.property(anyProfile, (profile) => {
        numbersAreClean([sectionArea(deepFrozen(profile)), sectionCentroid(deepFrozen(profile))]);
      }),
    );
  });
});

describe("tryParseProfile", () => {
  test("gives a copy of a sound profile", () => {
    expect(tryParseProfile(rabbeted)).toStrictEqual({ ok: true, value: rabbeted });
  });

  test("tells of every point, every arris and madeFor, in the order of the profile", () => {
    const outline = [{ x: 0, y: 0 }, { x: 40 }, { x: 40, y: "20" }, { x: 0, y: 20 }];
    const outcome = tryParseProfile(
      { outline, arrises: { bead: { x: 1, y: NaN }, lip: null }, madeFor: 100 },
      "molding",
    );
    expect(outcome.ok ? [] : outcome.issues.map(({ path, code }) => [path, code])).toEqual([
      ["molding.outline[1].y", "missing"],
      ["molding.outline[2].y", "type"],
      ["molding.arrises.bead.y", "range"],
      ["molding.arrises.lip", "type"],
      ["molding.madeFor", "range"],
    ]);
  });

  test("tells of nothing else where there is no outline, and of a shape that cannot be", () => {
    const paths = (value: unknown): string[] => {
      const outcome = tryParseProfile(value);
      return outcome.ok ? [] : outcome.issues.map(({ path }) => path);
    };
    expect(paths({ width: 40, thickness: 20 })).toEqual(["profile.outline"]);
    expect(paths(null)).toEqual(["profile"]);
    const crossing = [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 0, y: 20 },
      { x: 40, y: 30 },
    ];
    expect(paths({ outline: crossing, arrises: {}, madeFor: "steep" })).toEqual(["profile.outline", "profile.madeFor"]);
  });
});

describe("parseProfile", () => {
  test("gives back a copy of what a profile has, typed", () => {
    const parsed: unknown = { ...rabbeted, madeFor: -0, note: NaN };
    expect(parseProfile(parsed)).toStrictEqual({ ...rabbeted, madeFor: 0 });
    expect(parseProfile(rabbeted)).toStrictEqual(rabbeted);
    expect(parseProfile(rabbeted).outline[0]).not.toBe(rabbeted.outline[0]);
    expectTypeOf(parseProfile(parsed)).toEqualTypeOf<Profile>();
  });

  test("takes every section that the makers of profiles make", () => {
    fc.assert(
      fc.property(anyProfile, (profile) => {
        expect(parseProfile(profile)).toStrictEqual(profile);
      }),
    );
  });
});

describe("an outline that is not one of a molding", () => {
  const { outline, arrises } = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
  const taking: Readonly<Record<string, (profile: Profile) => unknown>> = {
    parseProfile: (profile) => parseProfile(profile),
    levelWidth: (profile) => levelWidth(profile, { slope: 20, from: "sightBack" }),
    sectionAt: (profile) => sectionAt(profile, 20),
    sectionArea: (profile) => sectionArea(profile),
    sectionCentroid: (profile) => sectionCentroid(profile),
    sectionExtent: (profile) => sectionExtent(profile, 20),
    innermostPoint: (profile) => innermostPoint(profile, 20),
    outermostPoint: (profile) => outermostPoint(profile, 20),
  };
  const rows = Object.entries(taking).map(([name, call]) => ({ name, call }));

  test.each(rows)("is refused by $name where it runs clockwise", ({ call }) => {
    const path = "profile.outline";
    const message = `Expected \`${path}\` to run counter-clockwise, got a clockwise outline; \`profileFromPoints\` turns it round`;
    expect(() => call({ outline: [...outline].reverse(), arrises })).toThrow(
      expect.objectContaining({ name: "InputError", code: "impossible", path, message }),
    );
  });

  test.each(rows)("is refused by $name where a point stands twice in a row", ({ call }) => {
    const said = (path: string, before: string): unknown =>
      expect.objectContaining({
        name: "InputError",
        code: "impossible",
        path,
        message: `Expected \`${path}\` to differ from \`${before}\`, got the same point; \`profileFromPoints\` drops repeated points`,
      });
    expect(() => call({ outline: [...outline, outline[0]!], arrises })).toThrow(
      said("profile.outline[0]", "profile.outline[6]"),
    );
    expect(() => call({ outline: [outline[0]!, outline[1]!, ...outline.slice(1)], arrises })).toThrow(
      said("profile.outline[2]", "profile.outline[1]"),
    );
  });

  test.each(rows)("is refused by $name where it encloses nothing", ({ call }) => {
    expect(() => call({ ...line, arrises })).toThrow(
      expect.objectContaining({ code: "impossible", path: "profile.outline" }),
    );
  });

  test("is refused by parseProfile where it crosses or touches itself", () => {
    const touching = [...outline.slice(0, 3), { x: 20, y: 20 }, ...outline.slice(3)];
    expect(() => parseProfile({ outline: touching, arrises })).toThrow(
      "Expected `profile.outline` not to cross or touch itself, but the edges from its points",
    );
  });
});

describe("refused", () => {
  const { outline } = rabbeted;
  refuses([
    [
      "Expected `tilt` to be degrees from -360 to 360, got 361 (number)",
      "range",
      "tilt",
      () => sectionExtent(rabbeted, 361),
    ],
    [
      "Expected `slope` to be degrees from -90 to 90, got 91 (number)",
      "range",
      "slope",
      () => outermostPoint(rabbeted, 91),
    ],
    [
      "Expected `slope` to be degrees from -90 to 90, got -91 (number)",
      "range",
      "slope",
      () => innermostPoint(rabbeted, -91),
    ],
    [
      "Expected `profile.outline` to be an outline that encloses an area, got an array of 3",
      "impossible",
      "profile.outline",
      () => sectionCentroid(line),
    ],
    [
      "Expected `profile.outline` to be an array of three or more points, got an empty array",
      "range",
      "profile.outline",
      () => sectionArea({ outline: [] }),
    ],
    [
      "Expected `brief.molding` to be an object, got null",
      "type",
      "brief.molding",
      () => parseProfile(null, "brief.molding"),
    ],
    [
      "Expected `profile.arrises.lip.x` to be a finite distance (-1e100 to 1e100), got undefined",
      "missing",
      "profile.arrises.lip.x",
      () => parseProfile({ outline, arrises: { lip: {} } }),
    ],
    [
      "Expected `profile.madeFor` to be degrees from -90 to 90, got 91 (number)",
      "range",
      "profile.madeFor",
      () => parseProfile({ ...rabbeted, madeFor: 91 }),
    ],
  ]);
});
