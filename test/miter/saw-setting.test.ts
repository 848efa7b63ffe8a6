import { describe, expect, expectTypeOf, test } from "vitest";
import {
  joinCorner,
  layRotation,
  sawSetting,
  type CutPlane,
  type EndCut,
  type Lay,
  type SawSetting,
  type SawSettingOptions,
} from "miterwright/miter";
import { D, exact, ulps, type Exact } from "../exact.js";
import { angleError, cosine, direction, sine } from "./exact-angles.js";
import { axesAt, dec, plus, settingFlat, type Space, times } from "./space.js";

const LAYS = ["propped", "flat", "face-down", "sight-edge-down", "outer-edge-down"] as const;

function cutOf(turn: number, slope: number): EndCut {
  const board = { slope, thickness: 18 };
  return joinCorner({ turn, first: board, second: board }).first;
}

describe("layRotation", () => {
  test("the named lays, as rotations away from the finished place", () => {
    expect(LAYS.map((lay) => layRotation(lay, 30))).toStrictEqual([0, 30, -150, -60, 120]);
    expect(LAYS.map((lay) => layRotation(lay, -30))).toStrictEqual([0, -30, -210, -120, 60]);
    expect(LAYS.map((lay) => layRotation(lay, 0))).toStrictEqual([0, 0, -180, -90, 90]);
    expect(LAYS.map((lay) => layRotation(lay, 90))).toStrictEqual([0, 90, -90, 0, 180]);
  });

  test("a number is its own rotation", () => {
    expect(layRotation(12.5, 30)).toBe(12.5);
    expect(layRotation(-0, 30)).toBe(0);
    expect(layRotation("flat", -0)).toBe(0);
  });
});

describe("sawSetting where the answer is known", () => {
  test("a four-sided frame at 45 degrees, in every lay", () => {
    const cut = cutOf(90, 45);
    const third = (Math.atan(Math.SQRT1_2) * 180) / Math.PI;
    const settings = LAYS.map((lay) => sawSetting(cut, lay));
    // Face down, the sight edge lies the farther out and is the shorter; the back is the upper side and the longer.
    const want = [
      [45, 0],
      [third, 30],
      [-third, -30],
      [third, -30],
      [-third, 30],
    ];
    settings.forEach(({ miter, bevel }, i) => {
      expect(miter).toBeCloseTo(want[i]![0]!, 12);
      expect(bevel).toBe(want[i]![1]!);
    });
  });

  test("propped, equal boards have half the turn and no bevel, to the bit, and from JSON too", () => {
    for (const turn of [360 / 3, 360 / 4, 360 / 6, 360 / 7, 360 / 97, -72, 1e-9]) {
      for (const slope of [-90, -75, -45, -1e-300, 0, 1e-9, 5, 35, 45, 60, 89.9, 90]) {
        const board = { slope, thickness: 18, width: 40 };
        const { first, second } = joinCorner({ turn, first: board, second: board });
        for (const cut of [first, second, JSON.parse(JSON.stringify(first)) as EndCut]) {
          expect(sawSetting(cut, "propped")).toStrictEqual({ miter: turn / 2, bevel: 0 });
          expect(sawSetting(cut, 0)).toStrictEqual({ miter: turn / 2, bevel: 0 });
          expect(sawSetting(cut, 180)).toStrictEqual({ miter: -turn / 2, bevel: 0 });
          expect(sawSetting(cut, 90)).toStrictEqual({ miter: 0, bevel: turn / 2 });
          expect(sawSetting(cut, -90)).toStrictEqual({ miter: 0, bevel: -turn / 2 });
        }
      }
    }
  });

  test("a flat frame's stick has half the turn on its face too, and all of it as bevel on its edge", () => {
    const cut = cutOf(60, 0);
    expect(LAYS.map((lay) => sawSetting(cut, lay))).toStrictEqual([
      { miter: 30, bevel: 0 },
      { miter: 30, bevel: 0 },
      { miter: -30, bevel: 0 },
      { miter: 0, bevel: -30 },
      { miter: 0, bevel: 30 },
    ]);
  });

  test("of equal boards every setting is within 6 units in the last place, however the stick lies", () => {
    const errors: number[] = [];
    for (const turn of [360 / 3, 90, 360 / 7, 1, -60]) {
      for (const slope of [-80, -45, -1e-12, 1e-300, 1e-9, 20, 45, 52, 90 - 1e-9]) {
        const cut = cutOf(turn, slope);
        const [cos, sin] = [cosine(exact(slope)), sine(exact(slope))];
        // The cosine and sine of slope - 180, slope - 90 and slope + 90; a small slope would be rounded away beside them.
        const rolls: readonly (readonly [Lay, Exact, Exact])[] = [
          ["face-down", cos.neg(), sin.neg()],
          ["sight-edge-down", sin, cos.neg()],
          ["outer-edge-down", sin.neg(), cos],
          ...[22.5, -150, 300, 1e-9].map((lay) => [lay, cosine(exact(lay)), sine(exact(lay))] as const),
        ];
        for (const [lay, cosRoll, sinRoll] of rolls) {
          const { miter, bevel } = sawSetting(cut, lay);
          const half = exact(turn).div(2);
          const [plan, up] = [cosRoll.times(sine(half)), sinRoll.times(sine(half))];
          errors.push(ulps(miter, direction(plan, cosine(half))));
          errors.push(ulps(bevel, direction(up, D.sqrt(cosine(half).pow(2).plus(plan.pow(2))))));
        }
      }
    }
    expect(Math.max(...errors)).toBeLessThanOrEqual(6);
  });

  test("without its plan miter a cut is taken from its plane", () => {
    const { planMiter, ...cut } = cutOf(60, 35);
    expect(planMiter).toBe(30);
    const { miter, bevel } = sawSetting(cut, "propped");
    expect(miter).toBeCloseTo(30, 12);
    expect(bevel).toBeCloseTo(0, 12);
  });

  test("lying flat gives what the cut records, to the bit", () => {
    for (const [turn, slope] of [
      [360 / 7, 0],
      [360 / 7, 33],
      [360 / 7, 90],
      [-360 / 11, -20],
    ] as const) {
      const cut = cutOf(turn, slope);
      expect(sawSetting(cut, "flat")).toStrictEqual({ miter: cut.miter, bevel: cut.bevel });
      expect(sawSetting(cut, slope)).toStrictEqual({ miter: cut.miter, bevel: cut.bevel });
    }
  });

  test("a named lay and its rotation are one", () => {
    for (const lay of LAYS) {
      const cut = cutOf(72, 37);
      const byName = sawSetting(cut, lay);
      const byAngle = sawSetting(cut, layRotation(lay, 37));
      expect(byAngle.miter).toBeCloseTo(byName.miter, 12);
      expect(byAngle.bevel).toBeCloseTo(byName.bevel, 12);
    }
  });

  test("only the direction of the normal counts", () => {
    const { plane } = cutOf(72, 37);
    const half = { along: plane.along / 2, across: plane.across / 2, through: plane.through / 2 };
    const options = { slope: 37, lay: "propped" } as const;
    expect(sawSetting(half, options)).toStrictEqual(sawSetting(plane, options));
    const tiny = { along: 3e-200, across: -4e-200, through: 5e-200 };
    const setting = sawSetting(tiny, { slope: 0, lay: "flat" });
    expect(setting.miter).toBeCloseTo((Math.atan2(4, 3) * 180) / Math.PI, 12);
    expect(setting.bevel).toBeCloseTo(45, 12);
  });
});

describe("sawSetting against a stick that is rolled in space, 60 digits", () => {
  const table = axesAt(dec(0), dec(0));

  /** A cut's normal, carried along as the stick is rolled over the table. */
  function rolled(plane: CutPlane, tilt: number): Space {
    const lying = axesAt(dec(0), exact(tilt));
    const carry = (key: keyof CutPlane): Space => times(lying[key], exact(plane[key]));
    return plus(plus(carry("along"), carry("across")), carry("through"));
  }

  const tilts: Record<(typeof LAYS)[number], (slope: number) => number> = {
    propped: (slope) => slope,
    flat: () => 0,
    "face-down": () => 180,
    "sight-edge-down": () => 90,
    "outer-edge-down": () => -90,
  };
  const corners = [
    { turn: 90, first: { slope: 52, thickness: 18 }, second: { slope: 52, thickness: 18 } },
    { turn: 72, first: { slope: 60, thickness: 18 }, second: { slope: 45, thickness: 12 } },
    { turn: 120, first: { slope: -30, thickness: 18 }, second: { slope: -75, thickness: 18 } },
    { turn: 45, first: { slope: 90, thickness: 18 }, second: { slope: 90, thickness: 30 } },
    { turn: -60, first: { slope: 1e-9, thickness: 18 }, second: { slope: 90 - 1e-9, thickness: 18 } },
  ];
  test.each(LAYS)("%s", (lay) => {
    for (const options of corners) {
      const { first, second } = joinCorner(options);
      for (const cut of [first, second]) {
        const want = settingFlat(table, rolled(cut.plane, tilts[lay](cut.slope)), cut.end);
        const got = sawSetting(cut, lay);
        // Two products summed: 6 units in the last place of 1 are 7.6e-14 degrees; the plane itself is rounded besides.
        expect(angleError(got.miter, want.miter)).toBeLessThanOrEqual(3);
        expect(angleError(got.bevel, want.bevel)).toBeLessThanOrEqual(3);
      }
    }
  });
});

describe("sawSetting refuses", () => {
  const cut = cutOf(90, 45);
  const { plane } = cut;
  const lays = '"propped", "flat", "face-down", "sight-edge-down", "outer-edge-down"';
  const cases: readonly (readonly [
    what: string,
    cut: unknown,
    lay: unknown,
    code: string,
    path: string,
    message: string,
  ])[] = [
    [
      "a lay nobody knows",
      cut,
      "upside-down",
      "unknown",
      "lay",
      `Expected \`lay\` to be one of ${lays}, got "upside-down" (string)`,
    ],
    ["no lay", cut, undefined, "missing", "lay", `Expected \`lay\` to be one of ${lays}, got undefined`],
    ["null for a lay", cut, null, "type", "options", "Expected `options` to be an object, got null"],
    [
      "a lay beyond a full turn",
      cut,
      361,
      "range",
      "lay",
      "Expected `lay` to be degrees from -360 to 360, got 361 (number)",
    ],
    ["NaN", cut, NaN, "range", "lay", "Expected `lay` to be degrees from -360 to 360, got NaN (number)"],
    [
      "options without a lay",
      plane,
      { slope: 45 },
      "missing",
      "lay",
      `Expected \`lay\` to be one of ${lays}, got undefined`,
    ],
    [
      "options without a slope",
      plane,
      { lay: "flat" },
      "missing",
      "slope",
      "Expected `slope` to be degrees from -90 to 90, got undefined",
    ],
    [
      "a plane where a cut belongs",
      plane,
      "flat",
      "missing",
      "cut.slope",
      "Expected `cut.slope` to be degrees from -90 to 90, got undefined",
    ],
    [
      "a cut without a plane",
      { ...cut, plane: undefined },
      "propped",
      "missing",
      "cut.plane",
      "Expected `cut.plane` to be an object, got undefined",
    ],
    [
      "a plan miter beyond a right angle",
      { ...cut, planMiter: 91 },
      "propped",
      "range",
      "cut.planMiter",
      "Expected `cut.planMiter` to be degrees from -90 to 90, got 91 (number)",
    ],
    [
      "a cut without a miter",
      { ...cut, miter: undefined },
      "flat",
      "missing",
      "cut.miter",
      "Expected `cut.miter` to be degrees from -90 to 90, got undefined",
    ],
    [
      "a cut that leans too far",
      { ...cut, bevel: 91 },
      "flat",
      "range",
      "cut.bevel",
      "Expected `cut.bevel` to be degrees from -90 to 90, got 91 (number)",
    ],
    ["no plane", 5, { slope: 45, lay: "flat" }, "type", "plane", "Expected `plane` to be an object, got 5 (number)"],
    ["no cut", null, "flat", "type", "cut", "Expected `cut` to be an object, got null"],
    [
      "a component too long",
      { ...plane, across: -1.5 },
      { slope: 45, lay: "flat" },
      "range",
      "across",
      "Expected `across` to be a number from -1 to 1, got -1.5 (number)",
    ],
    [
      "a component missing",
      { ...cut, plane: { along: 1, across: 0 } },
      "propped",
      "missing",
      "cut.plane.through",
      "Expected `cut.plane.through` to be a number from -1 to 1, got undefined",
    ],
    [
      "a plane along the stick",
      { along: 0, across: 1, through: 0 },
      { slope: 45, lay: "flat" },
      "range",
      "along",
      "Expected `along` not to be 0: such a plane never crosses the stick",
    ],
    [
      "a cut along the stick",
      { ...cut, plane: { along: 0, across: 1, through: 0 } },
      "flat",
      "range",
      "cut.plane.along",
      "Expected `cut.plane.along` not to be 0: such a plane never crosses the stick",
    ],
  ];
  test.each(cases)("%s", (_, given, lay, code, path, message) => {
    expect(() => sawSetting(given as EndCut, lay as Lay)).toThrow(
      expect.objectContaining({ name: "InputError", code, path, message }) as Error,
    );
  });

  test("layRotation: a slope or a lay out of range", () => {
    expect(() => layRotation("flat", 91)).toThrow("Expected `slope` to be degrees from -90 to 90, got 91 (number)");
    expect(() => layRotation(-361, 0)).toThrow("Expected `lay` to be degrees from -360 to 360, got -361 (number)");
    expect(() => layRotation("back" as Lay, 0)).toThrow(`Expected \`lay\` to be one of ${lays}, got "back" (string)`);
  });
});

test("the types of sawSetting", () => {
  expectTypeOf(sawSetting).returns.toEqualTypeOf<SawSetting>();
  expectTypeOf<(typeof LAYS)[number] | number>().toEqualTypeOf<Lay>();
  expectTypeOf({ slope: 45 }).not.toExtend<SawSettingOptions>();
  const cut = cutOf(90, 45);
  // @ts-expect-error a plane does not know its slope
  expect(() => sawSetting(cut.plane, "flat")).toThrow();
  // @ts-expect-error no such lay
  expect(() => sawSetting(cut, "sideways")).toThrow();
});
