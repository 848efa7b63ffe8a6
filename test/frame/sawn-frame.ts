import type { MeasuredPiece } from "miterwright/closure";
import type { FramePlan } from "miterwright/frame";
import type { CutPlacement, Hand } from "miterwright/saw";
import { assemble, RADIAN, type OpenRing } from "../closure/assemble.js";
import { planeFromWords } from "../laws/saw.js";

/** What is wrong with a saw: degrees to the left where gauge or blade read 0, and degrees too far to either hand. */
export interface Flaws {
  readonly square: number;
  readonly swing: number;
  readonly upright: number;
  readonly lean: number;
}

export const SOUND: Flaws = { square: 0, swing: 0, upright: 0, lean: 0 };

const toLeft = (degrees: number, hand: Hand | "none"): number =>
  hand === "none" ? 0 : hand === "left" ? degrees : -degrees;

function said(left: number): { degrees: number; toward: Hand } {
  return { degrees: Math.abs(left), toward: left < 0 ? "right" : "left" };
}

/** What the blade of a flawed saw cuts when it is set as a placement says, as it would be measured on the stick lying flat. */
function sawn(plan: FramePlan, placement: CutPlacement, flaws: Flaws): { miter: number; bevel: number } {
  const { miter, bevel } = placement;
  const { along, across, through } = planeFromWords({
    ...placement,
    fence: plan.sawing.saw.fence,
    slope: plan.geometry.slope,
    miter: said(toLeft(miter.degrees + flaws.swing, miter.toward) + flaws.square),
    bevel: said(toLeft(bevel.degrees + flaws.lean, bevel.toward) + flaws.upright),
  });
  return {
    miter: Math.atan2(-across, Math.abs(along)) / RADIAN,
    bevel: Math.atan2(through, Math.hypot(along, across)) / RADIAN,
  };
}

/** A frame whose pieces are all cut by two settings of a flawed saw, put together in space with all joints but the last tight. */
export function sawnFrame(
  plan: FramePlan,
  { first, second }: { readonly first: CutPlacement; readonly second: CutPlacement },
  flaws: Flaws = SOUND,
): OpenRing & { readonly slope: number; readonly gap: number } {
  const { slope, sides, pieces } = plan.geometry;
  const { longest, shortest } = pieces[0];
  const piece: MeasuredPiece = {
    length: shortest.length,
    start: sawn(plan, second, flaws),
    end: sawn(plan, first, flaws),
  };
  const section = { slope, at: 0, width: longest.out - shortest.out, wood: { width: 40, thickness: 15 } };
  const ring = assemble(
    Array.from({ length: sides }, () => piece),
    Array.from({ length: sides }, () => section),
  );
  return {
    ...ring,
    slope: ring.slopes.reduce((sum, one) => sum + one / sides, 0),
    gap: Math.abs(ring.angle) * RADIAN * ring.jointLine,
  };
}

/** A placement whose scales are set to other angles, to the same hands. */
export function setTo(placement: CutPlacement, miter: number, bevel: number): CutPlacement {
  return {
    ...placement,
    miter: { ...placement.miter, degrees: miter },
    bevel: { ...placement.bevel, degrees: bevel },
  };
}
