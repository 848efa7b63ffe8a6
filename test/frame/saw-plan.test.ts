import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sawPlan, frameGeometry, type SawPlan, type SawPlanOptions } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw } from "miterwright/saw";
import { planeFromWords } from "../laws/saw.js";
import { briefs, deepFreeze, plain, rabbeted, throughJson } from "./briefs.js";

function plan(slope: number, options: SawPlanOptions = {}, sides = 6): SawPlan {
  return sawPlan(frameGeometry({ sides, slope, profile: rabbeted, opening: { side: 400 } }), options);
}

describe("the chosen lay", () => {
  test("is flat for a flat frame and a reverse section, and face down for a tray", () => {
    expect([0, -30, 30].map((slope) => plan(slope).lay?.lay)).toEqual(["flat", "flat", "face-down"]);
  });

  test("is propped where the blade does not lean far enough, and then there is a cradle", () => {
    const steep = sawPlan(frameGeometry({ sides: 3, slope: 60, profile: rabbeted, opening: { side: 400 } }));
    expect(steep.lays[0]).toMatchObject({ lay: "flat", possible: false });
    expect(steep.lays[0]!.obstacles.map((obstacle) => obstacle.code)).toEqual(["bevel-range-left"]);
    expect(steep.lay?.lay).toBe("propped");
    expect(steep.cradle).toMatchObject({ angle: 60, high: "outer-edge" });
  });

  test("propped needs a plain miter and an upright blade, to the bit", () => {
    for (const sides of [3, 6, 7]) {
      for (const slope of [-75, 20, 45]) {
        const propped = plan(slope, {}, sides).lays.find(({ lay }) => lay === "propped");
        expect(propped).toMatchObject({ miter: 180 / sides, bevel: 0 });
        expect(propped?.first.underBlade).toBe("none");
        expect(propped?.first.bevel.degrees).toBe(0);
      }
    }
  });

  test("is the one that is asked for, or none when that one cannot be made", () => {
    expect(plan(30, { lay: "outer-edge-down" }).lay?.lay).toBe("outer-edge-down");
    const none = plan(30, { lay: "sight-edge-down" });
    expect(none.lay).toBeNull();
    expect(none.operations).toEqual([]);
    expect(none.lays.find((option) => option.lay === "sight-edge-down")!.obstacles[0]).toEqual({ code: "tips-over" });
  });

  test("of any angle needs a wedge that is not planned, and says so", () => {
    const tilted = plan(30, { lay: 10 });
    expect(tilted.lays.at(-1)!.obstacles.map((obstacle) => obstacle.code)).toEqual(["needs-cradle"]);
  });

  test("minds the height of the stick and the length of the cut", () => {
    const low = plan(30, { saw: tableSaw({ depth: 18 }) });
    expect(low.lays[0]!.obstacles.map((obstacle) => obstacle.code)).toEqual(["depth"]);
    const short = plan(0, { saw: tableSaw({ crosscut: 55 }) });
    expect(short.lays[0]!.obstacles.map((obstacle) => obstacle.code)).toEqual(["crosscut"]);
    const limits = [
      plan(30, { saw: tableSaw({ depth: 60, depthAt45: 18 }) }).lays[0]!.possible,
      plan(30, { saw: tableSaw({ depth: 60, depthAt45: 40 }) }).lays[0]!.possible,
    ];
    expect(limits).toEqual([false, true]);
  });

  test("of a stick known by level measures is one whose setting is known: flat or propped", () => {
    const measured = sawPlan(
      frameGeometry({ sides: 6, slope: 30, measured: { levelWidth: 40 }, opening: { side: 400 } }),
    );
    expect(measured.lays.map((option) => option.lay)).toEqual(["flat", "propped"]);
    expect(measured.stop).toBeNull();
    expect(measured.operations.at(-1)!.measure).toMatchObject({ arris: "outer", hook: true });
  });
});

describe("operations", () => {
  test("always cut the planned end planes, whatever frame, saw and roughs", () => {
    const roughs = fc.constantFrom<SawPlanOptions["rough"]>(
      { method: "none" },
      { method: "square", allowance: 12 },
      { method: "mitered", allowance: 12 },
    );
    fc.assert(
      fc.property(briefs, roughs, fc.constantFrom(tableSaw(), miterSaw()), (brief, rough, saw) => {
        const frame = frameGeometry(brief);
        const { operations } = sawPlan(frame, { saw, rough: rough! });
        for (const { placement, kind } of operations) {
          if (kind === "crosscut") {
            expect(planeFromWords({ ...placement, fence: saw.fence, slope: frame.slope }).along).toBeCloseTo(1, 12);
            continue;
          }
          const cut = kind === "first-end" ? frame.pieces[0].end : frame.pieces[0].start;
          const plane = planeFromWords({ ...placement, fence: saw.fence, slope: frame.slope });
          expect(plane.along).toBeCloseTo(cut.plane.along, 9);
          expect(plane.across).toBeCloseTo(cut.plane.across, 9);
          expect(plane.through).toBeCloseTo(cut.plane.through, 9);
        }
      }),
    );
  });

  test("flip the stick on a saw whose blade leans one way", () => {
    expect(
      plan(30).operations.map((operation) => [operation.kind, operation.move, operation.placement.atFence]),
    ).toEqual([
      ["first-end", null, "outer-edge"],
      ["second-end", "flip-end-for-end", "sight-edge"],
    ]);
  });

  test("keep the right part on a saw whose blade leans to the right", () => {
    const saw = tableSaw({ bevel: { left: 0, right: 45, reads: "from-vertical", step: 0.5 } });
    const right = plan(30, { saw, lay: "flat" });
    expect(right.operations.map(({ placement }) => [placement.kept, placement.bevel.toward])).toEqual([
      ["right", "right"],
      ["right", "right"],
    ]);
    // With the piece on the open side it lies to the left of such a blade, and to the right of one that leans to the left.
    expect(plan(30, { saw }).operations.map(({ placement }) => placement.kept)).toEqual(["left", "left"]);
    expect(plan(30).operations.map(({ placement }) => placement.kept)).toEqual(["right", "right"]);
  });

  test("slide the stick past a blade that leans both ways, its edge staying at the fence and both settings mirrored", () => {
    const mirrored = plan(30, { saw: miterSaw(), lay: "flat" });
    expect(mirrored.operations.map(({ move }) => move)).toEqual([null, "slide-past-the-blade"]);
    expect(
      mirrored.operations.map(({ placement }) => [placement.atFence, placement.kept, placement.bevel.toward]),
    ).toEqual([
      ["sight-edge", "left", "left"],
      ["sight-edge", "right", "right"],
    ]);
  });

  test("need a miter to both hands, which a gauge that goes far enough only one way does not give", () => {
    const saw = miterSaw({ miter: { left: 60, right: 10, reads: "from-square", step: 0.5 } });
    expect(plan(30, { saw }).lays[0]!.obstacles.map(({ code }) => code)).toEqual(["miter-range-right"]);
  });

  test("are done piece by piece on the stick, and step by step with roughs", () => {
    expect(plan(0).order).toBe("piece-by-piece");
    const square = plan(0, { rough: { method: "square", allowance: 10 }, kerf: 3 });
    expect(square.order).toBe("step-by-step");
    expect(square.operations.map((operation) => operation.kind)).toEqual(["crosscut", "first-end", "second-end"]);
    expect(square.operations[0]!.placement.miter.degrees).toBe(0);
    expect(square.operations[0]!.placement.bevel.degrees).toBe(0);
  });

  test("take the pitch of a rough piece from its method", () => {
    const frame = frameGeometry({ sides: 6, slope: 30, profile: plain, opening: { side: 400 } });
    const longest = frame.pieces[0].longest.length;
    const cosine = Math.cos(Math.PI / 6);
    const pitch = (rough: SawPlanOptions["rough"]): number => sawPlan(frame, { kerf: 3, rough: rough! }).rough.pitch;
    expect(pitch({ method: "none" })).toBeCloseTo(longest + 3 / cosine, 10);
    expect(pitch({ method: "square", allowance: 8 })).toBeCloseTo(longest + 16 + 3, 10);
    expect(pitch({ method: "mitered", allowance: 8 })).toBeCloseTo(longest + 8 + 3 / cosine, 10);
  });
});

describe("the stop and the tape", () => {
  test("meet the long point: on the table for a tray lying on its back, up at the back for one lying on its face", () => {
    expect(plan(30).stop).toMatchObject({ arris: "outerBack", from: 19, to: 19 });
    const tray = plan(30, { lay: "flat" });
    expect(tray.stop).toMatchObject({ arris: "outerBack", from: 0, to: 0 });
    expect(tray.operations.at(-1)!.measure).toMatchObject({ arris: "outerBack", hook: true });
  });

  test("meet it up at the face for a reverse section", () => {
    const reverse = plan(-30);
    expect(reverse.stop).toMatchObject({ arris: "outerFace", from: 19, to: 19 });
    expect(reverse.operations.at(-1)!.measure!.arris).toBe("outerFace");
  });

  test("meet a whole edge for a flat frame", () => {
    expect(plan(0).stop).toMatchObject({ from: 0, to: 19, leanLength: 0 });
  });

  test("give the lean length t sin r tan h of a sloping end", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 12 }), fc.double({ min: -80, max: 80, noNaN: true }), (sides, slope) => {
        const frame = frameGeometry({ sides, slope, profile: plain, opening: { side: 400 } });
        const saw = tableSaw({ bevel: { left: 90, right: 0, reads: "from-vertical", step: 0.5 } });
        const { stop, lay } = sawPlan(frame, { saw, lay: "flat" });
        if (lay === null) return;
        const leanLength = 20 * Math.abs(Math.sin((slope * Math.PI) / 180)) * Math.tan(Math.PI / sides);
        expect(stop!.leanLength).toBeCloseTo(leanLength, 9);
      }),
    );
  });

  test("tell the angle of the long point on its sharpest surface", () => {
    const square = sawPlan(frameGeometry({ sides: 4, profile: plain, opening: { side: 400 } }));
    expect(square.operations.at(-1)!.measure!.pointAngle).toBeCloseTo(45, 12);
  });

  test("do not trust a hook on a point without a name", () => {
    const unnamed = { outline: plain.outline, arrises: {} };
    const { operations } = sawPlan(frameGeometry({ sides: 6, profile: unnamed, opening: { side: 400 } }));
    expect(operations.at(-1)!.measure).toMatchObject({ arris: null, hook: false });
  });
});

test("a plan from JSON geometry is the same plan, and the geometry stays as it was", () => {
  const frame = deepFreeze(frameGeometry({ sides: 5, slope: 20, profile: rabbeted, opening: { side: 300 } }));
  expect(sawPlan(throughJson(frame), { kerf: 3 })).toEqual(sawPlan(frame, { kerf: 3 }));
});

test.each([
  [{ kerf: -1 }, "Expected `kerf` to be zero or a positive length (up to 1e100), got -1 (number)"],
  [{ unit: "yd" }, 'Expected `unit` to be one of "mm", "cm", "m", "in", "ft", got "yd" (string)'],
  [
    { rough: { method: "wet" } },
    'Expected `rough.method` to be one of "none", "square", "mitered", got "wet" (string)',
  ],
  [
    { rough: { method: "square" } },
    "Expected `rough.allowance` to be a positive length (1e-100 to 1e100), got undefined",
  ],
  [
    { lay: "standing" },
    'Expected `lay` to be one of "propped", "flat", "face-down", "sight-edge-down", "outer-edge-down", got "standing" (string)',
  ],
  [{ saw: 5 }, "Expected `saw` to be an object, got 5 (number)"],
])("bad option %j", (options, message) => {
  expect(() => plan(30, options as never)).toThrow(message);
});

test("a cradle's section has the slope's angle and carries the back", () => {
  const { cradle } = plan(50, { lay: "propped" });
  expect(cradle!.top).toBeCloseTo(52 - 9, 12);
  expect(cradle!.rise / cradle!.levelRun).toBeCloseTo(Math.tan((50 * Math.PI) / 180), 12);
  expect(plan(0, { lay: "propped" }).cradle).toBeNull();
  const thick = frameGeometry({
    sides: 6,
    slope: 80,
    profile: molding({ width: 30, thickness: 30 }),
    opening: { side: 400 },
  });
  const { cradle: narrow } = sawPlan(thick, { lay: "propped" });
  expect(narrow!.steady).toBe(false);
  expect(narrow!.widenBy).toBeGreaterThan(0);
});
