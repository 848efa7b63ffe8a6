import fc from "fast-check";
import { type GrainName, miterMovement, type MiterMovement, seasonalMovement } from "miterwright/wood";
import { describe, expect, test } from "vitest";
import { seasonMoisture, movingWood, anyWidth, pressTogether } from "../laws/wood.js";

const anyTurn = fc.double({ min: 1, max: 179, noNaN: true });
const anySlope = fc.oneof(fc.constantFrom(-90, -45, 0, 30, 90), fc.double({ min: -90, max: 90, noNaN: true }));
const anyNamedGrain = fc.constantFrom<GrainName>("flat-sawn", "rift-sawn", "quarter-sawn");
const anyJoint = fc.record({
  turn: anyTurn,
  slope: anySlope,
  width: anyWidth,
  thickness: anyWidth,
  species: movingWood,
  grain: anyNamedGrain,
  from: seasonMoisture,
  to: seasonMoisture,
});

describe("two ends that are pressed together", () => {
  test("stand open by the gap, at the end where they open", () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const { species, from, to, width, thickness, slope, turn } = joint;
        const moved = miterMovement(joint);
        const stretch = (grain: GrainName): number => seasonalMovement({ species, width: 1, grain, from, to }).fraction;
        const otherGrain = {
          "flat-sawn": "quarter-sawn",
          "rift-sawn": "rift-sawn",
          "quarter-sawn": "flat-sawn",
        } as const;
        const open = pressTogether({
          planMiter: turn / 2,
          slope,
          width,
          thickness,
          acrossWidth: stretch(joint.grain),
          acrossThickness: stretch(otherGrain[joint.grain]),
        });
        const scale = width + thickness;
        expect(Math.abs(moved.jointGap - open.gap)).toBeLessThan(
          scale * 1e-12 * (1 + Math.tan((turn * Math.PI) / 360)),
        );
        if (moved.jointGap > scale * 1e-9) {
          expect(moved.opens).toBe(open.outOfTouch > 0 ? "outside" : "inside");
        }
      }),
    );
  });

  test("open by a wedge as wide as the gap over the width, and the ends' angle is off by half of it", () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const { jointGap, angle, miter, planMiter, jointWidth, change, opens } = miterMovement(joint);
        const off = opens === "inside" ? miter - planMiter : planMiter - miter;
        expect(off).toBeCloseTo(angle / 2, 10);
        // Along each end from where they touch to where they are open, seen from above.
        const reach = Math.hypot(jointWidth + change, jointWidth * Math.tan((planMiter * Math.PI) / 180));
        expect(2 * reach * Math.sin((angle * Math.PI) / 360)).toBeCloseTo(jointGap, 7);
      }),
    );
  });
});

describe("a joint", () => {
  const piece = { sides: 4, species: "white oak", grain: "flat-sawn", width: 70 } as const;

  test("whose moisture stays does nothing", () => {
    expect(miterMovement({ ...piece, from: 8, to: 8 })).toEqual({
      opens: "nowhere",
      jointGap: 0,
      angle: 0,
      miter: 45,
      planMiter: 45,
      jointWidth: 70,
      change: 0,
      from: 8,
      to: 8,
    });
  });

  test("opens inside in the heated room and outside in the damp one", () => {
    const fitted = { temperature: 18, humidity: 50 };
    const at = (humidity: number): MiterMovement =>
      miterMovement({ ...piece, from: fitted, to: { temperature: 18, humidity } });
    expect([at(25).opens, at(75).opens]).toEqual(["inside", "outside"]);
    expect(at(25).miter).toBeGreaterThan(45);
    expect(at(75).miter).toBeLessThan(45);
  });

  test("opens by twice what the width moves times the sine of the miter: on a square frame 1.41 times the movement", () => {
    const { change } = seasonalMovement({ species: "white oak", width: 70, grain: "flat-sawn", from: 9, to: 6 });
    const { jointGap } = miterMovement({ ...piece, from: 9, to: 6 });
    expect(jointGap / -change).toBeCloseTo(Math.SQRT2, 12);
  });

  test("of many sides opens less than one of few, and a turn says the same as a number of sides", () => {
    const gaps = [3, 4, 5, 6, 8, 12].map((sides) => miterMovement({ ...piece, sides, from: 9, to: 6 }).jointGap);
    expect([...gaps].sort((a, b) => b - a)).toEqual(gaps);
    const rest = { species: "white oak", grain: "flat-sawn", width: 70, from: 9, to: 6 } as const;
    expect(miterMovement({ ...rest, turn: 72 })).toEqual(miterMovement({ ...rest, sides: 5 }));
  });

  test("of an upright box opens by its thickness alone, and its grain there is that of the thickness", () => {
    const box = { ...piece, slope: 90, thickness: 20, from: 9, to: 6 } as const;
    const flat = { ...piece, width: 20, grain: "quarter-sawn", from: 9, to: 6 } as const;
    expect(miterMovement(box)).toEqual(miterMovement(flat));
    expect(miterMovement({ ...box, slope: -90 })).toEqual(miterMovement(box));
    expect(miterMovement({ ...box, width: 300 })).toEqual(miterMovement(box));
  });

  test("scales to the bit with the piece", () => {
    const one = miterMovement({ ...piece, slope: 35, thickness: 21, from: 9, to: 6 });
    const many = miterMovement({ ...piece, width: 70 * 1024, slope: 35, thickness: 21 * 1024, from: 9, to: 6 });
    expect(many).toEqual({
      ...one,
      jointGap: one.jointGap * 1024,
      jointWidth: one.jointWidth * 1024,
      change: one.change * 1024,
    });
  });
});
