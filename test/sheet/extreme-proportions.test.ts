import fc from "fast-check";
import { planFrame, type Opening } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { shopSheet } from "miterwright/sheet";
import { expect, test } from "vitest";
import { formatsWith } from "../formats.js";

const formats = formatsWith({ length: (value) => value.toPrecision(6), angle: (degrees) => degrees.toFixed(1) });
const size = fc.constantFrom(1e-100, 1e-50, 1e-9, 1, 40, 1e9, 1e50, 1e100);
const share = fc.constantFrom(1e-9, 0.2, 0.9);
const openings: fc.Arbitrary<Opening> = fc.oneof(
  size.map((side) => ({ side })),
  fc.record({ width: size, height: size }).map((contains) => ({ contains })),
);
const briefs = fc.record({
  sides: fc.constantFrom(3, 4, 9, 40),
  slope: fc.constantFrom(0, 1e-9, 20, 89.9999, 90, -20, -45, -90),
  width: size,
  thickness: size,
  rabbet: fc.option(fc.record({ width: share, depth: share }), { nil: undefined }),
  opening: openings,
  layer: fc.option(size, { nil: undefined }),
  clearance: fc.oneof(fc.constant(0), size),
});

test("a plan of any proportions has a sheet", () => {
  let planned = 0;
  fc.assert(
    fc.property(briefs, ({ sides, slope, width, thickness, rabbet, opening, layer, clearance }) => {
      const plan = (): ReturnType<typeof planFrame> =>
        planFrame({
          sides,
          slope,
          profile: molding({
            width,
            thickness,
            ...(rabbet && { rabbet: { width: width * rabbet.width, depth: thickness * rabbet.depth } }),
          }),
          opening,
          clearance,
          ...(layer !== undefined && { contents: [{ name: "pane", thickness: layer, material: "glass" as const }] }),
        });
      let made: ReturnType<typeof plan>;
      try {
        made = plan();
      } catch {
        // Refused with a reason: other tests look at those.
        return;
      }
      planned++;
      expect(shopSheet(made, { formats })).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b|\[object/);
    }),
    { numRuns: 300 },
  );
  expect(planned).toBeGreaterThan(100);
});

test("a rabbet that is flat beyond rounding leaves a depth that is a number", () => {
  const profile = molding({ width: 1.5e9, thickness: 1.3e-9, rabbet: { width: 3e8, depth: 5e-10 } });
  const { contents } = planFrame({
    sides: 3,
    slope: -20,
    profile,
    opening: { side: 1e12 },
    contents: [{ name: "block", thickness: 1e50 }],
  });
  for (const value of [contents.stack!.left, contents.stack!.spare]) {
    expect(value === null || Number.isFinite(value)).toBe(true);
  }
});
