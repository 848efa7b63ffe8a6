import fc from "fast-check";
import type { Point } from "miterwright";
import { polygonCorners } from "miterwright/polygon";
import { type PanelRoom, panelRoom, seasonalMovement, thermalExpansion } from "miterwright/wood";
import { describe, expect, test } from "vitest";
import { seasonMoisture, anyOwnWood, anyWidth, strayFromSide } from "../laws/wood.js";

const anyDirection = fc.oneof(fc.constantFrom(0, 30, 45, 90, -90), fc.double({ min: -360, max: 360, noNaN: true }));

/** Corners of an upright rectangle about its center, counter-clockwise from the lower left. */
function boxCorners(width: number, height: number): Point[] {
  return [
    { x: -width / 2, y: -height / 2 },
    { x: width / 2, y: -height / 2 },
    { x: width / 2, y: height / 2 },
    { x: -width / 2, y: height / 2 },
  ];
}

function expectRoom(room: PanelRoom, corners: readonly Point[], direction: number, fractions: readonly number[]): void {
  const size = Math.max(...corners.map(({ x, y }) => Math.hypot(x, y)));
  expect(room.sides.map(({ side }) => side)).toEqual(corners.map((_, index) => index));
  for (const { side, room: grows, retreat } of room.sides) {
    const strays = fractions.map((fraction) => strayFromSide(corners, side, direction, fraction));
    expect(Math.abs(grows - Math.max(...strays.map(({ beyond }) => beyond)))).toBeLessThan(size * 1e-13);
    expect(Math.abs(retreat - Math.max(...strays.map(({ behind }) => behind)))).toBeLessThan(size * 1e-13);
  }
  expect(room.room).toBe(Math.max(...room.sides.map((side) => side.room)));
  expect(room.retreat).toBe(Math.max(...room.sides.map((side) => side.retreat)));
}

describe("a solid panel whose points are moved one by one", () => {
  test("a regular polygon reaches as far beyond its sides as it is said to need", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 16 }),
        anyWidth,
        anyOwnWood,
        anyDirection,
        seasonMoisture,
        fc.array(seasonMoisture, { minLength: 1, maxLength: 4 }),
        (sides, apothem, species, grainDirection, from, seasons) => {
          const wood = { species, grain: "flat-sawn", from } as const;
          const fractions = seasons.map((to) => seasonalMovement({ ...wood, width: 1, to }).fraction);
          const polygon = { sides, apothem };
          const room = panelRoom({ polygon, ...wood, grainDirection, seasons });
          expectRoom(room, polygonCorners(polygon), grainDirection, fractions);
        },
      ),
    );
  });

  test("so does a rectangle", () => {
    fc.assert(
      fc.property(
        anyWidth,
        anyWidth,
        anyOwnWood,
        anyDirection,
        fc.array(seasonMoisture, { minLength: 1, maxLength: 4 }),
        (width, height, species, grainDirection, seasons) => {
          const wood = { species, grain: "quarter-sawn", from: 9 } as const;
          const fractions = seasons.map((to) => seasonalMovement({ ...wood, width: 1, to }).fraction);
          const room = panelRoom({ box: { width, height }, ...wood, grainDirection, seasons });
          expectRoom(room, boxCorners(width, height), grainDirection, fractions);
        },
      ),
    );
  });
});

describe("a panel", () => {
  const wood = { species: "white oak", grain: "flat-sawn", from: 8 } as const;

  test("with its grain along two sides needs half of its movement there, and nothing at the others", () => {
    const { change } = seasonalMovement({ ...wood, width: 400, to: 12 });
    const { sides, retreat } = panelRoom({ box: { width: 600, height: 400 }, ...wood, seasons: [12] });
    expect(sides.map(({ room }) => room)).toEqual([change / 2, 0, change / 2, 0]);
    expect(retreat).toBe(0);
  });

  test("is the same upside down, and with its grain the other way", () => {
    const at = (grainDirection: number): PanelRoom =>
      panelRoom({ polygon: { sides: 6, apothem: 80 }, ...wood, grainDirection, seasons: [6, 12] });
    expect(at(200)).toEqual(at(20));
    // Turned by one side, the sides change places.
    const [here, there] = [at(20).sides, at(80).sides];
    for (const [index, { room, retreat }] of here.entries()) {
      expect(there[(index + 1) % 6]!.room).toBeCloseTo(room, 12);
      expect(there[(index + 1) % 6]!.retreat).toBeCloseTo(retreat, 12);
    }
  });

  test("needs nothing where no season differs from when it was fitted", () => {
    const { room, retreat } = panelRoom({ polygon: { sides: 5, apothem: 80 }, ...wood, seasons: [8, 8] });
    expect([room, retreat]).toEqual([0, 0]);
  });

  test("takes more seasons than a call takes arguments", () => {
    const seasons = Array.from({ length: 200_000 }, (_, index) => 6 + (index % 7));
    expect(panelRoom({ box: { width: 600, height: 400 }, ...wood, seasons })).toEqual(
      panelRoom({ box: { width: 600, height: 400 }, ...wood, seasons: [6, 12] }),
    );
  });
});

test("a sheet grows by its expansion at every side, whatever way it is turned", () => {
  const { change } = thermalExpansion({ sheet: "acrylic", length: 250, from: 20, to: 35 });
  const pane = { sheet: "acrylic", from: 20, seasons: [35, 5, 30] } as const;
  for (const { room, retreat } of panelRoom({ polygon: { sides: 7, apothem: 250 }, ...pane }).sides) {
    expect(room).toBeCloseTo(change, 12);
    expect(retreat).toBeCloseTo(change, 12);
  }
  const { sides } = panelRoom({ box: { width: 500, height: 1000 }, ...pane });
  expect(sides.map(({ room }) => room)).toEqual([2 * change, change, 2 * change, change]);
});
