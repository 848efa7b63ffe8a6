import fc from "fast-check";
import {
  levelWidth,
  molding,
  profileFromPoints,
  sectionArea,
  type EdgeArris,
  type FaceCut,
  type ArrisesOf,
  type MoldingOptions,
  type Profile,
} from "miterwright/profile";
import { describe, expect, expectTypeOf, test } from "vitest";
import { between, deepFrozen, numbersAreClean, rabbetedSizes } from "../laws/profile.js";
import { refuses } from "./refusals.js";

describe("molding", () => {
  test("is a rectangle", () => {
    expect(molding({ width: 40, thickness: 20 })).toEqual({
      outline: [
        { x: 0, y: 0 },
        { x: 40, y: 0 },
        { x: 40, y: 20 },
        { x: 0, y: 20 },
      ],
      arrises: {
        sightBack: { x: 0, y: 0 },
        outerBack: { x: 40, y: 0 },
        outerFace: { x: 40, y: 20 },
        sightFace: { x: 0, y: 20 },
      },
    });
  });

  test("has the rabbet taken out of its back at the sight edge", () => {
    const rabbeted = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 12 } });
    expect(rabbeted.outline).toEqual([
      { x: 0, y: 12 },
      { x: 8, y: 12 },
      { x: 8, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: 20 },
      { x: 0, y: 20 },
    ]);
    expect(rabbeted.arrises.sightBack).toEqual({ x: 0, y: 12 });
    expect(rabbeted.arrises.wallLedge).toEqual({ x: 8, y: 12 });
    expect(rabbeted.arrises.wallMouth).toEqual({ x: 8, y: 0 });
  });

  test("has its face chamfered by width and depth or by width and angle", () => {
    const rabbeted = molding({
      width: 40,
      thickness: 20,
      face: [
        { cut: "chamfer", at: "outerFace", width: 6, depth: 3 },
        { cut: "chamfer", at: "sightFace", width: 5, angle: 45 },
      ],
    });
    expect(rabbeted.outline).toEqual([
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: 17 },
      { x: 34, y: 20 },
      { x: 5, y: 20 },
      { x: 0, y: 15 },
    ]);
    expect(rabbeted.arrises.sightFace).toEqual({ x: 5, y: 20 });
    expect(rabbeted.arrises.sightCut).toEqual({ x: 0, y: 15 });
    expect(rabbeted.arrises.outerFace).toEqual({ x: 34, y: 20 });
    expect(rabbeted.arrises.outerCut).toEqual({ x: 40, y: 17 });
  });

  test("chamfers at the angle that was asked for, also where the edges are not square", () => {
    const shape = fc.record({ slope: between(-40, 40), angle: between(10, 45), width: between(0.5, 5) });
    fc.assert(
      fc.property(shape, ({ slope, angle, width }) => {
        const cuts = { cut: "chamfer", width, angle } as const;
        const { arrises } = molding({
          width: 80,
          thickness: 40,
          face: [
            { ...cuts, at: "sightFace" },
            { ...cuts, at: "outerFace" },
          ],
          madeFor: { slope, inner: true },
        });
        const degrees = (y: number, x: number): number => (Math.atan2(y, x) * 180) / Math.PI;
        const { sightFace, sightCut, sightBack, outerFace, outerCut, outerBack } = arrises;
        expect(degrees(sightFace.y - sightCut.y, sightFace.x - sightCut.x)).toBeCloseTo(angle, 10);
        expect(degrees(outerFace.y - outerCut.y, outerCut.x - outerFace.x)).toBeCloseTo(angle, 10);
        // The cuts run out on the edges, which lean by the slope.
        expect(degrees(sightCut.x - sightBack.x, sightCut.y - sightBack.y)).toBeCloseTo(slope, 10);
        expect(degrees(outerCut.x - outerBack.x, outerCut.y - outerBack.y)).toBeCloseTo(slope, 10);
      }),
    );
  });

  test("has the area of its rectangle less the rabbet and the chamfers", () => {
    fc.assert(
      fc.property(rabbetedSizes, between(0.01, 0.9), between(0.01, 0.9), (sizes, across, down) => {
        const { width, thickness, rabbet } = sizes;
        const cut = { width: across * rabbet.width, depth: down * (thickness - rabbet.depth) };
        const rabbeted = molding({ ...sizes, face: [{ cut: "chamfer", at: "sightFace", ...cut }] });
        const area = width * thickness - rabbet.width * rabbet.depth - (cut.width * cut.depth) / 2;
        expect(Math.abs(sectionArea(rabbeted) - area)).toBeLessThan(1e-13 * width * thickness);
      }),
    );
  });

  test("makes what profileFromPoints would: a simple outline, counter-clockwise, with its arrises on it", () => {
    fc.assert(
      fc.property(rabbetedSizes, between(-35, 35), fc.boolean(), (sizes, slope, back) => {
        // As thick as wide, with a rabbet that is small beside it: that can be made at every such slope.
        const depth = (sizes.rabbet.depth / sizes.thickness) * sizes.width;
        const size = 4 * sizes.width;
        const options = { width: size, thickness: size, rabbet: { ...sizes.rabbet, depth } };
        const rabbeted = molding({ ...options, madeFor: { slope, back } });
        expect(profileFromPoints(rabbeted)).toEqual(rabbeted);
        const heights = rabbeted.outline.map(({ y }) => y);
        expect(Math.min(...heights)).toBe(0);
        expect(Math.max(...heights)).toBe(options.thickness);
        expect(rabbeted.arrises.sightBack.x).toBe(0);
      }),
    );
  });

  test("takes frozen and parsed options and returns clean numbers that survive JSON", () => {
    const options = {
      width: 40,
      thickness: 20,
      rabbet: { width: 8, depth: 10 },
      face: [{ cut: "chamfer", at: "sightFace", width: 5, angle: 30 }],
      madeFor: { slope: -20, outer: false, inner: true, rabbet: false, back: false },
    } as const;
    const rabbeted = molding(deepFrozen(options));
    numbersAreClean(rabbeted);
    expect(molding(JSON.parse(JSON.stringify(options)) as MoldingOptions)).toEqual(rabbeted);
    expect(JSON.parse(JSON.stringify(rabbeted))).toEqual(rabbeted);
  });

  test("scales bit for bit", () => {
    const at = (unit: number): Profile =>
      molding({
        width: 40 * unit,
        thickness: 20 * unit,
        rabbet: { width: 8 * unit, depth: 7 * unit },
        face: [{ cut: "chamfer", at: "outerFace", width: 3 * unit, angle: 30 }],
        madeFor: { slope: 17 },
      });
    const grow = ({ x, y }: { x: number; y: number }): object => ({ x: 256 * x, y: 256 * y });
    expect(at(256).outline).toEqual(at(1).outline.map(grow));
  });
});

describe("the arrises of a molding, in types", () => {
  const rabbet = { width: 8, depth: 10 };

  test("follow the options", () => {
    expectTypeOf(molding({ width: 40, thickness: 20 })).toEqualTypeOf<Profile<EdgeArris>>();
    expectTypeOf(molding({ width: 40, thickness: 20, rabbet })).toEqualTypeOf<
      Profile<EdgeArris | "wallLedge" | "wallMouth">
    >();
    expectTypeOf(
      molding({ width: 40, thickness: 20, face: [{ cut: "chamfer", at: "sightFace", width: 3, depth: 3 }] }),
    ).toEqualTypeOf<Profile<EdgeArris | "sightCut">>();
    const plain = molding({ width: 40, thickness: 20 });
    // @ts-expect-error -- no rabbet, no wall
    expect(plain.arrises.wallLedge).toBeUndefined();
    // @ts-expect-error -- no cut, no end of one
    expect(plain.arrises.sightCut).toBeUndefined();
  });

  test("promise nothing about options that may be absent", () => {
    expectTypeOf<ArrisesOf<MoldingOptions>>().toEqualTypeOf<EdgeArris>();
    expectTypeOf<ArrisesOf<{ width: 1; thickness: 1; face: readonly FaceCut[] }>>().toEqualTypeOf<EdgeArris>();
    expectTypeOf<ArrisesOf<{ rabbet: typeof rabbet } | { rabbet?: never }>>().toEqualTypeOf<EdgeArris>();
    interface EitherEnd {
      cut: "chamfer";
      at: "sightFace" | "outerFace";
      width: 1;
      depth: 1;
    }
    expectTypeOf<ArrisesOf<{ face: readonly [EitherEnd] }>>().toEqualTypeOf<EdgeArris>();
  });

  test("fit where any profile, or one with fewer arrises, is asked for", () => {
    const rabbeted = molding({ width: 40, thickness: 20, rabbet });
    expectTypeOf(rabbeted).toExtend<Profile>();
    expectTypeOf(rabbeted).toExtend<Profile<"wallMouth">>();
    expectTypeOf<Profile<"wallMouth">>().not.toExtend<typeof rabbeted>();
  });

  test("a wrong call does not compile", () => {
    // @ts-expect-error -- a misspelled option
    expect(() => molding({ width: 40, thickness: 20, rabet: rabbet })).toThrow();
    // @ts-expect-error -- a rabbet without a depth
    expect(() => molding({ width: 40, thickness: 20, rabbet: { width: 8 } })).toThrow();
    const cut = { cut: "chamfer", at: "sightFace", width: 3 } as const;
    // @ts-expect-error -- both depth and angle
    expect(() => molding({ width: 40, thickness: 20, face: [{ ...cut, depth: 3, angle: 45 }] })).toThrow();
    // @ts-expect-error -- neither
    expect(() => molding({ width: 40, thickness: 20, face: [cut] })).toThrow();
  });
});

describe("molding refuses", () => {
  const at =
    (change: object): (() => unknown) =>
    () =>
      molding({ width: 50, thickness: 20, ...change });
  const rabbet = { width: 8, depth: 10 };
  const chamfer = { cut: "chamfer", at: "sightFace", width: 4, angle: 45 };
  refuses([
    [
      "Expected `options` to be an object, got 3 (number)",
      "type",
      "options",
      () => molding(3 as unknown as MoldingOptions),
    ],
    ["Expected `width` to be a positive length (1e-100 to 1e100), got 0 (number)", "range", "width", at({ width: 0 })],
    [
      "Expected `thickness` to be a positive length (1e-100 to 1e100), got undefined",
      "missing",
      "thickness",
      at({ thickness: undefined }),
    ],
    ["Expected `rabbet` to be an object, got 8 (number)", "type", "rabbet", at({ rabbet: 8 })],
    [
      "Expected `rabbet.width` to be a positive length (1e-100 to 1e100), got -8 (number)",
      "range",
      "rabbet.width",
      at({ rabbet: { width: -8, depth: 10 } }),
    ],
    [
      "Expected `rabbet.depth` to be a positive length (1e-100 to 1e100), got undefined",
      "missing",
      "rabbet.depth",
      at({ rabbet: { width: 8 } }),
    ],
    [
      "Expected `rabbet.width` to be less than the width (50), since the wall needs wood behind it, got 50 (number)",
      "impossible",
      "rabbet.width",
      at({ rabbet: { width: 50, depth: 10 } }),
    ],
    [
      "Expected `rabbet.depth` to be less than the thickness (20), so that a lip is left, got 20 (number)",
      "impossible",
      "rabbet.depth",
      at({ rabbet: { width: 8, depth: 20 } }),
    ],
    ["Expected `face` to be an array of face cuts, got an object", "type", "face", at({ face: chamfer })],
    [
      'Expected `face[0].cut` to be one of "chamfer", got "ogee" (string)',
      "unknown",
      "face[0].cut",
      at({ face: [{ ...chamfer, cut: "ogee" }] }),
    ],
    [
      'Expected `face[0].at` to be one of "sightFace", "outerFace", got "sightBack" (string)',
      "unknown",
      "face[0].at",
      at({ face: [{ ...chamfer, at: "sightBack" }] }),
    ],
    [
      "Expected `face[0].width` to be a positive length (1e-100 to 1e100), got 0 (number)",
      "range",
      "face[0].width",
      at({ face: [{ ...chamfer, width: 0 }] }),
    ],
    [
      "Expected `face[0].angle` to be a number between 0 and 90, bounds excluded, got 90 (number)",
      "range",
      "face[0].angle",
      at({ face: [{ ...chamfer, angle: 90 }] }),
    ],
    [
      "Expected `face[0].depth` to be a positive length (1e-100 to 1e100), got -1 (number)",
      "range",
      "face[0].depth",
      at({ face: [{ ...chamfer, angle: undefined, depth: -1 }] }),
    ],
    [
      "Expected exactly one of `depth`, `angle` in `face[0]`, got none",
      "missing",
      "face[0]",
      at({ face: [{ ...chamfer, angle: undefined }] }),
    ],
    [
      "Expected exactly one of `depth`, `angle` in `face[0]`, got `depth` and `angle`",
      "conflict",
      "face[0].angle",
      at({ face: [{ ...chamfer, depth: 4 }] }),
    ],
    [
      'Expected one cut at "sightFace", got face[0] and face[1]',
      "conflict",
      "face[1].at",
      at({ face: [chamfer, chamfer] }),
    ],
    [
      "Expected `face[0].width` to be less than the face's width (about 50), got 50 (number)",
      "impossible",
      "face[0].width",
      at({ face: [{ ...chamfer, width: 50 }] }),
    ],
    [
      "Expected `face[1].width` to be less than the face's width (about 46), got 46 (number)",
      "impossible",
      "face[1].width",
      at({ face: [chamfer, { ...chamfer, at: "outerFace", width: 46 }] }),
    ],
    [
      "Expected `face[0].angle` to be small enough to leave some of the edge (about 10), got 70 (number)",
      "impossible",
      "face[0].angle",
      at({ rabbet, face: [{ ...chamfer, angle: 70 }] }),
    ],
    [
      "Expected `face[0].depth` to be small enough to leave some of the edge (about 20), got 20 (number)",
      "impossible",
      "face[0].depth",
      at({ face: [{ ...chamfer, angle: undefined, depth: 20 }] }),
    ],
    [
      "Expected `face` to be cuts that do not go through into the rabbet, got an array of 1",
      "impossible",
      "face",
      at({
        rabbet: { width: 30, depth: 15 },
        face: [{ ...chamfer, at: "outerFace", width: 46, depth: 18, angle: undefined }],
      }),
    ],
    ["Expected `madeFor` to be an object, got 30 (number)", "type", "madeFor", at({ madeFor: 30 })],
    [
      "Expected no key but `width`, `thickness`, `rabbet`, `face`, `madeFor`, got `rabet`; did you mean `rabbet`?",
      "unknown",
      "rabet",
      at({ rabet: { width: 8, depth: 10 } }),
    ],
    [
      "Expected `rabbet` to have no key but `width`, `depth`, got `dept`; did you mean `depth`?",
      "unknown",
      "rabbet.dept",
      at({ rabbet: { width: 8, depth: 10, dept: 4 } }),
    ],
    [
      "Expected `face[0]` to have no key but `cut`, `at`, `width`, `depth`, `angle`, got `angel`; did you mean `angle`?",
      "unknown",
      "face[0].angel",
      at({ face: [{ cut: "chamfer", at: "sightFace", width: 2, depth: 3, angel: 4 }] }),
    ],
    [
      "Expected `madeFor` to have no key but `slope`, `outer`, `inner`, `rabbet`, `back`, got `outter`; did you mean `outer`?",
      "unknown",
      "madeFor.outter",
      at({ madeFor: { slope: 30, outter: false } }),
    ],
    [
      "Expected `madeFor.slope` to be a number between -90 and 90, bounds excluded, got 90 (number)",
      "range",
      "madeFor.slope",
      at({ madeFor: { slope: 90 } }),
    ],
    [
      "Expected `madeFor.inner` to be true or false, got 1 (number)",
      "type",
      "madeFor.inner",
      at({ madeFor: { slope: 30, inner: 1 } }),
    ],
    [
      "Expected `rabbet.width` to be less than what the level width (50) leaves at this slope, since the wall needs wood behind it, got 50 (number)",
      "impossible",
      "rabbet.width",
      at({ rabbet: { width: 50, depth: 5 }, madeFor: { slope: 10, rabbet: false } }),
    ],
    [
      "Expected `rabbet.width` to be less than the width (50), since the wall needs wood behind it, got 50 (number)",
      "impossible",
      "rabbet.width",
      at({ rabbet: { width: 50, depth: 5 }, madeFor: { slope: 10 } }),
    ],
    [
      "Expected `thickness` to be more than about 25, which its back and rabbet take up at this slope, got 20 (number)",
      "impossible",
      "thickness",
      at({ madeFor: { slope: 30, back: true } }),
    ],
    [
      "Expected `thickness` to be more than about 14.1421, which its back and rabbet take up at this slope, got 12 (number)",
      "impossible",
      "thickness",
      at({ thickness: 12, rabbet: { width: 20, depth: 10 }, madeFor: { slope: -45 } }),
    ],
    [
      "Expected `rabbet` to leave the section in one piece, but its surfaces meet",
      "impossible",
      "rabbet",
      at({ width: 22, thickness: 40, rabbet: { width: 20, depth: 10 }, madeFor: { slope: 30, outer: false } }),
    ],
    [
      "Expected `face[0].angle` to be small enough to leave some of the edge (about 62.229), got 60 (number)",
      "impossible",
      "face[0].angle",
      at({ width: 200, thickness: 40, face: [{ ...chamfer, angle: 60 }], madeFor: { slope: 50, inner: true } }),
    ],
    [
      "Expected `width` to be wide enough for the outer edge and the sight edge to reach the face apart, got 50 (number)",
      "impossible",
      "width",
      at({ thickness: 90, madeFor: { slope: -60 } }),
    ],
    [
      "Expected `madeFor.slope` to be less steep: its section would reach beyond 1e100, got 89 (number)",
      "impossible",
      "madeFor.slope",
      at({ width: 1e100, madeFor: { slope: 89 } }),
    ],
  ]);

  test("nothing that can be made: the level width is the one asked for", () => {
    expect(levelWidth(molding({ width: 50, thickness: 20 }), { slope: 0, from: "sightBack" })).toBe(50);
  });
});
