import { expect, test } from "vitest";
import { dotProduct, viewFrom } from "../../docs/figures/space.js";

test("someone who looks at a corner from inside and from above sees up as up, outward as up and the ring run to the left", () => {
  const { toEye, project } = viewFrom(0, 30);
  expect(project([0, 0, 1]).y).toBeCloseTo(Math.cos(Math.PI / 6), 12);
  expect(project([0, 1, 0]).y).toBeCloseTo(Math.sin(Math.PI / 6), 12);
  expect(project([1, 0, 0])).toEqual({ x: expect.closeTo(-1, 12) as number, y: expect.closeTo(0, 12) as number });
  expect(dotProduct(toEye, [0, -1, 0])).toBeGreaterThan(0);
  expect(project(toEye)).toEqual({ x: expect.closeTo(0, 12) as number, y: expect.closeTo(0, 12) as number });
});
