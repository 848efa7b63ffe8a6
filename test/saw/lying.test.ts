import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { joinCorner, type Lay } from "miterwright/miter";
import { molding } from "miterwright/profile";
import { cradleFor, lieSection, stopContact } from "miterwright/saw";

const plain = molding({ width: 40, thickness: 20 });
const rabbeted = molding({ width: 52, thickness: 19, rabbet: { width: 9, depth: 11 } });
const LAYS: readonly Lay[] = ["flat", "propped", "face-down", "sight-edge-down", "outer-edge-down"];

describe("lieSection", () => {
  test.each<[Lay, number, number, boolean]>([
    ["flat", 40, 20, true],
    ["face-down", 40, 20, true],
    ["sight-edge-down", 20, 40, true],
    ["outer-edge-down", 20, 40, true],
  ])("%s, flat stock is %d wide and %d high", (lay, width, height, steady) => {
    const lying = lieSection(plain, { slope: 25, lay });
    expect(lying.width).toBeCloseTo(width, 12);
    expect(lying.height).toBeCloseTo(height, 12);
    expect(lying.steady).toBe(steady);
  });

  test("a lip too thin to stand on tips over, and an arris carries nothing", () => {
    expect(lieSection(rabbeted, { slope: 30, lay: "sight-edge-down" }).steady).toBe(false);
    const propped = lieSection(rabbeted, { slope: 30, lay: "propped" });
    expect(propped.support.from).toBe(propped.support.to);
    expect(propped.steady).toBe(false);
  });

  test("rests on the table and keeps every distance within the section", () => {
    fc.assert(
      fc.property(fc.double({ min: -90, max: 90, noNaN: true }), fc.constantFrom(...LAYS), (slope, lay) => {
        const { outline, height } = lieSection(rabbeted, { slope, lay });
        expect(Math.min(...outline.map((point) => point.up))).toBe(0);
        expect(Math.max(...outline.map((point) => point.up))).toBeCloseTo(height, 10);
        for (let index = 1; index < outline.length; index += 1) {
          const [a, b] = [outline[index - 1]!, outline[index]!];
          const [c, d] = [rabbeted.outline[index - 1]!, rabbeted.outline[index]!];
          expect(Math.hypot(a.across - b.across, a.up - b.up)).toBeCloseTo(Math.hypot(c.x - d.x, c.y - d.y), 10);
        }
      }),
    );
  });

  test("refuses a slope and a lay that are none", () => {
    expect(() => lieSection(plain, { slope: 95, lay: "flat" })).toThrow(
      "Expected `slope` to be degrees from -90 to 90, got 95 (number)",
    );
    expect(() => lieSection(plain, { slope: 5, lay: "askew" as never })).toThrow(/^Expected `lay` to be one of/);
    expect(() => lieSection({} as never, { slope: 5, lay: "flat" })).toThrow(/^Expected `profile/);
  });
});

describe("stopContact", () => {
  const board = { slope: 30, thickness: 20 };
  const { first: end, second: start } = joinCorner({ turn: 60, first: board, second: board });

  test("touches both ends of a regular stick with the same arris, however it lies", () => {
    for (const lay of LAYS) {
      expect(stopContact(end, plain, { slope: 30, lay }).arris).toBe("outerBack");
      expect(stopContact(start, plain, { slope: 30, lay }).arris).toBe("outerBack");
    }
  });

  test("finds it at the height where it lies", () => {
    expect(stopContact(end, plain, { slope: 30, lay: "flat" })).toMatchObject({ from: 0, to: 0 });
    expect(stopContact(end, plain, { slope: 30, lay: "face-down" }).from).toBeCloseTo(20, 12);
    expect(stopContact(end, plain, { slope: 30, lay: "sight-edge-down" }).from).toBeCloseTo(40, 12);
  });

  test("leans back over the stick's height by t sin r tan h", () => {
    const leanLength = stopContact(end, plain, { slope: 30, lay: "flat" }).leanLength;
    expect(leanLength).toBeCloseTo(20 * Math.sin(Math.PI / 6) * Math.tan(Math.PI / 6), 12);
    expect(stopContact(end, plain, { slope: 30, lay: "propped" }).leanLength).toBeCloseTo(0, 12);
  });

  test("refuses a cut without a plane", () => {
    expect(() => stopContact({} as never, plain, { slope: 30, lay: "flat" })).toThrow(
      "Expected `cut.plane` to be an object, got undefined",
    );
  });

  test("refuses a plane along the stick, which no stop could meet", () => {
    const plane = { ...end.plane, along: 0 };
    expect(() => stopContact({ ...end, plane }, plain, { slope: 30, lay: "flat" })).toThrow(
      "Expected `cut.plane.along` not to be 0: such a plane never crosses the stick",
    );
  });
});

describe("cradleFor", () => {
  test("is a wedge as long as the back, at the slope, high on the side that the slope raises", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 89.9, noNaN: true }), fc.boolean(), (angle, tray) => {
        const cradle = cradleFor(rabbeted, tray ? angle : -angle)!;
        expect(cradle.high).toBe(tray ? "outer-edge" : "sight-edge");
        expect(Math.hypot(cradle.levelRun, cradle.rise)).toBeCloseTo(43, 10);
        expect(Math.atan2(cradle.rise, cradle.levelRun)).toBeCloseTo((angle * Math.PI) / 180, 10);
      }),
    );
  });

  test("says by how much a thick stick hangs over", () => {
    const thick = molding({ width: 30, thickness: 30 });
    // Center of gravity 15 along and 15 above the back: over the thin end by 15 sin s - 15 cos s beyond 45 degrees.
    const cradle = cradleFor(thick, 60)!;
    expect(cradle.steady).toBe(false);
    expect(cradle.widenBy).toBeCloseTo(15 * (Math.sin(Math.PI / 3) - Math.cos(Math.PI / 3)), 12);
    expect(cradleFor(thick, 40)!.steady).toBe(true);
    const wide = molding({ width: 40, thickness: 30 });
    for (const slope of [60, -60]) {
      const { centerFromThinEnd, widenBy } = cradleFor(wide, slope)!;
      expect(centerFromThinEnd).toBeCloseTo(20 * Math.cos(Math.PI / 3) - 15 * Math.sin(Math.PI / 3), 12);
      expect(widenBy).toBeCloseTo(-centerFromThinEnd, 12);
    }
  });

  test("is not needed where the stick has a surface to lie on", () => {
    for (const slope of [0, 90, -90]) expect(cradleFor(plain, slope)).toBeNull();
  });

  test("refuses a slope that is none", () => {
    expect(() => cradleFor(plain, 91)).toThrow("Expected `slope` to be degrees from -90 to 90, got 91 (number)");
  });
});
