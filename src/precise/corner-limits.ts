import type { Decimal } from "decimal.js";
import { refuse } from "../errors/internal.js";
import type { ExactCorner } from "./derive-corner.js";

/** The same sign for all slopes that can share a corner. */
function slopeSign(slope: Decimal): number {
  return slope.isZero() ? 0 : slope.s;
}

/** Refuses corners that cannot be made, with the reason. */
export function refuseImpossible(
  corner: ExactCorner,
  asGiven: (board: "first" | "second", field: "slope" | "thickness") => unknown,
): void {
  const { turn, first, second, joint, meet } = corner;
  const refuseSlope = (board: "first" | "second", expected: string): never =>
    refuse("impossible", `${board}.slope`, asGiven(board, "slope"), expected);

  if (turn.isZero() && !first.slope.eq(second.slope)) {
    refuseSlope("second", "equal to `first.slope`, as sides that run straight on meet at no corner");
  }
  if (slopeSign(first.slope) !== slopeSign(second.slope)) {
    const flat = first.slope.isZero() || second.slope.isZero();
    const why = flat ? "a flat board and a sloping one" : "boards that slope opposite ways";
    refuseSlope("second", `of the same sign as \`first.slope\`, as ${why} share no joint line`);
  }
  if (turn.isZero()) return;
  if (meet === "edges") {
    for (const name of ["first", "second"] as const) {
      if (!corner[name].slope.abs().eq(90)) continue;
      refuseSlope(name, "between -90 and 90 to meet at edges, as an upright board shows none from above");
    }
    return;
  }
  // Sloping boards have faces that meet; those of flat ones lie in one plane.
  if (!first.slope.isZero()) return;
  if (joint === "butt") {
    refuse("impossible", "meet", meet, `"edges" for a butt joint of flat boards, as their faces look up`);
  }
  if (!first.thickness.eq(second.thickness)) {
    const expected = "equal to `first.thickness`, as flat boards of two thicknesses meet at edges only";
    refuse("impossible", "second.thickness", asGiven("second", "thickness"), expected);
  }
}
