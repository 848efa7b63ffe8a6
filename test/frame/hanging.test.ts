import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrame, type FramePlan, type Hanging, type HungFrame, type ProfileBrief } from "miterwright/frame";
import { polygonCorners } from "miterwright/polygon";
import { molding, type Profile } from "miterwright/profile";
import { convertLength } from "miterwright/units";
import { briefs, plain, rabbeted, throughJson } from "./briefs.js";

const wire: Hanging = { by: "wire" };

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({ sides: 6, profile: plain, opening: { side: 300 }, hanging: wire, ...changes } as ProfileBrief);
}

function hungOf(changes: Partial<ProfileBrief>): HungFrame {
  const { hanging } = planOf(changes);
  if (hanging?.possible !== true) throw new Error("it cannot hang");
  return hanging;
}

/** Direction in which a side looks, found from its corners. */
function sideOf(plan: FramePlan, side: number): { readonly x: number; readonly y: number; readonly apothem: number } {
  const { polygon } = plan.geometry.overall;
  const corners = polygonCorners(polygon, plan.geometry.pose);
  const [a, b] = [corners[side]!, corners[(side + 1) % corners.length]!];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return { x: (b.y - a.y) / length, y: (a.x - b.x) / length, apothem: polygon.apothem };
}

describe("the fixings", () => {
  test("of a square picture frame lie a third below its top, on its two upright sides", () => {
    // An opening of 300 in stock of 40: 380 overall, its middle line 170 from the center.
    const { fixings, below, above, apart } = hungOf({ sides: 4 });
    expect(fixings.map(({ side }) => side)).toEqual([3, 1]);
    expect(below).toBeCloseTo(380 / 3, 10);
    expect(above).toBeCloseTo(380 / 6, 10);
    expect(apart).toBeCloseTo(340, 10);
    for (const { fromCorner } of fixings) expect(fromCorner).toBeCloseTo(380 / 3, 10);
  });

  test("of a triangle that stands on a side lie on its two upper sides", () => {
    const { fixings, below } = hungOf({ sides: 3, opening: { apothem: 100 } });
    expect(fixings.map(({ side }) => side)).toEqual([2, 1]);
    // Outermost apothem 140, so 420 high.
    expect(below).toBeCloseTo(140, 10);
  });

  test("of a triangle that hangs with a corner down lie an eighth of its height above its center, where a third below the top is the center itself", () => {
    const { fixings, above } = hungOf({ sides: 3, opening: { apothem: 100 }, pose: "corner-down" });
    expect(fixings.map(({ side }) => side)).toEqual([2, 0]);
    expect(above).toBeCloseTo(420 / 8, 10);
  });

  test("keep a sixth of their side away from its joints", () => {
    // A third below an octagon's top the upright sides have but 0.08 apothems left to their joints.
    const plan = planOf({ sides: 8, opening: { apothem: 200 } });
    const { fixings, above } = hungOf({ sides: 8, opening: { apothem: 200 } });
    const middle = 220;
    const side = 2 * middle * Math.tan(Math.PI / 8);
    expect(fixings.map((fixing) => fixing.side)).toEqual([6, 2]);
    expect(above).toBeCloseTo(side / 3, 10);
    expect(above).toBeLessThan(plan.geometry.overall.extent.height / 6);
  });

  test("mirror each other, level, above the center, on the middle line of their sides, a sixth of which is left to the joints", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const plan = planFrame({ ...brief, hanging: wire });
        const { fixings, above, apart, below } = plan.hanging as HungFrame;
        const [left, right] = fixings;
        expect(left.point).toEqual({ x: -right.point.x, y: right.point.y });
        expect(right.point.x).toBeGreaterThan(0);
        expect(above).toBeGreaterThan(0);
        expect(apart).toBe(2 * right.point.x);
        const top = Math.max(...polygonCorners(plan.geometry.overall.polygon, brief.pose).map(({ y }) => y));
        expect(below + right.point.y).toBeCloseTo(top, 8);
        for (const { side, point, fromCorner } of fixings) {
          const normal = sideOf(plan, side);
          const apothem = point.x * normal.x + point.y * normal.y;
          const along = Math.abs(point.y * normal.x - point.x * normal.y);
          const half = apothem * Math.tan(Math.PI / brief.sides);
          // Where the tape ends on the outermost line, square to the side.
          const whole = normal.apothem * Math.tan(Math.PI / brief.sides);
          expect(along).toBeLessThanOrEqual(half * (2 / 3) * (1 + 1e-9));
          expect([whole - along, whole + along].some((end) => Math.abs(end - fromCorner) < 1e-8 * whole)).toBe(true);
        }
      }),
    );
  });

  test("run on the middle of the surface that lies at the wall, wherever that is", () => {
    const apothemOf = (changes: Partial<ProfileBrief>): number => {
      const plan = planOf(changes);
      const { side, point } = hungOf(changes).fixings[1];
      const { x, y } = sideOf(plan, side);
      return point.x * x + point.y * y;
    };
    const opening = { apothem: 200 };
    expect(apothemOf({ opening })).toBeCloseTo(220, 9);
    // The back behind a rabbet 9 wide, in stock of 52, whose sight edge the opening is not.
    expect(apothemOf({ opening, at: "sightBack", profile: rabbeted })).toBeCloseTo(200 + (9 + 52) / 2, 9);
    // Sloping by 30: the middle of the back, 20 out, stands 20 cos 30 out.
    expect(apothemOf({ opening, slope: 30, at: "sightBack" })).toBeCloseTo(200 + 20 * Math.cos(Math.PI / 6), 9);
    expect(
      (
        planFrame({ sides: 4, measured: { levelWidth: 40 }, opening: { apothem: 200 }, hanging: wire })
          .hanging as HungFrame
      ).fixings[1].point.x,
    ).toBeCloseTo(220, 9);
  });

  test("of a frame with a corner up instead of down lie on mirrored sides where the number is odd", () => {
    const { fixings } = hungOf({ sides: 5, pose: "corner-down" });
    expect(fixings.map(({ side }) => side)).toEqual([3, 1]);
    expect(hungOf({ sides: 5 }).fixings.map(({ side }) => side)).toEqual([3, 2]);
  });
});

/** Whether a point lies in a section, by counting the edges that a ray to the right crosses. */
function holds(outline: Profile["outline"], x: number, y: number): boolean {
  return outline.reduce((inside, a, index) => {
    const b = outline[(index + 1) % outline.length]!;
    return a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x) ? !inside : inside;
  }, false);
}

describe("the hangers' seat", () => {
  test("on a flat frame is the back, flat to the wall", () => {
    expect(hungOf({}).seat).toEqual({
      width: 40,
      leanAngle: 0,
      opens: "nowhere",
      standoff: 0,
      wood: 20,
      deepest: 17,
      screwDepth: null,
      screwFits: null,
    });
    expect(hungOf({ profile: rabbeted }).seat).toMatchObject({ width: 43, wood: 19 });
  });

  test("on a slope leans by it, and stands off the wall where the frame does not touch it", () => {
    expect(hungOf({ slope: 20 }).seat).toMatchObject({ leanAngle: 20, opens: "outward", width: 40 });
    expect(hungOf({ slope: 20 }).seat!.standoff).toBeCloseTo(20 * Math.sin(Math.PI / 9), 12);
    expect(hungOf({ slope: -20 }).seat).toMatchObject({ leanAngle: -20, opens: "inward" });
    expect(hungOf({ slope: -20 }).seat!.standoff).toBeCloseTo(20 * Math.sin(Math.PI / 9), 12);
  });

  test("counts what stands proud of the back", () => {
    const contents = [{ name: "panel", thickness: 14 }];
    expect(hungOf({ profile: rabbeted, contents }).seat!.standoff).toBeCloseTo(3, 12);
  });

  test("of a molding whose back is milled level lies flat at its slope", () => {
    const profile = molding({ width: 50, thickness: 40, madeFor: { slope: 20, back: true } });
    const { seat } = hungOf({ slope: 20, profile });
    expect(seat!.leanAngle).toBeCloseTo(0, 10);
    expect(seat!.standoff).toBeCloseTo(0, 10);
  });

  test("of a box is the edge that lies at the back, into the width of the board", () => {
    expect(hungOf({ slope: 90 }).seat).toMatchObject({ width: 20, leanAngle: 0, wood: 40 });
    expect(hungOf({ slope: -90 }).seat).toMatchObject({ width: 20, leanAngle: 0, wood: 40 });
  });

  test("of two surfaces toward the wall is the wider, and never a rabbet's ledge", () => {
    expect(hungOf({ slope: 45 }).seat).toMatchObject({ width: 40, leanAngle: 45 });
    expect(hungOf({ slope: 45, profile: molding({ width: 20, thickness: 40 }) }).seat).toMatchObject({
      width: 40,
      leanAngle: -45,
    });
    const profile = molding({ width: 52, thickness: 19, rabbet: { width: 30, depth: 11 } });
    expect(hungOf({ profile }).seat).toMatchObject({ width: 22, wood: 19 });
  });

  test("of a grooved molding has the wood up to the groove", () => {
    const corners = [
      [0, 0],
      [40, 0],
      [40, 8],
      [10, 8],
      [10, 12],
      [40, 12],
      [40, 20],
      [0, 20],
    ] as const;
    for (let first = 0; first < corners.length; first++) {
      const outline = [...corners.slice(first), ...corners.slice(0, first)].map(([x, y]) => ({ x, y }));
      expect(hungOf({ profile: { outline, arrises: {} } }).seat!.wood).toBe(8);
    }
  });

  test("has as much wood behind it as a drill finds, on any molding at any slope", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const plan = planFrame({ ...brief, hanging: wire });
        const { seat, fixings } = plan.hanging as HungFrame;
        const { outline } = brief.profile;
        // Where the fixings run tells how far out the screw goes in; walk the outline's edges for the one that has such a middle and such a lean.
        const { x: nx, y: ny } = sideOf(plan, fixings[1].side);
        const out =
          fixings[1].point.x * nx +
          fixings[1].point.y * ny -
          plan.geometry.opening.apothem +
          plan.geometry.deciding.out;
        const slope = ((brief.slope ?? 0) * Math.PI) / 180;
        const found = outline.flatMap((a, index) => {
          const b = outline[(index + 1) % outline.length]!;
          const [x, y] = [(a.x + b.x) / 2, (a.y + b.y) / 2];
          const width = Math.hypot(b.x - a.x, b.y - a.y);
          const leanAngle = Math.atan2(b.y - a.y, b.x - a.x) + slope;
          const matches =
            Math.abs(x * Math.cos(slope) - y * Math.sin(slope) - out) < 1e-7 &&
            Math.abs(width - seat!.width) < 1e-9 &&
            Math.abs(Math.sin(leanAngle - (seat!.leanAngle * Math.PI) / 180)) < 1e-9;
          return matches ? [{ x, y, into: { x: -(b.y - a.y) / width, y: (b.x - a.x) / width } }] : [];
        });
        expect(found.length).toBeGreaterThan(0);
        const drilled = found.map(({ x, y, into }) => {
          const step = 0.05;
          let depth = step / 2;
          while (holds(outline, x + depth * into.x, y + depth * into.y)) depth += step;
          return depth;
        });
        expect(drilled.some((depth) => Math.abs(depth - seat!.wood) <= 0.05)).toBe(true);
        // Nothing of the section lies nearer to the wall than the frame's lowest point.
        expect(seat!.standoff).toBeGreaterThanOrEqual(0);
        expect(Math.abs(seat!.leanAngle)).toBeLessThanOrEqual(45);
      }),
      { numRuns: 60 },
    );
  });

  test("is none where the section stands on a knife's edge, and the plan says why", () => {
    const profile: Profile = {
      outline: [
        { x: 10, y: 0 },
        { x: 20, y: 20 },
        { x: 0, y: 20 },
      ],
      arrises: {},
    };
    const { hanging, hazards } = planOf({ profile });
    expect(hanging).toMatchObject({ possible: false, by: "wire", reason: "no-wall-surface" });
    expect(hazards.map(({ code }) => code)).toContain("no-hanger-seat");
  });

  test("takes a screw that leaves 3 mm of wood, or 1/8 in", () => {
    const fits = (screwDepth: number): unknown => hungOf({ hanging: { by: "two-hooks", screwDepth } }).seat!.screwFits;
    expect([fits(16.9), fits(17), fits(17.1), fits(25)]).toEqual([true, true, false, false]);
    const inches = (value: number): number => convertLength(value, "mm", "in");
    const { seat } = hungOf({
      unit: "in",
      profile: molding({ width: inches(40), thickness: inches(20) }),
      opening: { side: inches(300) },
      hanging: { by: "wire", screwDepth: inches(16.8) },
    });
    expect(seat!.screwFits).toBe(true);
    expect(seat!.deepest).toBeCloseTo(inches(20) - 1 / 8, 12);
    expect(hungOf({ profile: molding({ width: 40, thickness: 2 }) }).seat!.deepest).toBe(0);
  });
});

test("an outline that touches itself, behind whose back there is no wood to find, is refused", () => {
  const touching = [
    { x: 0, y: 0 },
    { x: 40, y: 0 },
    { x: 40, y: 20 },
    { x: 20, y: 0 },
    { x: 0, y: 20 },
  ];
  const brief = {
    sides: 6,
    opening: { side: 300 },
    profile: { outline: touching, arrises: {} },
    hanging: { by: "wire" },
  };
  expect(() => planFrame(brief as never)).toThrow("Expected `profile.outline` not to cross or touch itself");
});

describe("the wire", () => {
  test("runs between the fixings over a hook, which stays below the frame's top", () => {
    const { wire: strung, apart, fixings, below } = hungOf({ sides: 4, hanging: { by: "wire", wireAngle: 20 } });
    const [left, right] = fixings;
    const hook = { x: 0, y: right.point.y + strung!.rise };
    const half = (point: { x: number; y: number }): number => Math.hypot(point.x - hook.x, point.y - hook.y);
    expect(half(left.point) + half(right.point)).toBeCloseTo(strung!.length, 9);
    expect(Math.atan2(strung!.rise, apart / 2) * (180 / Math.PI)).toBeCloseTo(20, 10);
    expect(strung!.belowTop).toBeCloseTo(below - strung!.rise, 10);
    expect(strung!.belowTop).toBeGreaterThan(0);
  });

  test("is at 30 degrees where the brief does not say, and there is none on two hooks", () => {
    expect(hungOf({}).wire!.angle).toBe(30);
    expect(hungOf({ hanging: { by: "two-hooks" } }).wire).toBeNull();
  });

  test("that is steep has its hook above the frame", () => {
    expect(hungOf({ sides: 4, hanging: { by: "wire", wireAngle: 60 } }).wire!.belowTop).toBeLessThan(0);
  });
});

describe("the load", () => {
  const heavy = { species: { radial: 4, tangential: 8, specificGravity: 0.6 } } as const;

  test("is the mass at standard gravity, with what else hangs", () => {
    const { load } = hungOf({ ...heavy, hanging: { by: "two-hooks", extraMass: 1.5 } });
    const { mass } = planOf(heavy).materials;
    expect(load.mass).toBeCloseTo(mass.total! + 1.5, 12);
    expect(load.complete).toBe(true);
    // One kilogram weighs 9.80665 N at standard gravity (3rd General Conference on Weights and Measures, 1901).
    expect(load.weight! / load.mass!).toBeCloseTo(9.80665, 12);
    expect(load).toMatchObject({ share: 0.5, factor: 4 });
    expect(load.pull).toBeCloseTo(load.weight! / 2, 12);
    expect(load.strength).toBeCloseTo(2 * load.weight!, 12);
  });

  test("on a wire is in equilibrium: both halves lift the weight, and cancel sideways", () => {
    for (const wireAngle of [5, 20, 30, 45, 85]) {
      const { load, fixings, wire: strung } = hungOf({ ...heavy, hanging: { by: "wire", wireAngle } });
      const forces = fixings.map(({ point }) => {
        const along = { x: 0 - point.x, y: strung!.rise };
        const length = Math.hypot(along.x, along.y);
        return { x: (load.pull! * along.x) / length, y: (load.pull! * along.y) / length };
      });
      expect(forces[0]!.x + forces[1]!.x).toBeCloseTo(0, 9);
      expect(forces[0]!.y + forces[1]!.y).toBeCloseTo(load.weight!, 9);
    }
    expect(hungOf(heavy).load.share).toBe(1);
  });

  test("that is not all known says so, and is a least", () => {
    const contents = [{ name: "pane", thickness: 2, material: "glass" as const }];
    const { load } = hungOf({ profile: rabbeted, contents });
    expect(load.complete).toBe(false);
    expect(load.mass).toBeGreaterThan(0);
    expect(hungOf({}).load).toMatchObject({ mass: null, weight: null, pull: null, strength: null, share: 1 });
    expect(hungOf({ hanging: { by: "wire", extraMass: 2 } }).load).toMatchObject({ mass: 2, complete: false });
  });
});

describe("in general", () => {
  test("a frame that is not hung has no hanging", () => {
    expect(planFrame({ sides: 4, profile: plain, opening: { side: 300 } }).hanging).toBeNull();
  });

  test("of level measures alone the seat is not known", () => {
    const plan = planFrame({ sides: 4, measured: { levelWidth: 40 }, opening: { side: 300 }, hanging: { by: "wire" } });
    expect(plan.hanging).toMatchObject({ possible: true, seat: null });
  });

  test("a frame k times as large hangs k times as far apart by the same angles", () => {
    fc.assert(
      fc.property(briefs, fc.double({ min: 0.1, max: 10, noNaN: true }), (brief, k) => {
        const at = ({ x, y }: { x: number; y: number }): { x: number; y: number } => ({ x: k * x, y: k * y });
        const { profile } = brief;
        const larger: Profile = {
          outline: profile.outline.map(at),
          arrises: Object.fromEntries(Object.entries(profile.arrises).map(([name, point]) => [name, at(point)])),
        };
        const opening = { apothem: k * (brief.opening as { apothem: number }).apothem };
        const one = planFrame({ ...brief, hanging: wire }).hanging as HungFrame;
        const other = planFrame({ ...brief, profile: larger, opening, hanging: wire }).hanging as HungFrame;
        expect(other.fixings.map(({ side }) => side)).toEqual(one.fixings.map(({ side }) => side));
        expect(other.apart / one.apart / k).toBeCloseTo(1, 9);
        expect(other.seat!.leanAngle).toBeCloseTo(one.seat!.leanAngle, 9);
        expect(other.seat!.wood / one.seat!.wood / k).toBeCloseTo(1, 9);
      }),
    );
  });

  test("it survives JSON", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const { hanging } = planFrame({ ...brief, hanging: { by: "wire", screwDepth: 10, extraMass: 1 } });
        expect(throughJson(hanging)).toEqual(hanging);
      }),
    );
  });
});
