import fc from "fast-check";
import { levelWidth, molding, sectionAt, type MoldingOptions, type SectionPoint } from "miterwright/profile";
import { isInputError } from "miterwright/errors";
import { describe, expect, test } from "vitest";
import { between, sizeOf } from "../laws/profile.js";

/** Moldings milled in every way; some of them cannot be made, which `made` tells. */
const milled = fc.record({
  width: between(10, 100),
  thickness: between(10, 100),
  rabbet: fc.record({ width: between(1, 20), depth: between(1, 20) }),
  madeFor: fc.record({
    slope: between(-70, 70),
    outer: fc.boolean(),
    inner: fc.boolean(),
    rabbet: fc.boolean(),
    back: fc.boolean(),
  }),
});

/** The molding as it stands at the slope it is made for, or undefined when the sizes leave no such thing. */
function standing(options: typeof milled extends fc.Arbitrary<infer T> ? T : never) {
  try {
    const profile = molding(options);
    return { profile, arrises: sectionAt(profile, options.madeFor.slope).arrises, slack: 1e-12 * sizeOf(profile) };
  } catch (error) {
    if (isInputError(error) && error.code === "impossible") return undefined;
    throw error;
  }
}

/** How far the line through two points leans from plumb, and from level, as lengths. */
const offPlumb = (a: SectionPoint, b: SectionPoint): number => Math.abs(a.out - b.out);
const offLevel = (a: SectionPoint, b: SectionPoint): number => Math.abs(a.up - b.up);

describe("a molding made for a slope, standing at it", () => {
  test("has the surfaces plumb and level that were asked for, and the others square or parallel to the face", () => {
    let made = 0;
    fc.assert(
      fc.property(milled, (options) => {
        const stood = standing(options);
        if (stood === undefined) return;
        made++;
        const { profile, arrises, slack } = stood;
        const { outer, inner, rabbet, back } = options.madeFor;
        const { sightFace, sightBack, wallLedge, wallMouth, outerBack, outerFace } = profile.arrises;
        if (outer) expect(offPlumb(arrises.outerBack, arrises.outerFace)).toBeLessThan(slack);
        else expect(outerBack.x).toBe(outerFace.x);
        if (inner) expect(offPlumb(arrises.sightBack, arrises.sightFace)).toBeLessThan(slack);
        else expect(sightBack.x).toBe(sightFace.x);
        if (back) expect(offLevel(arrises.wallMouth, arrises.outerBack)).toBeLessThan(slack);
        else expect(wallMouth.y).toBe(outerBack.y);
        if (rabbet) {
          expect(offPlumb(arrises.wallLedge, arrises.wallMouth)).toBeLessThan(slack);
          expect(offLevel(arrises.sightBack, arrises.wallLedge)).toBeLessThan(slack);
          expect(Math.abs(arrises.wallLedge.out - arrises.sightBack.out - options.rabbet.width)).toBeLessThan(slack);
          expect(Math.abs(arrises.wallLedge.up - arrises.wallMouth.up - options.rabbet.depth)).toBeLessThan(slack);
        } else {
          expect(wallLedge).toEqual({ x: options.rabbet.width, y: sightBack.y });
          expect(wallMouth.x).toBe(wallLedge.x);
          expect(Math.abs(wallLedge.y - wallMouth.y - options.rabbet.depth)).toBeLessThan(slack);
        }
      }),
      { numRuns: 500 },
    );
    expect(made).toBeGreaterThan(100);
  });

  test("has its level width from the sight edge's back arris to the outermost point", () => {
    fc.assert(
      fc.property(milled, (options) => {
        const stood = standing(options);
        if (stood === undefined) return;
        const width = levelWidth(stood.profile, { slope: options.madeFor.slope, from: "sightBack" });
        expect(Math.abs(width - options.width)).toBeLessThan(stood.slack);
        expect(stood.profile.madeFor).toBe(options.madeFor.slope + 0);
      }),
    );
  });

  test("comes from stock of its thickness: lowest at 0, highest at the face", () => {
    fc.assert(
      fc.property(milled, (options) => {
        const heights = standing(options)?.profile.outline.map(({ y }) => y);
        if (heights === undefined) return;
        expect(Math.min(...heights)).toBe(0);
        expect(Math.max(...heights)).toBe(options.thickness);
      }),
    );
  });

  test("made for slope 0 is the square molding, however it is milled", () => {
    const sizes = { width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } };
    const square = molding(sizes);
    const all = { slope: 0, outer: true, inner: true, rabbet: true, back: true };
    expect(molding({ ...sizes, madeFor: all })).toEqual({ ...square, madeFor: 0 });
    expect(molding({ ...sizes, madeFor: { slope: -0 } }).madeFor).toBe(0);
  });

  test("has outer edge and rabbet milled unless told otherwise", () => {
    const sizes: MoldingOptions = { width: 60, thickness: 40, rabbet: { width: 8, depth: 10 } };
    const all = { slope: 30, outer: true, inner: false, rabbet: true, back: false };
    expect(molding({ ...sizes, madeFor: { slope: 30 } })).toEqual(molding({ ...sizes, madeFor: all }));
  });

  test("has the corners that a drawing of it has", () => {
    // Slope 45, drawn with a set square: level and plumb both run at 45 degrees in the section.
    const { arrises } = molding({ width: 40, thickness: 30, rabbet: { width: 8, depth: 10 }, madeFor: { slope: 45 } });
    const half = Math.SQRT1_2;
    const near = (x: number, y: number): object => ({
      x: expect.closeTo(x, 12) as number,
      y: expect.closeTo(y, 12) as number,
    });
    expect(arrises).toEqual({
      sightBack: near(0, 18 * half),
      wallLedge: near(8 * half, 10 * half),
      wallMouth: near(-2 * half, 0),
      // The sight edge's back arris stands at out = -9, so the outer edge at 31.
      outerBack: near(31 * Math.SQRT2, 0),
      outerFace: near(31 * Math.SQRT2 + 30, 30),
      sightFace: near(0, 30),
    });
  });
});
