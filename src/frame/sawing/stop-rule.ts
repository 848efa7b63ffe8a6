import type { CutPlacement, LyingSection, Saw, StopContact } from "../../saw/index.js";
import type { RoughMethod } from "../brief/brief.js";
import type { OperationKind, StopRule } from "./operation.js";

/** What {@link stopRule} needs to know. */
export interface StopQuestion {
  /** What the operation does. */
  readonly kind: OperationKind;
  /** How pieces are parted. */
  readonly method: RoughMethod["method"];
  /** The cut on the saw. */
  readonly placement: CutPlacement;
  /** Where the stop touches the finished end; `null` where none is finished or no section is known. */
  readonly stop: StopContact | null;
  /** How the stick lies; `null` where no section is known. */
  readonly lying: LyingSection | null;
  /** The saw. */
  readonly saw: Saw;
}

/** What touches the stop. A slanted end that will be cut again never does: against one stop it would give another length than a square end. */
function touching(kind: OperationKind, method: RoughMethod["method"]): StopRule["touches"] {
  if (kind === "second-end") return "long-point";
  return kind === "crosscut" || method === "square" ? "square-end" : null;
}

/**
 * Where a stop may stand at a cut.
 *
 * It stands on the side of the part that is kept, square to the fence, and so touches the end at its longest line: at the long point of a mitered end, never at
 * its short one. On a gauge it travels with the piece; a stop that stays is cleared before a cut that frees the piece. Common practice, no printed source.
 */
export function stopRule(question: StopQuestion): StopRule {
  const { kind, method, placement, stop, lying, saw } = question;
  const { kept, along, end } = placement;
  const touches = touching(kind, method);
  const comesFree = kind === "crosscut" || (kind === "second-end" && method === "none");
  const travels = saw.fence === "near";
  // `across` counts from the edge that is near you when the stick's direction points right.
  const countedFromFence = (along === "right") === (saw.fence === "near");
  const pointFromFence = (): number | null => {
    if (stop === null || lying === null) return null;
    return countedFromFence ? stop.across : lying.width - stop.acrossTo;
  };
  return {
    side: kept,
    never: kept === "left" ? "right" : "left",
    touches,
    end: touches === null ? null : end === "end" ? "start" : "end",
    fromFence: touches === "long-point" ? pointFromFence() : touches === null ? null : 0,
    comesFree,
    travels,
    moveAway: comesFree && !travels,
  };
}
