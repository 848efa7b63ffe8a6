import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrame, type FrameMovement, type ProfileBrief, type SeasonMovement } from "miterwright/frame";
import { molding, sectionAt, type Profile } from "miterwright/profile";
import { equilibriumMoisture, miterMovement, seasonalMovement, type GrainName, type Wood } from "miterwright/wood";
import { anyGrain, movingWood, pressRing, seasonMoisture } from "../laws/wood.js";
import { plain, rabbeted, throughJson } from "./briefs.js";

const DRY_AND_DAMP = { made: 9, seasons: [6, 13] } as const;
const OTHER: Readonly<Record<GrainName, GrainName>> = {
  "flat-sawn": "quarter-sawn",
  "rift-sawn": "rift-sawn",
  "quarter-sawn": "flat-sawn",
};

const anyProfile: fc.Arbitrary<Profile> = fc.constantFrom<Profile>(
  plain,
  rabbeted,
  molding({ width: 30, thickness: 30, face: [{ cut: "chamfer", at: "sightFace", width: 6, angle: 30 }] }),
  molding({ width: 60, thickness: 25, rabbet: { width: 8, depth: 9 }, madeFor: { slope: 30, outer: true } }),
  molding({ width: 14, thickness: 40 }),
);
const anySlope = fc.oneof(fc.constantFrom(-90, -30, 0, 45, 90), fc.double({ min: -90, max: 90, noNaN: true }));

function briefOf(changes: Partial<ProfileBrief>): ProfileBrief {
  return {
    sides: 4,
    profile: plain,
    opening: { apothem: 300 },
    species: "white oak",
    moisture: DRY_AND_DAMP,
    ...changes,
  };
}

function movementOf(changes: Partial<ProfileBrief>): FrameMovement {
  return planFrame(briefOf(changes)).movement!;
}

function firstSeason(changes: Partial<ProfileBrief>): SeasonMovement {
  return movementOf(changes).seasons[0]!;
}

describe("innermost arrises that tie", () => {
  const plumb = molding({ width: 40, thickness: 20, madeFor: { slope: 30, inner: true } });

  test("are all looked at: of a plumb sight edge the one counts that draws back most, and it is named", () => {
    const { geometry, movement } = planFrame(briefOf({ slope: 30, profile: plumb }));
    const { sightFace, sightBack } = geometry.arrises as Record<string, { out: number; up: number }>;
    expect(sightFace!.out).toBeCloseTo(sightBack!.out, 12);
    const stretch = (how: GrainName): number =>
      seasonalMovement({ species: "white oak", width: 1, grain: how, from: 9, to: 6 }).fraction;
    const ring = pressRing({
      sides: 4,
      slope: 30,
      outline: plumb.outline,
      across: stretch("flat-sawn"),
      through: stretch("quarter-sawn"),
    });
    const [face, back] = [sightFace!, sightBack!].map(({ out, up }) => ring.growthAt(out, up));
    // The thickness moves less than the width, so the two arrises of the edge part.
    expect(Math.abs(face! - back!)).toBeGreaterThan(0.02);
    const [dry] = movement!.seasons;
    expect(dry!.sightOpens).toBeCloseTo(Math.max(face!, back!), 10);
    expect(dry!.sightArrises).toEqual([face! > back! ? "sightFace" : "sightBack"]);
    // Whichever comes first in the list of arrises.
    const { sightFace: first, ...rest } = plumb.arrises;
    const reordered: Profile = { outline: plumb.outline, arrises: { ...rest, sightFace: first } };
    const [same] = planFrame(briefOf({ slope: 30, profile: reordered })).movement!.seasons;
    expect([same!.sightOpens, same!.lipChange]).toEqual([dry!.sightOpens, dry!.lipChange]);
  });

  test("are both named where they draw back alike, and the one that there is where there is one", () => {
    expect([...firstSeason({}).sightArrises].sort()).toEqual(["sightBack", "sightFace"]);
    expect(firstSeason({ slope: 20 }).sightArrises).toEqual(["sightFace"]);
    expect(firstSeason({ slope: -20 }).sightArrises).toEqual(["sightBack"]);
    expect(firstSeason({ profile: { outline: plain.outline, arrises: {} } }).sightArrises).toEqual([]);
  });
});

describe("a ring of which every point is moved and that is pressed together", () => {
  const anyCase = fc.record({
    sides: fc.oneof(fc.integer({ min: 3, max: 24 }), fc.constantFrom(97, 1000)),
    slope: anySlope,
    profile: anyProfile,
    species: movingWood,
    grain: fc.constantFrom<GrainName>("flat-sawn", "rift-sawn", "quarter-sawn"),
    made: seasonMoisture,
    season: seasonMoisture,
  });

  test("stands open as the plan says, and its openings have grown as the plan says", () => {
    fc.assert(
      fc.property(anyCase, ({ sides, slope, profile, species, grain, made, season }) => {
        const opening = { apothem: 500 };
        const plan = planFrame({
          sides,
          slope,
          profile,
          opening,
          species,
          grain,
          moisture: { made, seasons: [season] },
        });
        const [moved] = plan.movement!.seasons;
        const stretch = (how: GrainName): number =>
          seasonalMovement({ species, width: 1, grain: how, from: made, to: season }).fraction;
        const ring = pressRing({
          sides,
          slope,
          outline: profile.outline,
          across: stretch(grain),
          through: stretch(OTHER[grain]),
        });
        expect(Math.abs(moved!.jointGap - ring.gap)).toBeLessThan(1e-10);
        const { shortest, longest } = plan.geometry.pieces[0];
        const grown = ring.growthAt(shortest.out, shortest.up!);
        expect(Math.abs(moved!.sightOpens - grown)).toBeLessThan(1e-10);
        const { deciding } = plan.geometry;
        const opened = ring.growthAt(deciding.out, deciding.up!);
        expect(Math.abs(moved!.openingGrows - opened)).toBeLessThan(1e-10);
        expect(Math.abs(moved!.lipChange - (opened - grown))).toBeLessThan(1e-10);
        expect(Math.abs(moved!.levelWidthChange - (ring.growthAt(longest.out, longest.up!) - opened))).toBeLessThan(
          1e-10,
        );
        if (moved!.jointGap > 1e-6 && ring.outOfTouch !== 0) {
          expect(moved!.opens).toBe(ring.outOfTouch > 0 ? "outside" : "inside");
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe("a frame of plain stock", () => {
  test("moves at every slope as a corner of such boards does", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 40 }), anySlope, anyGrain, seasonMoisture, (sides, slope, grain, to) => {
        const moved = firstSeason({ sides, slope, grain, moisture: { made: 9, seasons: [to] } });
        const corner = miterMovement({
          sides,
          slope,
          species: "white oak",
          grain,
          width: 40,
          thickness: 20,
          from: 9,
          to,
        });
        expect(moved.opens).toBe(corner.opens);
        expect(moved.jointGap).toBeCloseTo(corner.jointGap, 11);
        expect(moved.angle).toBeCloseTo(corner.angle, 9);
        expect(moved.miter).toBeCloseTo(corner.miter, 9);
        expect(moved.levelWidthChange).toBeCloseTo(corner.change, 11);
      }),
    );
  });

  test("opens inside in the dry season and outside in the damp one, in whatever order they come", () => {
    const year = (seasons: readonly number[]): string[] =>
      movementOf({ moisture: { made: 9, seasons } }).seasons.map(({ opens }) => opens);
    expect(year([6, 13, 9])).toEqual(["inside", "outside", "nowhere"]);
    expect(year([13, 9, 6])).toEqual(["outside", "nowhere", "inside"]);
  });

  test("counts the worst season of either direction, and is held against the gap of its brief", () => {
    const movement = movementOf({ moisture: { made: 9, seasons: [8, 5, 10, 14, 6] }, acceptedGap: 0.4 });
    const gaps = movement.seasons.map(({ jointGap }) => jointGap);
    expect([movement.inside, movement.outside]).toEqual([gaps[1], gaps[3]]);
    expect(movement.acceptedGap).toBe(0.4);
    expect(movement.sightOpens).toBe(movement.seasons[1]!.sightOpens);
  });

  test("never gets a smaller opening: it keeps that of its sight edge when it swells, and loses that much of its lip when it shrinks", () => {
    const { seasons } = movementOf({ profile: rabbeted });
    const [dry, damp] = seasons;
    expect(dry!.sightOpens).toBeCloseTo(dry!.jointGap / Math.SQRT2, 12);
    expect(damp!.sightOpens).toBe(0);
    expect(damp!.openingGrows).toBeCloseTo(damp!.lipChange, 12);
    expect(dry!.openingGrows - dry!.sightOpens).toBeCloseTo(dry!.lipChange, 12);
    expect([Math.sign(dry!.lipChange), Math.sign(damp!.lipChange)]).toEqual([-1, 1]);
  });
});

describe("laws", () => {
  test("without a change of moisture nothing moves", () => {
    fc.assert(
      fc.property(anyProfile, anySlope, movingWood, anyGrain, seasonMoisture, (profile, slope, species, grain, at) => {
        const { sightArrises, ...still } = firstSeason({
          profile,
          slope,
          species,
          grain,
          moisture: { made: at, seasons: [at] },
        });
        expect(still).toEqual({
          opens: "nowhere",
          jointGap: 0,
          angle: 0,
          miter: 45,
          moisture: at,
          levelWidthChange: 0,
          lipChange: 0,
          sightOpens: 0,
          openingGrows: 0,
        });
        // Where nothing moves, all that are innermost draw back alike.
        expect(sightArrises.length).toBeGreaterThan(0);
      }),
    );
  });

  test("the way there and the way back open it the other way, by as much of what it is then", () => {
    fc.assert(
      fc.property(anySlope, seasonMoisture, seasonMoisture, (slope, made, season) => {
        fc.pre(Math.min(made, season) < 29 && Math.abs(made - season) > 0.01);
        const at = (from: number, to: number): SeasonMovement =>
          firstSeason({ slope, profile: rabbeted, moisture: { made: from, seasons: [to] } });
        const [there, back] = [at(made, season), at(season, made)];
        expect([there.opens, back.opens].sort()).toEqual(["inside", "outside"]);
        // The strain goes by the size at the start, which differs by as much as the wood has moved: at most an eighth.
        expect(Math.abs(there.jointGap / back.jointGap - 1)).toBeLessThan(1 / 8);
      }),
    );
  });

  test("a frame twice or a thousand times as large moves as many times as much, to the bit", () => {
    const scaled = (factor: number): FrameMovement =>
      movementOf({
        slope: 25,
        acceptedGap: 0.25 * factor,
        opening: { apothem: 300 * factor },
        profile: molding({
          width: 50 * factor,
          thickness: 20 * factor,
          rabbet: { width: 8 * factor, depth: 9 * factor },
        }),
      });
    const [one, many] = [scaled(1), scaled(1024)];
    for (const key of ["inside", "outside", "acceptedGap", "sightOpens"] as const)
      expect(many[key]).toBe(one[key] * 1024);
    for (const [index, season] of one.seasons.entries()) {
      for (const key of ["jointGap", "levelWidthChange", "lipChange", "sightOpens", "openingGrows"] as const) {
        expect(many.seasons[index]![key]).toBe(season[key] * 1024);
      }
      expect(many.seasons[index]!.angle).toBe(season.angle);
    }
  });

  test("does not depend on the size of the opening, the pose or the unit", () => {
    const one = movementOf({ profile: rabbeted, slope: 20 });
    expect(movementOf({ profile: rabbeted, slope: 20, pose: "corner-down" })).toEqual(one);
    const large = movementOf({ profile: rabbeted, slope: 20, opening: { apothem: 3000 } });
    expect(large.inside).toBeCloseTo(one.inside, 11);
    expect(movementOf({ profile: rabbeted, slope: 20, unit: "in", acceptedGap: 0.25 })).toEqual(one);
  });

  test("rings square to the face are rings along it of a wood whose directions have changed places", () => {
    fc.assert(
      fc.property(movingWood, anySlope, anyProfile, fc.integer({ min: 0, max: 90 }), (wood, slope, profile, angle) => {
        const { radial, tangential } = wood;
        const swapped: Wood = { ...wood, radial: tangential, tangential: radial };
        const one = firstSeason({ species: wood, slope, profile, grain: angle });
        const other = firstSeason({ species: swapped, slope, profile, grain: 90 - angle });
        expect(other.jointGap).toBeCloseTo(one.jointGap, 11);
        expect(other.levelWidthChange).toBeCloseTo(one.levelWidthChange, 11);
      }),
    );
    expect(movementOf({ grain: 0 })).toEqual(movementOf({ grain: "flat-sawn" }));
    expect(movementOf({ grain: 90 })).toEqual(movementOf({ grain: "quarter-sawn" }));
    expect(movementOf({})).toEqual(movementOf({ grain: "flat-sawn" }));
  });

  test("a rabbet takes nothing away where the face is the wider, and something where the arris that moves most is milled off", () => {
    const bare = molding({ width: 52, thickness: 19 });
    expect(firstSeason({ profile: rabbeted, slope: 30 }).jointGap).toBeCloseTo(
      firstSeason({ profile: bare, slope: 30 }).jointGap,
      12,
    );
    expect(firstSeason({ profile: rabbeted, slope: -60 }).jointGap).toBeLessThan(
      firstSeason({ profile: bare, slope: -60 }).jointGap,
    );
  });

  test("plans with a year survive JSON, and planned again from their own briefs are the same", () => {
    fc.assert(
      fc.property(anyProfile, anySlope, anyGrain, movingWood, (profile, slope, grain, species) => {
        const contents = [
          { name: "panel", thickness: 2, material: { species, grain, grainDirection: 35 } },
          { name: "pane", thickness: 2, material: "acrylic" as const },
        ];
        const plan = planFrame({ ...briefOf({ profile, slope, grain, species, sides: 5 }), contents, clearance: 2 });
        const copy = throughJson(plan);
        expect(copy).toEqual(plan);
        expect(planFrame(copy.brief)).toEqual(plan);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a year", () => {
  test("that the brief does not name starts at the damp end of furniture lumber and ends in a heated and in a damp room", () => {
    const { made, seasons } = movementOf({ moisture: undefined });
    // Wood Handbook, FPL-GTR-190, p. 13-13: lumber for furniture, cabinetry and millwork usually has a final moisture content of 6 to 8 %.
    expect(made).toBe(8);
    // Common practice, no printed source: 21 degrees, and 30 % humidity in the heating season, 65 % in a damp summer.
    const rooms = [30, 65].map((humidity) => equilibriumMoisture({ temperature: 21, humidity }));
    expect(seasons.map(({ moisture }) => moisture)).toEqual([6, 12]);
    for (const [index, { moisture }] of seasons.entries())
      expect(Math.abs(moisture - rooms[index]!)).toBeLessThan(0.25);
  });

  test("of climates is that of the moistures to which they lead", () => {
    const climates = [
      { temperature: 20, humidity: 50 },
      { temperature: 21, humidity: 28 },
      { temperature: 24, humidity: 70 },
    ];
    const [made, ...seasons] = climates;
    const [madeAt, ...seasonsAt] = climates.map((climate) => equilibriumMoisture(climate));
    expect(movementOf({ moisture: { made: made!, seasons } })).toEqual(
      movementOf({ moisture: { made: madeAt!, seasons: seasonsAt } }),
    );
  });

  test("above fiber saturation moves nothing", () => {
    expect(movementOf({ moisture: { made: 60, seasons: [30, 300] } })).toMatchObject({
      inside: 0,
      outside: 0,
      sightOpens: 0,
    });
  });

  test("is not known of a frame without a species", () => {
    expect(planFrame({ sides: 4, profile: plain, opening: { apothem: 300 } }).movement).toBeNull();
  });
});

describe("a molding of which only level measures are known", () => {
  const measured = { levelWidth: 40, lap: 8, depth: 10 } as const;
  const plan = (slope: number, changes: object = {}): FrameMovement =>
    planFrame({
      sides: 6,
      slope,
      measured,
      opening: { apothem: 300 },
      species: "white oak",
      moisture: DRY_AND_DAMP,
      ...changes,
    }).movement!;

  test("lying flat moves by its width, and upright by its thickness", () => {
    const flat = firstSeason({ sides: 6, profile: molding({ width: 48, thickness: 20 }) });
    const upright = firstSeason({ sides: 6, slope: 90, profile: molding({ width: 20, thickness: 48 }) });
    expect(plan(0).unknown).toEqual([]);
    expect(plan(0).seasons[0]!.jointGap).toBeCloseTo(flat.jointGap, 12);
    expect(plan(90).seasons[0]!.jointGap).toBeCloseTo(upright.jointGap, 12);
    expect(plan(-90).seasons[0]!.jointGap).toBeCloseTo(upright.jointGap, 12);
  });

  test("sloping moves at most as the plan says, whatever its section is", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -89, max: 89, noNaN: true }),
        fc.double({ min: 12, max: 80, noNaN: true }),
        fc.double({ min: 8, max: 60, noNaN: true }),
        anyGrain,
        (slope, width, thickness, grain) => {
          const profile = molding({ width, thickness });
          const outs = sectionAt(profile, slope).outline.map(({ out }) => out);
          const levelWidth = Math.max(...outs) - Math.min(...outs);
          const known = firstSeason({ sides: 6, slope, grain, profile });
          const most = plan(slope, { grain, measured: { levelWidth: levelWidth / 2, lap: levelWidth / 2 } });
          expect(most.seasons[0]!.jointGap).toBeGreaterThanOrEqual(known.jointGap * (1 - 1e-12));
        },
      ),
    );
  });

  test("says what is not known", () => {
    expect(plan(20).unknown).toEqual(["section"]);
    expect(plan(0, { measured: { levelWidth: 40 } }).unknown).toEqual(["lip-width"]);
    expect(plan(20, { measured: { levelWidth: 40 } }).unknown).toEqual(["section", "lip-width"]);
    expect(movementOf({}).unknown).toEqual([]);
  });
});
