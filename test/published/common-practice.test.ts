import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { frameGeometry } from "miterwright/frame";
import { planPanel } from "miterwright/panel";
import { regularPolygon } from "miterwright/polygon";
import { formatLength, nearestFraction } from "miterwright/units";

/** Facts that makers of many-sided frames work by: common practice, no printed source. */
describe("facts of the trade", () => {
  test("the outside is longer than the rabbet by 2 w tan(180/n), for a level width w", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 24 }),
        fc.double({ min: 10, max: 100, noNaN: true }),
        fc.double({ min: -80, max: 80, noNaN: true }),
        (sides, levelWidth, slope) => {
          const frame = frameGeometry({ sides, slope, measured: { levelWidth }, opening: { side: 300 } });
          const { wall, outer } = frame.pieces[0].lengths;
          expect(outer - wall).toBeCloseTo(2 * levelWidth * Math.tan(Math.PI / sides), 9);
        },
      ),
    );
  });

  test("an odd opening is always wider across corners than it is high", () => {
    for (let sides = 3; sides < 200; sides += 2) {
      const { acrossCorners, acrossFlats } = regularPolygon({ sides, side: 1 });
      expect(acrossCorners).toBeGreaterThan(acrossFlats);
    }
  });

  test("a seven-sided opening of side 3 11/16 in stands 8 1/16 in high and about 8 1/4 in wide", () => {
    const opening = regularPolygon({ sides: 7, side: 3 + 11 / 16 });
    expect(formatLength(opening.acrossFlats, "in", { denominator: 16 })).toBe('8 1/16"');
    expect(nearestFraction(opening.acrossCorners, 4).text).toBe("8 1/4");
  });

  test("1 1/16 in of level width adds about 1 in at seven sides", () => {
    const frame = frameGeometry({ sides: 7, measured: { levelWidth: 1 + 1 / 16 }, opening: { side: 3 + 11 / 16 } });
    const { wall, outer } = frame.pieces[0].lengths;
    expect(nearestFraction(outer - wall, 8).text).toBe("1");
  });

  test("a seven-sided panel needs 12.857 degrees, six cuts from a squared blank, and two of its corners fall inside the blank", () => {
    const { setting, cuts, corners } = planPanel({ polygon: regularPolygon({ sides: 7, side: 3 + 11 / 16 }) });
    expect(setting.toFixed(3)).toBe("12.857");
    expect(cuts).toHaveLength(6);
    expect(corners.filter((corner) => corner.inside)).toHaveLength(2);
  });
});
