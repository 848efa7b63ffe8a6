import fc from "fast-check";
import { expect, test } from "vitest";
import { planPanel } from "miterwright/panel";
import { workAtGauge } from "../../src/panel/work-at-gauge.js";

/** All points with normal . point <= offset belong to a half plane. */
interface HalfPlane {
  readonly x: number;
  readonly y: number;
  readonly offset: number;
}

/** The corners of what lies in all half planes: every crossing of two lines that no other cuts off. */
function cornersOf(planes: readonly HalfPlane[], near: number): { x: number; y: number }[] {
  return planes.flatMap((a, index) =>
    planes.slice(index + 1).flatMap((b) => {
      const cross = a.x * b.y - a.y * b.x;
      if (Math.abs(cross) < 1e-6) return [];
      const point = { x: (a.offset * b.y - b.offset * a.y) / cross, y: (a.x * b.offset - b.x * a.offset) / cross };
      return planes.every((one) => one.x * point.x + one.y * point.y <= one.offset + near) ? [point] : [];
    }),
  );
}

test("the work at the gauge is the blank less the sides cut by then, seen from the side at the fence", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 3, max: 14 }),
      fc.constantFrom("side-down" as const, "corner-down" as const),
      fc.double({ min: 50, max: 500, noNaN: true }),
      (sides, pose, apothem) => {
        const plan = planPanel({ polygon: { sides, apothem }, pose });
        const { width, height } = plan.blank;
        const near = 1e-7 * (width + height);
        const sidePlane = (side: number): HalfPlane => {
          const [from, to] = [plan.corners[side]!.point, plan.corners[(side + 1) % sides]!.point];
          const length = Math.hypot(to.x - from.x, to.y - from.y);
          const normal = { x: (to.y - from.y) / length, y: (from.x - to.x) / length };
          return { ...normal, offset: normal.x * from.x + normal.y * from.y };
        };
        const planes: HalfPlane[] = [
          { x: -1, y: 0, offset: 0 },
          { x: 1, y: 0, offset: width },
          { x: 0, y: -1, offset: 0 },
          { x: 0, y: 1, offset: height },
        ];
        const work = workAtGauge(plan);
        expect(work).toHaveLength(plan.cuts.length);
        for (const [index, cut] of plan.cuts.entries()) {
          const fence = sidePlane(cut.against);
          const corners = cornersOf(planes, near);
          const depths = corners.map(({ x, y }) => fence.offset - fence.x * x - fence.y * y);
          const bearing = corners.filter((_, corner) => Math.abs(depths[corner]!) < near);
          const along = bearing.map(({ x, y }) => x * fence.y - y * fence.x);
          expect(work[index]!.depth).toBeCloseTo(Math.max(...depths), 5);
          expect(work[index]!.bearing).toBeCloseTo(Math.max(...along) - Math.min(...along), 5);
          planes.push(sidePlane(cut.side));
        }
      },
    ),
  );
});
