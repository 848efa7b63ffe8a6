import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrame, type ContentsLayer, type FramePlan, type LayerRoom, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { polygonCorners } from "miterwright/polygon";
import { equilibriumMoisture, seasonalMovement, thermalExpansion } from "miterwright/wood";
import { ACRYLIC, FLOAT_GLASS } from "../published/materials.js";
import { anyGrain, movingWood, seasonMoisture, strayFromSide } from "../laws/wood.js";
import { plain, rabbeted } from "./briefs.js";

const LID: ContentsLayer = { name: "lid", thickness: 6, material: { species: "sugar maple" } };

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({
    sides: 6,
    profile: rabbeted,
    opening: { side: 300 },
    contents: [LID],
    ...changes,
  } as ProfileBrief);
}
function roomOf(changes: Partial<ProfileBrief>): LayerRoom {
  return planOf(changes).contents.room[0]!;
}
const layer = (material: ContentsLayer["material"]): Partial<ProfileBrief> => ({
  contents: [{ name: "layer", thickness: 3, ...(material === undefined ? {} : { material }) }],
});

describe("a solid panel whose points are moved one by one", () => {
  const anyCase = fc.record({
    sides: fc.integer({ min: 3, max: 14 }),
    species: movingWood,
    grain: anyGrain,
    grainDirection: fc.oneof(fc.constantFrom(0, 30, 90), fc.double({ min: -360, max: 360, noNaN: true })),
    made: seasonMoisture,
    seasons: fc.array(seasonMoisture, { minLength: 1, maxLength: 3 }),
    clearance: fc.double({ min: 0, max: 6, noNaN: true }),
    pose: fc.constantFrom("side-down" as const, "corner-down" as const),
  });

  test("reaches as far beyond its sides as the plan says that it needs, and draws back as far", () => {
    fc.assert(
      fc.property(anyCase, ({ sides, species, grain, grainDirection, made, seasons, clearance, pose }) => {
        const material = { species, grain, grainDirection };
        const { contents } = planOf({ sides, clearance, pose, moisture: { made, seasons }, ...layer(material) });
        const corners = polygonCorners(contents.panel!);
        const fractions = seasons.map((to) => seasonalMovement({ species, width: 1, grain, from: made, to }).fraction);
        const [room] = contents.room;
        expect(room!.sides.map(({ side }) => side)).toEqual(corners.map((_, index) => index));
        for (const { side, room: grows, retreat } of room!.sides) {
          const strays = fractions.map((fraction) => strayFromSide(corners, side, grainDirection, fraction));
          expect(Math.abs(grows - Math.max(...strays.map(({ beyond }) => beyond)))).toBeLessThan(1e-9);
          expect(Math.abs(retreat - Math.max(...strays.map(({ behind }) => behind)))).toBeLessThan(1e-9);
        }
        expect(room!.needed).toBe(Math.max(...room!.sides.map((side) => side.room)));
        expect(room!.retreat).toBe(Math.max(...room!.sides.map((side) => side.retreat)));
        expect(room!.enough).toBe(clearance >= room!.needed);
      }),
      { numRuns: 60 },
    );
  });

  test("is numbered by the sides of the frame, whatever the pose: its grain goes by side 0", () => {
    expect(roomOf({ pose: "corner-down" })).toEqual(roomOf({}));
    const at = (grainDirection: number): LayerRoom => roomOf(layer({ species: "sugar maple", grainDirection }));
    const [here, there] = [at(10).sides, at(70).sides];
    for (const [index, { room }] of here.entries()) expect(there[(index + 1) % 6]!.room).toBeCloseTo(room, 11);
  });
});

describe("the clearance", () => {
  test("that is a hair more than what is needed is enough, and a hair less is not", () => {
    const { needed } = roomOf({ clearance: 2 });
    // A panel that is smaller by the clearance needs less by the part by which it moves, about a hundredth of that.
    const least = roomOf({ clearance: needed }).needed;
    expect(roomOf({ clearance: least + 1e-3 }).enough).toBe(true);
    expect(roomOf({ clearance: least - 1e-3 }).enough).toBe(false);
    expect(roomOf({ moisture: { made: 8, seasons: [8] } })).toMatchObject({ needed: 0, enough: true, retreat: 0 });
  });
});

describe("the lip", () => {
  test("laps what is left of it: less by what the panel and the lip have drawn back, seen by both outlines", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 12 }), fc.double({ min: -20, max: 20, noNaN: true }), (sides, slope) => {
        const { geometry, contents, movement } = planOf({
          sides,
          slope,
          clearance: 1.5,
          species: "black cherry",
          moisture: { made: 9, seasons: [5] },
        });
        // The arris that it bears on, which draws back no more than the innermost line does.
        const bears = geometry.polygons["sightBack"]!.apothem + movement!.seasons[0]!.sightOpens;
        const { fraction } = seasonalMovement({
          species: "sugar maple",
          width: 1,
          grain: "flat-sawn",
          from: 9,
          to: 5,
        });
        const shrunk = polygonCorners(contents.panel!).map(({ x, y }) => ({ x, y: y * (1 + fraction) }));
        const laps = contents.room[0]!.sides.map(({ side }) => {
          const angle = (2 * Math.PI * side) / sides - Math.PI / 2;
          const reach = [shrunk[side]!, shrunk[(side + 1) % sides]!].map(
            ({ x, y }) => x * Math.cos(angle) + y * Math.sin(angle),
          );
          return Math.min(...reach) - bears;
        });
        expect(contents.room[0]!.lapLeft).toBeCloseTo(Math.min(...laps), 9);
      }),
      { numRuns: 40 },
    );
  });

  test("that is not there laps nothing, and of a frame without a species it is taken to stay", () => {
    expect(roomOf({ profile: plain }).lapLeft).toBeNull();
    const { contents } = planOf({ clearance: 2 });
    expect(contents.room[0]!.lapLeft).toBeCloseTo(contents.lap - contents.room[0]!.retreat, 12);
  });

  test("hides more than it holds where its face leans in over the panel", () => {
    const profile = molding({ width: 60, thickness: 40, rabbet: { width: 3, depth: 20 } });
    const { contents, hazards } = planOf({ profile, slope: 35, clearance: 3.5, moisture: { made: 12, seasons: [4] } });
    // The rabbet is 3 wide square to the wall, so 3 / cos 35 level, less the clearance.
    expect(contents.lap).toBeCloseTo(3 / Math.cos((35 * Math.PI) / 180) - 3.5, 9);
    expect(contents.hidden).toBeGreaterThan(10);
    expect(contents.room[0]!.lapLeft).toBeLessThan(0);
    expect(hazards.map(({ code }) => code)).toEqual(expect.arrayContaining(["panel-lap", "narrow-lip"]) as unknown);
    // The panel can slide by its clearance, which is more than the usual limit of 3 mm.
    expect(hazards.find(({ code }) => code === "narrow-lip")).toMatchObject({
      numbers: { lap: contents.lap, limit: 3.5 },
    });
  });

  test("can lose the panel", () => {
    const profile = molding({ width: 40, thickness: 20, rabbet: { width: 4, depth: 10 } });
    expect(roomOf({ profile, clearance: 3.5 }).lapLeft).toBeLessThan(0);
  });
});

describe("a sheet", () => {
  test("grows by its printed expansion at every side, from the usual 20 degrees to 5 and 40", () => {
    const opening = { apothem: 500 };
    for (const [material, expansion] of [
      ["glass", FLOAT_GLASS.expansionPerKelvin],
      ["acrylic", ACRYLIC.expansionPerKelvin],
    ] as const) {
      const room = roomOf({ opening, ...layer(material) });
      expect(room).toMatchObject({ with: "temperature", made: 20, least: 5, most: 40 });
      expect(room.needed).toBeCloseTo(500 * expansion * 20, 12);
      expect(room.retreat).toBeCloseTo(500 * expansion * 15, 12);
      for (const side of room.sides) expect(side.room).toBeCloseTo(room.needed, 12);
    }
  });

  test("goes by the temperatures of the brief's climates, where it names any", () => {
    const cold = { temperature: -10, humidity: 80 };
    const hot = { temperature: 45, humidity: 20 };
    const fitted = { temperature: 18, humidity: 50 };
    const opening = { apothem: 500 };
    const at = (moisture: ProfileBrief["moisture"]): LayerRoom =>
      roomOf({ opening, ...layer("acrylic"), moisture: moisture! });
    const grown = (from: number, to: number): number =>
      thermalExpansion({ sheet: "acrylic", length: 500, from, to }).change;
    expect(at({ made: fitted, seasons: [cold, hot] }).needed).toBeCloseTo(grown(18, 45), 12);
    expect(at({ made: fitted, seasons: [cold, hot] }).retreat).toBeCloseTo(-grown(18, -10), 12);
    // A moisture says nothing about the temperature.
    expect(at({ made: 8, seasons: [hot, 12] })).toMatchObject({ made: 20, least: 20, most: 45 });
    expect(at({ made: fitted, seasons: [6, 12] })).toMatchObject({ made: 18, least: 5, most: 40 });
  });

  test("of one's own goes by its own expansion, and is the same in every pose and unit", () => {
    const own = roomOf(layer({ expansion: 5e-5 }));
    expect(own.needed).toBeCloseTo(planOf({}).contents.panel!.apothem * 5e-5 * 20, 12);
    expect(roomOf({ ...layer({ expansion: 5e-5 }), pose: "corner-down", unit: "in" })).toEqual(own);
  });
});

describe("the list", () => {
  test("has a row for every layer that moves by figures that are known, by its place among the contents", () => {
    const contents: ContentsLayer[] = [
      { name: "pane", thickness: 2, material: "glass" },
      { name: "print", thickness: 0.3 },
      { name: "board", thickness: 3, material: { density: 700 } },
      LID,
    ];
    const { room } = planOf({ contents }).contents;
    expect(room.map(({ layer: place, name, with: by }) => [place, name, by])).toEqual([
      [0, "pane", "temperature"],
      [3, "lid", "moisture"],
    ]);
    expect(planOf({ contents: [] }).contents.room).toEqual([]);
  });

  test("is empty where the clearance leaves no panel", () => {
    expect(planOf({ profile: plain, opening: { side: 40 }, clearance: 40 }).contents.room).toEqual([]);
  });

  test("has every moisture of the year, when it was made among them", () => {
    expect(roomOf({ moisture: { made: 7, seasons: [9, 12] } })).toMatchObject({
      with: "moisture",
      made: 7,
      least: 7,
      most: 12,
    });
    const fitted = { temperature: 18, humidity: 50 };
    expect(roomOf({ moisture: { made: fitted, seasons: [6] } }).made).toBe(equilibriumMoisture(fitted));
  });

  test("scales with the frame, to the bit, and stays finite for a thousand sides", () => {
    const at = (factor: number): LayerRoom =>
      roomOf({
        opening: { apothem: 200 * factor },
        clearance: factor,
        profile: molding({
          width: 40 * factor,
          thickness: 20 * factor,
          rabbet: { width: 8 * factor, depth: 9 * factor },
        }),
      });
    for (const key of ["needed", "retreat", "lapLeft"] as const) expect(at(1024)[key]).toBe(at(1)[key]! * 1024);
    for (const slope of [-90, 0, 90]) {
      const { sides, needed } = roomOf({ sides: 1000, slope, opening: { apothem: 4000 } });
      expect(sides).toHaveLength(1000);
      expect(Number.isFinite(needed)).toBe(true);
    }
  });
});
