import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planPanel, simulatePanel } from "miterwright/panel";
import { HARD_PANELS } from "./hard-cases.js";

describe.each(HARD_PANELS)("$why", ({ options, cuts }) => {
  test("is planned, and cut in the simulation into the panel", () => {
    const plan = planPanel(options);
    expect(plan.cuts).toHaveLength(cuts);
    const size = plan.blank.width + plan.blank.height;
    const corners = simulatePanel(plan);
    expect(corners).toHaveLength(plan.panel.sides);
    for (const [index, corner] of corners.entries()) {
      const wanted = plan.corners[index]!.point;
      expect(Math.hypot(corner.x - wanted.x, corner.y - wanted.y)).toBeLessThan(size * 1e-9);
    }
  });
});

describe("for any number of sides", () => {
  const counts = fc.integer({ min: 3, max: 60 });
  const poses = fc.constantFrom("side-down" as const, "corner-down" as const);

  test("scaling scales the plan, by powers of two to the last bit", () => {
    fc.assert(
      fc.property(counts, poses, fc.integer({ min: -100, max: 100 }), (sides, pose, exponent) => {
        const one = planPanel({ polygon: { sides, apothem: 3 }, pose });
        const many = planPanel({ polygon: { sides, apothem: 3 * 2 ** exponent }, pose });
        expect(many.corners.map(({ point }) => point)).toEqual(
          one.corners.map(({ point }) => ({ x: point.x * 2 ** exponent, y: point.y * 2 ** exponent })),
        );
        expect(many.setting).toBe(one.setting);
      }),
    );
  });

  test("the plan is its own mirror image: side k and side -k are cut alike, one with the back up", () => {
    fc.assert(
      fc.property(counts, (sides) => {
        const { cuts } = planPanel({ polygon: { sides, apothem: 3 } });
        for (const cut of cuts) {
          const twin = cuts.find(({ side }) => side === (sides - cut.side) % sides)!;
          expect(twin.errorMultiple).toBe(cut.errorMultiple);
        }
      }),
    );
  });

  test("renumbering the sides from another one turns the panel, and each side keeps its neighbors' distance to the fence side", () => {
    fc.assert(
      fc.property(counts, poses, (sides, pose) => {
        const { cuts, sidesOn } = planPanel({ polygon: { sides, apothem: 3 }, pose });
        for (const { side, against, up } of cuts) {
          const on = (side - against + sides) % sides;
          expect(on).toBe(up === "front" ? sidesOn : sides - sidesOn);
        }
      }),
    );
  });
});
