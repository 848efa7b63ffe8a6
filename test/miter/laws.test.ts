import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compoundMiter, joinCorner, layRotation, sawSetting, type Board, type EndCut } from "miterwright/miter";
import {
  anyCorner,
  anyLay,
  anySlope,
  anyTurn,
  directionInSpace,
  distance3,
  dot3,
  isClean,
  largestDifference,
  numbersIn,
  pointInSpace,
  sawnLength,
  sawnPlane,
  type Place,
  type StickPoint,
  type Vector3,
} from "../laws/miter.js";

const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);
const JOINTS = ["miter", "butt"] as const;
const MEETS = ["faces", "edges"] as const;
const MODES = JOINTS.flatMap((joint) => MEETS.map((meet) => ({ joint, meet })));

/** The cut of a regular corner. */
function regularCut(turn: number, slope: number, end: "first" | "second" = "first"): EndCut {
  const board = { slope, thickness: 1 };
  return joinCorner({ turn, first: board, second: board })[end];
}

describe("laws of one cut", () => {
  test("cos(miter) cos(bevel) = cos h in every lay", () => {
    fc.assert(
      fc.property(anyTurn, anySlope, anyLay, (turn, slope, lay) => {
        const { miter, bevel } = sawSetting(regularCut(turn, slope), lay);
        expect(cos(miter) * cos(bevel)).toBeCloseTo(cos(turn / 2), 13);
      }),
    );
  });

  test("cos(miter) cos(bevel) = |along| in every lay, whatever the boards", () => {
    fc.assert(
      fc.property(anyCorner, anyLay, fc.constantFrom(...MODES), (corner, lay, mode) => {
        const { first, second } = joinCorner({ ...corner, ...mode });
        for (const cut of [first, second]) {
          const { miter, bevel } = sawSetting(cut, lay);
          expect(cos(miter) * cos(bevel)).toBeCloseTo(Math.abs(cut.plane.along), 13);
          expect(Math.hypot(cut.plane.along, cut.plane.across, cut.plane.through)).toBeCloseTo(1, 14);
          expect(Math.sign(cut.plane.along)).toBe(cut.end === "end" ? 1 : -1);
        }
      }),
    );
  });

  test("the saw, set as told in any lay, cuts the plane that was asked for", () => {
    fc.assert(
      fc.property(anyCorner, anyLay, fc.constantFrom(...MODES), (corner, lay, mode) => {
        const { first, second } = joinCorner({ ...corner, ...mode });
        for (const cut of [first, second]) {
          const sawn = sawnPlane(sawSetting(cut, lay), layRotation(lay, cut.slope), cut.slope, cut.end);
          expect(sawn.along).toBeCloseTo(cut.plane.along, 12);
          expect(sawn.across).toBeCloseTo(cut.plane.across, 12);
          expect(sawn.through).toBeCloseTo(cut.plane.through, 12);
        }
      }),
    );
  });

  test("rolled by r, tan(miter) = cos r tan h and sin(bevel) = sin r sin h", () => {
    fc.assert(
      fc.property(anyTurn, anySlope, anyLay, (turn, slope, lay) => {
        const { miter, bevel } = sawSetting(regularCut(turn, slope), lay);
        const r = (layRotation(lay, slope) * Math.PI) / 180;
        const h = (turn * Math.PI) / 360;
        expect(miter).toBeCloseTo((Math.atan(Math.cos(r) * Math.tan(h)) * 180) / Math.PI, 10);
        expect(Math.sin((bevel * Math.PI) / 180)).toBeCloseTo(Math.sin(r) * Math.sin(h), 13);
      }),
    );
  });

  test("propped at its slope a stick needs the plan miter and no bevel", () => {
    fc.assert(
      fc.property(anyTurn, anySlope, (turn, slope) => {
        const { miter, bevel } = sawSetting(regularCut(turn, slope), "propped");
        expect(miter).toBeCloseTo(turn / 2, 11);
        expect(bevel).toBeCloseTo(0, 13);
      }),
    );
  });

  test("a cut that went through JSON is as good, and a plane as good as its cut", () => {
    fc.assert(
      fc.property(anyCorner, anyLay, (corner, lay) => {
        const { first } = joinCorner(corner);
        const copy = JSON.parse(JSON.stringify(first)) as EndCut;
        expect(sawSetting(copy, lay)).toStrictEqual(sawSetting(first, lay));
        const byPlane = sawSetting(first.plane, { slope: first.slope, lay });
        expect(byPlane.miter).toBeCloseTo(sawSetting(first, lay).miter, 11);
        expect(byPlane.bevel).toBeCloseTo(sawSetting(first, lay).bevel, 11);
      }),
    );
  });
});

describe("pieces sawn from settings alone close the ring", () => {
  test("the cut faces of neighbors in a regular frame coincide, in any lay", () => {
    const sides = fc.integer({ min: 3, max: 24 });
    const slope = fc.double({ min: -88, max: 88, noNaN: true });
    fc.assert(
      fc.property(sides, slope, anyLay, anyLay, (n, s, startLay, endLay) => {
        const [distance, width, thickness] = [1000, 90, 20];
        const half = distance * Math.tan(Math.PI / n);
        const end = regularCut(360 / n, s, "first");
        const start = regularCut(360 / n, s, "second");
        const endPlane = sawnPlane(sawSetting(end, endLay), layRotation(endLay, s), s, "end");
        const startPlane = sawnPlane(sawSetting(start, startLay), layRotation(startLay, s), s, "start");
        const here: Place = { heading: 0, slope: s, distance };
        const next: Place = { heading: 360 / n, slope: s, distance };
        for (const [across, through] of [
          [0, 0],
          [width, 0],
          [width, thickness],
          [0, thickness],
        ] as const) {
          const reach = sawnLength(endPlane, { along: half, across: 0, through: 0 }, across, through);
          const begin = sawnLength(startPlane, { along: -half, across: 0, through: 0 }, across, through);
          const gap = distance3(
            pointInSpace(here, { along: reach, across, through }),
            pointInSpace(next, { along: begin, across, through }),
          );
          expect(gap).toBeLessThan(1e-9 * distance);
        }
      }),
    );
  });

  /** Where three planes n.p = d meet, by Cramer's rule. */
  function meetingPoint(planes: readonly (readonly [Vector3, number])[]): Vector3 {
    const rows = planes.map(([n]) => n);
    const determinant = ([a, b, c]: readonly Vector3[]): number =>
      a![0] * (b![1] * c![2] - b![2] * c![1]) -
      a![1] * (b![0] * c![2] - b![2] * c![0]) +
      a![2] * (b![0] * c![1] - b![1] * c![0]);
    const whole = determinant(rows);
    const solve = (column: number): number => {
      const replaced = planes.map(([n, d]) => n.map((x, i) => (i === column ? d : x)) as unknown as Vector3);
      return determinant(replaced) / whole;
    };
    return [solve(0), solve(1), solve(2)];
  }

  test("unequal boards: both cuts lie in one plane, which holds the faces' line and the backs' line", () => {
    fc.assert(
      fc.property(anyCorner, anyLay, anyLay, (options, firstLay, secondLay) => {
        const { turn, first, second } = options;
        const corner = joinCorner(options);
        const a: Place = { heading: -turn / 2, slope: first.slope, distance: 500 };
        const b: Place = { heading: turn / 2, slope: second.slope, distance: 400 };
        const sawn = (cut: EndCut, lay: typeof firstLay, place: Place): Vector3 => {
          const plane = sawnPlane(sawSetting(cut, lay), layRotation(lay, cut.slope), cut.slope, cut.end);
          return directionInSpace(place, plane);
        };
        const normal = sawn(corner.first, firstLay, a);
        const facing = sawn(corner.second, secondLay, b);
        expect(dot3(normal, facing)).toBeCloseTo(-1, 12);

        const surface = (place: Place, through: number): readonly [Vector3, number] => {
          const n = directionInSpace(place, { along: 0, across: 0, through: 1 });
          return [n, dot3(n, pointInSpace(place, { along: 0, across: 0, through: 0 })) + through];
        };
        const level = (height: number): readonly [Vector3, number] => [[0, 0, 1], height];
        const face = [surface(a, first.thickness), surface(b, second.thickness)];
        const back = [surface(a, 0), surface(b, 0)];
        const held = [
          meetingPoint([...face, level(0)]),
          meetingPoint([...face, level(100)]),
          meetingPoint([...back, level(0)]),
          meetingPoint([...back, level(100)]),
        ];
        const far = Math.max(...held.map((p) => Math.hypot(...p)));
        for (const point of held)
          expect(Math.abs(dot3(normal, point) - dot3(normal, held[0]!))).toBeLessThan(1e-10 * far);
      }),
    );
  });

  test("flat boards of unequal width: the mitered edges meet inside and outside", () => {
    const width = fc.double({ min: 20, max: 120, noNaN: true });
    const turn = fc.double({ min: 10, max: 170, noNaN: true });
    fc.assert(
      fc.property(width, width, turn, (w1, w2, t) => {
        const flat = (w: number): Board => ({ slope: 0, thickness: 20, width: w });
        const { first, second } = joinCorner({ turn: t, first: flat(w1), second: flat(w2) });
        const a: Place = { heading: -t / 2, slope: 0, distance: 500 };
        const b: Place = { heading: t / 2, slope: 0, distance: 500 };
        // The inner edges meet where equal distances do: half the side of a regular polygon beyond the middle.
        const inside = 500 * Math.tan((t * Math.PI) / 360);
        const outer = (cut: EndCut, place: Place, w: number, along: number): Vector3 => {
          const plane = sawnPlane(cut, 0, 0, cut.end);
          const held: StickPoint = { along, across: 0, through: 0 };
          return pointInSpace(place, { along: sawnLength(plane, held, w, 0), across: w, through: 0 });
        };
        const gap = distance3(outer(first, a, w1, inside), outer(second, b, w2, -inside));
        expect(gap).toBeLessThan(1e-10 * (inside + 500));
      }),
    );
  });
});

describe("metamorphic laws", () => {
  test("mirrored, the two boards of a miter exchange their cuts", () => {
    fc.assert(
      fc.property(anyCorner, fc.constantFrom(...MEETS), ({ turn, first, second }, meet) => {
        const corner = joinCorner({ turn, first, second, meet });
        const mirrored = joinCorner({ turn, first: second, second: first, meet });
        const turnedRound = (cut: EndCut): EndCut => ({
          ...cut,
          end: cut.end === "end" ? "start" : "end",
          plane: { ...cut.plane, along: -cut.plane.along },
        });
        expect(largestDifference(mirrored.first, turnedRound(corner.second))).toBeLessThan(1e-11);
        expect(largestDifference(mirrored.second, turnedRound(corner.first))).toBeLessThan(1e-11);
        expect(mirrored.dihedral).toBeCloseTo(corner.dihedral, 11);
      }),
    );
  });

  test("thicknesses and widths count by their ratio alone", () => {
    fc.assert(
      fc.property(anyCorner, fc.constantFrom(...MODES), fc.integer({ min: -300, max: 300 }), (options, mode, power) => {
        const k = 2 ** power;
        const scaled = (board: Board & { readonly width: number }): Board => ({
          slope: board.slope,
          thickness: board.thickness * k,
          width: board.width * k,
        });
        const grown = { ...options, ...mode, first: scaled(options.first), second: scaled(options.second) };
        expect(joinCorner(grown)).toStrictEqual(joinCorner({ ...options, ...mode }));
      }),
    );
  });

  test("the other sign of slope leans every cut the other way and leaves the miters", () => {
    fc.assert(
      fc.property(anyCorner, fc.constantFrom(...MEETS), (options, meet) => {
        const over = (board: Board): Board => ({ ...board, slope: -board.slope });
        const corner = joinCorner({ ...options, meet });
        const other = joinCorner({ ...options, meet, first: over(options.first), second: over(options.second) });
        for (const key of ["first", "second"] as const) {
          expect(other[key].miter).toBeCloseTo(corner[key].miter, 11);
          expect(other[key].bevel).toBeCloseTo(-corner[key].bevel, 11);
        }
        expect(other.dihedral).toBeCloseTo(360 - corner.dihedral, 11);
      }),
    );
  });

  test("the other sign of turn changes the sign of every angle", () => {
    fc.assert(
      fc.property(anyCorner, fc.constantFrom(...MEETS), (options, meet) => {
        const corner = joinCorner({ ...options, meet });
        const other = joinCorner({ ...options, meet, turn: -options.turn });
        for (const key of ["first", "second"] as const) {
          expect(other[key].miter).toBeCloseTo(-corner[key].miter, 11);
          expect(other[key].bevel).toBeCloseTo(-corner[key].bevel, 11);
        }
        expect(other.dihedral).toBeCloseTo(360 - corner.dihedral, 11);
      }),
    );
  });

  test("boards that come to be equal come to have the compound miter", () => {
    fc.assert(
      fc.property(anyCorner, ({ turn, first }) => {
        const almost = { ...first, slope: first.slope * (1 + 1e-12), thickness: first.thickness * (1 + 1e-12) };
        const corner = joinCorner({ turn, first, second: almost });
        const { miter, bevel, dihedral } = compoundMiter({ turn, slope: first.slope });
        for (const cut of [corner.first, corner.second]) {
          expect(cut.miter).toBeCloseTo(miter, 6);
          expect(cut.bevel).toBeCloseTo(bevel, 6);
        }
        expect(corner.dihedral).toBeCloseTo(dihedral, 6);
      }),
    );
  });

  test("a number of sides is a turn of 360 / n", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 1e6 }), anySlope, (sides, slope) => {
        const bySides = compoundMiter({ sides, slope });
        expect(largestDifference(bySides, compoundMiter({ turn: 360 / sides, slope }))).toBeLessThan(1e-11);
      }),
    );
  });
});

test("no result holds NaN, an infinity or -0, and no input is touched", () => {
  const freeze = <T extends object>(value: T): T => {
    for (const part of Object.values(value)) if (typeof part === "object" && part !== null) freeze(part as object);
    return Object.freeze(value);
  };
  const turn = fc.double({ min: -180, minExcluded: true, max: 180, maxExcluded: true, noNaN: true });
  fc.assert(
    fc.property(turn, anySlope, anyCorner, anyLay, fc.constantFrom(...MODES), (t, slope, corner, lay, mode) => {
      const options = freeze({ ...corner, ...mode });
      const { first, second } = joinCorner(options);
      const results = [
        compoundMiter(freeze({ turn: t, slope })),
        joinCorner(options),
        sawSetting(freeze(first), lay),
        sawSetting(freeze(second.plane), freeze({ slope, lay })),
        sawSetting(freeze(regularCut(t, slope)), lay),
      ];
      expect(numbersIn(results).filter((x) => !isClean(x))).toStrictEqual([]);
    }),
  );
});
