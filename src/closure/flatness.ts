import { cross, dot, norm, scale, type Vector } from "../core/vector.js";
import { minus, plus, squareTo } from "./chain.js";

/** Points whose level scatter is this much narrower than long lie in a line, which every plane through it fits. */
const IN_LINE: number = 1e-12;

/**
 * Distance between the two planes that hold all points, parallel to the plane that fits them best by least squares of heights.
 */
export function outOfFlat(points: readonly Vector[], up: Vector): number {
  const center = points.reduce<Vector>((sum, point) => plus(sum, scale(point, 1 / points.length)), [0, 0, 0]);
  const side: Vector = Math.abs(up[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0];
  const square = squareTo(side, up);
  const x = scale(square, 1 / norm(square));
  const y = cross(up, x);
  const local = points.map((point) => {
    const offset = minus(point, center);
    return { x: dot(offset, x), y: dot(offset, y), z: dot(offset, up) };
  });
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0];
  for (const point of local) {
    xx += point.x * point.x;
    xy += point.x * point.y;
    yy += point.y * point.y;
    xz += point.x * point.z;
    yz += point.y * point.z;
  }
  const determinant = xx * yy - xy * xy;
  if (!(determinant > IN_LINE * (xx + yy) * (xx + yy))) return 0;
  const riseX = (xz * yy - yz * xy) / determinant;
  const riseY = (yz * xx - xz * xy) / determinant;
  const heights = local.map((point) => point.z - riseX * point.x - riseY * point.y);
  const steepness = Math.hypot(1, riseX, riseY);
  return (Math.max(...heights) - Math.min(...heights)) / steepness;
}
