import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrame, type FramePlan, type LayResult, type ProfileBrief } from "miterwright/frame";
import { molding, type Profile } from "miterwright/profile";
import { cradleFor, miterSaw, tableSaw, type Saw } from "miterwright/saw";
import { shopSheet } from "miterwright/sheet";
import { formatsWith } from "../formats.js";
import { planeFromWords } from "../laws/saw.js";
import { briefs, plain, rabbeted } from "./briefs.js";

const board = molding({ width: 60, thickness: 20 });
const tell = { formats: formatsWith({ length: String, angle: (degrees) => `${degrees}°` }) };
type Changes = Omit<Partial<ProfileBrief>, "measured">;
const plan = (brief: Changes): FramePlan => planFrame({ sides: 6, profile: plain, opening: { side: 400 }, ...brief });
const layCalled = ({ sawing }: FramePlan, name: LayResult["lay"]): LayResult =>
  sawing.lays.find(({ lay }) => lay === name)!;
const leansLeft = tableSaw();
const leansRight = tableSaw({ bevel: { left: 0, right: 45, reads: "from-vertical", step: 0.5 } });

describe("a rotation that is that of a named lay", () => {
  test.each([
    [20, 0, "propped"],
    [20, 20, "flat"],
    [20, -160, "face-down"],
    [20, 200, "face-down"],
    [20, -360, "propped"],
    [20, 360, "propped"],
    [20, 110, "outer-edge-down"],
    [0, 0, "flat"],
  ])("at slope %d, %d is %s", (slope, lay, name) => {
    const { sawing } = plan({ slope, lay });
    expect(sawing.lay?.lay).toBe(name);
    expect(sawing.lays).toHaveLength(5);
    expect(sawing).toEqual(plan({ slope, lay: name as "flat" }).sawing);
  });

  test("is only that, not one nearby", () => {
    const { sawing } = plan({ slope: 20, lay: 1e-6 });
    expect(sawing.lays.at(-1)).toMatchObject({ lay: 1e-6, possible: false });
    expect(sawing.lay).toBeNull();
  });

  test("holds for a molding known by level measures", () => {
    expect(
      planFrame({ sides: 8, slope: 20, lay: 0, measured: { levelWidth: 40 }, opening: { side: 300 } }).sawing.lay?.lay,
    ).toBe("propped");
  });
});

describe("a back that a wedge would not carry", () => {
  test("lies on the table where it is milled level: propped, without a cradle", () => {
    const level = molding({ width: 60, thickness: 50, madeFor: { slope: 25, back: true } });
    const made = plan({ slope: 25, profile: level });
    expect(made.sawing.lay).toMatchObject({ lay: "propped", cradle: null, possible: true, givenUp: [] });
    expect(made.sawing.cradle).toBeNull();
    expect(made.sawing.lay!.first).toMatchObject({ down: "back", cradled: false, underBlade: "none" });
    expect(cradleFor(level, 25)).toBeNull();
    const codes = made.hazards.map(({ code }) => code);
    expect(codes).not.toContain("fasteners");
    expect(codes).not.toContain("tip");
    const sheet = shopSheet(made, tell);
    expect(sheet).not.toContain("cradle");
    // At any other slope the same back does not lie level, and stands on an arris.
    expect(cradleFor(level, 30)).toBeNull();
    expect(layCalled(plan({ slope: 30, profile: level }), "propped")).toMatchObject({ possible: false, cradle: null });
  });

  test("pointed, cannot be propped for want of a support, and face down is chosen", () => {
    const pointed: Profile = {
      outline: [
        { x: 0, y: 10 },
        { x: 20, y: 0 },
        { x: 50, y: 12 },
        { x: 45, y: 25 },
        { x: 5, y: 25 },
      ],
      arrises: {},
    };
    const made = plan({ slope: 30, profile: pointed });
    expect(made.sawing.lay?.lay).toBe("face-down");
    const propped = layCalled(made, "propped");
    expect(propped).toMatchObject({ possible: false, cradle: null });
    expect(propped.obstacles).toEqual([{ code: "no-flat-back" }]);
    expect(cradleFor(pointed, 30)).toBeNull();
    expect(plan({ slope: 30, profile: pointed, lay: "propped" }).sawing.lay).toBeNull();
  });

  test("round, is the same", () => {
    const outline = [
      { x: 40, y: 0 },
      { x: 0, y: 0 },
      ...Array.from({ length: 41 }, (_, index) => {
        const turn = Math.PI + (index * Math.PI) / 41;
        return { x: 20 + 20 * Math.cos(turn), y: 20 * Math.sin(turn) };
      }).slice(1),
    ];
    const made = plan({ slope: 30, profile: { outline, arrises: {} } });
    expect(layCalled(made, "propped")).toMatchObject({ possible: false, cradle: null });
    expect(made.sawing.lay?.lay).toBe("face-down");
    // Nor does it lie still on the table, though its center of gravity is above the facet that a curve is drawn with.
    expect(layCalled(made, "flat").obstacles).toEqual([{ code: "rocks" }]);
  });

  test("never gets a wedge of no size", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const { cradle } = planFrame({ ...brief, lay: "propped" }).sawing;
        if (cradle !== null) expect(Math.min(cradle.top, cradle.levelRun, cradle.rise)).toBeGreaterThan(0);
      }),
    );
  });
});

describe("the lay that is chosen", () => {
  // Common practice, no printed source: the piece that is kept lies on the open side of a leaning blade.
  test.each<[string, Changes]>([
    ["8 sides at 60 degrees", { sides: 8, slope: 60 }],
    ["a box at 90", { sides: 4, slope: 90 }],
  ])("keeps the piece out from under the blade of a table saw: %s", (_, brief) => {
    for (const saw of [leansLeft, leansRight, miterSaw()]) {
      const { sawing } = plan({ ...brief, profile: board, saw });
      expect(sawing.lay).toMatchObject({ lay: "face-down", givenUp: ["showing-side-up"] });
      for (const { placement } of sawing.operations) expect(placement.underBlade).toBe("offcut");
      expect(layCalled(plan({ ...brief, profile: board, saw }), "flat").givenUp).toContain("open-side");
    }
  });

  test("has the side that shows up as well where that is the back, as of a planter and a box", () => {
    for (const brief of [
      { sides: 8, slope: 75 },
      { sides: 4, slope: 90 },
    ]) {
      const { sawing } = plan({ ...brief, profile: board, shows: "back" });
      expect(sawing.lay).toMatchObject({ lay: "face-down", givenUp: [] });
      for (const { placement } of sawing.operations) {
        expect(placement.tearOut[0]).toMatchObject({ surface: "face", shows: false });
      }
      const flat = plan({ ...brief, profile: board, shows: "back", lay: "flat" });
      expect(flat.sawing.lay!.givenUp).toEqual(["open-side", "showing-side-up"]);
      // The showing side then lies on the table, and its tear-out is said to show.
      expect(flat.sawing.operations[0]!.placement.tearOut[0]).toMatchObject({ surface: "back", shows: true });
    }
  });

  test("is flat where nothing is given up by it: a flat frame and a reverse section", () => {
    for (const slope of [0, -20, -60]) {
      for (const saw of [leansLeft, leansRight, miterSaw()]) {
        expect(plan({ slope, profile: rabbeted, saw }).sawing.lay).toMatchObject({ lay: "flat", givenUp: [] });
      }
    }
  });

  test("is face down in a flat frame whose back shows", () => {
    expect(plan({ shows: "back" }).sawing.lay).toMatchObject({ lay: "face-down", givenUp: [] });
  });

  test("is steady before it is open: a shaped face does not lie face down", () => {
    const shaped: Profile = {
      outline: [
        { x: 9, y: 0 },
        { x: 60, y: 0 },
        { x: 60, y: 12 },
        { x: 40, y: 19 },
        { x: 30, y: 20 },
        { x: 20, y: 19 },
        { x: 0, y: 14 },
        { x: 0, y: 9 },
        { x: 9, y: 9 },
      ],
      arrises: {},
    };
    const made = plan({ slope: 35, profile: shaped });
    expect(layCalled(made, "face-down").possible).toBe(false);
    expect(made.sawing.lay).toMatchObject({ lay: "flat", givenUp: ["open-side"] });
    for (const { placement } of made.sawing.operations) expect(placement.underBlade).toBe("kept");
  });

  test("is not a board balanced on its narrow edge, though its center of gravity is above that", () => {
    const wide = molding({ width: 150, thickness: 18 });
    const made = plan({ sides: 4, slope: 90, profile: wide, saw: tableSaw({ depth: 200 }) });
    const onEdge = layCalled(made, "sight-edge-down");
    // Half of 18 mm to either side of a center 75 mm up: it tips at atan(9 / 75), not 7 degrees.
    expect(onEdge).toMatchObject({ possible: true, givenUp: ["steady", "showing-side-up"] });
    expect(made.sawing.lay?.lay).toBe("face-down");
  });

  test("gives up the weightiest last, and the first in the list among equals", () => {
    const order = ["steady", "open-side", "showing-side-up"] as const;
    const weight = ({ givenUp, depthInDoubt }: LayResult): number =>
      (depthInDoubt ? 8 : 0) + givenUp.reduce((sum, code) => sum + 4 / 2 ** order.indexOf(code), 0);
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        briefs,
        fc.constantFrom<Saw>(leansLeft, leansRight, miterSaw(), tableSaw({ depth: 60 })),
        fc.constantFrom<"face" | "back">("face", "back"),
        (brief, saw, shows) => {
          const { lay, lays } = planFrame({ ...brief, saw, shows }).sawing;
          const possible = lays.filter((result) => result.possible);
          if (lay === null) {
            expect(possible).toEqual([]);
            return;
          }
          seen.add(`${String(lay.lay)} ${lay.givenUp.join()}`);
          const least = Math.min(...possible.map(weight));
          expect(lay).toEqual(possible.find((result) => weight(result) === least));
        },
      ),
      { numRuns: 400 },
    );
    expect(seen.size).toBeGreaterThan(4);
  });
});

describe("which part lies under the leaning blade", () => {
  test("is decided by the lay alone: never by the side that is kept, the saw, or the end", () => {
    fc.assert(
      fc.property(briefs, fc.constantFrom<Saw>(leansLeft, leansRight, miterSaw()), (brief, saw) => {
        const { geometry, sawing } = planFrame({ ...brief, saw });
        for (const { first, second } of sawing.lays) {
          expect(first.underBlade).toBe(second.underBlade);
          for (const placement of [first, second]) {
            // The cut plane's normal, out of the wood that is kept, points up where the blade leans over that wood, down where it leans away.
            const normal = planeFromWords({ ...placement, fence: saw.fence, slope: geometry.slope });
            const tilt = ((geometry.slope - placement.rotation) * Math.PI) / 180;
            const up = normal.across * Math.sin(tilt) + normal.through * Math.cos(tilt);
            if (Math.abs(up) < 1e-6) continue;
            expect(placement.underBlade).toBe(up > 0 ? "kept" : "offcut");
          }
        }
      }),
    );
  });
});

describe("how deep the saw cuts", () => {
  const tall = molding({ width: 152.4, thickness: 19.05 });

  test("is in doubt where the saw does not say and the work stands higher than usual saws cut", () => {
    const made = plan({ sides: 4, slope: 90, profile: tall, lay: "propped" });
    expect(made.sawing.lay).toMatchObject({ depthInDoubt: true, possible: true });
    const [hazard] = made.hazards.filter(({ code }) => code === "depth-not-known");
    expect(hazard).toMatchObject({ signal: "caution", numbers: { depth: 152.4, usual: 75 } });
    const sheet = shopSheet(made, tell);
    expect(sheet).toContain("depth not known");
    const known = plan({ sides: 4, slope: 90, profile: tall, lay: "propped", saw: tableSaw({ depth: 160 }) });
    expect(known.sawing.lay).toMatchObject({ depthInDoubt: false, possible: true });
    expect(known.hazards.map(({ code }) => code)).not.toContain("depth-not-known");
  });

  test("is held against a usual depth that is round in the reader's unit, along the leaning blade", () => {
    const inch = plan({
      unit: "in",
      sides: 4,
      slope: 90,
      profile: molding({ width: 6, thickness: 0.75 }),
      opening: { side: 16 },
      lay: "propped",
    });
    expect(inch.hazards.find(({ code }) => code === "depth-not-known")?.numbers).toEqual({ depth: 6, usual: 3 });
    const doubt = (thickness: number): boolean =>
      layCalled(plan({ sides: 4, slope: 90, profile: molding({ width: 100, thickness }) }), "flat").depthInDoubt;
    // A bevel of 45 degrees takes 1.414 times the thickness of the blade: 53.03 mm take 75.
    expect([doubt(53), doubt(53.1)]).toEqual([false, true]);
  });

  test("known or not, a lay that stands lower is taken first", () => {
    const deep = molding({ width: 40, thickness: 80 });
    expect(plan({ sides: 4, profile: deep }).sawing.lay).toMatchObject({ lay: "sight-edge-down", depthInDoubt: false });
    expect(plan({ sides: 4, profile: deep, saw: tableSaw({ depth: 90 }) }).sawing.lay?.lay).toBe("flat");
  });
});
