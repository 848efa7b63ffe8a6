import type { CutPlacement, LyingSection, ShowingSide, StickSurface } from "../../saw/index.js";

/**
 * The wishes for a lay, the weightiest first: the stick lies steady by itself, the kept piece lies on the open side of a leaning blade, and the side that shows
 * lies up, away from where the teeth leave.
 */
export type LayWish = "steady" | "open-side" | "showing-side-up";

/** What is known of a lay before it is weighed. */
export interface WeighedLay {
  /** Either cut in it: which part lies under the blade is the same for both. */
  readonly placement: CutPlacement;
  /** How the section lies; `null` where it is not known. */
  readonly lying: LyingSection | null;
  /** The side that shows. */
  readonly shows: ShowingSide;
}

/** A stick that stands on an edge more than this many times as high as that is wide tips over easily; common practice, no printed source. */
const TIPPY: number = 2;

const OPPOSITE: Readonly<Record<StickSurface, StickSurface>> = {
  back: "face",
  face: "back",
  "sight-edge": "outer-edge",
  "outer-edge": "sight-edge",
};

function isSteady({ placement, lying }: WeighedLay): boolean {
  const { down, cradled } = placement;
  if (cradled) return false;
  if (lying === null || down === "back" || down === "face") return true;
  const { support, height } = lying;
  return height <= TIPPY * (support.to - support.from) * (1 + 1e-9);
}

/**
 * The wishes that a lay does not meet.
 *
 * A stick on its back or its face is taken to be steady wherever its center of gravity is above what it rests on. It is as low as it can be, and the fence is
 * beside it. A stick on an edge is not steady where it is high and narrow. A stick in a cradle is not either, since the cradle has to be made and held. Common
 * practice, no printed source. The weightiest come first.
 */
export function givenUpBy(lay: WeighedLay): readonly LayWish[] {
  const { placement, shows } = lay;
  const givenUp: LayWish[] = [];
  if (!isSteady(lay)) givenUp.push("steady");
  if (placement.underBlade === "kept") givenUp.push("open-side");
  if (OPPOSITE[placement.down] !== shows) givenUp.push("showing-side-up");
  return givenUp;
}

/** What {@link preferredLay} compares. */
interface Rival {
  readonly possible: boolean;
  readonly depthInDoubt: boolean;
  readonly givenUp: readonly LayWish[];
}

/** What a lay loses by the wishes that it does not meet: each wish weighs more than all that follow it. */
function loss({ depthInDoubt, givenUp }: Rival): number {
  const wishes: readonly LayWish[] = ["showing-side-up", "open-side", "steady"];
  return wishes.reduce((sum, wish, rank) => sum + (givenUp.includes(wish) ? 2 ** rank : 0), depthInDoubt ? 8 : 0);
}

/**
 * The lay to choose among those that the saw can cut. One that it surely cuts deep enough comes first, then a steady one, then one with the piece on the open
 * side of the blade, then one with the showing side up. Among equals the first is taken. `null` where none is possible.
 */
export function preferredLay<T extends Rival>(lays: readonly T[]): T | null {
  return lays
    .filter(({ possible }) => possible)
    .reduce<T | null>((best, one) => (best === null || loss(one) < loss(best) ? one : best), null);
}
