import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { D, exact, PI, ulps } from "../exact.js";
import { atan2Deg, cosDeg, sinDeg, tanDeg } from "../../src/core/degrees.js";

describe("exact values", () => {
  test.each([
    [0, 0, 1],
    [30, 0.5, undefined],
    [60, undefined, 0.5],
    [90, 1, 0],
    [120, undefined, -0.5],
    [150, 0.5, undefined],
    [180, 0, -1],
    [210, -0.5, undefined],
    [240, undefined, -0.5],
    [270, -1, 0],
    [300, undefined, 0.5],
    [330, -0.5, undefined],
    [360, 0, 1],
  ])("at %d degrees, whole turns later, and on the other side of 0", (angle, sine, cosine) => {
    for (const turns of [-720, 0, 360 * 1e6]) {
      if (sine !== undefined) {
        expect(sinDeg(angle + turns)).toBe(sine);
        expect(sinDeg(-angle - turns)).toBe(sine === 0 ? 0 : -sine);
      }
      if (cosine !== undefined) {
        expect(cosDeg(angle + turns)).toBe(cosine);
        expect(cosDeg(-angle - turns)).toBe(cosine);
      }
    }
  });

  test.each([
    [45, 1],
    [135, -1],
    [225, 1],
    [-45, -1],
    [0, 0],
    [180, 0],
  ])("of the tangent at %d", (angle, tangent) => {
    expect(tanDeg(angle)).toBe(tangent);
  });

  test.each([
    [0, 1, 0],
    [1, 1, 45],
    [1, 0, 90],
    [1, -1, 135],
    [0, -1, 180],
    [-1, 0, -90],
    [-1, -1, -135],
  ])("of the direction of (y %d, x %d)", (y, x, angle) => {
    expect(atan2Deg(y, x)).toBe(angle);
  });
});

describe("against 60 digits", () => {
  const angles = fc.oneof(
    fc.double({ min: -1000, max: 1000, noNaN: true }),
    fc.double({ min: -1e-9, max: 1e-9, noNaN: true }),
    fc.double({ min: 90 - 1e-9, max: 90 + 1e-9, noNaN: true }),
  );

  test("sine, cosine and tangent are within 2, 2 and 4 units in the last place", () => {
    fc.assert(
      fc.property(angles, (angle) => {
        // Below this a result is subnormal, where the unit in the last place no longer shrinks.
        fc.pre(angle === 0 || Math.abs(angle) > 1e-290);
        const radian = exact(angle).times(PI).div(180);
        const [sine, cosine] = [D.sin(radian), D.cos(radian)];
        if (angle !== 0 && sinDeg(angle) !== 0) expect(ulps(sinDeg(angle), sine)).toBeLessThan(2);
        if (cosDeg(angle) !== 0) expect(ulps(cosDeg(angle), cosine)).toBeLessThan(2);
        if (sinDeg(angle) !== 0 && cosDeg(angle) !== 0) expect(ulps(tanDeg(angle), sine.div(cosine))).toBeLessThan(4);
      }),
    );
  });

  test("no function gives -0", () => {
    for (const angle of [0, -0, 180, -180, 360, -360, 90, -90]) {
      for (const value of [sinDeg(angle), cosDeg(angle)]) expect(Object.is(value, -0)).toBe(false);
    }
    expect(Object.is(tanDeg(-180), -0)).toBe(false);
    expect(Object.is(atan2Deg(-0, 1), -0)).toBe(false);
  });
});
