import fc from "fast-check";
import { boardMeasure, equilibriumMoisture, miterMovement, seasonalMovement, sheetMass } from "miterwright/wood";
import { describe, expect, test } from "vitest";
import { D, exact, type Exact, PI, ulps } from "../exact.js";
import { anyClimate, seasonMoisture, movingWood, anyWidth } from "../laws/wood.js";

/** Coefficients of the equilibrium equation by powers of the temperature, as printed. */
interface Scale {
  readonly w: readonly string[];
  readonly k: readonly string[];
  readonly k1: readonly string[];
  readonly k2: readonly string[];
}

/** Wood Handbook, FPL-GTR-282 (2021), eq. (4-5), p. 4-3, in degrees Celsius. Read. */
const CELSIUS: Scale = {
  w: ["349", "1.29", "0.0135"],
  k: ["0.805", "0.000736", "-0.00000273"],
  k1: ["6.27", "-0.00938", "-0.000303"],
  k2: ["1.91", "0.0407", "-0.000293"],
};

/** The same, in degrees Fahrenheit. Read. */
const FAHRENHEIT: Scale = {
  w: ["330", "0.452", "0.00415"],
  k: ["0.791", "0.000463", "-0.000000844"],
  k1: ["6.34", "0.000775", "-0.0000935"],
  k2: ["1.09", "0.0284", "-0.0000904"],
};

/**
 * Equilibrium moisture content by the model behind the equation: water bound to sites that it wets first, and water in solution, each with its own balance.
 */
function equilibrium(scale: Scale, temperature: Exact, humidity: number): Exact {
  const at = (powers: readonly string[]): Exact =>
    powers.reduce((sum, factor, power) => sum.plus(temperature.pow(power).times(factor)), new D(0));
  const kh = at(scale.k).times(exact(humidity)).div(100);
  const [k1, k2] = [at(scale.k1), at(scale.k2)];
  const dissolved = kh.div(new D(1).minus(kh));
  const once = k1.times(kh);
  const twice = k1.times(k2).times(kh.pow(2));
  const bound = once.plus(twice.times(2)).div(new D(1).plus(once).plus(twice));
  return new D(1800).div(at(scale.w)).times(dissolved.plus(bound));
}

describe("equilibrium moisture", () => {
  test("is the equation to a few units in the last place", () => {
    fc.assert(
      fc.property(anyClimate, ({ temperature, humidity }) => {
        const want = equilibrium(CELSIUS, exact(temperature), humidity);
        // 1 - K h is smallest, a sixth, in the dampest air.
        expect(ulps(equilibriumMoisture({ temperature, humidity }), want)).toBeLessThan(20);
      }),
    );
  });

  test("is that of the other scale to a fiftieth of a percent, apart from which its constants were rounded", () => {
    fc.assert(
      fc.property(anyClimate, ({ temperature, humidity }) => {
        const fahrenheit = exact(temperature).times(9).div(5).plus(32);
        const want = equilibrium(FAHRENHEIT, fahrenheit, humidity).toNumber();
        expect(Math.abs(equilibriumMoisture({ temperature, humidity }) - want)).toBeLessThan(0.02);
      }),
    );
  });
});

/** Size of a piece of wood of green size 1, drawn as a straight line from green to ovendry. */
function sizeAt(shrinkage: number, fiberSaturation: number, moisture: number): Exact {
  const dry = exact(Math.min(moisture, fiberSaturation));
  const driedOut = new D(1).minus(dry.div(exact(fiberSaturation)));
  return new D(1).minus(exact(shrinkage).div(100).times(driedOut));
}

describe("movement by the sizes at both moistures", () => {
  test("along and square to the rings", () => {
    fc.assert(
      fc.property(movingWood, anyWidth, seasonMoisture, seasonMoisture, (species, width, from, to) => {
        for (const [grain, shrinkage] of [
          ["flat-sawn", species.tangential],
          ["quarter-sawn", species.radial],
        ] as const) {
          const size = (moisture: number): Exact => sizeAt(shrinkage, species.fiberSaturation!, moisture);
          const want = exact(width)
            .times(size(to).minus(size(from)))
            .div(size(from));
          expect(ulps(seasonalMovement({ species, width, grain, from, to }).change, want)).toBeLessThan(8);
        }
      }),
    );
  });

  test("between both, by Pythagoras", () => {
    fc.assert(
      fc.property(
        movingWood,
        fc.double({ min: 0.1, max: 89.9, noNaN: true }),
        fc.tuple(seasonMoisture, seasonMoisture),
        (species, grain, [from, to]) => {
          const stretch = (shrinkage: number): Exact =>
            sizeAt(shrinkage, species.fiberSaturation!, to).div(sizeAt(shrinkage, species.fiberSaturation!, from));
          const angle = exact(grain).times(PI).div(180);
          const along = stretch(species.tangential).times(angle.cos());
          const square = stretch(species.radial).times(angle.sin());
          const want = along.pow(2).plus(square.pow(2)).sqrt().minus(1);
          const got = seasonalMovement({ species, width: 1, grain, from, to }).fraction;
          // The oracle has 60 digits of a size near 1, which is all there is where nothing moves.
          expect(exact(got).minus(want).abs().toNumber()).toBeLessThan(1e-14 * want.abs().toNumber() + 1e-50);
        },
      ),
    );
  });
});

test("a miter's gap and wedge, by the angles of the ends before and after", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 3, max: 1000 }),
      anyWidth,
      fc.record({
        radial: fc.double({ min: 0.1, max: 30, noNaN: true }),
        tangential: fc.double({ min: 0.1, max: 30, noNaN: true }),
      }),
      fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 })),
      (sides, width, species, [from, to]) => {
        fc.pre(from !== to);
        const piece = { sides, species, grain: "flat-sawn", width, from, to } as const;
        const stretch = sizeAt(species.tangential, 30, to).div(sizeAt(species.tangential, 30, from));
        const half = PI.div(sides);
        const after = half.tan().div(stretch).atan();
        const { jointGap, angle, miter } = miterMovement(piece);
        const degrees = (radians: Exact): Exact => radians.times(180).div(PI);
        expect(ulps(miter, degrees(after))).toBeLessThan(8);
        expect(ulps(angle, degrees(after.minus(half).abs().times(2)))).toBeLessThan(24);
        const want = stretch.minus(1).abs().times(exact(width)).times(half.sin()).times(2);
        expect(ulps(jointGap, want)).toBeLessThan(24);
      },
    ),
  );
});

describe("units", () => {
  const MILLIMETERS = { mm: "1", cm: "10", m: "1000", in: "25.4", ft: "304.8" } as const;
  const anyUnit = fc.constantFrom<keyof typeof MILLIMETERS>("mm", "cm", "m", "in", "ft");

  test("make masses and volumes of any size right to the last places", () => {
    fc.assert(
      fc.property(anyUnit, fc.tuple(anyWidth, anyWidth, anyWidth), (unit, [thickness, width, length]) => {
        const cube = new D(MILLIMETERS[unit]).pow(3);
        const volume = exact(thickness).times(exact(width)).times(exact(length)).times(cube).div(1e9);
        const { boardFeet, cubicMeters } = boardMeasure({ thickness, width, length, unit });
        expect(ulps(cubicMeters, volume)).toBeLessThan(4);
        expect(ulps(boardFeet, volume.div(new D("0.0254").pow(3).times(144)))).toBeLessThan(4);
        const area = width * length;
        const glass = exact(area).times(exact(thickness)).times(2500).times(cube).div(1e9);
        expect(ulps(sheetMass({ sheet: "glass", area, thickness, unit }), glass)).toBeLessThan(4);
      }),
    );
  });

  test("stay finite at both ends of the range", () => {
    for (const unit of ["mm", "cm", "m", "in", "ft"] as const) {
      for (const size of [1e-100, 1e100]) {
        const { boardFeet, cubicMeters } = boardMeasure({
          thickness: size,
          width: size,
          length: size,
          unit,
          count: 1e5,
        });
        const mass = sheetMass({ sheet: { density: 1e5 }, area: size * size, thickness: size, unit });
        for (const number of [boardFeet, cubicMeters, mass]) {
          expect(number).toBeGreaterThan(0);
          expect(number).toBeLessThan(Infinity);
        }
      }
    }
  });
});
