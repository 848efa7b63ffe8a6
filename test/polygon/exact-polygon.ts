import type { Pose } from "miterwright";
import type { PolygonMeasure } from "miterwright/polygon";
import { D, PI, type Exact } from "../exact.js";

/** Point k of n on the unit circle, starting at the angle 0. */
function onCircle(k: number, n: number): readonly [Exact, Exact] {
  const angle = PI.times(2).times(k).div(n);
  return [angle.cos(), angle.sin()];
}

const distance = (a: readonly [Exact, Exact], b: readonly [Exact, Exact]): Exact =>
  a[0].minus(b[0]).pow(2).plus(a[1].minus(b[1]).pow(2)).sqrt();

/** All measures of the polygon whose corners lie on the unit circle, found from the corners as points. */
function unitMeasures(n: number): Record<PolygonMeasure, Exact> {
  const [first, second] = [onCircle(0, n), onCircle(1, n)];
  const side = distance(first, second);
  const farthest = onCircle(Math.floor((n + 1) / 2), n);
  const fromLine = (point: readonly [Exact, Exact]): Exact => {
    const [dx, dy] = [second[0].minus(first[0]), second[1].minus(first[1])];
    return dx
      .times(point[1].minus(first[1]))
      .minus(dy.times(point[0].minus(first[0])))
      .div(side);
  };
  const apothem = fromLine([new D(0), new D(0)]);
  return {
    side,
    apothem,
    circumradius: new D(1),
    acrossFlats: fromLine(farthest),
    acrossCorners: distance(first, onCircle(Math.floor(n / 2), n)),
    perimeter: side.times(n),
    area: side.times(apothem).times(n).div(2),
  };
}

const known = new Map<number, Record<PolygonMeasure, Exact>>();

/** All measures of the polygon that has one, exactly. */
export function exactPolygon(n: number, measure: PolygonMeasure, value: Exact): Record<PolygonMeasure, Exact> {
  const unit = known.get(n) ?? unitMeasures(n);
  known.set(n, unit);
  const factor = measure === "area" ? value.div(unit.area).sqrt() : value.div(unit[measure]);
  return {
    side: unit.side.times(factor),
    apothem: unit.apothem.times(factor),
    circumradius: factor,
    acrossFlats: unit.acrossFlats.times(factor),
    acrossCorners: unit.acrossCorners.times(factor),
    perimeter: unit.perimeter.times(factor),
    area: unit.area.times(factor.pow(2)),
  };
}

/** The direction that lies so many parts past the x axis, of which n make a quarter turn, as a unit vector. */
export function exactDirection(parts: Exact | number, n: number): { readonly x: Exact; readonly y: Exact } {
  const angle = PI.times(parts).div(2 * n);
  return { x: angle.cos(), y: angle.sin() };
}

/**
 * The smallest polygon of a pose around an upright rectangle on the polygon's upright axis: every pair of a side that
 * faces up and one that faces down bounds its apothem from below, and the best pair is reached. Nothing is assumed
 * about which sides those are; doubles only tell which pairs are not even near.
 */
export function exactSnug(
  n: number,
  pose: Pose,
  width: Exact,
  height: Exact,
): { readonly apothem: Exact; readonly up: Exact; readonly terms: Exact } {
  const sides = sidesOf(n, pose).map(({ x, y }) => {
    const support = x.abs().times(width).plus(y.abs().times(height)).div(2);
    return { x, y, support, rough: { y: y.toNumber(), support: support.toNumber() } };
  });
  const pairs = sides.flatMap((above) =>
    sides.flatMap((below) => {
      const [up, down] = [above.rough, below.rough];
      if (up.y < -1e-30 || down.y > 1e-30) return [];
      const level = up.y < 1e-30 && down.y > -1e-30;
      const rough = level ? up.support : (up.y * down.support - down.y * up.support) / (up.y - down.y);
      return [{ above, below, level, rough }];
    }),
  );
  const most = pairs.reduce((greatest, { rough }) => Math.max(greatest, rough), 0);
  let best = { apothem: new D(0), up: new D(0), terms: new D(0) };
  for (const { above, below, level, rough } of pairs) {
    if (rough < most * (1 - 1e-12)) continue;
    const whole = above.y.minus(below.y);
    const apothem = level ? above.support : above.y.times(below.support).minus(below.y.times(above.support)).div(whole);
    if (apothem.lte(best.apothem)) continue;
    const across = level ? new D(0) : below.x.abs().minus(above.x.abs()).times(width).div(2).div(whole);
    const upright = level ? new D(0) : below.y.abs().minus(above.y.abs()).times(height).div(2).div(whole);
    best = { apothem, up: across.plus(upright), terms: across.abs().plus(upright.abs()) };
  }
  return best;
}

const knownSides = new Map<string, readonly { readonly x: Exact; readonly y: Exact }[]>();

/** The normals of all sides of a polygon. */
function sidesOf(n: number, pose: Pose): readonly { readonly x: Exact; readonly y: Exact }[] {
  const key = `${n} ${pose}`;
  const sides =
    knownSides.get(key) ??
    Array.from({ length: n }, (_, k) => exactDirection(4 * k - n + (pose === "side-down" ? 0 : 2), n));
  knownSides.set(key, sides);
  return sides;
}
