import fc from "fast-check";
import {
  boardMeasure,
  equilibriumMoisture,
  miterMovement,
  panelRoom,
  seasonalMovement,
  thermalExpansion,
  woodDensity,
  woodNames,
  woodSpecies,
} from "miterwright/wood";
import { describe, expect, test } from "vitest";
import {
  anyClimate,
  anyGrain,
  anyMoisture,
  anyOwnWood,
  anyWidth,
  anyWoodName,
  dryMoisture,
  roomMoisture,
  seasonMoisture,
} from "../laws/wood.js";

describe("a board", () => {
  test("that keeps its moisture does not move", () => {
    fc.assert(
      fc.property(anyOwnWood, anyWidth, anyGrain, anyMoisture, (species, width, grain, moisture) => {
        const still = seasonalMovement({ species, width, grain, from: moisture, to: moisture });
        expect(still).toEqual({ change: 0, fraction: 0, width, from: moisture, to: moisture });
      }),
    );
  });

  test("does not move above fiber saturation", () => {
    fc.assert(
      fc.property(anyOwnWood, anyGrain, fc.tuple(anyMoisture, anyMoisture), (species, grain, [a, b]) => {
        const [from, to] = [Math.max(a, 40), Math.max(b, 40)];
        expect(seasonalMovement({ species, width: 100, grain, from, to }).change).toBe(0);
      }),
    );
  });

  test("swells with moisture and shrinks without it, the more the more", () => {
    fc.assert(
      fc.property(anyWoodName, anyGrain, fc.tuple(dryMoisture, dryMoisture, dryMoisture), (species, grain, three) => {
        const [from, low, high] = [three[0], ...three.slice(1).sort((a, b) => a - b)] as [number, number, number];
        const moved = (to: number): number => seasonalMovement({ species, width: 100, grain, from, to }).change;
        fc.pre(high - low > 1e-6);
        expect(moved(high)).toBeGreaterThan(moved(low));
        if (high > from + 1e-6) expect(moved(high)).toBeGreaterThan(0);
        if (low < from - 1e-6) expect(moved(low)).toBeLessThan(0);
      }),
    );
  });

  test("comes to the same by way of any moisture between, and back to where it was", () => {
    fc.assert(
      fc.property(
        anyOwnWood,
        anyWidth,
        fc.constantFrom<"flat-sawn" | "quarter-sawn">("flat-sawn", "quarter-sawn"),
        fc.tuple(seasonMoisture, seasonMoisture, seasonMoisture),
        (species, width, grain, [from, by, to]) => {
          const first = seasonalMovement({ species, width, grain, from, to: by });
          const second = seasonalMovement({ species, width: first.width, grain, from: by, to });
          const direct = seasonalMovement({ species, width, grain, from, to });
          const back = seasonalMovement({ species, width: direct.width, grain, from: to, to: from });
          expect(Math.abs(second.width / direct.width - 1)).toBeLessThan(1e-14);
          expect(Math.abs(back.width / width - 1)).toBeLessThan(1e-14);
        },
      ),
    );
  });

  test("moves by coefficient as by shrinkage from 10 percent on, and adds up exactly by steps of its moisture", () => {
    fc.assert(
      fc.property(anyOwnWood, roomMoisture, roomMoisture, (own, a, b) => {
        const { radial, tangential, fiberSaturation } = own;
        const species = { radial, tangential, fiberSaturation: fiberSaturation! };
        fc.pre(radial < 15 && tangential < 15);
        const move = (from: number, to: number, method?: "coefficient"): number =>
          seasonalMovement({ species, width: 1, grain: "flat-sawn", from, to, ...(method && { method }) }).fraction;
        expect(move(10, b, "coefficient")).toBeCloseTo(move(10, b), 15);
        expect(move(a, b, "coefficient")).toBeCloseTo(move(a, 10, "coefficient") + move(10, b, "coefficient"), 14);
      }),
    );
  });

  test("scales: twice the width moves twice as much, to the bit", () => {
    fc.assert(
      fc.property(anyWoodName, anyWidth, anyGrain, anyMoisture, anyMoisture, (species, width, grain, from, to) => {
        const one = seasonalMovement({ species, width, grain, from, to });
        const two = seasonalMovement({ species, width: 2 * width, grain, from, to });
        expect(two).toEqual({ ...one, width: 2 * one.width, change: 2 * one.change });
      }),
    );
  });

  test("moves between what it moves radially and tangentially", () => {
    fc.assert(
      fc.property(anyOwnWood, anyGrain, dryMoisture, dryMoisture, (species, grain, from, to) => {
        const moved = (how: typeof grain): number =>
          seasonalMovement({ species, width: 1, grain: how, from, to }).fraction;
        const ends = [moved("flat-sawn"), moved("quarter-sawn")].sort((a, b) => a - b);
        expect(moved(grain)).toBeGreaterThanOrEqual(ends[0]! - 1e-15);
        expect(moved(grain)).toBeLessThanOrEqual(ends[1]! + 1e-15);
        expect(moved(45)).toBe(moved("rift-sawn"));
      }),
    );
  });

  test("is taken the same by its climate as by the moisture that leads to", () => {
    fc.assert(
      fc.property(anyWoodName, anyClimate, anyClimate, (species, from, to) => {
        const board = { species, width: 100, grain: "flat-sawn" } as const;
        expect(seasonalMovement({ ...board, from, to })).toEqual(
          seasonalMovement({ ...board, from: equilibriumMoisture(from), to: equilibriumMoisture(to) }),
        );
      }),
    );
  });
});

test.each(woodNames())("%s moves less radially than tangentially, as every wood does", (name) => {
  const { radial, tangential, coefficients } = woodSpecies(name);
  expect(radial).toBeGreaterThan(0);
  expect(tangential).toBeGreaterThan(radial);
  expect(coefficients.tangential).toBeGreaterThan(coefficients.radial);
});

describe("equilibrium moisture", () => {
  test("rises with the humidity at every temperature, from none in dry air", () => {
    fc.assert(
      fc.property(anyClimate, fc.double({ min: 0.1, max: 50, noNaN: true }), ({ temperature, humidity }, more) => {
        fc.pre(humidity + more <= 100);
        const at = (percent: number): number => equilibriumMoisture({ temperature, humidity: percent });
        expect(at(humidity + more)).toBeGreaterThan(at(humidity));
        expect(at(0)).toBe(0);
        expect(at(100)).toBeLessThan(29.1);
      }),
    );
  });

  test("falls with the temperature from 5 degrees up, where the table of the handbook goes", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 100, noNaN: true }),
        fc.double({ min: 0.1, max: 40, noNaN: true }),
        fc.double({ min: 5, max: 95, noNaN: true }),
        (temperature, warmer, humidity) => {
          fc.pre(temperature + warmer <= 100);
          expect(equilibriumMoisture({ temperature: temperature + warmer, humidity })).toBeLessThan(
            equilibriumMoisture({ temperature, humidity }),
          );
        },
      ),
    );
  });
});

describe("a wood's density", () => {
  test("is its mass over its volume: both at 12 percent and at any other moisture the ovendry wood is the same", () => {
    fc.assert(
      fc.property(anyOwnWood, anyMoisture, fc.double({ min: 0.1, max: 1.2, noNaN: true }), (own, moisture, gravity) => {
        const species = { ...own, specificGravity: gravity };
        const stretch = (grain: "flat-sawn" | "quarter-sawn"): number =>
          seasonalMovement({ species, width: 1, grain, from: 12, to: moisture }).width;
        const volume = stretch("flat-sawn") * stretch("quarter-sawn");
        const ovendry = (woodDensity({ species, moisture }) * volume) / (1 + moisture / 100);
        expect(Math.abs(ovendry / (1000 * gravity) - 1)).toBeLessThan(1e-14);
      }),
    );
  });

  test("rises with moisture", () => {
    fc.assert(
      fc.property(dryMoisture, dryMoisture, (a, b) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        const [low, high] = [a, b].sort((x, y) => x - y) as [number, number];
        const at = (moisture: number): number => woodDensity({ species: "black cherry", moisture });
        expect(at(high)).toBeGreaterThan(at(low));
      }),
    );
  });
});

test("a pane is as long as it was and what it has grown, and shrinks as much as it grew", () => {
  fc.assert(
    fc.property(
      anyWidth,
      fc.integer({ min: -60, max: 200 }),
      fc.integer({ min: -60, max: 200 }),
      (length, from, to) => {
        const there = thermalExpansion({ sheet: "acrylic", length, from, to });
        expect(there.length).toBe(length + there.change);
        expect(Math.sign(there.change)).toBe(Math.sign(to - from));
        expect(there.change).toBeCloseTo(length * there.fraction, 12);
        expect(thermalExpansion({ sheet: "acrylic", length, from: to, to: from }).change).toBe(-there.change + 0);
      },
    ),
  );
});

test("so many boards are so many times as much lumber as one", () => {
  const one = boardMeasure({ thickness: 1, width: 6, length: 96, unit: "in" });
  const many = boardMeasure({ thickness: 1, width: 6, length: 96, unit: "in", count: 7 });
  expect(many).toEqual({ boardFeet: 7 * one.boardFeet, cubicMeters: 7 * one.cubicMeters });
});

test("what is given as JSON is taken the same, and results survive it", () => {
  const again = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
  for (const name of woodNames()) {
    const wood = woodSpecies(name);
    expect(again(wood)).toEqual(wood);
    for (const method of ["shrinkage", "coefficient"] as const) {
      const board = { width: 100, grain: 30, from: 7, to: 12, method };
      expect(seasonalMovement({ ...board, species: again(wood) })).toEqual(
        seasonalMovement({ ...board, species: name }),
      );
    }
  }
  const piece = { sides: 5, species: "red maple", grain: "rift-sawn", width: 40, from: 12, to: 7 } as const;
  const panel = {
    polygon: { sides: 5, apothem: 90 },
    species: "red maple",
    grain: "rift-sawn",
    from: 9,
    seasons: [6, 12],
  } as const;
  const pane = { sheet: "glass", length: 300, from: 20, to: 30 } as const;
  expect(again(miterMovement(again(piece)))).toEqual(miterMovement(piece));
  expect(again(panelRoom(again(panel)))).toEqual(panelRoom(panel));
  expect(again(thermalExpansion(again(pane)))).toEqual(thermalExpansion(pane));
});
