import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  planFrame,
  type ContentsLayer,
  type Cost,
  type CostUnit,
  type FrameMaterials,
  type FramePlan,
  type ProfileBrief,
} from "miterwright/frame";
import { molding } from "miterwright/profile";
import { convertLength, type LengthUnit } from "miterwright/units";
import { woodDensity } from "miterwright/wood";
import { FLOAT_GLASS, POUND } from "../published/materials.js";
import { briefs, deepFreeze, plain, rabbeted, throughJson } from "./briefs.js";

const pane: ContentsLayer = { name: "pane", thickness: 2, material: "glass" };
const board: ContentsLayer = { name: "board", thickness: 3, material: { density: 750 } };

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({ sides: 6, profile: rabbeted, opening: { side: 400 }, kerf: 3, ...changes } as ProfileBrief);
}

function materialsOf(changes: Partial<ProfileBrief>): FrameMaterials {
  return planOf(changes).materials;
}

/**
 * Volume of a ring of molding, by the divergence theorem over its surface: every corner of the section runs round a polygon whose corners are placed with
 * sines and cosines, and every face between them is two triangles. It knows no piece, no miter and no centroid.
 */
function meshVolume(brief: ProfileBrief, apothem: number, at: string): number {
  const slope = ((brief.slope ?? 0) * Math.PI) / 180;
  const { outline, arrises } = brief.profile;
  const place = ({ x, y }: { x: number; y: number }): [out: number, up: number] => [
    x * Math.cos(slope) - y * Math.sin(slope),
    x * Math.sin(slope) + y * Math.cos(slope),
  ];
  const [origin] = place(arrises[at]!);
  const n = brief.sides;
  const vertex = (index: number, corner: number): readonly [number, number, number] => {
    const [out, up] = place(outline[index % outline.length]!);
    const radius = (apothem + out - origin) / Math.cos(Math.PI / n);
    const angle = (2 * Math.PI * corner) / n;
    return [radius * Math.cos(angle), radius * Math.sin(angle), up];
  };
  const six = (
    a: readonly [number, number, number],
    b: readonly [number, number, number],
    c: readonly [number, number, number],
  ): number =>
    a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
  let sum = 0;
  for (let corner = 0; corner < n; corner++) {
    for (let index = 0; index < outline.length; index++) {
      const [a, b] = [vertex(index, corner), vertex(index + 1, corner)];
      const [c, d] = [vertex(index + 1, corner + 1), vertex(index, corner + 1)];
      sum += six(a, b, c) + six(a, c, d);
    }
  }
  return Math.abs(sum) / 6;
}

describe("the molding's volume", () => {
  test("is that of the ring as a solid, whatever its section and slope", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const { materials, geometry } = planFrame(brief);
        const mesh = meshVolume(brief, geometry.polygons["sightBack"]!.apothem, "sightBack");
        expect(materials.parts[0]!.volume! / mesh).toBeCloseTo(1, 10);
      }),
    );
  });

  test("comes to that of a turned ring as sides grow many: the area times the way of its centroid (Pappus)", () => {
    const { parts } = materialsOf({ sides: 1000, slope: 25, profile: plain, opening: { apothem: 500 } });
    const turn = (25 * Math.PI) / 180;
    // The innermost point is the sight edge at the face, 20 up; the centroid of 40 by 20 is 20 out and 10 up.
    const centroid = 500 + 20 * Math.cos(turn) - 10 * Math.sin(turn) + 20 * Math.sin(turn);
    expect(parts[0]!.volume! / (2 * Math.PI * centroid * 800)).toBeCloseTo(1, 5);
  });

  test("of flat square stock is area times the mean of its two lengths", () => {
    const { parts } = materialsOf({ sides: 4, profile: plain, opening: { side: 300 } });
    expect(parts[0]!.volume).toBeCloseTo(4 * 800 * ((300 + 380) / 2), 6);
  });
});

describe("the lumber", () => {
  test("is the box round the section as milled, by the length of stick that is used up", () => {
    const { lumber, moldingLength } = materialsOf({ slope: 40 });
    expect(lumber).toMatchObject({ width: 52, thickness: 19, length: moldingLength });
    expect(lumber!.cubicMeters).toBeCloseTo((52 * 19 * moldingLength) / 1e9, 12);
    // A board foot is a foot by a foot by an inch.
    expect(lumber!.boardFeet).toBeCloseTo((52 * 19 * moldingLength) / (304.8 * 304.8 * 25.4), 12);
  });

  test("holds all of the molding", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const { lumber, parts } = planFrame({ ...brief, unit: "m" }).materials;
        expect(lumber!.cubicMeters).toBeGreaterThan(parts[0]!.volume! * (1 - 1e-12));
      }),
    );
  });
});

describe("mass", () => {
  test("of glass is 2.5 kg for a square meter and a millimeter (EN 572-1), over the area that goes in", () => {
    const { contents, materials } = planOf({ contents: [pane], clearance: 1.5 });
    const area = contents.panel!.area / 1e6;
    expect(materials.parts[1]!.mass).toBeCloseTo(area * 2 * FLOAT_GLASS.kilogramsPerSquareMeterAndMillimeter, 12);
    // The hexagon of apothem A has the area 6 A² tan 30°.
    const apothem = 200 * Math.sqrt(3) - 1.5;
    expect(contents.panel!.area).toBeCloseTo(6 * apothem * apothem * Math.tan(Math.PI / 6), 6);
  });

  test("of wood is its volume times its density when the frame is made", () => {
    const { parts } = materialsOf({ species: "black cherry", moisture: { made: 12, seasons: [8] } });
    expect(parts[0]!.density).toBe(woodDensity({ species: "black cherry" }));
    expect(parts[0]!.mass).toBeCloseTo((parts[0]!.volume! / 1e9) * 560, 12);
    expect(materialsOf({ species: "black cherry" }).parts[0]!.density).toBe(
      woodDensity({ species: "black cherry", moisture: 8 }),
    );
  });

  test("of every kind of layer", () => {
    const contents: ContentsLayer[] = [
      pane,
      { name: "sheet", thickness: 3, material: "acrylic" },
      board,
      { name: "panel", thickness: 4, material: { species: "white ash" } },
      { name: "felt", thickness: 1, material: { expansion: 1e-5 } },
      { name: "print", thickness: 0.2 },
    ];
    const { parts, mass } = materialsOf({ contents });
    expect(parts.map(({ name, layer, density }) => [name, layer, density])).toEqual([
      ["molding", null, null],
      ["pane", 0, 2500],
      ["sheet", 1, 1190],
      ["board", 2, 750],
      ["panel", 3, woodDensity({ species: "white ash", moisture: 8 })],
      ["felt", 4, null],
      ["print", 5, null],
    ]);
    const known = parts.flatMap((part) => part.mass ?? []);
    expect(known).toHaveLength(4);
    expect(mass).toEqual({
      total: known.reduce((sum, one) => sum + one, 0),
      complete: false,
      missing: ["molding", "felt", "print"],
    });
  });

  test("is whole when all of it is known, and not known when none is", () => {
    expect(materialsOf({ species: "white ash", contents: [pane] }).mass).toMatchObject({ complete: true, missing: [] });
    expect(materialsOf({}).mass).toEqual({ total: null, complete: false, missing: ["molding"] });
  });

  test("of a wood without a specific gravity is not known, nor is anything of a molding without a section", () => {
    const wood = materialsOf({ species: { radial: 4, tangential: 8 } }).parts[0]!;
    expect(wood.volume).toBeGreaterThan(0);
    expect(wood).toMatchObject({ density: null, mass: null });
    const { parts, lumber } = planFrame({
      sides: 5,
      measured: { levelWidth: 40 },
      opening: { side: 300 },
      species: "white ash",
    }).materials;
    expect(lumber).toBeNull();
    expect(parts[0]).toMatchObject({ volume: null, mass: null });
  });

  test("where the clearance leaves nothing, nothing goes in", () => {
    const { parts } = materialsOf({ profile: plain, opening: { side: 40 }, clearance: 40, contents: [pane] });
    expect(parts[1]).toMatchObject({ volume: null, mass: null, density: 2500 });
  });
});

describe("cost", () => {
  const per = (amount: number, unit: CostUnit): Cost => ({ amount, per: unit });
  const near = (value: number): number => expect.closeTo(value, 10) as number;

  test("of molding by its length or its lumber", () => {
    const { moldingLength, lumber } = materialsOf({});
    const totalOf = (unit: CostUnit): number => materialsOf({ cost: per(10, unit) }).parts[0]!.cost!.total!;
    expect(totalOf("meter")).toBeCloseTo(moldingLength / 100, 10);
    expect(totalOf("foot")).toBeCloseTo(moldingLength / 30.48, 10);
    expect(totalOf("cubic-meter")).toBeCloseTo(10 * lumber!.cubicMeters, 12);
    expect(totalOf("board-foot")).toBeCloseTo(10 * lumber!.boardFeet, 12);
  });

  test("of molding by hand: four sides of 300 mm of a molding of 50 by 20 mm, cut with a kerf of 0", () => {
    // A flat square with an opening of 200 mm and a width of 50 mm has long points of 300 mm: four pieces use up 1200 mm.
    const square = { sides: 4, profile: molding({ width: 50, thickness: 20 }), opening: { side: 200 }, kerf: 0 };
    const costOf = (cost: Cost): unknown => planFrame({ ...square, cost }).materials.parts[0]!.cost;
    expect(costOf(2.5)).toEqual({ quantity: 4, total: 10 });
    expect(costOf(0)).toEqual({ quantity: 4, total: 0 });
    expect(costOf(per(10, "meter"))).toEqual({ quantity: near(1.2), total: near(12) });
    // 1200 / 304.8
    const feet = 3.937007874015748;
    expect(costOf(per(3, "foot"))).toEqual({ quantity: near(feet), total: near(3 * feet) });
    // 1.2 m by 0.05 m by 0.02 m
    expect(costOf(per(1000, "cubic-meter"))).toEqual({
      quantity: near(0.0012),
      total: near(1.2),
    });
    // A board foot is 12 in by 12 in by 1 in: 0.002359737216 cubic meters.
    const boardFeet = 0.0012 / 0.002359737216;
    expect(costOf(per(8, "board-foot"))).toEqual({
      quantity: near(boardFeet),
      total: near(8 * boardFeet),
    });
  });

  test("of molding by the piece is the number times the sides, whatever the section", () => {
    const level = { sides: 7, measured: { levelWidth: 40 }, opening: { side: 300 } };
    const { cost, parts } = planFrame({ ...level, cost: 1.25 }).materials;
    expect(parts[0]!.cost).toEqual({ quantity: 7, total: 8.75 });
    expect(cost).toEqual({ total: 8.75, complete: true, missing: [] });
  });

  test("of a layer by hand: one, or by the area of a square of 200 mm", () => {
    const costOf = (cost: Cost, pieces = 4): unknown =>
      planOf({ sides: pieces, profile: plain, opening: { side: 200 }, contents: [{ ...pane, cost }] }).materials
        .parts[1]!.cost;
    expect(costOf(6.5)).toEqual({ quantity: 1, total: 6.5 });
    expect(costOf(6.5, 9)).toEqual({ quantity: 1, total: 6.5 });
    expect(costOf(per(50, "square-meter"))).toEqual({
      quantity: near(0.04),
      total: near(2),
    });
    // 200 mm is 200 / 304.8 ft.
    const squareFeet = 0.430556416668;
    expect(costOf(per(10, "square-foot"))).toEqual({
      quantity: near(squareFeet),
      total: near(10 * squareFeet),
    });
  });

  test("of a layer by area counts the upright box that it is cut from in its pose", () => {
    const costs: readonly Cost[] = [40, per(40, "square-meter"), per(40, "square-foot")];
    for (const pose of ["side-down", "corner-down"] as const) {
      const { materials, contents } = planOf({ pose, contents: costs.map((cost) => ({ ...pane, cost })) });
      const area = contents.box!.width * contents.box!.height;
      // A regular hexagon's box is across flats by across corners, either way up.
      expect(area).toBeCloseTo(contents.panel!.acrossFlats * contents.panel!.acrossCorners, 6);
      expect(materials.parts.slice(1).map((part) => part.cost!.quantity)).toEqual([
        1,
        expect.closeTo(area / 1e6, 12),
        expect.closeTo(area / 304.8 ** 2, 10),
      ]);
    }
  });

  test("of a layer that is cut from a given sheet counts the whole sheet", () => {
    const { materials } = planOf({
      opening: { cutFrom: { width: 500, height: 400 } },
      contents: [{ ...pane, cost: per(40, "square-meter") }],
    });
    expect(materials.parts[1]!.cost).toEqual({ quantity: 0.2, total: 8 });
  });

  test("says what it leaves out", () => {
    const { cost } = materialsOf({ cost: per(12, "meter"), contents: [pane, { ...board, cost: 5 }] });
    expect(cost!.complete).toBe(false);
    expect(cost!.missing).toEqual(["pane"]);
    expect(cost!.total).toBeCloseTo(5 + 12 * (materialsOf({}).moldingLength / 1000), 10);
    expect(materialsOf({ contents: [pane] }).cost).toBeNull();
  });

  test("by the board foot is not known where no section is", () => {
    const { cost, parts } = planFrame({
      sides: 5,
      measured: { levelWidth: 40 },
      opening: { side: 300 },
      cost: per(9, "board-foot"),
    }).materials;
    expect(parts[0]!.cost).toEqual({ quantity: null, total: null });
    expect(cost).toEqual({ total: null, complete: false, missing: ["molding"] });
  });

  test("of nothing is nothing", () => {
    for (const cost of [0, per(0, "meter")])
      expect(materialsOf({ cost }).cost).toEqual({ total: 0, complete: true, missing: [] });
  });

  test("is kept in the plan's brief as it was given, once", () => {
    const { brief } = planOf({
      cost: -0,
      contents: [
        { ...pane, cost: 6 },
        { ...board, cost: per(2, "square-meter") },
      ],
    });
    expect(brief.cost).toBe(0);
    expect(brief.contents.map(({ cost }) => cost)).toEqual([6, { amount: 2, per: "square-meter" }]);
  });
});

describe("laws", () => {
  /** A brief with every length multiplied. */
  function scaled(brief: ProfileBrief, k: number): ProfileBrief {
    const { profile, opening, contents = [] } = brief;
    const at = ({ x, y }: { x: number; y: number }): { x: number; y: number } => ({ x: k * x, y: k * y });
    const { apothem } = opening as { apothem: number };
    return {
      ...brief,
      profile: {
        outline: profile.outline.map(at),
        arrises: Object.fromEntries(Object.entries(profile.arrises).map(([name, point]) => [name, at(point)])),
      },
      opening: { apothem: k * apothem },
      contents: contents.map((layer) => ({ ...layer, thickness: k * layer.thickness })),
      kerf: 3 * k,
    };
  }

  const full = (brief: ProfileBrief): ProfileBrief => ({
    ...brief,
    kerf: 3,
    species: "white ash",
    cost: { amount: 3, per: "cubic-meter" },
    contents: [pane, { ...board, cost: { amount: 20, per: "square-meter" } }],
  });

  test("a frame k times as large has k³ times the volume and mass", () => {
    fc.assert(
      fc.property(briefs, fc.double({ min: 0.05, max: 20, noNaN: true }), (brief, k) => {
        const [one, other] = [full(brief), scaled(full(brief), k)].map((each) => planFrame(each).materials);
        one!.parts.forEach((part, index) => {
          expect(other!.parts[index]!.volume! / part.volume!).toBeCloseTo(k ** 3, 6);
          expect(other!.parts[index]!.mass! / part.mass! / k ** 3).toBeCloseTo(1, 9);
        });
        expect(other!.lumber!.boardFeet / one!.lumber!.boardFeet / k ** 3).toBeCloseTo(1, 9);
      }),
    );
  });

  test("the same frame in another unit weighs and costs the same", () => {
    fc.assert(
      fc.property(briefs, fc.constantFrom<LengthUnit>("cm", "m", "in", "ft"), (brief, unit) => {
        const one = planFrame(full(brief)).materials;
        const other = planFrame({ ...scaled(full(brief), convertLength(1, "mm", unit)), unit }).materials;
        one.parts.forEach((part, index) => {
          expect(other.parts[index]!.mass! / part.mass!).toBeCloseTo(1, 9);
          expect(other.parts[index]!.density).toBe(part.density);
        });
        expect(other.lumber!.boardFeet / one.lumber!.boardFeet).toBeCloseTo(1, 9);
        expect(other.cost!.total! / one.cost!.total!).toBeCloseTo(1, 9);
      }),
    );
  });

  test("the pose changes neither mass nor volume", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const of = (pose: "side-down" | "corner-down"): unknown =>
          planFrame({ ...full(brief), pose, cost: { amount: 1, per: "meter" } }).materials.parts.map(
            (part) => part.mass,
          );
        expect(of("side-down")).toEqual(of("corner-down"));
      }),
    );
  });
});

test("a pane of a square foot and a quarter of an inch weighs what the bulletin's pounds say", () => {
  // 156 lb/ft³ (technical bulletin ATS-129, 2013): 3.25 lb; the bulletin rounds 2500 kg/m³, which is 156.07 lb/ft³.
  const { parts } = planFrame({
    sides: 4,
    unit: "in",
    profile: molding({ width: 2, thickness: 1, rabbet: { width: 0.375, depth: 0.5 } }),
    opening: { side: 12 },
    contents: [{ name: "pane", thickness: 0.25, material: "glass" }],
  }).materials;
  expect(parts[1]!.mass! / POUND).toBeCloseTo(156 / 48, 1);
  expect(parts[1]!.mass! / POUND / (156 / 48)).toBeCloseTo(1, 3);
});

test("the smallest and the largest frames that can be told have masses, or say that they have none", () => {
  const numbers = (value: unknown): number[] =>
    typeof value === "number"
      ? [value]
      : typeof value === "object" && value !== null
        ? Object.values(value).flatMap(numbers)
        : [];
  for (const size of [1e-98, 1e-30, 1e30, 1e98]) {
    for (const unit of ["mm", "m", "ft"] as const) {
      const plan = planFrame(
        deepFreeze({
          sides: 1000,
          unit,
          profile: molding({ width: 5 * size, thickness: 2 * size, rabbet: { width: size, depth: size } }),
          opening: { side: 100 * size },
          contents: [
            {
              name: "pane",
              thickness: 100 * size,
              material: { density: 1e5 },
              cost: { amount: 1e12, per: "square-foot" },
            },
          ],
          species: "white ash",
          cost: { amount: 1e12, per: "cubic-meter" },
          hanging: { by: "wire", screwDepth: size },
        } as const),
      );
      expect(
        numbers([plan.materials, plan.hanging, plan.contents.stack]).filter((value) => !Number.isFinite(value)),
      ).toEqual([]);
      expect(throughJson(plan.materials)).toEqual(plan.materials);
    }
  }
});
