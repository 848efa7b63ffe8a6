import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { miterSaw, placeCut, tableSaw, type Hand } from "miterwright/saw";
import { molding, type Profile } from "miterwright/profile";
import type { Lay } from "miterwright/miter";
import { cutsOf } from "./situations.js";

/** The angle of the wood at one of the two surfaces through which the teeth leave. */
function angleAt(
  surface: string,
  situation: { sides: number; slope: number; lay: Lay; profile?: Profile; kept?: Hand },
): number {
  const { sides, slope, lay, profile, kept = "left" } = situation;
  const { start, end } = cutsOf(sides, slope);
  for (const cut of [start, end]) {
    const { tearOut } = placeCut(cut, { lay, saw: tableSaw(), kept, profile });
    const found = tearOut.find((leaving) => leaving.surface === surface);
    if (found !== undefined) return found.edgeAngle;
  }
  throw new Error(`no tear-out at the ${surface}`);
}

describe("the angle of the wood where the teeth leave", () => {
  test("is half the corner's angle at an edge that is plumb in the frame: 60 degrees for six sides made for 45, not 69.3", () => {
    const profile = molding({ width: 60, thickness: 20, madeFor: { slope: 45, inner: true } });
    const plumb = { sides: 6, slope: 45, lay: "flat" as const };
    // A regular hexagon's inside angle is 120 degrees, and a plumb joint halves it: Euclid, Elements, IV.15 and its porism.
    expect(angleAt("outer-edge", { ...plumb, profile })).toBeCloseTo(60, 10);
    expect(angleAt("sight-edge", { ...plumb, profile })).toBeCloseTo(120, 10);
    // Square edges stand at 45 degrees to a plumb one, and there the angle is another.
    expect(angleAt("outer-edge", { ...plumb, profile: molding({ width: 60, thickness: 20 }) })).toBeCloseTo(69.295, 3);
    expect(angleAt("outer-edge", plumb)).toBeCloseTo(69.295, 3);
  });

  test("is half the corner's angle at every plumb outer edge, and half of what is left at a plumb sight edge", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 30 }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.constantFrom<Lay>("flat", "face-down", "propped"),
        fc.constantFrom<Hand>("left", "right"),
        (sides, slope, lay, kept) => {
          const profile = molding({ width: 200, thickness: 20, madeFor: { slope, inner: true } });
          const half = 90 - 180 / sides;
          expect(angleAt("outer-edge", { sides, slope, lay, profile, kept })).toBeCloseTo(half, 9);
          expect(angleAt("sight-edge", { sides, slope, lay, profile, kept })).toBeCloseTo(180 - half, 9);
        },
      ),
    );
  });

  test("is that of square edges where the edges are square", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 30 }),
        fc.double({ min: -89, max: 89, noNaN: true }),
        fc.constantFrom<Lay>("flat", "face-down", "sight-edge-down", "outer-edge-down"),
        fc.constantFrom("back", "face", "sight-edge", "outer-edge"),
        (sides, slope, lay, surface) => {
          const profile = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
          const known = (): number => angleAt(surface, { sides, slope, lay, profile });
          let without: number;
          try {
            without = angleAt(surface, { sides, slope, lay });
          } catch {
            // That surface neither lies down nor comes to the fence in this lay.
            expect(known).toThrow(/^no tear-out/);
            return;
          }
          expect(known()).toBeCloseTo(without, 9);
        },
      ),
    );
  });

  test("is the sharper one where two surfaces meet at the point that faces the fence", () => {
    // A diamond-shaped bar: both of its lower surfaces face down alike, and the miter makes one of them sharper.
    const points = [
      { x: 0, y: 10 },
      { x: 20, y: 0 },
      { x: 40, y: 10 },
      { x: 20, y: 20 },
    ];
    const profile: Profile = { outline: points, arrises: {} };
    const { end } = cutsOf(4, 0);
    const { tearOut } = placeCut(end, { lay: "flat", saw: tableSaw(), kept: "left", profile });
    // Between the plane x = -z at 45 degrees and a surface that rises outward by 1 in 2: cos = 1 / sqrt(2) * 1 / sqrt(5).
    const sharp = (Math.acos(1 / Math.sqrt(10)) * 180) / Math.PI;
    expect(tearOut.map(({ edgeAngle }) => edgeAngle)[0]).toBeCloseTo(Math.min(sharp, 180 - sharp), 10);
  });
});

describe("the side that shows", () => {
  const { end } = cutsOf(6, 30);
  const shown = (options: { lay: Lay; shows?: "face" | "back" }): [string, boolean][] =>
    placeCut(end, { saw: miterSaw(), kept: "left", ...options }).tearOut.map(({ surface, shows }) => [surface, shows]);

  test("is the face unless it is said to be the back, and edges always show", () => {
    expect(shown({ lay: "flat" })).toEqual([
      ["back", false],
      ["sight-edge", true],
    ]);
    expect(shown({ lay: "face-down", shows: "face" })[0]).toEqual(["face", true]);
    expect(shown({ lay: "flat", shows: "back" })).toEqual([
      ["back", true],
      ["sight-edge", true],
    ]);
    expect(shown({ lay: "face-down", shows: "back" })[0]).toEqual(["face", false]);
  });

  test("is one of two", () => {
    expect(() => shown({ lay: "flat", shows: "edge" as never })).toThrow(
      'Expected `shows` to be one of "face", "back", got "edge" (string)',
    );
  });
});

test("a stick that lies on a surface of its own needs no cradle, though it is tilted", () => {
  const { end } = cutsOf(6, 25);
  const profile = molding({ width: 60, thickness: 50, madeFor: { slope: 25, back: true } });
  const placed = placeCut(end, { lay: "propped", saw: tableSaw(), kept: "left", profile });
  expect(placed).toMatchObject({ down: "back", cradled: false });
  expect(placed.tearOut[0]).toMatchObject({ surface: "back", at: "table" });
  // Upright and level surfaces meet a plumb cut squarely.
  expect(placed.tearOut[0]!.edgeAngle).toBeCloseTo(90, 10);
  expect(placeCut(end, { lay: "propped", saw: tableSaw(), kept: "left" }).cradled).toBe(true);
});
