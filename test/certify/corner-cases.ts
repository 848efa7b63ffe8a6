import { joinCorner, type JoinCornerOptions } from "miterwright/miter";
import { deriveCorner, type ExactBoard } from "../../src/precise/derive-corner.js";
import { cosine, settingTerms, sine, unitTerms, type Parts } from "./cancellation.js";
import type { Case, Comparison } from "./comparison.js";
import { exactly } from "./exact.js";
import { someLength, someSlope, someTurn, type Random } from "./random.js";

type Board = JoinCornerOptions["first"] & { readonly width: number };
interface CornerInput {
  readonly joint: "miter" | "butt";
  readonly meet: "faces" | "edges";
  readonly turn: number;
  readonly first: Board;
  readonly second: Board;
}

/**
 * The components of the normal at one of two boards, each as the terms that it is the sum of.
 *
 * For faces the normal is t2 n1 - t1 n2, for edges it is level and square to the line between the points where the inner and
 * the outer edges meet in plan; in a butt joint it is the other board's own axis. See the derivations in the miter module.
 */
function normalTerms({ joint, meet, turn }: CornerInput, own: Board, other: Board): readonly (readonly number[])[] {
  const [sin1, cos1, sin2, cos2] = [sine(own.slope), cosine(own.slope), sine(other.slope), cosine(other.slope)];
  const [sinT, cosT] = [sine(turn), Math.cos((turn * Math.PI) / 180)];
  if (meet === "edges" && joint === "miter") {
    const largest = Math.max(own.width, other.width);
    const [q1, q2] = [(own.width / largest) * cos1, (other.width / largest) * cos2];
    return [[q1 * sinT], [q1 * cosT * cos1, -q2 * cos1], [q1 * cosT * sin1, -q2 * sin1]];
  }
  if (meet === "edges") return [[cos2 * sinT], [sin1 * sin2, cos1 * cos2 * cosT], [sin2 * cos1, -cos2 * sin1 * cosT]];
  const across = [sin1 * cos2, -cos1 * sin2 * cosT];
  const through = [cos1 * cos2, sin1 * sin2 * cosT];
  if (joint === "butt") return [[sin2 * sinT], across, through];
  const largest = Math.max(own.thickness, other.thickness);
  const [t1, t2] = [own.thickness / largest, other.thickness / largest];
  return [[t1 * sin2 * sinT], across.map((term) => t1 * term), [t2, ...through.map((term) => -t1 * term)]];
}

/** Whether the joint is that of a regular frame, which has no signed sums. */
function isMirrored({ joint, meet, first, second }: CornerInput): boolean {
  if (joint === "butt" || first.slope !== second.slope) return false;
  return meet === "faces" ? first.thickness === second.thickness : first.width === second.width;
}

/**
 * The sums of the terms' magnitudes, on the scale of the unit normal.
 *
 * A normal that is brought to length 1 by its own components carries the errors of all of them. Only that of a miter at edges is: other lengths are known
 * without cancellation.
 */
function magnitudes(input: CornerInput, own: Board, other: Board, unit: Parts): Parts {
  if (isMirrored(input)) return [Math.abs(unit[0]), Math.abs(unit[1]), Math.abs(unit[2])];
  const sums = normalTerms(input, own, other).map((terms) => terms.reduce((sum, term) => sum + Math.abs(term), 0));
  const [along = 0, across = 0, through = 0] = sums;
  const scale = Math.abs(unit[0]) / along;
  return [along * scale, across * scale, through * scale];
}

function exactBoard({ slope, thickness, width }: Board): ExactBoard {
  return { slope: exactly(slope), thickness: exactly(thickness), width: exactly(width) };
}

/** A corner, which must be one that can be made. */
function cornerCase(input: CornerInput): Case {
  return {
    input: { ...input },
    compare: (field) => {
      const { joint, meet, turn, first, second } = input;
      const got = joinCorner(input);
      const exact = { turn: exactly(turn), first: exactBoard(first), second: exactBoard(second), joint, meet };
      const want = deriveCorner(field, exact);
      const compareEnd = (end: "first" | "second"): Comparison[] => {
        const { plane, ...cut } = got[end];
        const [along, across, through] = [want[`${end}.along`], want[`${end}.across`], want[`${end}.through`]];
        const unit: Parts = [along.mid.toNumber(), across.mid.toNumber(), through.mid.toNumber()];
        const sums = end === "first" ? magnitudes(input, first, second, unit) : magnitudes(input, second, first, unit);
        const carried = joint === "miter" && meet === "edges" && !isMirrored(input) ? unitTerms(unit, sums) : sums;
        const angles = settingTerms(unit, sums);
        const kind = isMirrored(input) ? "corner of equal boards:" : `corner, ${joint} at ${meet}:`;
        return [
          { quantity: `${kind} miter`, got: cut.miter, want: want[`${end}.miter`], angle: true, terms: angles.miter },
          { quantity: `${kind} bevel`, got: cut.bevel, want: want[`${end}.bevel`], angle: true, terms: angles.bevel },
          { quantity: `${kind} along`, got: plane.along, want: along, terms: carried[0] },
          { quantity: `${kind} across`, got: plane.across, want: across, terms: carried[1] },
          { quantity: `${kind} through`, got: plane.through, want: through, terms: carried[2] },
        ];
      };
      const dihedral: Comparison = { quantity: "corner dihedral", got: got.dihedral, want: want.dihedral, angle: true };
      return [dihedral, ...compareEnd("first"), ...compareEnd("second")];
    },
  };
}

const thick = { thickness: 18 };
/** Corners at edges of boards so unlike that only one way to take the difference of their level widths keeps it. */
const HARD_CORNERS: readonly Case[] = [
  [18.286372561081215, { slope: 89.9999999999999, width: 2.5e93 }, { slope: 4.08e-10, width: 9.5e78 }] as const,
  [5.27726087712546, { slope: -1.02e-8, width: 1e-69 }, { slope: -89.99999999969766, width: 21.6 }] as const,
  [179.99999890602018, { slope: -22.3, width: 8e98 }, { slope: -22.29, width: 1.1e13 }] as const,
].map(([turn, first, second]) =>
  cornerCase({ joint: "miter", meet: "edges", turn, first: { ...thick, ...first }, second: { ...thick, ...second } }),
);

export function cornerGrid(): Case[] {
  const cases: Case[] = [];
  for (const joint of ["miter", "butt"] as const) {
    for (const meet of ["faces", "edges"] as const) {
      for (const turn of [1e-9, 45, 90, 179.999, -60]) {
        for (const a of [1e-9, 30, 60, 89.999]) {
          for (const b of [45, 60, 90 - 1e-9]) {
            const first = { slope: a, thickness: 18, width: 60 };
            cases.push(cornerCase({ turn, joint, meet, first, second: { slope: b, thickness: 12, width: 80 } }));
          }
        }
      }
    }
  }
  for (const meet of ["faces", "edges"] as const) {
    for (const turn of [1e-9, 45, 90, 179.999, -60]) {
      for (const slope of [1e-9, 30, 60, 89.999]) {
        const board = { slope, thickness: 18, width: 60 };
        cases.push(cornerCase({ turn, joint: "miter", meet, first: board, second: board }));
      }
    }
  }
  return [...cases, ...HARD_CORNERS];
}

/** A positive number near another: the same, a hair beside it, or any number of the kind. */
function near({ whole, power }: Random, value: number, other: () => number): number {
  const choices = [() => value, () => value * (1 + power(-16, -3)), () => value * (1 - power(-16, -3)), other, other];
  return choices[whole(0, choices.length - 1)]!();
}

/** A corner of any kind that can be made, between boards that are equal, nearly equal or not at all. */
export function someCorner(random: Random): Case {
  const joint = random.pick(["miter", "miter", "butt"] as const);
  const meet = random.pick(["faces", "faces", "edges"] as const);
  // Sloping boards of one sign always meet; upright ones show no edges from above.
  const steepest = meet === "edges" ? 90 - 2 ** -46 : 90;
  const slope = (): number => Math.min(steepest, Math.abs(someSlope(random)) || 1);
  const sign = random.pick([1, -1]);
  const [a, thickness, width] = [slope(), someLength(random), someLength(random)];
  return cornerCase({
    joint,
    meet,
    turn: someTurn(random) || 1,
    first: { slope: sign * a, thickness, width },
    second: {
      slope: sign * Math.min(steepest, near(random, a, slope)),
      thickness: near(random, thickness, () => someLength(random)),
      width: near(random, width, () => someLength(random)),
    },
  });
}
