import fc from "fast-check";
import { describe, expect, expectTypeOf, test } from "vitest";
import {
  preciseCompoundMiter,
  preciseCorner,
  type PreciseCorner,
  type PreciseCornerOptions,
  type PreciseEndCut,
} from "miterwright/precise";
import { someDigits, spread } from "./arbitraries.js";
import { cosine, fix, inverseTangent, over, root, sine, text, times, type Fixed } from "./oracle.js";

/** A normal by its components along, across and through a board. */
type Parts = readonly [Fixed, Fixed, Fixed];

const negate = (parts: Parts): Parts => [-parts[0], -parts[1], -parts[2]];

/** A cut as it follows from its normal by the definitions of miter and bevel. */
function cutFrom(parts: Parts, slope: number, end: "start" | "end", digits: number): PreciseEndCut {
  // Pointing out of the wood: ahead where the board ends, back where it starts.
  const [along, across, through] = parts[0] > 0n === (end === "end") ? parts : negate(parts);
  const length = root(times(along, along) + times(across, across) + times(through, through));
  const level = root(times(along, along) + times(across, across));
  return {
    miter: text(inverseTangent(over(-across, end === "end" ? along : -along)), digits),
    bevel: text(inverseTangent(over(through, level)), digits),
    slope: text(fix(slope), digits),
    end,
    plane: {
      along: text(over(along, length), digits),
      across: text(over(across, length), digits),
      through: text(over(through, length), digits),
    },
  };
}

interface Boards {
  readonly turn: number;
  readonly first: { readonly slope: number; readonly thickness: number; readonly width: number };
  readonly second: { readonly slope: number; readonly thickness: number; readonly width: number };
}

/** The scalar products of the two boards' axes, by the cosine rule of directions. */
function products({ turn, first, second }: Boards): Record<"n1n2" | "n2a1" | "n1a2" | "n2u1" | "n1u2", Fixed> {
  const [c1, s1] = [cosine(fix(first.slope)), sine(fix(first.slope))];
  const [c2, s2] = [cosine(fix(second.slope)), sine(fix(second.slope))];
  const [cosT, sinT] = [cosine(fix(turn)), sine(fix(turn))];
  return {
    n1n2: times(c1, c2) + times(times(s1, s2), cosT),
    n2a1: times(s1, c2) - times(times(c1, s2), cosT),
    n1a2: times(s2, c1) - times(times(c2, s1), cosT),
    n2u1: -times(s2, sinT),
    n1u2: times(s1, sinT),
  };
}

/** A corner that meets at faces: the joint's normal is t2 n1 - t1 n2. */
function byFaces(boards: Boards, digits: number): Pick<PreciseCorner, "first" | "second"> {
  const { n1n2, n2a1, n1a2, n2u1, n1u2 } = products(boards);
  const [t1, t2] = [fix(boards.first.thickness), fix(boards.second.thickness)];
  const inFirst: Parts = [-times(t1, n2u1), -times(t1, n2a1), t2 - times(t1, n1n2)];
  const inSecond: Parts = [times(t2, n1u2), times(t2, n1a2), times(t2, n1n2) - t1];
  return {
    first: cutFrom(inFirst, boards.first.slope, "end", digits),
    second: cutFrom(inSecond, boards.second.slope, "start", digits),
  };
}

/** A corner that meets at edges: in plan, the normal of the line from inner to outer corner, square to v = (q1, q2) in the outward directions. */
function byEdges(boards: Boards, digits: number): Pick<PreciseCorner, "first" | "second"> {
  const { turn, first, second } = boards;
  const [cosT, sinT] = [cosine(fix(turn)), sine(fix(turn))];
  const q1 = times(fix(first.width), cosine(fix(first.slope)));
  const q2 = times(fix(second.width), cosine(fix(second.slope)));
  const cut = (own: Fixed, other: Fixed, slope: number, end: "start" | "end"): PreciseEndCut => {
    const outward = times(own, cosT) - other;
    const along = end === "end" ? times(own, sinT) : -times(own, sinT);
    const s = fix(slope);
    return cutFrom([along, times(outward, cosine(s)), -times(outward, sine(s))], slope, end, digits);
  };
  return { first: cut(q1, q2, first.slope, "end"), second: cut(q2, q1, second.slope, "start") };
}

/** The angle in front of the faces: 180 less the one between their normals, taken with the sign of slope and turn. */
function dihedralOf(boards: Boards, digits: number): string {
  const { n1n2 } = products(boards);
  const between = 2n * inverseTangent(root(over(fix(1) - n1n2, fix(1) + n1n2)));
  return text(boards.first.slope > 0 === boards.turn > 0 ? fix(180) - between : fix(180) + between, digits);
}

const slope = spread(1, 89);
const size = spread(0.01, 100);
const board = fc.record({ slope, thickness: size, width: size });
const corner = fc
  .record({
    turn: spread(0.5, 175),
    first: board,
    second: board,
    turnSign: fc.constantFrom(1, -1),
    slopeSign: fc.constantFrom(1, -1),
  })
  .map(({ turn, first, second, turnSign, slopeSign }) => ({
    turn: turnSign * turn,
    first: { ...first, slope: slopeSign * first.slope },
    second: { ...second, slope: slopeSign * second.slope },
  }));

describe("preciseCorner", () => {
  test("meets at faces by the normal t2 n1 - t1 n2", () => {
    fc.assert(
      fc.property(corner, someDigits, (boards, d) => {
        const got = preciseCorner({ ...boards, digits: d });
        expect(got).toEqual({ ...byFaces(boards, d), dihedral: dihedralOf(boards, d) });
      }),
      { numRuns: 40 },
    );
  });

  test("meets at edges by the points where they cross in plan", () => {
    fc.assert(
      fc.property(corner, someDigits, (boards, d) => {
        const got = preciseCorner({ ...boards, meet: "edges", digits: d });
        expect(got).toEqual({ ...byEdges(boards, d), dihedral: dihedralOf(boards, d) });
      }),
      { numRuns: 40 },
    );
  });

  test("butts along the other board's face", () => {
    fc.assert(
      fc.property(corner, someDigits, (boards, d) => {
        const { n1n2, n2a1, n1a2, n2u1, n1u2 } = products(boards);
        expect(preciseCorner({ ...boards, joint: "butt", digits: d })).toEqual({
          first: cutFrom([n2u1, n2a1, n1n2], boards.first.slope, "end", d),
          second: cutFrom([n1u2, n1a2, n1n2], boards.second.slope, "start", d),
          dihedral: dihedralOf(boards, d),
        });
      }),
      { numRuns: 30 },
    );
  });

  test("butts flat boards edge to edge", () => {
    const flat = { slope: 0, thickness: 20, width: 60 };
    const square = preciseCorner({ turn: 90, first: flat, second: flat, joint: "butt" });
    expect(square.first.plane).toEqual({ along: "1", across: "0", through: "0" });
    expect(square.second.plane).toEqual({ along: "-1", across: "0", through: "0" });
  });

  test("has the compound miter of equal boards, whatever their thickness", () => {
    for (const [turn, s] of [
      [90, 45],
      [51.25, -30],
      [-40, 62],
      [120, 0],
      [0, 25],
      [72, 90],
      [1e-9, 1e-9],
    ] as const) {
      const equal = { slope: s, thickness: 18 };
      const { miter, bevel, dihedral } = preciseCompoundMiter({ turn, slope: s });
      const { first, second, ...rest } = preciseCorner({ turn, first: equal, second: equal });
      expect(rest.dihedral).toBe(dihedral);
      for (const cut of [first, second]) expect(cut).toMatchObject({ miter, bevel });
      expect(second.plane).toEqual({ ...first.plane, along: `-${first.plane.along}` });
    }
  });

  test("joins flat boards of 60 and 80 along the 3-4-5 triangle", () => {
    const rails = { slope: 0, thickness: 20, width: 60 };
    const stiles = { slope: 0, thickness: 20, width: 80 };
    const { first, second, dihedral } = preciseCorner({ turn: 90, first: rails, second: stiles });
    expect(first.plane).toEqual({ along: "0.6", across: "-0.8", through: "0" });
    expect(second.plane).toEqual({ along: "-0.8", across: "-0.6", through: "0" });
    expect(dihedral).toBe("180");
  });

  // The angle with the tangent 1/2 in degrees and its complement; OEIS A073000 gives it in radians, value from memory.
  test("joins flat boards of 1 and 2 at arctan 2 and arctan 1/2", () => {
    const first = { slope: 0, thickness: 1, width: 1 };
    const second = { slope: 0, thickness: 1, width: 2 };
    const joined = preciseCorner({ turn: 90, first, second, digits: 40 });
    expect(joined.first.miter).toBe("63.4349488229220106484278062795467053288");
    expect(joined.second.miter).toBe("26.5650511770779893515721937204532946712");
  });

  // 180/pi, OEIS A072097, value from memory: the angle of a slope of 1e-40 has its digits.
  test("joins a very narrow and a wide flat board at 180/pi times the ratio", () => {
    const first = { slope: 0, thickness: 1, width: "1" };
    const second = { slope: 0, thickness: 1, width: "1e-40" };
    const { miter } = preciseCorner({ turn: 90, first, second, digits: 50 }).first;
    expect(miter).toBe(`0.${"0".repeat(38)}57295779513082320876798154814105170332405472466564`);
  });

  test("takes no sign for known before it is", () => {
    // Widths so unlike, folded back so far, that which way the second cut faces shows in the 94th digit.
    const { second } = preciseCorner({
      turn: "179.999999",
      meet: "edges",
      first: { slope: 22, thickness: 1, width: "1e98" },
      second: { slope: 22, thickness: 1, width: "1e10" },
      digits: 10,
    });
    expect(second).toMatchObject({ miter: "90", bevel: "22" });
    expect(second.plane.along).toMatch(/^-0\.0{95}1/u);
  });

  test("swaps its cuts when seen in a mirror", () => {
    const first = { slope: 50, thickness: 3 };
    const second = { slope: 65, thickness: 2 };
    const seen = preciseCorner({ turn: 75, first, second });
    const mirrored = preciseCorner({ turn: 75, first: second, second: first });
    expect(mirrored.first.miter).toBe(seen.second.miter);
    expect(mirrored.second.bevel).toBe(seen.first.bevel);
    expect(mirrored.dihedral).toBe(seen.dihedral);
  });

  test("does not change when both thicknesses grow alike", () => {
    const at = (thickness: string): PreciseCornerOptions["first"] => ({ slope: 50, thickness });
    const thin = preciseCorner({ turn: 75, first: at("3e-100"), second: { ...at("2e-100"), slope: 60 } });
    const thick = preciseCorner({ turn: 75, first: at("3e99"), second: { ...at("2e99"), slope: 60 } });
    expect(thin).toEqual(thick);
  });

  test("is typed", () => {
    expectTypeOf<PreciseCorner["first"]["plane"]["along"]>().toEqualTypeOf<string>();
    // @ts-expect-error no such joint
    expect(() => preciseCorner({ turn: 90, first: {}, second: {}, joint: "dovetail" })).toThrow("first.slope");
  });
});
