import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { miterSaw, placeCut, tableSaw } from "miterwright/saw";
import { planeFromWords, stickAxes } from "../laws/saw.js";
import { cutsOf, situations } from "./situations.js";

describe("placeCut in words, followed by a saw made of vectors", () => {
  test("cuts the planned plane, in every lay, at both ends, on both kinds of saw", () => {
    fc.assert(
      fc.property(situations, ({ sides, slope, lay, kept, end, saw }) => {
        const cut = cutsOf(sides, slope)[end];
        const placed = placeCut(cut, { lay, saw, kept });
        const plane = planeFromWords({ ...placed, fence: saw.fence, slope });
        expect(plane.along).toBeCloseTo(cut.plane.along, 12);
        expect(plane.across).toBeCloseTo(cut.plane.across, 12);
        expect(plane.through).toBeCloseTo(cut.plane.through, 12);
      }),
    );
  });

  test("names the hand to which the stick's counter-clockwise direction points", () => {
    fc.assert(
      fc.property(situations, ({ sides, slope, lay, kept, end, saw }) => {
        const placed = placeCut(cutsOf(sides, slope)[end], { lay, saw, kept });
        const { along } = stickAxes({ ...placed, fence: saw.fence, slope });
        expect(along[0]).toBeCloseTo(placed.along === "right" ? 1 : -1, 12);
      }),
    );
  });
});

describe("what placeCut says of the two ends", () => {
  const { start, end } = cutsOf(6, 30);

  test("with the same side kept, the other edge is at the fence and the miter swings the other way", () => {
    const first = placeCut(end, { lay: "flat", saw: tableSaw(), kept: "left" });
    const second = placeCut(start, { lay: "flat", saw: tableSaw(), kept: "left" });
    expect([first.atFence, second.atFence]).toEqual(["outer-edge", "sight-edge"]);
    expect([first.miter.toward, second.miter.toward]).toEqual(["left", "right"]);
    expect([first.bevel.toward, second.bevel.toward]).toEqual(["left", "left"]);
  });

  test("with the other side kept, the edge stays and both are mirrored", () => {
    const first = placeCut(end, { lay: "flat", saw: miterSaw(), kept: "left" });
    const second = placeCut(start, { lay: "flat", saw: miterSaw(), kept: "right" });
    expect([first.atFence, second.atFence]).toEqual(["sight-edge", "sight-edge"]);
    expect([first.miter.toward, second.miter.toward]).toEqual(["left", "right"]);
    expect([first.bevel.toward, second.bevel.toward]).toEqual(["left", "right"]);
  });

  test("a propped stick needs a plain miter, and a stick on its face the opposite of one on its back", () => {
    const propped = placeCut(end, { lay: "propped", saw: tableSaw(), kept: "left" });
    expect(propped.miter.degrees).toBeCloseTo(30, 12);
    expect([propped.bevel.degrees, propped.down, propped.cradled]).toEqual([0, "back", true]);
    const faceDown = placeCut(end, { lay: "face-down", saw: tableSaw(), kept: "left" });
    expect([faceDown.miter.toward, faceDown.bevel.toward, faceDown.underBlade]).toEqual(["right", "right", "offcut"]);
  });
});

describe("the scales", () => {
  const { end } = cutsOf(6, 30);

  test("a gauge that reads from the fence shows the complement", () => {
    const saw = tableSaw({ miter: { left: 60, right: 60, reads: "from-fence", step: 1 } });
    const { miter } = placeCut(end, { lay: "flat", saw, kept: "left" });
    expect(miter.reading).toBeCloseTo(90 - miter.degrees, 12);
    expect(miter.nearest).toBe(63);
    expect(miter.miss).toBeCloseTo(27 - 26.565051177077994, 10);
  });

  test("a blade scale that reads from the table shows the complement", () => {
    const saw = tableSaw({ bevel: { left: 45, right: 0, reads: "from-table", step: 0.25 } });
    const { bevel } = placeCut(end, { lay: "flat", saw, kept: "left" });
    expect(bevel.nearest).toBe(75.5);
    expect(bevel.degrees).toBeCloseTo(14.477512185929925, 10);
  });

  test("an angle beyond a scale is an obstacle with its reason, and the end of the scale still belongs to it", () => {
    const upright = cutsOf(3, 90).end;
    const { obstacles } = placeCut(upright, { lay: "flat", saw: tableSaw(), kept: "left" });
    expect(obstacles).toEqual([
      {
        code: "bevel-range-left",
        degrees: { reach: 45, needs: 60 },
      },
    ]);
    expect(placeCut(cutsOf(4, 90).end, { lay: "flat", saw: tableSaw(), kept: "left" }).obstacles).toEqual([]);
    const narrow = tableSaw({ miter: { left: 50, right: 60, reads: "from-square", step: 0.5 } });
    expect(placeCut(cutsOf(3, 0).end, { lay: "flat", saw: narrow, kept: "left" }).obstacles).toEqual([
      {
        code: "miter-range-left",
        degrees: { reach: 50, needs: 60 },
      },
    ]);
  });
});

describe("bad input", () => {
  const { end } = cutsOf(6, 30);
  const saw = tableSaw();

  test.each([
    [
      { lay: "upside-down", saw, kept: "left" },
      'Expected `lay` to be one of "propped", "flat", "face-down", "sight-edge-down", "outer-edge-down", got "upside-down" (string)',
    ],
    [{ lay: "flat", saw, kept: "front" }, 'Expected `kept` to be one of "left", "right", got "front" (string)'],
    [{ lay: "flat", saw: null, kept: "left" }, "Expected `saw` to be an object, got null"],
    [
      { lay: "flat", saw: { ...saw, fence: "top" }, kept: "left" },
      'Expected `saw.fence` to be one of "near", "far", got "top" (string)',
    ],
    [
      { lay: "flat", saw: { ...saw, miter: { ...saw.miter, left: -1 } }, kept: "left" },
      "Expected `saw.miter.left` to be degrees from 0 to 90, got -1 (number)",
    ],
    [
      { lay: "flat", saw: { ...saw, bevel: { ...saw.bevel, step: 0 } }, kept: "left" },
      "Expected `saw.bevel.step` to be degrees from 0.000001 to 45, got 0 (number)",
    ],
    [
      { lay: "flat", saw: { ...saw, bevel: { ...saw.bevel, reads: "down" } }, kept: "left" },
      'Expected `saw.bevel.reads` to be one of "from-vertical", "from-table", got "down" (string)',
    ],
    [
      { lay: "flat", saw: { ...saw, depth: "deep" }, kept: "left" },
      'Expected `saw.depth` to be a positive length (1e-100 to 1e100), got "deep" (string)',
    ],
  ])("%#", (options, message) => {
    expect(() => placeCut(end, options as never)).toThrow(message);
  });
});

test("placeCut refuses an end that is none", () => {
  const cut = { ...cutsOf(6, 30).start, end: NaN } as never;
  expect(() => placeCut(cut, { lay: "flat", saw: tableSaw(), kept: "left" })).toThrow(
    'Expected `cut.end` to be one of "start", "end", got NaN (number)',
  );
});
