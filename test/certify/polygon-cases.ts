import type { Pose } from "miterwright/errors";
import {
  onePolygonMeasure,
  POLYGON_MEASURES,
  polygonCorners,
  regularPolygon,
  type PolygonMeasure,
} from "miterwright/polygon";
import { exactly } from "./exact.js";
import { space } from "../../src/precise/space.js";
import { derivePolygon } from "../../src/precise/polygon.js";
import type { Case, Comparison } from "./comparison.js";
import { someLength, someSides, type Random } from "./random.js";

const POSES: readonly Pose[] = ["side-down", "corner-down"];
const ANGLES = ["interiorAngle", "turn", "planMiter"] as const;

/** All measures and angles of a polygon. */
function polygonCase(sides: number, measure: PolygonMeasure, value: number): Case {
  return {
    input: { sides, [measure]: value },
    compare: (field) => {
      const got = regularPolygon({ sides, ...onePolygonMeasure(measure, value) });
      const want = derivePolygon(field, sides, measure, exactly(value));
      const measures = POLYGON_MEASURES.map((name): Comparison => ({
        quantity: `polygon ${name}`,
        got: got[name],
        want: want[name],
      }));
      const angles = ANGLES.map((name): Comparison => ({
        quantity: `polygon ${name}`,
        got: got[name],
        want: want[name],
        angle: true,
      }));
      const given: Comparison = {
        quantity: "polygon given measure",
        got: got[measure],
        want: want[measure],
        exact: true,
      };
      return [given, ...measures.filter(({ quantity }) => quantity !== `polygon ${measure}`), ...angles];
    },
  };
}
/** The corners of a polygon: at most twelve of them are looked at. */
function cornersCase(sides: number, apothem: number, pose: Pose): Case {
  return {
    input: { sides, apothem, pose },
    compare: (field) => {
      const { vec, scale, turn } = space(field);
      const got = polygonCorners({ sides, apothem }, pose);
      // Seen from the center, corner 0 lies half a side before the bottom (side-down) or there itself.
      const half = field.div(field.exact(180), field.exact(sides));
      const radius = field.div(field.exact(exactly(apothem)), field.sinCos(half)[1]);
      const step = Math.ceil(sides / 12);
      return Array.from({ length: Math.ceil(sides / step) }, (_, k) => k * step).flatMap((k): Comparison[] => {
        const halves = pose === "side-down" ? 2 * k - 1 : 2 * k;
        const angle = field.div(field.exact(180 * halves), field.exact(sides));
        const [x, y] = turn(scale(radius, vec(0, -1, 0)), angle);
        return [
          { quantity: "polygon corner x", got: got[k]!.x, want: x },
          { quantity: "polygon corner y", got: got[k]!.y, want: y },
        ];
      });
    },
  };
}

export function polygonGrid(): Case[] {
  const sides = [3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 16, 24, 48, 100, 1001, 99_999, 1_000_000];
  const polygons = sides.flatMap((n) =>
    POLYGON_MEASURES.flatMap((measure) => [1e-100, 0.1, 1, 1e100].map((v) => polygonCase(n, measure, v))),
  );
  const corners = sides.flatMap((n) => POSES.map((pose) => cornersCase(n, 123.4, pose)));
  return [...polygons, ...corners];
}
export function somePolygon(random: Random): Case {
  const measure = random.pick(POLYGON_MEASURES);
  const length = someLength(random);
  return polygonCase(someSides(random), measure, measure === "area" ? length * someLength(random) : length);
}
