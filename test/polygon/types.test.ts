import type { Box, Point } from "miterwright";
import {
  onePolygonMeasure,
  offsetPolygon,
  polygonAround,
  polygonCorners,
  polygonExtent,
  type PolygonLike,
  type OnePolygonMeasure,
  polygonWithin,
  rectangleWithin,
  type RegularPolygon,
  regularPolygon,
} from "miterwright/polygon";
import { expect, expectTypeOf, test } from "vitest";

test("wrong calls do not compile", () => {
  const wrong = [
    // @ts-expect-error two measures
    () => regularPolygon({ sides: 8, side: 1, apothem: 2 }),
    // @ts-expect-error no measure
    () => regularPolygon({ sides: 8 }),
    // @ts-expect-error not a measure
    () => regularPolygon({ sides: 8, width: 1 }),
    // @ts-expect-error sides missing
    () => regularPolygon({ side: 1 }),
    // @ts-expect-error a measure nobody knows
    () => onePolygonMeasure("radius", 1),
    // @ts-expect-error a pose and a free rotation
    () => polygonAround({ sides: 8, width: 1, height: 1, pose: "side-down", rotation: "free" }),
    // @ts-expect-error no limit at all
    () => polygonWithin({ sides: 8 }),
    // @ts-expect-error a pose nobody knows
    () => rectangleWithin({ sides: 8, apothem: 1 }, { pose: "upright" }),
    // @ts-expect-error no apothem
    () => offsetPolygon({ sides: 8, side: 1 }, 2),
  ];
  for (const call of wrong) expect(call).toThrow(RangeError);
});

test("results have the types they are told to have", () => {
  const polygon = regularPolygon({ sides: 8, side: 1 });
  expectTypeOf(polygon).toEqualTypeOf<RegularPolygon>();
  expectTypeOf(polygon).toExtend<PolygonLike>();
  expectTypeOf(onePolygonMeasure("side", 1)).toEqualTypeOf<OnePolygonMeasure>();
  expectTypeOf(regularPolygon({ sides: 8, ...onePolygonMeasure("area", 1) })).toEqualTypeOf<RegularPolygon>();
  expectTypeOf(polygonCorners(polygon)).toEqualTypeOf<Point[]>();
  expectTypeOf(polygonExtent(polygon, "corner-down")).toEqualTypeOf<Box>();
  expectTypeOf(rectangleWithin(polygon)).toExtend<Box>();
  expectTypeOf(polygonWithin({ sides: 3, height: 2 }).polygon).toEqualTypeOf<RegularPolygon>();
  expectTypeOf(polygonAround({ sides: 3, width: 1, height: 2 }).center).toEqualTypeOf<Point>();
  // Every field is for reading only.
  // @ts-expect-error assigned to
  polygon.side = 2;
});
