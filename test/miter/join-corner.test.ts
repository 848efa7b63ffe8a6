import { describe, expect, expectTypeOf, test } from "vitest";
import {
  compoundMiter,
  joinCorner,
  type Board,
  type Corner,
  type EndCut,
  type JoinCornerOptions,
} from "miterwright/miter";
import { exact, ulps, type Exact } from "../exact.js";
import { angleError, direction } from "./exact-angles.js";
import {
  commonPoint,
  componentsIn,
  dec,
  dihedralOf,
  inner,
  length,
  planeThrough,
  plus,
  settingFlat,
  type Slab,
  slabAt,
  type Space,
  times,
} from "./space.js";
import { HARD_CORNERS } from "./hard-cases.js";

const UP: Space = [dec(0), dec(0), dec(1)];

/** The two boards of a corner as slabs in space, headed half a turn to either side of x. */
function slabs(turn: number, first: Board, second: Board): readonly [Slab, Slab] {
  const half = exact(turn).div(2);
  const place = (heading: Exact, board: Board): Slab =>
    slabAt(heading, exact(board.slope), exact(board.thickness), dec(7));
  return [place(half.neg(), first), place(half, second)];
}

/** The plane through the line in which the faces meet and the line in which the backs meet. */
function planeAtFaces([a, b]: readonly [Slab, Slab]): Space {
  const at = (da: Exact, db: Exact, height: number): Space =>
    commonPoint([
      [a.axes.through, da],
      [b.axes.through, db],
      [UP, dec(height)],
    ]);
  return planeThrough(at(a.face, b.face, 0), at(a.face, b.face, 1), at(a.back, b.back, 0), a.axes.along);
}

/** The upright plane through the plan's crossings of the inner and of the outer edges. */
function planeAtEdges([a, b]: readonly [Slab, Slab], w1: number, w2: number): Space {
  const corner = (reach1: Exact, reach2: Exact): Space =>
    commonPoint([
      [a.outward, reach1.plus(7)],
      [b.outward, reach2.plus(7)],
      [UP, dec(0)],
    ]);
  const outer = corner(
    inner(a.axes.across, a.outward).times(exact(w1)),
    inner(b.axes.across, b.outward).times(exact(w2)),
  );
  const inside = corner(dec(0), dec(0));
  return planeThrough(inside, outer, plus(inside, UP), a.axes.along);
}

/** How far a cut is off a plane of space, over what is allowed for angles. */
function cutError(cut: EndCut, slab: Slab, normal: Space): number {
  const want = settingFlat(slab.axes, normal, cut.end);
  const axes = componentsIn(slab.axes, normal);
  // Components of a unit vector, each within 1e-15: less than an angle of 1e-13.
  const off = (["along", "across", "through"] as const).map((key) =>
    exact(cut.plane[key]).minus(axes[key]).abs().div(1e-15).toNumber(),
  );
  return Math.max(angleError(cut.miter, want.miter), angleError(cut.bevel, want.bevel), ...off);
}

/** The worst error of a corner against one joint plane. */
function cornerError(corner: Corner, pair: readonly [Slab, Slab], normal: Space): number {
  return Math.max(
    cutError(corner.first, pair[0], normal),
    cutError(corner.second, pair[1], times(normal, dec(-1))),
    angleError(corner.dihedral, dihedralOf(pair[0].axes, pair[1].axes)),
  );
}

/**
 * The angles of unequal boards come from signed sums, for which 6 units in the last place of their terms are allowed: with terms
 * as long as the normal itself that is 6 * 2^-52 of a radian, 7.6e-14 degrees. Twice the bound of plain angles, 2e-14, is enough.
 */
const ENOUGH = 2;

const TURNS = [-135, -1, 3, 60, 90, 144, 179];

describe("joinCorner at faces against slabs in space, 60 digits", () => {
  test.each(HARD_CORNERS)("$why", ({ turn, first, second }) => {
    const pair = slabs(turn, first, second);
    expect(cornerError(joinCorner({ turn, first, second }), pair, planeAtFaces(pair))).toBeLessThanOrEqual(ENOUGH);
  });

  test("a dihedral near 0 keeps its digits", () => {
    // An odd number and an even number of last places below 90: the sum of the slopes is no double.
    const lastPlace = 64 * Number.EPSILON;
    const first = { slope: 90 - 100_001 * lastPlace, thickness: 18 };
    const second = { slope: 90 - 2 * lastPlace, thickness: 12 };
    const turn = 180 - 1e-9;
    const [a, b] = slabs(turn, first, second);
    expect(ulps(joinCorner({ turn, first, second }).dihedral, dihedralOf(a.axes, b.axes))).toBeLessThanOrEqual(6);
  });

  test("a grid of turns, slopes and thicknesses", () => {
    const errors: number[] = [];
    for (const turn of TURNS) {
      for (const [s1, s2] of [
        [60, 60],
        [60, 45],
        [12, 80],
        [90, 70],
        [-50, -20],
        [1, 2],
      ] as const) {
        for (const [t1, t2] of [
          [18, 18],
          [18, 12],
          [3, 40],
        ] as const) {
          const first = { slope: s1, thickness: t1 };
          const second = { slope: s2, thickness: t2 };
          const pair = slabs(turn, first, second);
          errors.push(cornerError(joinCorner({ turn, first, second }), pair, planeAtFaces(pair)));
        }
      }
    }
    expect(Math.max(...errors)).toBeLessThanOrEqual(ENOUGH);
  });
});

describe("joinCorner at edges against the plan, 60 digits", () => {
  test("a grid of turns, slopes and widths", () => {
    const errors: number[] = [];
    for (const turn of TURNS) {
      for (const [s1, s2] of [
        [0, 0],
        [60, 45],
        [12, 80],
        [-50, -20],
        [1, 1],
      ] as const) {
        for (const [w1, w2] of [
          [60, 80],
          [60, 60],
          [60, 60.001],
          [5, 300],
        ] as const) {
          const first = { slope: s1, thickness: 20, width: w1 };
          const second = { slope: s2, thickness: 15, width: w2 };
          const pair = slabs(turn, first, second);
          const corner = joinCorner({ turn, first, second, meet: "edges" });
          errors.push(cornerError(corner, pair, planeAtEdges(pair, w1, w2)));
        }
      }
    }
    expect(Math.max(...errors)).toBeLessThanOrEqual(ENOUGH);
  });

  test("rails of 60 between stiles of 80 have the arc tangents of 4/3 and 3/4", () => {
    const corner = joinCorner({
      turn: 90,
      first: { slope: 0, thickness: 20, width: 60 },
      second: { slope: 0, thickness: 20, width: 80 },
    });
    expect(angleError(corner.first.miter, direction(dec(4), dec(3)))).toBeLessThanOrEqual(1);
    expect(angleError(corner.second.miter, direction(dec(3), dec(4)))).toBeLessThanOrEqual(1);
    expect([corner.first.bevel, corner.second.bevel, corner.dihedral]).toStrictEqual([0, 0, 180]);
    expect(corner.first.plane).toStrictEqual({ along: 0.6, across: -0.8, through: 0 });
    expect(corner.second.plane).toStrictEqual({ along: -0.8, across: -0.6, through: 0 });
  });
});

describe("joinCorner in a butt joint against the surfaces it ends on, 60 digits", () => {
  /** A surface's normal, as it points out of the board that is cut along it. */
  const outOf = (surface: Space, along: Space, sign: number): Space =>
    times(surface, dec(inner(surface, along).times(sign).isNegative() ? -1 : 1).div(length(surface)));

  const check = (
    meet: "faces" | "edges",
    surface: "through" | "across",
    slopes: readonly (readonly [number, number])[],
  ) => {
    const errors: number[] = [];
    for (const turn of TURNS) {
      for (const [s1, s2] of slopes) {
        const first = { slope: s1, thickness: 18 };
        const second = { slope: s2, thickness: 12 };
        const [a, b] = slabs(turn, first, second);
        const corner = joinCorner({ turn, first, second, joint: "butt", meet });
        errors.push(
          cutError(corner.first, a, outOf(b.axes[surface], a.axes.along, 1)),
          cutError(corner.second, b, outOf(a.axes[surface], b.axes.along, -1)),
          angleError(corner.dihedral, dihedralOf(a.axes, b.axes)),
        );
      }
    }
    expect(Math.max(...errors)).toBeLessThanOrEqual(ENOUGH);
  };

  test("at faces: the second board's face, and flush with the first one's", () => {
    check("faces", "through", [
      [90, 90],
      [60, 60],
      [60, 45],
      [12, 80],
      [-50, -20],
      [1, 2],
    ]);
  });

  test("at edges: the second board's inner edge, and flush with the first one's outer edge", () => {
    check("edges", "across", [
      [0, 0],
      [60, 60],
      [12, 80],
      [-50, -20],
    ]);
  });

  test("a box and a flat frame with square corners are cut square to the bit", () => {
    for (const slope of [0, 90]) {
      const board = { slope, thickness: 18 };
      const { first, second } = joinCorner({ turn: 90, first: board, second: board, joint: "butt" });
      const square = { miter: 0, bevel: 0, slope };
      expect(first).toStrictEqual({ ...square, end: "end", plane: { along: 1, across: 0, through: 0 } });
      expect(second).toStrictEqual({ ...square, end: "start", plane: { along: -1, across: 0, through: 0 } });
    }
  });
});

test("a square box of two thicknesses has their ratio for tangent, exactly", () => {
  const { first, second } = joinCorner({
    turn: 90,
    first: { slope: 90, thickness: 12 },
    second: { slope: 90, thickness: 9 },
  });
  expect(first.plane).toStrictEqual({ along: 0.8, across: 0, through: 0.6 });
  expect(second.plane).toStrictEqual({ along: -0.6, across: 0, through: 0.8 });
});

describe("joinCorner of equal boards", () => {
  const alike: readonly (readonly [what: string, options: JoinCornerOptions])[] = [
    ["a flat frame", both(90, { slope: 0, thickness: 20 })],
    ["a flat frame of two thicknesses", pair(60, { slope: 0, thickness: 20 }, { slope: 0, thickness: 12 })],
    ["a flat frame that meets at faces", { ...both(72, { slope: 0, thickness: 20 }), meet: "faces" }],
    ["a splayed frame", both(72, { slope: 37, thickness: 20 })],
    [
      "a splayed frame of two widths, at faces",
      pair(72, { slope: 37, thickness: 20, width: 50 }, { slope: 37, thickness: 20, width: 70 }),
    ],
    [
      "a splayed frame of two thicknesses, at edges",
      { ...pair(72, { slope: 37, thickness: 20, width: 50 }, { slope: 37, thickness: 12, width: 50 }), meet: "edges" },
    ],
    ["a box", both(120, { slope: 90, thickness: 20 })],
    ["a reversed frame", both(45, { slope: -37, thickness: 20 })],
    ["a reflex corner", both(-90, { slope: 37, thickness: 20 })],
  ];
  test.each(alike)("%s has the compound miter to the bit", (_, options) => {
    const { miter, bevel, dihedral } = compoundMiter({ turn: options.turn, slope: options.first.slope });
    const corner = joinCorner(options);
    expect(corner.first).toMatchObject({ miter, bevel, slope: options.first.slope, end: "end" });
    expect(corner.second).toMatchObject({ miter, bevel, slope: options.first.slope, end: "start" });
    expect(corner.dihedral).toBe(dihedral);
  });

  test("at a turn of 0 boards of one slope are cut square, however thick and wide", () => {
    for (const slope of [-90, -20, 0, 45, 90]) {
      for (const options of [{}, { joint: "butt" }, { meet: "faces" }, { meet: "edges" }] as const) {
        const corner = joinCorner({
          ...pair(0, { slope, thickness: 20, width: 3 }, { slope, thickness: 12 }),
          ...options,
        });
        const square = { miter: 0, bevel: 0, slope, planMiter: 0 };
        expect(corner).toStrictEqual({
          first: { ...square, end: "end", plane: { along: 1, across: 0, through: 0 } },
          second: { ...square, end: "start", plane: { along: -1, across: 0, through: 0 } },
          dihedral: 180,
        });
      }
    }
  });

  test("half of the smallest negative turn is no -0", () => {
    const straight = joinCorner(both(0, { slope: 0, thickness: 20 }));
    expect(joinCorner(both(-5e-324, { slope: 0, thickness: 20 }))).toStrictEqual(straight);
  });
});

function pair(turn: number, first: Board, second: Board): JoinCornerOptions {
  return { turn, first, second };
}

function both(turn: number, board: Board): JoinCornerOptions {
  return pair(turn, board, board);
}

describe("joinCorner refuses corners that cannot be made", () => {
  const board = (slope: number, more: Partial<Board> = {}): Board => ({ slope, thickness: 18, ...more });
  const cases: readonly (readonly [options: JoinCornerOptions, path: string, message: string])[] = [
    [
      pair(90, board(0), board(10)),
      "second.slope",
      "Expected `second.slope` to be 0 like `first.slope`, as a flat board and a sloping one share no joint line, got 10 (number)",
    ],
    [
      pair(90, board(10), board(0)),
      "second.slope",
      "Expected `second.slope` to be above 0 like `first.slope`, as a flat board and a sloping one share no joint line, got 0 (number)",
    ],
    [
      { ...pair(90, board(0), board(90)), joint: "butt" },
      "second.slope",
      "Expected `second.slope` to be 0 like `first.slope`, as a flat board and a sloping one share no joint line, got 90 (number)",
    ],
    [
      pair(90, board(10), board(-10)),
      "second.slope",
      "Expected `second.slope` to be above 0 like `first.slope`, as boards that slope opposite ways share no joint line, got -10 (number)",
    ],
    [
      pair(90, board(-10), board(10)),
      "second.slope",
      "Expected `second.slope` to be below 0 like `first.slope`, as boards that slope opposite ways share no joint line, got 10 (number)",
    ],
    [
      pair(0, board(10), board(20)),
      "second.slope",
      "Expected `second.slope` to be 10 like `first.slope`, as sides that run straight on meet at no corner, got 20 (number)",
    ],
    [
      { ...pair(90, board(0), board(0, { thickness: 12 })), meet: "faces" },
      "second.thickness",
      "Expected `second.thickness` to be 18 like `first.thickness`, as flat boards of two thicknesses meet at edges only, got 12 (number)",
    ],
    [
      { ...both(90, board(0)), joint: "butt", meet: "faces" },
      "meet",
      'Expected `meet` to be "edges" for a butt joint of flat boards, as their faces look up, got "faces" (string)',
    ],
    [
      { ...both(90, board(90)), meet: "edges" },
      "first.slope",
      "Expected `first.slope` to be between -90 and 90 to meet at edges, as an upright board shows none from above, got 90 (number)",
    ],
    [
      { ...pair(90, board(-20), board(-90)), meet: "edges" },
      "second.slope",
      "Expected `second.slope` to be between -90 and 90 to meet at edges, as an upright board shows none from above, got -90 (number)",
    ],
    [
      pair(1e-200, board(1e-200), board(2e-200)),
      "turn",
      "Expected the boards to meet at an angle, but at a `turn` of 1e-200 their joint runs along them without end",
    ],
    [
      pair(90, board(45), board(5e-324)),
      "turn",
      "Expected the boards to meet at an angle, but at a `turn` of 90 their joint runs along them without end",
    ],
    [
      pair(90, board(5e-324), board(45)),
      "turn",
      "Expected the boards to meet at an angle, but at a `turn` of 90 their joint runs along them without end",
    ],
  ];
  test.each(cases)("%o", (options, path, message) => {
    expect(() => joinCorner(options)).toThrow(
      expect.objectContaining({ name: "InputError", code: "impossible", path, message }) as Error,
    );
  });
});

describe("joinCorner refuses", () => {
  const board = { slope: 45, thickness: 18 };
  const cases: readonly (readonly [given: unknown, code: string, path: string, message: string])[] = [
    [null, "type", "options", "Expected `options` to be an object, got null"],
    [
      { first: board, second: board },
      "missing",
      "turn",
      "Expected `turn` to be a number between -180 and 180, bounds excluded, got undefined",
    ],
    [
      { turn: 180, first: board, second: board },
      "range",
      "turn",
      "Expected `turn` to be a number between -180 and 180, bounds excluded, got 180 (number)",
    ],
    [{ turn: 90, second: board }, "missing", "first", "Expected `first` to be an object, got undefined"],
    [{ turn: 90, first: board, second: 5 }, "type", "second", "Expected `second` to be an object, got 5 (number)"],
    [
      { turn: 90, first: { ...board, slope: 91 }, second: board },
      "range",
      "first.slope",
      "Expected `first.slope` to be degrees from -90 to 90, got 91 (number)",
    ],
    [
      { turn: 90, first: board, second: { slope: 45 } },
      "missing",
      "second.thickness",
      "Expected `second.thickness` to be a positive length (1e-100 to 1e100), got undefined",
    ],
    [
      { turn: 90, first: { ...board, width: 0 }, second: board },
      "range",
      "first.width",
      "Expected `first.width` to be a positive length (1e-100 to 1e100), got 0 (number)",
    ],
    [
      { turn: 90, first: { slope: 0, thickness: 18, width: 60 }, second: { slope: 0, thickness: 18 } },
      "missing",
      "second.width",
      "Expected `second.width` to be a positive length (1e-100 to 1e100), got undefined",
    ],
    [
      { turn: 90, first: board, second: { slope: 60, thickness: 18 }, meet: "edges" },
      "missing",
      "first.width",
      "Expected `first.width` to be a positive length (1e-100 to 1e100), got undefined",
    ],
    [
      { turn: 90, first: board, second: board, joint: "dovetail" },
      "unknown",
      "joint",
      'Expected `joint` to be one of "miter", "butt", got "dovetail" (string)',
    ],
    [
      { turn: 90, first: board, second: board, meet: null },
      "type",
      "meet",
      'Expected `meet` to be one of "faces", "edges", got null',
    ],
  ];
  test.each(cases)("%o", (given, code, path, message) => {
    expect(() => joinCorner(given as JoinCornerOptions)).toThrow(
      expect.objectContaining({ name: "InputError", code, path, message }) as Error,
    );
  });
});

test("the types of joinCorner", () => {
  expectTypeOf(joinCorner).returns.toEqualTypeOf<Corner>();
  expectTypeOf<Corner["first"]>().toEqualTypeOf<EndCut>();
  expectTypeOf({ turn: 90, first: { slope: 0, thickness: 1 } }).not.toExtend<JoinCornerOptions>();
  expectTypeOf({ slope: 0, width: 1 }).not.toExtend<Board>();
  expectTypeOf<NonNullable<JoinCornerOptions["joint"]>>().toEqualTypeOf<"miter" | "butt">();
  expectTypeOf<NonNullable<JoinCornerOptions["meet"]>>().toEqualTypeOf<"faces" | "edges">();
});

test("boards whose joint would run along them without end are refused with the reason", () => {
  const nearlyFlat = (slope: number, thickness: number): { slope: number; thickness: number } => ({ slope, thickness });
  expect(() => joinCorner({ turn: 90, first: nearlyFlat(5e-324, 1e-100), second: nearlyFlat(1e-300, 1e100) })).toThrow(
    "Expected the boards to meet at an angle, but at a `turn` of 90 their joint runs along them without end",
  );
});

/** Every number in a result, with its path. */
function numbersOf(value: unknown, path = ""): (readonly [path: string, value: number])[] {
  if (typeof value === "number") return [[path, value]];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersOf(inner, `${path}.${key}`));
}

describe("a plane crosses its board, or is refused", () => {
  const nearlyFlat = (slope: number, thickness: number): Board => ({ slope, thickness, width: thickness });

  test("slopes so far apart that the normal has nothing left along the board are refused", () => {
    const options = { turn: 1e-100, first: nearlyFlat(1e-240, 1e-100), second: nearlyFlat(30, 1e100) };
    for (const given of [options, { ...options, first: options.second, second: options.first }]) {
      expect(() => joinCorner(given)).toThrow(
        "Expected the boards to meet at an angle, but at a `turn` of 1e-100 their joint runs along them without end",
      );
    }
  });

  test("near 0 no number is -0, and none along the board is 0", () => {
    const tiny = [5e-324, 1e-320, 1e-300, 1e-252, 1e-251, 1e-250, 1e-160, 1e-30, 1e-8];
    const steep = [...tiny, 30, 60, 90];
    const turns = [...tiny, 90, 120, 179.99999999999997].flatMap((turn) => [turn, -turn]);
    const sizes = [
      [18, 12],
      [1e-100, 1e100],
      [1e100, 1e-100],
    ] as const;
    let made = 0;
    for (const turn of turns) {
      for (const a of tiny) {
        for (const b of steep) {
          for (const [t1, t2] of sizes) {
            for (const sign of [1, -1]) {
              const given = { turn, first: nearlyFlat(sign * a, t1), second: nearlyFlat(sign * b, t2) };
              let corner: Corner;
              try {
                corner = joinCorner(given);
              } catch (error) {
                expect((error as Error).name).toBe("InputError");
                continue;
              }
              made++;
              const wrong = numbersOf(corner).filter(
                ([path, value]) =>
                  !Number.isFinite(value) || Object.is(value, -0) || (value === 0 && path.endsWith(".along")),
              );
              if (wrong.length > 0) expect([given, wrong]).toEqual([given, []]);
            }
          }
        }
      }
    }
    expect(made).toBeGreaterThan(2500);
  });
});
