import type { SetUpBlock, SettingVisit, VisitRound } from "./set-up-blocks.js";

/** Visits in their final order, once or several times over. */
export interface OrderedRound {
  /** How many times. */
  readonly times: number;
  /** The visits in order. */
  readonly visits: readonly SettingVisit[];
}

const bevelOf = (visit: SettingVisit): string => visit.setting.bevelKey;
const miterOf = (visit: SettingVisit): string => visit.setting.miterKey;

/** The settings with which something may be begun, or ended. */
const entries = (block: SetUpBlock): readonly SettingVisit[] => block[0]!.stages[0]!;
const exits = (block: SetUpBlock): readonly SettingVisit[] => block.at(-1)!.stages.at(-1)!;

/** Orders visits at one bevel: first the miter that is set already, last one that can stay set afterwards. */
function orderStage(
  visits: readonly SettingVisit[],
  before: SettingVisit | null,
  after: readonly SettingVisit[],
): SettingVisit[] {
  const rank = (visit: SettingVisit): number => {
    if (before !== null && miterOf(visit) === miterOf(before)) return 0;
    return after.some((next) => miterOf(next) === miterOf(visit)) ? 2 : 1;
  };
  const miterOf = (visit: SettingVisit): number => visit.setting.miter.degrees;
  return [...visits].sort((a, b) => rank(a) - rank(b) || miterOf(a) - miterOf(b));
}

function orderBlock(
  block: SetUpBlock,
  before: SettingVisit | null,
  afterBlock: readonly SettingVisit[],
): OrderedRound[] {
  let last = before;
  const stages = block.flatMap((round) => round.stages);
  let index = 0;
  return block.map(({ times, stages: own }: VisitRound) => {
    const visits: SettingVisit[] = [];
    for (const stage of own) {
      index += 1;
      const ordered = orderStage(stage, last, stages[index] ?? afterBlock);
      visits.push(...ordered);
      last = ordered.at(-1) ?? last;
    }
    return { times, visits };
  });
}

/** How much has to be set to begin a block: nothing of the bevel before nothing of the miter, then the smaller angles first. */
function effort(block: SetUpBlock, last: SettingVisit | null, others: readonly SetUpBlock[]): number[] {
  const start = entries(block);
  const { bevel, miter } = start[0]!.setting;
  const sameBevel = last !== null && bevelOf(start[0]!) === bevelOf(last);
  const sameMiter = last !== null && start.some((visit) => miterOf(visit) === miterOf(last));
  // A block that can hand its miter on to another bevel had better be the last of its own.
  const hasNeighbors = (): boolean =>
    others.some((other) => other !== block && bevelOf(entries(other)[0]!) === bevelOf(start[0]!));
  const handsOn = (): boolean =>
    exits(block).some((exit) =>
      others.some((other) =>
        entries(other).some((entry) => bevelOf(entry) !== bevelOf(exit) && miterOf(entry) === miterOf(exit)),
      ),
    );
  return [sameBevel ? 0 : 1, sameMiter ? 0 : 1, hasNeighbors() && handsOn() ? 1 : 0, bevel.degrees, miter.degrees];
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const index = a.findIndex((value, place) => value !== b[place]);
  return index >= 0 && a[index]! < b[index]!;
}

/** Puts blocks in order, always with the one that takes the least effort next; the first may be given. */
function arrange(blocks: readonly SetUpBlock[], before: SettingVisit | null, first: number | null): OrderedRound[] {
  const waiting = [...blocks];
  const rounds: OrderedRound[] = [];
  let last = before;
  let forced = first;
  while (waiting.length > 0) {
    let best = forced ?? 0;
    let least = effort(waiting[best]!, last, waiting);
    for (let index = 0; forced === null && index < waiting.length; index += 1) {
      const other = effort(waiting[index]!, last, waiting);
      if (isLess(other, least)) [best, least] = [index, other];
    }
    forced = null;
    const [block] = waiting.splice(best, 1);
    const bevels = exits(block!).map(bevelOf);
    const here = waiting.filter((other) => bevels.includes(bevelOf(entries(other)[0]!)));
    const next = (here.length > 0 ? here : waiting).flatMap(entries);
    rounds.push(...orderBlock(block!, last, next));
    last = rounds.at(-1)!.visits.at(-1)!;
  }
  return rounds;
}

/** Changes of bevel and swings of the miter from round to round and within rounds; rounds that come again cost the same in any order of blocks. */
function costOf(rounds: readonly OrderedRound[], before: SettingVisit | null): number[] {
  const visits = [...(before === null ? [] : [before]), ...rounds.flatMap((round) => round.visits)];
  const count = (key: (visit: SettingVisit) => string): number =>
    visits.filter((visit, index) => index > 0 && key(visit) !== key(visits[index - 1]!)).length;
  return [count(bevelOf), count(miterOf)];
}

/** With more blocks than this, only the one that takes the least effort is tried as the first: trying every one takes the third power of their number. */
const TRIED_AS_FIRST: number = 40;

/**
 * Puts set-up blocks in order so that little is set anew: all of one bevel together, and from one bevel to the next with the miter left as it is
 * where that is possible. Upright blades come first, then smaller bevels.
 *
 * Every block is tried as the first, and each time followed by the one that takes the least effort next. No block is begun before another is finished.
 */
export function orderVisits(blocks: readonly SetUpBlock[], before: SettingVisit | null): OrderedRound[] {
  let best = arrange(blocks, before, null);
  let least = costOf(best, before);
  for (let first = 0; blocks.length <= TRIED_AS_FIRST && first < blocks.length; first += 1) {
    const rounds = arrange(blocks, before, first);
    const cost = costOf(rounds, before);
    if (isLess(cost, least)) [best, least] = [rounds, cost];
  }
  return best;
}
