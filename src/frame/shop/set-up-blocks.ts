import type { Operation } from "../sawing/operation.js";
import type { ShopJob } from "./shop-jobs.js";
import type { SharedSetting } from "./shared-settings.js";

/** A row of two settings in turn, and how it begins. */
interface Alternation {
  /** Whether it begins with the first of the two. */
  readonly firstLeads: boolean;
  /** How many settings it has. */
  readonly length: number;
  /** Whether it would be as short the other way round. */
  readonly either: boolean;
}

/**
 * The shortest row of two settings in turn that holds given rows in their order.
 *
 * A row that begins with the one fits into as long a row that begins so, and into one that is longer by 1 and begins with the other. `longest` are the lengths
 * of the longest row that begins with the first setting, and of the longest that begins with the second; 0 for none.
 */
function shortestAlternation(longest: readonly [number, number]): Alternation {
  const [byFirst, bySecond] = longest;
  const firstLeads = Math.max(byFirst, bySecond === 0 ? 0 : bySecond + 1);
  const secondLeads = Math.max(bySecond, byFirst === 0 ? 0 : byFirst + 1);
  return {
    firstLeads: firstLeads <= secondLeads,
    length: Math.min(firstLeads, secondLeads),
    either: firstLeads === secondLeads,
  };
}

/** An operation of a frame at one visit of its setting. */
export interface ShopTask {
  /** The frame's job. */
  readonly job: ShopJob;
  /** The operation. */
  readonly operation: Operation;
  /** How many times it is done at this visit. */
  readonly times: number;
}

/** One visit of a setting. */
export interface SettingVisit {
  /** What the saw is set to. */
  readonly setting: SharedSetting;
  /** What is done there. */
  readonly tasks: readonly ShopTask[];
}

/** Visits that are made in turn, once or several times over. Those within one array share the bevel and may be made in any order. */
export interface VisitRound {
  /** How many times. */
  readonly times: number;
  /** The visits, bevel by bevel. */
  readonly stages: readonly (readonly SettingVisit[])[];
}

/** Settings that depend on each other, and on no others: those of both ends of the same pieces. */
export type SetUpBlock = readonly VisitRound[];

/** A job with the settings of its two ends. */
export interface SetJob {
  /** The job. */
  readonly job: ShopJob;
  /** The first end's setting. */
  readonly first: SharedSetting;
  /** The second end's setting. */
  readonly second: SharedSetting;
}

/** Settings sort by their bevel first, so that in a pair across two bevels the sides are the same for all pairs. */
const keyOf = ({ miterKey, bevelKey }: SharedSetting): string => `${bevelKey}/${miterKey}`;

/** How many settings a job takes: two for every round, or one where both ends are cut alike. */
const lengthOf = ({ job, first, second }: SetJob): number => (keyOf(first) === keyOf(second) ? 1 : 2 * job.rounds);

/** Jobs with the same two settings, with the row of visits that serves them all. */
interface Pair {
  readonly jobs: readonly SetJob[];
  /** The settings, the one with the smaller key first. */
  readonly settings: readonly [SharedSetting, SharedSetting];
  readonly row: Alternation;
}

/** Lengths of the longest of those that begin with the first setting, and of those that begin with the second. */
function longest<T>(items: readonly T[], isFirst: (item: T) => boolean, length: (item: T) => number): [number, number] {
  const most: [number, number] = [0, 0];
  for (const item of items) {
    const side = isFirst(item) ? 0 : 1;
    most[side] = Math.max(most[side], length(item));
  }
  return most;
}

function pairOf(jobs: readonly SetJob[]): Pair {
  const { first, second } = jobs[0]!;
  const settings = keyOf(first) <= keyOf(second) ? ([first, second] as const) : ([second, first] as const);
  const beginsWithFirst = (set: SetJob): boolean => keyOf(set.first) === keyOf(settings[0]);
  return { jobs, settings, row: shortestAlternation(longest(jobs, beginsWithFirst, lengthOf)) };
}

/** A job's place in the block's row of stages: from the stage `from`, counted from 0, one stage for every setting it takes. */
interface Placed {
  readonly set: SetJob;
  readonly from: number;
  readonly to: number;
}

/**
 * Places the pairs of a block on stages that alternate between two bevels, or within one bevel between the two settings of a single pair.
 *
 * Each pair keeps its shortest row; those that may begin with either setting all begin with the one that makes the block shortest.
 */
function placePairs(pairs: readonly Pair[]): Placed[] {
  const leader = (choice: boolean) => (pair: Pair) => (pair.row.either ? choice : pair.row.firstLeads);
  const rowFor = (choice: boolean): Alternation =>
    shortestAlternation(longest(pairs, leader(choice), ({ row }) => row.length));
  const choice = rowFor(true).length <= rowFor(false).length;
  const { firstLeads } = rowFor(choice);
  return pairs.flatMap((pair) => {
    const begins = leader(choice)(pair);
    const offset = begins === firstLeads ? 0 : 1;
    const lead = keyOf(pair.settings[begins ? 0 : 1]);
    return pair.jobs.map((set) => {
      const from = offset + (keyOf(set.first) === lead ? 0 : 1);
      return { set, from, to: from + lengthOf(set) };
    });
  });
}

/** What is done at one stage. */
function stageOf(placed: readonly Placed[], stage: number): SettingVisit[] {
  const visits = new Map<string, { setting: SharedSetting; tasks: ShopTask[] }>();
  for (const { set, from, to } of placed) {
    if (stage < from || stage >= to) continue;
    const { job, first, second } = set;
    const { operations, frames, rounds } = job;
    const isFirst = (stage - from) % 2 === 0;
    const setting = isFirst ? first : second;
    const key = keyOf(setting);
    const visit = visits.get(key) ?? { setting, tasks: [] };
    visits.set(key, visit);
    const both = keyOf(first) === keyOf(second);
    const done = both ? [operations.first, operations.second] : [isFirst ? operations.first : operations.second];
    for (const operation of done) {
      visit.tasks.push({ job, operation, times: both || rounds === 1 ? operation.times * frames : 1 });
    }
  }
  return [...visits.values()];
}

/** The stages of a block, folded where the same jobs go round and round. */
function roundsOf(placed: readonly Placed[]): VisitRound[] {
  const edges = [...new Set(placed.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  return edges.slice(1).flatMap((to, index) => {
    const from = edges[index]!;
    const laps = Math.floor((to - from) / 2);
    const rounds: VisitRound[] = [];
    if (laps > 0) rounds.push({ times: laps, stages: [stageOf(placed, from), stageOf(placed, from + 1)] });
    if ((to - from) % 2 === 1) rounds.push({ times: 1, stages: [stageOf(placed, to - 1)] });
    return rounds;
  });
}

function groupBy<T>(items: readonly T[], key: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group === undefined) groups.set(key(item), [item]);
    else group.push(item);
  }
  return [...groups.values()];
}

/**
 * Makes the set-up blocks of the jobs on one saw, each with the fewest visits, and among these with the fewest changes of bevel.
 *
 * The two ends of a piece take two settings in turn, for pieces cut on the stick as many times as there are pieces. All jobs with the same two settings are
 * served by one row in which they alternate. Where the blade goes to the other hand for the second end, all rows with the same two bevels are laid side by
 * side. The blade is then set over once for all of them.
 */
export function setUpBlocks(jobs: readonly SetJob[]): SetUpBlock[] {
  const unordered = (a: string, b: string): string => (a <= b ? `${a}|${b}` : `${b}|${a}`);
  const pairs = groupBy(jobs, ({ first, second }) => unordered(keyOf(first), keyOf(second))).map(pairOf);
  const blocks = groupBy(pairs, ({ settings: [a, b] }) =>
    a.bevelKey === b.bevelKey ? unordered(keyOf(a), keyOf(b)) : unordered(a.bevelKey, b.bevelKey),
  );
  return blocks.map((members) => roundsOf(placePairs(members)));
}
