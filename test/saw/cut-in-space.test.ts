import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { EndCut } from "miterwright/miter";
import { molding } from "miterwright/profile";
import { cradleFor, cutSize, lieSection, placeCut, tableSaw } from "miterwright/saw";
import { crossed, planeFromWords, stickAxes, type Shop } from "../laws/saw.js";
import { rabbeted } from "../frame/briefs.js";
import { cutsOf, situations } from "./situations.js";

const dot = (a: Shop, b: Shop): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

describe("where the teeth leave the wood", () => {
  const FACING = { back: [0, -1], face: [0, 1], "sight-edge": [-1, 0], "outer-edge": [1, 0] } as const;

  test("is at the two surfaces that face the way the teeth go, and the kept wood has the told angle there", () => {
    fc.assert(
      fc.property(situations, ({ sides, slope, lay, kept, end, saw }) => {
        const placed = placeCut(cutsOf(sides, slope)[end], { lay, saw, kept });
        const words = { ...placed, fence: saw.fence, slope };
        const { along, across, through } = stickAxes(words);
        const facing = (surface: keyof typeof FACING): Shop => {
          const [x, y] = FACING[surface];
          return [0, 1, 2].map((axis) => x * across[axis]! + y * through[axis]!) as unknown as Shop;
        };
        // Both saws throw the wood's fibers down, and toward the fence.
        const teeth: readonly Shop[] = [
          [0, 0, -1],
          [0, saw.fence === "near" ? -1 : 1, 0],
        ];
        expect(placed.tearOut).toHaveLength(2);
        const plane = planeFromWords(words);
        const normal = [0, 1, 2].map(
          (axis) => plane.along * along[axis]! + plane.across * across[axis]! + plane.through * through[axis]!,
        ) as unknown as Shop;
        for (const [index, { surface, edgeAngle, at, shows }] of placed.tearOut.entries()) {
          // Propped, the stick is rolled by less than a quarter turn out of the way in which its surfaces face squarely.
          expect(dot(facing(surface), teeth[index]!)).toBeGreaterThan(
            Math.cos((Math.abs(slope) * Math.PI) / 180) - 1e-9,
          );
          expect(at).toBe(index === 1 ? "fence" : placed.cradled ? "cradle" : "table");
          expect(shows).toBe(surface !== "back");
          // The wood lies between two rays square to the arris, one in the surface and one in the cut, both into the wood.
          const edge = crossed(normal, facing(surface));
          const inSurface = crossed(facing(surface), edge);
          const inCut = crossed(edge, normal);
          const into = (ray: Shop, outward: Shop): Shop =>
            dot(ray, outward) < 0 ? ray : ([-ray[0], -ray[1], -ray[2]] as const);
          const [a, b] = [into(inSurface, normal), into(inCut, facing(surface))];
          const angle = Math.acos(dot(a, b) / Math.sqrt(dot(a, a) * dot(b, b)));
          expect(edgeAngle).toBeCloseTo((angle * 180) / Math.PI, 5);
        }
      }),
    );
  });

  test("does not depend on how long the normal is that a caller writes", () => {
    const cut = cutsOf(6, 30).end;
    const { along, across, through } = cut.plane;
    const half = { ...cut, plane: { along: along / 2, across: across / 2, through: through / 2 } };
    const options = { lay: "flat", saw: tableSaw(), kept: "left" } as const;
    expect(placeCut(half, options).tearOut[0]!.edgeAngle).toBeCloseTo(placeCut(cut, options).tearOut[0]!.edgeAngle, 12);
  });
});

describe("cutSize", () => {
  test("is what the blade's plane cuts out of the stick as it lies in space", () => {
    fc.assert(
      fc.property(situations, ({ sides, slope, lay, kept, end, saw }) => {
        const cut = cutsOf(sides, slope)[end];
        const placed = placeCut(cut, { lay, saw, kept });
        const axes = stickAxes({ ...placed, fence: saw.fence, slope });
        const { along, across, through } = cut.plane;
        const points = rabbeted.outline.map(({ x, y }): Shop => {
          const reach = -(across * x + through * y) / along;
          return [0, 1, 2].map(
            (axis) => reach * axes.along[axis]! + x * axes.across[axis]! + y * axes.through[axis]!,
          ) as unknown as Shop;
        });
        const radians = (degrees: number): number => (degrees * Math.PI) / 180;
        const m = radians(placed.miter.toward === "left" ? -placed.miter.degrees : placed.miter.degrees);
        const b = radians(placed.bevel.toward === "left" ? -placed.bevel.degrees : placed.bevel.degrees);
        const line: Shop = [Math.sin(m), Math.cos(m), 0];
        const blade: Shop = [Math.sin(b) * Math.cos(m), -Math.sin(b) * Math.sin(m), Math.cos(b)];
        const span = (direction: Shop): number => {
          const values = points.map((point) => dot(point, direction));
          return Math.max(...values) - Math.min(...values);
        };
        const size = cutSize(cut, rabbeted, { slope, lay });
        expect(size.height).toBeCloseTo(span([0, 0, 1]), 8);
        expect(size.line).toBeCloseTo(span(line), 6);
        expect(size.depth).toBeCloseTo(span(blade), 6);
      }),
    );
  });

  test("refuses what the lay and the cut refuse", () => {
    const { end } = cutsOf(6, 30);
    expect(() => cutSize(end, rabbeted, { slope: 91, lay: "flat" })).toThrow(
      "Expected `slope` to be degrees from -90 to 90, got 91 (number)",
    );
    expect(() => cutSize({} as never, rabbeted, { slope: 30, lay: "flat" })).toThrow(/^Expected `/);
  });

  test("a cut that does not come through the stick has no size and is refused", () => {
    const cut = (along: number, across: number, through: number): EndCut => ({
      miter: 0,
      bevel: 0,
      slope: 0,
      end: "end",
      plane: { along, across, through },
    });
    expect(() => cutSize(cut(1e-20, 0, -1), rabbeted, { slope: 0, lay: "face-down" })).toThrow(
      "Expected `cut` to cross the stick in this lay, but its bevel there is 90 degrees",
    );
    expect(() => cutSize(cut(1e-20, 0, 1), rabbeted, { slope: 0, lay: "face-down" })).toThrow(/its bevel there is -90/);
    expect(() => cutSize(cut(1e-20, 1, 0), rabbeted, { slope: 0, lay: "face-down" })).toThrow(/its miter there is 90/);
    // Lying flat the cut's own angles count.
    expect(() => cutSize({ ...cut(0.1, 0, 1), bevel: 90 }, rabbeted, { slope: 0, lay: "flat" })).toThrow(
      /its bevel there is 90/,
    );
    // A hair less steep, the blade goes through, if far along the stick.
    const grazing = cutSize(cut(1e-15, 0, 1), rabbeted, { slope: 0, lay: "face-down" });
    expect(Object.values(grazing).every((size) => Number.isFinite(size) && !Object.is(size, -0))).toBe(true);
  });
});

describe("a stick in its cradle", () => {
  test("stands as high as it does propped, on a base as high as its lip hangs below the thin end", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 89.5, noNaN: true }), fc.boolean(), (angle, tray) => {
        const slope = tray ? angle : -angle;
        const cradle = cradleFor(rabbeted, slope)!;
        expect(cradle.height).toBeCloseTo(lieSection(rabbeted, { slope, lay: "propped" }).height, 9);
        // The lip is 9 beyond the thin end along the back, and its lower arris 11 off it.
        const radians = (angle * Math.PI) / 180;
        const dip = tray ? 9 * Math.sin(radians) - 11 * Math.cos(radians) : 0;
        expect(cradle.base).toBeCloseTo(Math.max(0, dip), 9);
        expect(Math.min(...cradle.stick.map(({ y }) => y)) + cradle.base).toBeCloseTo(0, 9);
        expect(cradle.height).toBeGreaterThanOrEqual(cradle.base + cradle.rise - 1e-9);
      }),
    );
  });

  test("rests with its whole back on the wedge's top", () => {
    for (const slope of [35, -35]) {
      const { stick, top, angle } = cradleFor(molding({ width: 40, thickness: 20 }), slope)!;
      const [cosine, sine] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
      const onTop = stick.filter(({ x, y }) => Math.abs(y * cosine - x * sine) < 1e-9).map(({ x }) => x / cosine);
      expect(onTop).toHaveLength(2);
      expect(Math.min(...onTop)).toBeCloseTo(0, 12);
      expect(Math.max(...onTop)).toBeCloseTo(top, 12);
    }
  });
});
