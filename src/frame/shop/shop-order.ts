import { checkDegrees, checkObject } from "../../core/check.js";
import { plainCopy } from "../../core/plain-copy.js";
import type { Saw } from "../../saw/index.js";
import { orderVisits, type OrderedRound } from "./order-visits.js";
import { setUpBlocks, type SettingVisit, type ShopTask } from "./set-up-blocks.js";
import { sharedSettings } from "./shared-settings.js";
import { readJobs, type ShopJob } from "./shop-jobs.js";
import type {
  ShopChange,
  ShopCut,
  ShopFrame,
  ShopGroup,
  ShopOrder,
  ShopOrderOptions,
  ShopRound,
} from "./shop-order-types.js";

/** All crosscuts of rough pieces on a saw, and then the blocks of end cuts. */
function visitsOn(saw: Saw, jobs: readonly ShopJob[], tolerance: number): OrderedRound[] {
  const operations = jobs.flatMap(({ operations: { crosscut, first, second } }) => [
    ...(crosscut === null ? [] : [crosscut]),
    first,
    second,
  ]);
  const settingOf = sharedSettings(operations, saw, tolerance);
  const crosscuts: ShopTask[] = jobs.flatMap((job) => {
    const { crosscut } = job.operations;
    return crosscut === null ? [] : [{ job, operation: crosscut, times: crosscut.times * job.frames }];
  });
  const square: SettingVisit[] =
    crosscuts.length === 0 ? [] : [{ setting: settingOf(crosscuts[0]!.operation), tasks: crosscuts }];
  const blocks = setUpBlocks(
    jobs.map((job) => ({
      job,
      first: settingOf(job.operations.first),
      second: settingOf(job.operations.second),
    })),
  );
  return [...square.map((visit) => ({ times: 1, visits: [visit] })), ...orderVisits(blocks, square[0] ?? null)];
}

function cutOf({ job, operation, times }: ShopTask, { setting }: SettingVisit): ShopCut {
  const { placement, measure, stop, move, step, kind } = operation;
  return {
    name: job.name,
    step,
    kind,
    times,
    atFence: placement.atFence,
    kept: placement.kept,
    move,
    length: measure?.length ?? null,
    arris: measure?.arris ?? null,
    stop: plainCopy(stop),
    miterOff: Math.abs(placement.miter.degrees - setting.miter.degrees),
    bevelOff: Math.abs(placement.bevel.degrees - setting.bevel.degrees),
  };
}

/** A visit as groups whose sticks lie alike: those that lie as before come first. */
function groupsOf(visit: SettingVisit, saw: number, lyingBefore: string): Omit<ShopGroup, "changes">[] {
  const byLay = new Map<string, ShopTask[]>();
  for (const task of visit.tasks) {
    const lying = layKey(task.operation.placement);
    byLay.set(lying, [...(byLay.get(lying) ?? []), task]);
  }
  const lays = [...byLay].sort(([a], [b]) => Number(b === lyingBefore) - Number(a === lyingBefore));
  return lays.map(([, tasks]) => {
    const { down, cradled } = tasks[0]!.operation.placement;
    const cuts = tasks.map((task) => cutOf(task, visit));
    cuts.sort((a, b) => (b.length ?? Infinity) - (a.length ?? Infinity) || 0);
    const { miter, bevel } = visit.setting;
    return { saw, miter, bevel, down, cradled, cuts };
  });
}

const layKey = ({ down, cradled }: Pick<ShopGroup, "down" | "cradled">): string => `${down} ${cradled}`;

/** What has to be set anew from one group to the next. */
function changesFrom(before: Omit<ShopGroup, "changes"> | null, group: Omit<ShopGroup, "changes">): ShopChange[] {
  if (before?.saw !== group.saw) return ["saw", "bevel", "miter", "lay"];
  const differs = (scale: "bevel" | "miter"): boolean =>
    before[scale].degrees !== group[scale].degrees || before[scale].toward !== group[scale].toward;
  return [
    ...(differs("bevel") ? (["bevel"] as const) : []),
    ...(differs("miter") ? (["miter"] as const) : []),
    ...(layKey(before) === layKey(group) ? [] : (["lay"] as const)),
  ];
}

/** How often something is set anew; a saw's first setting is none of them. */
function countChanges(rounds: readonly ShopRound[]): ShopOrder["changes"] {
  const count = { bevel: 0, miter: 0, lay: 0 };
  const add = (changes: readonly ShopChange[], times: number): void => {
    for (const change of changes) {
      if (change !== "saw" && !changes.includes("saw")) count[change] += times;
    }
  };
  for (const { times, groups, again } of rounds) {
    for (const [index, { changes }] of groups.entries()) add(changes, index === 0 ? 1 : times);
    add(again, times - 1);
  }
  return count;
}

/**
 * The order in which the jobs of several frames are done, grouped by setting, so that each setting is made once where it can be.
 *
 * Every frame keeps the order of its own steps: roughs are crosscut first, and an end is cut before its second end. Under this rule the order has, on each saw,
 * (1) the fewest settings. (2) Among these orders it has the fewest changes of bevel, since tilting the blade to an angle and proving it takes longer than
 * swinging the miter. (3) It leaves the miter as it is from one bevel to the next where the settings allow it, as long as no frame is left half cut for
 * another. Pieces cut on the stick itself need both settings in turn for every piece; frames with the same two go through these rounds together, each with a
 * stick of its own in hand. Set the stop anew for every length.
 *
 * @param plans - the frames with names of your own, from `planFrame`; up to hundreds
 * @param options - the tolerance within which settings are shared
 * @returns the groups in order, what each changes, and the frames that cannot be cut
 * @throws {InputError} when a frame or an option is not sound, or two frames have the same name
 * @example
 * ```ts
 * import { planFrame, shopOrder } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 40, thickness: 20 });
 * const rough = { method: "square", allowance: 10 } as const;
 * const order = shopOrder([
 *   { name: "mirror", plan: planFrame({ sides: 8, profile, rough, opening: { side: 300 } }) },
 *   { name: "tray", plan: planFrame({ sides: 8, profile, rough, opening: { side: 160 } }), frames: 2 },
 * ]);
 * order.rounds[0]?.groups.map(({ miter, cuts }) => `${miter.degrees} ${miter.toward}: ${cuts.map(({ name }) => name)}`); //=> [
 * //     "0 none: mirror,tray",
 * //     "22.5 left: mirror,tray",
 * //     "22.5 right: mirror,tray",
 * //   ]
 * order.changes; //=> { bevel: 0, miter: 2, lay: 0 }
 * ```
 */
export function shopOrder(plans: readonly ShopFrame[], options: ShopOrderOptions = {}): ShopOrder {
  const tolerance = checkDegrees(checkObject(options)["tolerance"] ?? 0, "tolerance", 0, 5);
  const { saws, jobs, left } = readJobs(plans);
  const rounds: ShopRound[] = [];
  let last: Omit<ShopGroup, "changes"> | null = null;
  for (const [saw, shown] of saws.entries()) {
    const own = jobs.filter((job) => job.saw === saw);
    for (const { times, visits } of visitsOn(shown, own, tolerance)) {
      const groups: ShopGroup[] = [];
      for (const visit of visits) {
        for (const group of groupsOf(visit, saw, last === null ? "" : layKey(last))) {
          groups.push({ ...group, changes: changesFrom(last, group) });
          last = group;
        }
      }
      const before = rounds.at(-1);
      // Rounds that are made once are joined into one.
      if (times === 1 && before?.times === 1)
        rounds[rounds.length - 1] = { ...before, groups: [...before.groups, ...groups] };
      else rounds.push({ times, groups, again: times === 1 ? [] : changesFrom(groups.at(-1)!, groups[0]!) });
    }
  }
  return { saws, rounds, changes: countChanges(rounds), left };
}
