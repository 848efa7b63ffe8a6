import fc from "fast-check";
import { joinCorner, type EndCut, type Lay } from "miterwright/miter";
import { miterSaw, tableSaw, type Hand, type Saw } from "miterwright/saw";

/** The named lays. */
export const LAYS: readonly Lay[] = ["flat", "propped", "face-down", "sight-edge-down", "outer-edge-down"];

/** Both end cuts of a regular frame's piece. */
export function cutsOf(sides: number, slope: number): { start: EndCut; end: EndCut } {
  const board = { slope, thickness: 1 };
  const { first, second } = joinCorner({ turn: 360 / sides, first: board, second: board });
  return { start: second, end: first };
}

/** One cut on a saw. */
export interface SawSituation {
  readonly sides: number;
  readonly slope: number;
  readonly lay: Lay;
  readonly kept: Hand;
  readonly end: "start" | "end";
  readonly saw: Saw;
}

/** Cuts of all kinds on both kinds of saw. */
export const situations: fc.Arbitrary<SawSituation> = fc.record({
  sides: fc.integer({ min: 3, max: 40 }),
  slope: fc.oneof(fc.double({ min: -89, max: 89, noNaN: true }), fc.constantFrom(-90, -45, 0, 30, 90)),
  lay: fc.constantFrom(...LAYS),
  kept: fc.constantFrom<Hand>("left", "right"),
  end: fc.constantFrom("start" as const, "end" as const),
  saw: fc.constantFrom(tableSaw(), miterSaw()),
});
