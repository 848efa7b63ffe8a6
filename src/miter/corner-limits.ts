import { refuse, reject } from "../core/check.js";
import type { CheckedBoard } from "./board.js";

/** How two boards share a corner: both mitered, or the first one ending on the second. */
export type Joint = "miter" | "butt";

/** What of the two boards comes together: their faces and backs, or their inner and outer edges as seen from above. */
export type MeetingAt = "faces" | "edges";

/** Boards that have no corner, however they are cut. */
function refuseStrangers(half: number, first: CheckedBoard, second: CheckedBoard): void {
  const [a, b] = [first.slope, second.slope];
  if (half === 0 && a !== b) {
    refuse(
      "impossible",
      "second.slope",
      b,
      `${a} like \`first.slope\`, as sides that run straight on meet at no corner`,
    );
  }
  if (Math.sign(a) === Math.sign(b)) return;
  const wanted = a === 0 ? "0" : a > 0 ? "above 0" : "below 0";
  const why = a === 0 || b === 0 ? "a flat board and a sloping one" : "boards that slope opposite ways";
  refuse("impossible", "second.slope", b, `${wanted} like \`first.slope\`, as ${why} share no joint line`);
}

/** Boards that lie flat have their faces in one plane, where they meet everywhere or nowhere. */
function refuseFlatFaces(joint: Joint, first: CheckedBoard, second: CheckedBoard): void {
  if (joint === "butt") {
    refuse("impossible", "meet", "faces", `"edges" for a butt joint of flat boards, as their faces look up`);
  }
  if (first.thickness !== second.thickness) {
    const wanted = `${first.thickness} like \`first.thickness\`, as flat boards of two thicknesses meet at edges only`;
    refuse("impossible", "second.thickness", second.thickness, wanted);
  }
}

/** An upright board has no width to be seen from above. */
function refuseUprightEdges(board: CheckedBoard, path: string): void {
  if (Math.abs(board.slope) !== 90) return;
  refuse(
    "impossible",
    path,
    board.slope,
    "between -90 and 90 to meet at edges, as an upright board shows none from above",
  );
}

/** A corner, each part of which was checked. */
export interface CheckedCorner {
  /** Half the turn in degrees. */
  readonly half: number;
  /** The board that ends at the corner. */
  readonly first: CheckedBoard;
  /** The board that starts there. */
  readonly second: CheckedBoard;
  /** How they share it. */
  readonly joint: Joint;
  /** What comes together. */
  readonly meet: MeetingAt;
}

/** Refuses corners that cannot be made, with the reason. */
export function refuseImpossible({ half, first, second, joint, meet }: CheckedCorner): void {
  refuseStrangers(half, first, second);
  if (half === 0) return;
  if (meet === "edges") {
    refuseUprightEdges(first, "first.slope");
    refuseUprightEdges(second, "second.slope");
  } else if (first.slope === 0) refuseFlatFaces(joint, first, second);
}

/** Refuses a plane so nearly parallel to its board that the double has no digit left for the difference. */
export function refuseEndless(along: number, turn: number): void {
  if (Math.abs(along) > 0) return;
  reject(
    "impossible",
    "turn",
    turn,
    `Expected the boards to meet at an angle, but at a \`turn\` of ${turn} their joint runs along them without end`,
  );
}
