import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Pose } from "miterwright/errors";
import { planPanel, simulatePanel, type PanelPlan } from "miterwright/panel";
import { polygonCorners } from "miterwright/polygon";

const POSES: readonly Pose[] = ["side-down", "corner-down"];
const COUNTS = Array.from({ length: 22 }, (_, index) => index + 3);

function plan(sides: number, pose: Pose = "side-down", chain: "both" | "one" = "both"): PanelPlan {
  return planPanel({ polygon: { sides, apothem: 120 }, pose, chain });
}

/** Corners of the panel itself, from the blank's lower left corner, found from the polygon alone. */
function planned({ panel, pose }: PanelPlan): { x: number; y: number }[] {
  const corners = polygonCorners(panel, pose);
  const left = Math.min(...corners.map((corner) => corner.x));
  const low = Math.min(...corners.map((corner) => corner.y));
  return corners.map((corner) => ({ x: corner.x - left, y: corner.y - low }));
}

/**
 * Direction of every edge of a piece, in degrees, without the slivers of the blank's own edges that wrong cuts leave between two sides.
 */
function directions(corners: readonly { x: number; y: number }[], least = 0): number[] {
  return corners.flatMap((corner, index) => {
    const next = corners[(index + 1) % corners.length]!;
    if (Math.hypot(next.x - corner.x, next.y - corner.y) < least) return [];
    return [(Math.atan2(next.y - corner.y, next.x - corner.x) * 180) / Math.PI];
  });
}

describe("cutting the planned way", () => {
  test.each(POSES.flatMap((pose) => COUNTS.map((sides) => [sides, pose] as const)))(
    "returns the panel of %d sides, %s, from both ends and from one",
    (sides, pose) => {
      for (const chain of ["both", "one"] as const) {
        const panelPlan = plan(sides, pose, chain);
        const cut = simulatePanel(panelPlan);
        const wanted = planned(panelPlan);
        expect(cut).toHaveLength(sides);
        for (const [index, corner] of wanted.entries()) {
          expect(cut[index]!.x).toBeCloseTo(corner.x, 8);
          expect(cut[index]!.y).toBeCloseTo(corner.y, 8);
        }
      }
    },
  );

  test("uses no side before it exists, and makes every side once", () => {
    for (const pose of POSES) {
      for (const sides of COUNTS) {
        const { cuts, existing } = plan(sides, pose);
        const there = new Set(existing);
        for (const cut of cuts) {
          expect(there.has(cut.against)).toBe(true);
          expect(there.has(cut.side)).toBe(false);
          there.add(cut.side);
        }
        expect(there.size).toBe(sides);
      }
    }
  });
});

describe("the setting and the number of cuts, side-down", () => {
  test.each(COUNTS)("of %d sides", (sides) => {
    const { setting, cuts } = plan(sides);
    if (sides === 4) {
      expect([setting, cuts.length]).toEqual([0, 0]);
    } else if (sides % 2 === 1) {
      expect(setting).toBeCloseTo(90 / sides, 12);
      expect(cuts).toHaveLength(sides - 1);
    } else if (sides % 4 === 2) {
      expect(setting).toBeCloseTo(180 / sides, 12);
      expect(cuts).toHaveLength(sides - 2);
    } else {
      expect(setting).toBeCloseTo(360 / sides, 12);
      expect(cuts).toHaveLength(sides - 4);
    }
  });

  test("no other single setting that reaches every side is smaller", () => {
    for (const sides of COUNTS) {
      if (sides === 4) continue;
      const { setting, existing } = plan(sides);
      for (let step = 1; step < sides / 2; step += 1) {
        const reached = new Set(existing);
        for (let round = 0; round < sides; round += 1) {
          for (const side of [...reached]) reached.add((side + step) % sides).add((side + sides - step) % sides);
        }
        if (reached.size === sides) expect(Math.abs((360 * step) / sides - 90)).toBeGreaterThan(setting - 1e-9);
      }
    }
  });

  test("two steps with the same setting have chains of the same length", () => {
    /** How deep the chain of a step goes, side by side. */
    const depthOf = (sides: number, existing: readonly number[], step: number): number => {
      let reached = new Set(existing);
      for (let depth = 0; ; depth += 1) {
        if (reached.size === sides) return depth;
        const next = new Set(reached);
        for (const side of reached) next.add((side + step) % sides).add((side + sides - step) % sides);
        if (next.size === reached.size) return Infinity;
        reached = next;
      }
    };
    let ties = 0;
    for (let sides = 5; sides < 60; sides += 1) {
      const { existing, sidesOn, cuts } = plan(sides);
      const twin = sides / 2 - sidesOn;
      if (!Number.isInteger(twin) || twin < 1) continue;
      ties += 1;
      const deepest = Math.max(...cuts.map((cut) => cut.errorMultiple));
      expect([sidesOn, twin].map((step) => depthOf(sides, existing, step))).toEqual([deepest, deepest]);
    }
    expect(ties).toBeGreaterThan(20);
  });

  test("a seven-sided panel needs 12.857 degrees, six cuts, and two of its corners fall inside the blank (common practice, no printed source)", () => {
    const { setting, cuts, corners } = plan(7);
    expect(setting.toFixed(3)).toBe("12.857");
    expect(cuts).toHaveLength(6);
    expect(corners.filter((corner) => corner.inside)).toHaveLength(2);
  });

  test("a panel of 4k sides is cut side-down even where it is to hang corner-down", () => {
    expect(plan(8, "corner-down").pose).toBe("side-down");
    expect(plan(6, "corner-down").pose).toBe("corner-down");
  });
});

describe("an error of the setting", () => {
  test("counts as often as the cut is deep, in the direction of every side", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 24 }),
        fc.double({ min: -0.05, max: 0.05, noNaN: true }),
        fc.constantFrom<"both" | "one">("both", "one"),
        (sides, error, chain) => {
          const panelPlan = plan(sides, "side-down", chain);
          const [right, wrong] = [
            directions(planned(panelPlan)),
            directions(simulatePanel(panelPlan, { settingError: error })),
          ];
          for (const { side, errorMultiple } of panelPlan.cuts) {
            const off = wrong.map((direction) => Math.abs(((direction - right[side]! + 540) % 360) - 180));
            expect(Math.min(...off)).toBeCloseTo(Math.abs(errorMultiple * error), 6);
          }
        },
      ),
    );
  });

  test("adds up to half as much when cut from both ends, for odd numbers of sides", () => {
    for (const sides of COUNTS.filter((count) => count % 2 === 1)) {
      const deepest = (chain: "both" | "one"): number =>
        Math.max(...plan(sides, "side-down", chain).cuts.map((cut) => cut.errorMultiple));
      expect(deepest("one")).toBe(sides - 1);
      expect(deepest("both")).toBe((sides - 1) / 2);
    }
  });
});

describe("corners", () => {
  test("are located by their distances from two edges of the blank", () => {
    for (const pose of POSES) {
      for (const sides of COUNTS) {
        const { blank, corners } = plan(sides, pose);
        for (const { point, fromSide, fromBase } of corners) {
          const x = fromSide.edge === "left" ? fromSide.distance : blank.width - fromSide.distance;
          const y = fromBase.edge === "bottom" ? fromBase.distance : blank.height - fromBase.distance;
          expect([x, y]).toEqual([expect.closeTo(point.x, 9), expect.closeTo(point.y, 9)]);
          expect(fromSide.distance).toBeLessThanOrEqual(blank.width / 2 + 1e-9);
          expect(fromBase.distance).toBeLessThanOrEqual(blank.height / 2 + 1e-9);
        }
      }
    }
  });

  test("inside the blank are those that no edge of it touches", () => {
    const inside = (sides: number): number => plan(sides).corners.filter((corner) => corner.inside).length;
    expect([3, 4, 5, 6, 7, 8, 9, 10, 12].map(inside)).toEqual([0, 0, 0, 0, 2, 0, 4, 4, 4]);
    // On a blank that is higher than wide too.
    const { blank, corners } = plan(6, "corner-down");
    expect(blank.height).toBeGreaterThan(blank.width);
    expect(corners.some((corner) => corner.inside)).toBe(false);
  });
});

describe("the blank and what is found on it", () => {
  const everyPlan = POSES.flatMap((pose) => COUNTS.map((sides) => plan(sides, pose)));

  test("holds the panel and no more, and the center is as far from every side as the panel's apothem", () => {
    for (const panelPlan of everyPlan) {
      const { blank, center, corners, panel } = panelPlan;
      const [xs, ys] = [corners.map(({ point }) => point.x), corners.map(({ point }) => point.y)];
      expect([Math.min(...xs), Math.min(...ys)]).toEqual([0, 0]);
      expect(Math.max(...xs)).toBeCloseTo(blank.width, 9);
      expect(Math.max(...ys)).toBeCloseTo(blank.height, 9);
      for (const [index, { point }] of corners.entries()) {
        const next = corners[(index + 1) % corners.length]!.point;
        const [dx, dy] = [next.x - point.x, next.y - point.y];
        const off = (dx * (center.y - point.y) - dy * (center.x - point.x)) / Math.hypot(dx, dy);
        expect(off).toBeCloseTo(panel.apothem, 9);
      }
    }
  });

  test("has the middle of every side that is cut, found from its nearer edges", () => {
    for (const { blank, corners, cuts } of everyPlan) {
      for (const [index, { step, side, middle }] of cuts.entries()) {
        expect(step).toBe(index + 1);
        const [a, b] = [corners[side]!.point, corners[(side + 1) % corners.length]!.point];
        expect(middle.point.x).toBeCloseTo((a.x + b.x) / 2, 9);
        expect(middle.point.y).toBeCloseTo((a.y + b.y) / 2, 9);
        expect(middle.fromSide.distance).toBeCloseTo(Math.min(middle.point.x, blank.width - middle.point.x), 9);
        expect(middle.fromBase.distance).toBeCloseTo(Math.min(middle.point.y, blank.height - middle.point.y), 9);
      }
    }
  });

  test("is measured from the left and from below where both edges are as near: the top corner of five sides", () => {
    const { blank, corners } = planPanel({ polygon: { sides: 5, apothem: 100 } });
    const { fromSide, fromBase } = corners[3]!;
    expect(fromSide.edge).toBe("left");
    expect(fromSide.distance).toBeCloseTo(blank.width / 2, 12);
    expect([fromBase.edge, fromBase.distance]).toEqual(["top", 0]);
    const half = planPanel({ polygon: { sides: 6, apothem: 100 } }).corners[2]!;
    expect([half.fromBase.edge, half.fromBase.distance]).toEqual(["bottom", 100]);
  });

  test("has the same sides and settings where nothing is said as where the usual is", () => {
    for (const sides of COUNTS) {
      const polygon = { sides, apothem: 120 };
      const usual = { clearance: 0, pose: "side-down", chain: "both" } as const;
      expect(planPanel({ polygon })).toEqual(planPanel({ polygon, ...usual }));
    }
  });

  test("swings the gauge closed where the sides enclose less than a right angle, else open", () => {
    for (const { cuts, sidesOn, panel, setting } of everyPlan) {
      for (const { swing, setting: own } of cuts) {
        const enclosed = 180 - (360 * sidesOn) / panel.sides;
        expect(own).toBe(setting);
        expect(swing === "closed" ? 90 - setting : 90 + setting).toBeCloseTo(enclosed, 9);
      }
    }
  });
});

describe("metamorphic laws", () => {
  test("scaling by a power of two scales the plan exactly", () => {
    const one = plan(9);
    const many = planPanel({ polygon: { sides: 9, apothem: 120 * 2 ** 40 } });
    expect(many.corners.map(({ point }) => point.x)).toEqual(one.corners.map(({ point }) => point.x * 2 ** 40));
    expect(many.cuts.map(({ side }) => side)).toEqual(one.cuts.map(({ side }) => side));
  });

  test("a panel is mirrored by its own middle: corner by corner, and cut by cut", () => {
    const { blank, corners, cuts } = plan(11);
    for (const { point } of corners) {
      expect(
        corners.some((other) => Math.hypot(blank.width - other.point.x - point.x, other.point.y - point.y) < 1e-9),
      ).toBe(true);
    }
    expect(cuts.filter((cut) => cut.up === "front")).toHaveLength(cuts.filter((cut) => cut.up === "back").length);
  });

  test("the clearance is kept at every side", () => {
    expect(planPanel({ polygon: { sides: 7, apothem: 120 }, clearance: 2 }).panel.apothem).toBe(118);
  });
});

test("a panel may have a thousand sides, odd or even", () => {
  for (const sides of [1000, 999]) {
    const { cuts, setting } = planPanel({ polygon: { sides, apothem: 1 } });
    expect(cuts).toHaveLength(sides - (sides % 2 === 0 ? 4 : 1));
    expect(setting).toBe((sides % 2 === 0 ? 360 : 90) / sides);
  }
});

test("a plan from JSON is cut the same way", () => {
  const panelPlan = plan(7);
  expect(simulatePanel(JSON.parse(JSON.stringify(panelPlan)) as PanelPlan)).toEqual(simulatePanel(panelPlan));
});

test.each([
  [{ polygon: { sides: 2, apothem: 5 } }, "Expected `polygon.sides` to be an integer from 3 to 1000, got 2 (number)"],
  [
    { polygon: { sides: 1_000_000, apothem: 5 } },
    "Expected `polygon.sides` to be an integer from 3 to 1000, got 1000000 (number)",
  ],
  [{}, "Expected `polygon` to be an object, got undefined"],
  [
    { polygon: { sides: 5, apothem: 5 }, clearance: -1 },
    "Expected `clearance` to be zero or a positive length (up to 1e100), got -1 (number)",
  ],
  [
    { polygon: { sides: 5, apothem: 5 }, clearance: 5 },
    "Expected `clearance` to be less than the opening's apothem, 5, got 5",
  ],
  [
    { polygon: { sides: 5, apothem: 10 / 3 }, clearance: 4 },
    "Expected `clearance` to be less than the opening's apothem, 3.33333333333, got 4",
  ],
  [
    { polygon: { sides: 5, apothem: 5 }, pose: "flat" },
    'Expected `pose` to be one of "side-down", "corner-down", got "flat" (string)',
  ],
  [
    { polygon: { sides: 5, apothem: 5 }, chain: "two" },
    'Expected `chain` to be one of "both", "one", got "two" (string)',
  ],
])("planPanel refuses %j", (options, message) => {
  expect(() => planPanel(options as never)).toThrow(message);
});

test("simulatePanel refuses what is no plan, an error out of range, and a cut from a side that does not exist yet", () => {
  expect(() => simulatePanel(null as never)).toThrow("Expected `plan` to be an object, got null");
  expect(() => simulatePanel(plan(5), { settingError: 30 })).toThrow(
    "Expected `settingError` to be degrees from -20 to 20, got 30 (number)",
  );
  const { cuts, ...rest } = plan(7);
  const backward = [...cuts].reverse().map((cut, index) => ({ ...cut, step: index + 1 }));
  expect(() => simulatePanel({ ...rest, cuts: backward })).toThrow(
    "Expected `plan.cuts[0].against` to be a side that exists by then, got 3",
  );
  expect(() => simulatePanel({ ...rest, cuts: cuts.slice(2) })).toThrow(
    "Expected `plan.cuts` to be an array of as many cuts as the blank lacks sides, got an array of 4",
  );
});
