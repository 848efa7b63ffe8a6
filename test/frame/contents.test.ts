import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrame, type ContentsLayer, type FrameContents, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { convertLength } from "miterwright/units";
import { GLASS_TOLERANCES } from "../published/materials.js";
import { rabbeted } from "./briefs.js";

const pane: ContentsLayer = { name: "pane", thickness: 2, material: "glass" };
const mount: ContentsLayer = { name: "mount", thickness: 1.4 };
const board: ContentsLayer = { name: "board", thickness: 3, material: { density: 750 } };
const acrylic: ContentsLayer = { name: "sheet", thickness: 2, material: "acrylic" };

function contentsOf(changes: Partial<ProfileBrief>): FrameContents {
  return planFrame({ sides: 6, profile: rabbeted, opening: { side: 400 }, ...changes } as ProfileBrief).contents;
}

describe("the panel", () => {
  test("is cut from the upright box round it, in its pose", () => {
    const { panel, box } = contentsOf({ clearance: 1.5 });
    expect(box).toEqual({ width: panel!.acrossCorners, height: panel!.acrossFlats });
    expect(contentsOf({ clearance: 1.5, pose: "corner-down" }).box).toEqual({
      width: panel!.acrossFlats,
      height: panel!.acrossCorners,
    });
  });

  test("has no box where the clearance leaves nothing", () => {
    expect(contentsOf({ opening: { side: 40 }, clearance: 40 }).box).toBeNull();
  });
});

describe("the stack", () => {
  test("has its layers in order from the front, with how far the back of each lies behind it", () => {
    const { stack, seating } = contentsOf({ slope: 15, contents: [pane, mount, board] });
    expect(stack!.layers.map(({ name, kind, behind }) => [name, kind, behind])).toEqual([
      ["pane", "glass", 2],
      ["mount", null, 3.4],
      ["board", "sheet", 6.4],
    ]);
    const front = seating!.possible ? seating!.bearing.up : 0;
    for (const { up, behind } of stack!.layers) expect(up).toBeCloseTo(front - behind, 12);
    expect(contentsOf({}).stack).toBeNull();
  });

  test("in a flat rabbet leaves what is left of its depth", () => {
    const { stack } = contentsOf({ contents: [mount, board] });
    expect(stack).toMatchObject({ thickness: 4.4, tolerance: 0, verdict: "roomy" });
    expect(stack!.left).toBeCloseTo(11 - 4.4, 12);
    expect(stack!.leftAtLeast).toBe(stack!.left);
    expect(stack!.spare).toBeCloseTo(11 - 4.4 - 3, 12);
  });

  test("in a sloping one bears on the lip's arris, w tan s below the ledge's corner, and leaves depth plumb", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 45, noNaN: true }), (slope) => {
        const s = (slope * Math.PI) / 180;
        const { stack } = contentsOf({ slope, contents: [board] });
        expect(stack!.left).toBeCloseTo((11 - (9 * Math.tan(s) + 3 / Math.cos(s))) * Math.cos(s), 9);
      }),
    );
  });

  test("in a reverse one bears in the corner, and leaves depth plumb", () => {
    fc.assert(
      fc.property(fc.double({ min: -35, max: -0.1, noNaN: true }), (slope) => {
        const s = (slope * Math.PI) / 180;
        const { stack } = contentsOf({ slope, contents: [board] });
        const depthUsed = 3 / Math.cos(s) - 11 * Math.tan(s) ** 2;
        expect(stack!.left).toBeCloseTo((11 - depthUsed) * Math.cos(s), 9);
      }),
    );
  });

  test("in a reverse one leaves more than the wall's depth where its back lies above the corner", () => {
    const profile = molding({ width: 60, thickness: 24, rabbet: { width: 12, depth: 10 } });
    const { stack, seating } = contentsOf({ slope: -45, profile, contents: [pane] });
    expect(seating).toMatchObject({ possible: true, depthUsed: 0 });
    // Its front touches the mouth's plumb line on the ledge: d sin 45 above the corner, which is d cos 45 above the mouth.
    expect(stack!.left).toBeCloseTo(20 * Math.SQRT1_2 - 2, 12);
    expect(stack!.left).toBeCloseTo(12.14, 2);
  });

  test.each([1e16, 1e18, 1e40])("stands proud by its thickness where it is %d times as deep as the rabbet", (times) => {
    const { stack } = contentsOf({ slope: 20, contents: [{ name: "block", thickness: 11 * times }] });
    expect(stack!.left! / (-11 * times)).toBeCloseTo(1, 12);
    expect(stack!.verdict).toBe("proud");
  });

  test("may be as thick as its glass may be", () => {
    const { stack } = contentsOf({ contents: [pane, mount, { ...pane, thickness: 8 }], clearance: 1 });
    expect(stack!.layers.map(({ tolerance }) => tolerance)).toEqual([0.2, null, 0.3]);
    expect(stack!.tolerance).toBeCloseTo(0.5, 12);
    expect(stack!.leftAtLeast).toBeCloseTo(stack!.left! - 0.5, 12);
  });

  test.each(GLASS_TOLERANCES)(
    "takes %d mm of float glass to be %d mm thicker or thinner (EN 572-2)",
    (nominal, tolerance) => {
      const of = (thickness: number, unit: "mm" | "in" | "cm"): number | null =>
        contentsOf({ unit, contents: [{ ...pane, thickness }] }).stack!.layers[0]!.tolerance;
      expect(of(nominal, "mm")).toBe(tolerance);
      // Divided, 6 mm become an inch's fraction that is a last bit more than 6 mm.
      expect(of(nominal / 25.4, "in")! * 25.4).toBeCloseTo(tolerance, 12);
      expect(of(nominal * 0.1, "cm")! * 10).toBeCloseTo(tolerance, 12);
    },
  );

  test("takes a thickness between two by the thicker, and knows nothing of glass beyond", () => {
    const of = (thickness: number): number | null =>
      contentsOf({ contents: [{ ...pane, thickness }] }).stack!.layers[0]!.tolerance;
    expect([of(2.4), of(6.1), of(14), of(25.1)]).toEqual([0.2, 0.3, 0.5, null]);
  });
});

describe("the verdict", () => {
  const of = (contents: ContentsLayer[], fastenerRoom?: number): string | null =>
    contentsOf({ contents, ...(fastenerRoom === undefined ? {} : { fastenerRoom }) }).stack!.verdict;
  const thick = (thickness: number): ContentsLayer => ({ ...board, thickness });

  test("goes by the room for fasteners, by default 3 mm", () => {
    expect(of([thick(8)])).toBe("roomy");
    expect(of([thick(8.01)])).toBe("short");
    expect(of([thick(8.01)], 2.9)).toBe("roomy");
    expect(of([thick(11)], 0)).toBe("roomy");
    expect(of([thick(11.01)], 0)).toBe("proud");
  });

  test("is not thrown off by rounding: thicknesses that add up to the depth in decimals fit", () => {
    const layers = [0.4, 3.7, 2.1, 1.8];
    expect(11 - layers.reduce((sum, one) => sum + one, 0)).toBeLessThan(3);
    expect(of(layers.map(thick))).toBe("roomy");
  });

  test("is tight where only glass as thick as its tolerance allows is too much", () => {
    expect(of([pane, thick(6)])).toBe("tight");
    expect(of([pane, thick(5.8)])).toBe("roomy");
    expect(of([acrylic, thick(6)])).toBe("roomy");
    expect(of([pane, thick(6.1)])).toBe("short");
  });

  test("counts plumb: a wall that leans has less depth than its length", () => {
    const at = (slope: number): FrameContents => contentsOf({ slope, contents: [board], fastenerRoom: 2.6 });
    const { stack, seating } = at(25);
    expect(seating!.possible && seating!.depthLeft).toBeCloseTo(
      11 - (9 * Math.tan(25 * (Math.PI / 180)) + 3 / Math.cos(25 * (Math.PI / 180))),
      9,
    );
    expect(seating!.possible && seating!.depthLeft).toBeGreaterThan(3.4);
    expect(stack!.left).toBeLessThan(seating!.possible ? seating!.depthLeft : 0);
  });

  test("of level measures is known where the frame lies flat", () => {
    const measured = { levelWidth: 40, lap: 8, depth: 10 };
    const of = (slope: number, depth = true): unknown =>
      planFrame({
        sides: 5,
        slope,
        opening: { side: 300 },
        measured: depth ? measured : { levelWidth: 40, lap: 8 },
        contents: [thick(8)],
      }).contents.stack;
    expect(of(0)).toMatchObject({ left: 2, spare: -1, verdict: "short" });
    const unknown = { left: null, leftAtLeast: null, spare: null, verdict: null, thickness: 8 };
    expect(of(0, false)).toMatchObject(unknown);
    expect(of(10)).toMatchObject(unknown);
  });

  test("is not given where the rabbet cannot hold them, nor without a rabbet", () => {
    expect(contentsOf({ slope: 70, contents: [pane] }).stack).toMatchObject({ left: null, verdict: null });
    expect(contentsOf({ slope: 70, contents: [pane] }).stack!.layers[0]!.up).toBeNull();
    const flat = molding({ width: 40, thickness: 20 });
    expect(contentsOf({ profile: flat, contents: [pane] }).stack).toMatchObject({ left: null, verdict: null });
  });
});

test("scaled with its unit the stack is the same", () => {
  const sizes = { sides: 7, slope: 12 } as const;
  const one = contentsOf({ ...sizes, contents: [pane, board], fastenerRoom: 3 }).stack!;
  const inches = (value: number): number => convertLength(value, "mm", "in");
  const other = contentsOf({
    ...sizes,
    unit: "in",
    fastenerRoom: inches(3),
    opening: { side: inches(400) },
    profile: molding({
      width: inches(52),
      thickness: inches(19),
      rabbet: { width: inches(9), depth: inches(11) },
    }),
    contents: [pane, board].map((layer) => ({ ...layer, thickness: inches(layer.thickness) })),
  }).stack!;
  expect(other.verdict).toBe(one.verdict);
  expect(other.spare).toBeCloseTo(inches(one.spare!), 12);
  expect(other.tolerance).toBeCloseTo(inches(one.tolerance), 14);
});
