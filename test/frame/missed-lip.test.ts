import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Hazard } from "miterwright/errors";
import { planFrame, type FrameBrief } from "miterwright/frame";
import { hazardText } from "miterwright/words";
import { molding } from "miterwright/profile";
import { polygonCorners } from "miterwright/polygon";
import { plain } from "./briefs.js";
import { formatsWith } from "../formats.js";
import { heed } from "./heed.js";

/** A picture molding of 1 1/4 x 3/4 in with a lip of 1/4 in. */
const lipped = molding({ width: 1.25, thickness: 0.75, rabbet: { width: 0.25, depth: 0.375 } });
const picture = { width: 16, height: 20 };

function planOf(changes: Partial<FrameBrief> = {}): ReturnType<typeof planFrame> {
  const brief = { sides: 4, unit: "in", profile: lipped, opening: { contains: picture }, ...changes };
  return planFrame(brief as FrameBrief);
}
function raised(changes: Partial<FrameBrief>, code: Hazard["code"]): Hazard[] {
  return planOf(changes).hazards.filter((hazard) => hazard.code === code);
}
const missesOf = (changes: Partial<FrameBrief> = {}): Hazard[] => raised(changes, "missed-lip");

describe("a square frame whose contents are not square", () => {
  test("says before all else how far they miss the lip, and at which sides", () => {
    const plan = planOf();
    expect(plan.geometry.opening.side).toBe(20);
    expect(plan.hazards[0]).toMatchObject({
      code: "missed-lip",
      signal: "notice",
      numbers: { leftAndRight: 1.75 },
      kinds: { leftAndRight: "length" },
      source: "computed",
    });
    expect(heed(plan.hazards[0]!)).toMatch(/square.*miss the lip at the left and the right/);
    const { numbers } = hazardText(plan.hazards[0]!, { formats: formatsWith({ length: (value) => `${value} in` }) });
    expect(numbers).toBe("left and right 1.75\u00a0in");
  });

  test("names the sides at which a wide one misses", () => {
    const [miss] = missesOf({ opening: { contains: { width: 20, height: 16 } } });
    expect(miss!.numbers).toEqual({ aboveAndBelow: 1.75 });
    expect(heed(miss!)).toMatch(/miss the lip above and below/);
  });

  test("counts clearance and allowance, which move the lip away from them", () => {
    expect(missesOf({ clearance: 0.0625 })[0]!.numbers["leftAndRight"]).toBeCloseTo(1.8125, 12);
    const [miss] = missesOf({ opening: { contains: { ...picture, allowance: 0.125 } } });
    expect(miss!.numbers["leftAndRight"]).toBeCloseTo(1.8125, 12);
  });

  test("misses nothing while both sides still rest on the lip", () => {
    expect(missesOf({ opening: { contains: { width: 19.52, height: 20 } } })).toEqual([]);
    expect(missesOf({ opening: { contains: { width: 19.48, height: 20 } } })).toHaveLength(1);
    expect(missesOf({ opening: { contains: { width: 20, height: 20 } }, clearance: 0.1 })).toEqual([]);
  });

  test("warns where a pane is among them", () => {
    const pane = { name: "pane", thickness: 0.09, material: "glass" } as const;
    expect(missesOf({ contents: [pane] })[0]!.signal).toBe("warning");
  });

  test("takes the lip as it stands at a slope", () => {
    // A ledge that rises outward is seen longer from above: w / cos s; one that falls outward is passed at the mouth: w cos s - d sin|s|.
    const s = Math.PI / 18;
    const at = (slope: number): number => missesOf({ slope })[0]!.numbers["leftAndRight"]!;
    expect(at(10)).toBeCloseTo(2 - 0.25 / Math.cos(s), 12);
    expect(at(-10)).toBeCloseTo(2 - (0.25 * Math.cos(s) - 0.375 * Math.sin(s)), 12);
  });

  test("is measured by what is left uncovered of the sight opening, in both poses", () => {
    const size = fc.double({ min: 4, max: 40, noNaN: true });
    const pose = fc.constantFrom("side-down" as const, "corner-down" as const);
    const clearances = fc.double({ min: 0, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(size, size, pose, clearances, (width, height, stands, clearance) => {
        const changes = { pose: stands, opening: { contains: { width, height } }, clearance };
        const { contents, geometry } = planOf(changes);
        // With no slope the lip's edge is the innermost line of the molding, and so what is seen.
        const corners = polygonCorners(contents.visible, stands);
        const sideways = Math.max(...corners.map(({ x }) => x)) - width / 2;
        const upward = Math.max(...corners.map(({ y }) => y)) - height / 2;
        const found = missesOf(changes);
        const expected = Object.entries({ leftAndRight: sideways, aboveAndBelow: upward }).filter(
          ([, by]) => by > 1e-9,
        );
        expect(found.length).toBe(expected.length === 0 ? 0 : 1);
        for (const [name, by] of expected) expect(found[0]!.numbers[name]).toBeCloseTo(by, 9);
        expect(geometry.sides).toBe(4);
      }),
    );
  });

  test("on a corner holds even a square by four tips alone, and says so", () => {
    const [miss] = missesOf({ pose: "corner-down", opening: { contains: { width: 16, height: 16 } } });
    // The opening's corner is 16 from the center, the lip's 16 - 0.25 sqrt(2).
    const by = 8 - 0.25 * Math.SQRT2;
    expect(miss!.numbers["leftAndRight"]).toBeCloseTo(by, 12);
    expect(miss!.numbers["aboveAndBelow"]).toBeCloseTo(by, 12);
    expect(heed(miss!)).toMatch(/stands on a corner/);
  });
});

describe("a lip that is not there, or not known", () => {
  test("of level measures is known by `lap`", () => {
    const measured = { profile: undefined, measured: { levelWidth: 1, lap: 0.25 } } as Partial<FrameBrief>;
    expect(missesOf(measured)[0]).toMatchObject({ signal: "notice", numbers: { leftAndRight: 1.75 } });
  });

  test("is said not to be given where nobody has measured one", () => {
    const measured = { profile: undefined, measured: { levelWidth: 1 } } as Partial<FrameBrief>;
    const [miss] = raised(measured, "lip-not-known");
    expect(miss).toMatchObject({ signal: "notice", numbers: { leftAndRight: 2 } });
    expect(heed(miss!)).toMatch(/no lip is given that reaches so far/);
    expect(missesOf(measured)).toEqual([]);
    const square = { opening: { contains: { width: 20, height: 20 } }, clearance: 0.1 };
    expect(raised({ ...measured, ...square }, "lip-not-known")).toEqual([]);
  });

  test("of plain stock leaves room beside them, which is a notice", () => {
    const [miss] = raised({ profile: plain, opening: { contains: { width: 160, height: 200 } } }, "unfilled-opening");
    expect(miss).toMatchObject({ signal: "notice", numbers: { leftAndRight: 20 } });
    const filled = { profile: plain, opening: { contains: { width: 200, height: 200 } }, clearance: 2 };
    expect(raised(filled, "unfilled-opening")).toEqual([]);
  });
});

describe("nothing is missed", () => {
  test.each([3, 5, 6, 8])("in a frame of %d sides: the lip holds the panel, and the picture lies on it", (sides) => {
    expect(missesOf({ sides })).toEqual([]);
  });

  test("by what is cut to the opening, or where a measure of it was given", () => {
    expect(missesOf({ opening: { cutFrom: picture } })).toEqual([]);
    expect(missesOf({ opening: { side: 20 } })).toEqual([]);
  });

  test("where the rabbet holds nothing at all, which is said instead", () => {
    const hazards = planOf({ slope: 80 }).hazards.map(({ code }) => code);
    expect(hazards).not.toContain("missed-lip");
    expect(hazards).toContain("seating-impossible");
  });
});

describe("what rests on little of the lip", () => {
  const seats = (changes: Partial<FrameBrief>): Hazard[] =>
    planOf(changes).hazards.filter(({ code }) => code === "narrow-lip");

  test("goes by the contents, not by a panel as large as the opening", () => {
    const [seat] = seats({ opening: { contains: { width: 19.7, height: 20 } } });
    expect(seat!.numbers["lap"]).toBeCloseTo(0.1, 12);
    expect(seats({ opening: { contains: { width: 20, height: 20 } } })).toEqual([]);
  });

  test("can slip past it where there is more room beside them than they rest on", () => {
    // A lip of 1 in: centered they rest on 0.45, pushed to one side on nothing at the other.
    const wide = molding({ width: 3, thickness: 0.75, rabbet: { width: 1, depth: 0.375 } });
    const [seat] = seats({ profile: wide, opening: { contains: { width: 18.9, height: 20 } } });
    expect(seat!.numbers["lap"]).toBeCloseTo(0.45, 12);
    expect(seat!.numbers["limit"]).toBeCloseTo(0.55, 12);
    expect(seats({ profile: wide, opening: { contains: { width: 19.1, height: 20 } } })).toEqual([]);
  });
});
