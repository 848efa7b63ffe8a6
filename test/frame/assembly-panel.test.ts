import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { panelForOpening, planFrame, type FramePlan, type ProfileBrief } from "miterwright/frame";
import { simulatePanel } from "miterwright/panel";
import { regularPolygon } from "miterwright/polygon";
import { deepFreeze, plain, rabbeted, throughJson } from "./briefs.js";

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({
    sides: 6,
    profile: rabbeted,
    opening: { acrossFlats: 300 },
    clearance: 1,
    ...changes,
  } as ProfileBrief);
}

const even = (sides: number): number => (sides % 2 === 0 ? sides / 2 : sides);
const alike = (count: number, value: number): number[] => Array.from({ length: count }, () => value);

describe("the panel for a glued frame", () => {
  test("that is as planned is the planned panel", () => {
    for (let sides = 3; sides <= 13; sides += 1) {
      for (const pose of ["side-down", "corner-down"] as const) {
        const plan = planOf({ sides, pose });
        const { acrossFlats, apothem } = plan.geometry.opening;
        for (const measures of [
          { acrossFlats: alike(even(sides), acrossFlats) },
          { fromCenter: alike(sides, apothem) },
        ]) {
          const result = panelForOpening(plan, measures);
          expect(result.panel.panel.apothem).toBeCloseTo(plan.panel!.panel.apothem, 9);
          expect(result.panel.pose).toBe(plan.panel!.pose);
          expect(result.difference).toBeCloseTo(0, 9);
          expect(result.clearanceLeft).toBeCloseTo(1, 9);
          expect(result).toMatchObject({ spread: 0, within: true, certain: "fromCenter" in measures });
        }
      }
    }
  });

  test("of a sloping frame follows from the rabbet's edge at the back, or from any arris that is named", () => {
    for (const slope of [25, -30, 60]) {
      const plan = planOf({ sides: 7, slope, clearance: 1.5 });
      const { polygons, opening } = plan.geometry;
      const across = (apothem: number): number[] => alike(7, apothem * (1 + 1 / Math.cos(Math.PI / 7)));
      const mouth = polygons["wallMouth"]!.apothem;
      // On a reverse slope the wall is narrowest at its edge at the back, and the contents have to pass there.
      expect(mouth - opening.apothem > 1).toBe(slope > 0);
      for (const [measures, options] of [
        [{ acrossFlats: across(mouth) }, {}],
        [{ acrossFlats: across(polygons["wallLedge"]!.apothem) }, { at: "wallLedge" }],
        [{ acrossFlats: across(opening.apothem) }, { at: "opening" }],
        [{ fromCenter: alike(7, polygons["outerBack"]!.apothem) }, { at: "outerBack" }],
      ] as const) {
        const result = panelForOpening(plan, measures, options);
        expect(result.panel.panel.apothem).toBeCloseTo(plan.panel!.panel.apothem, 8);
        expect(result.polygon.apothem).toBeCloseTo(opening.apothem, 8);
        expect(result).toMatchObject({ within: true });
        expect(result.difference).toBeCloseTo(0, 8);
      }
      expect(() => panelForOpening(plan, { acrossFlats: across(mouth) }, { at: "lip" })).toThrow(
        'Expected `at` to be one of "opening", "sightFace", "sightBack"',
      );
    }
  });

  test("goes into any opening that is measured from a center, with the clearance at every side", () => {
    fc.assert(
      fc.property(
        fc
          .integer({ min: 3, max: 16 })
          .chain((sides) =>
            fc.array(fc.double({ min: 0.98, max: 1.02, noNaN: true }), { minLength: sides, maxLength: sides }),
          ),
        (shares) => {
          const plan = planOf({ sides: shares.length });
          const distances = shares.map((share) => share * plan.geometry.opening.apothem);
          const { panel, clearanceLeft, spread } = panelForOpening(plan, { fromCenter: distances });
          // The cut panel, brought to its center: how far it reaches toward every side of the opening.
          const points = simulatePanel(panel).map(({ x, y }) => [x - panel.center.x, y - panel.center.y] as const);
          const rotated = panel.pose === "side-down" ? -90 : -90 + 180 / shares.length;
          for (const [side, distance] of distances.entries()) {
            const toward = ((rotated + (360 * side) / shares.length) * Math.PI) / 180;
            const reach = Math.max(...points.map(([x, y]) => x * Math.cos(toward) + y * Math.sin(toward)));
            expect(reach).toBeLessThan(distance - 1 + 1e-9);
          }
          expect(clearanceLeft - 1).toBeCloseTo(Math.min(...distances) - plan.geometry.opening.apothem, 9);
          expect(spread).toBeCloseTo(Math.max(...distances) - Math.min(...distances), 12);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("says what differs from the plan, and whether by more than a frame that closes may", () => {
    const plan = planOf({});
    const { tolerance } = plan.checks.find(({ code }) => code === "glued-across-flats")!;
    const off = (by: number): ReturnType<typeof panelForOpening> =>
      panelForOpening(plan, { acrossFlats: [300 + by, 300 + by + 0.1, 300 + by + 0.3] });
    expect(off(-0.9 * tolerance!)).toMatchObject({ tolerance, within: true, certain: false });
    expect(off(-1.1 * tolerance!).within).toBe(false);
    expect(off(1.1 * tolerance!).within).toBe(false);
    expect(off(-0.2).difference).toBeCloseTo(-0.2, 12);
    expect(off(-0.2).spread).toBeCloseTo(0.3, 12);
    // Half of what the opening lacks across flats is taken from the clearance at each side.
    expect(off(-3).clearanceLeft).toBeCloseTo(-0.5, 12);
    const blind = planFrame({ sides: 6, measured: { levelWidth: 0.2 }, opening: { acrossFlats: 300 } });
    expect(panelForOpening(blind, { acrossFlats: [300, 300, 300] })).toMatchObject({ tolerance: null, within: null });
  });

  test("of an odd frame is measured from corner to side", () => {
    const plan = planOf({ sides: 5 });
    const { polygon } = panelForOpening(plan, { acrossFlats: [300, 299, 300, 300, 300] });
    expect(polygon.acrossFlats).toBe(299);
    expect(polygon.apothem).toBeCloseTo(regularPolygon({ sides: 5, acrossFlats: 299 }).apothem, 12);
  });

  test("scales, survives JSON and writes to nothing, for a thousand sides too", () => {
    const plan = deepFreeze(planOf({ sides: 7, pose: "corner-down" }));
    const measures = deepFreeze({ fromCenter: alike(7, 140) });
    const result = panelForOpening(plan, measures);
    expect(throughJson(result)).toEqual(result);
    expect(panelForOpening(throughJson(plan), measures)).toEqual(result);
    const many = planOf({ sides: 1000, profile: plain });
    expect(panelForOpening(many, { acrossFlats: alike(500, 300.5) }).panel.corners).toHaveLength(1000);
  });

  const plan = planOf({});
  test.each<[unknown, unknown, string]>([
    [undefined, {}, "Expected `plan` to be an object, got undefined"],
    [{}, {}, "Expected `plan.brief` to be an object, got undefined"],
    [
      { ...plan, geometry: { ...plan.geometry, opening: 3 } },
      {},
      "Expected `plan.geometry.opening` to be an object, got 3 (number)",
    ],
    [
      { ...plan, geometry: { ...plan.geometry, arrises: undefined } },
      {},
      "Expected `plan.geometry.arrises` to be an object, got undefined",
    ],
    [
      { ...plan, geometry: { ...plan.geometry, deciding: 3 } },
      {},
      "Expected `plan.geometry.deciding` to be an object, got 3 (number)",
    ],
    [{ ...plan, checks: [null] }, {}, "Expected `plan.checks[0]` to be an object, got null"],
    [plan, null, "Expected `measures` to be an object, got null"],
    [plan, {}, "Expected exactly one of `acrossFlats`, `fromCenter`, got none"],
    [
      plan,
      { acrossFlats: [1], fromCenter: [1] },
      "Expected exactly one of `acrossFlats`, `fromCenter`, got `acrossFlats` and `fromCenter`",
    ],
    [plan, { acrossFlats: [300] }, "Expected `acrossFlats` to be an array of 3 lengths, got an array of 1"],
    [
      plan,
      { fromCenter: [150, 150, 150, 150, 150, -1] },
      "Expected `fromCenter[5]` to be a positive length (1e-100 to 1e100), got -1 (number)",
    ],
    [plan, { acrossFlats: [1.5, 300, 300] }, "Expected `clearance` to be less than the opening's apothem, 0.75, got 1"],
  ])("is refused for %#", (given, measures, message) => {
    expect(() => panelForOpening(given as never, measures as never)).toThrow(message);
  });
});
