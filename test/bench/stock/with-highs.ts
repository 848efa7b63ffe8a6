/**
 * The same jobs by a general solver: column generation whose linear programs HiGHS solves, and then its search for whole
 * numbers of the columns found. Pricing is by a table over the stick's length.
 */
import loadHighs from "highs";
import type { StockJob } from "miterwright/stock";
import { makeBudget } from "../../../src/stock/search/budget.js";
import { fillRoomByTable } from "../../../src/stock/patterns/knapsack-table.js";

/** What it came to. */
export interface OtherFit {
  readonly cost: number;
  readonly bound: number;
  readonly milliseconds: number;
}

interface Column {
  readonly stick: number;
  readonly counts: readonly (readonly [number, number])[];
}

const highs = await loadHighs();

/** The master in the text format that the solver reads. */
function text(job: StockJob, demand: readonly number[], columns: readonly Column[], whole: boolean): string {
  const cost = columns.map(({ stick }, k) => `+ ${job.sticks[stick]!.cost ?? job.sticks[stick]!.length} x${k}`);
  const rows = demand.map((count, item) => {
    const terms = columns.flatMap(({ counts }, k) =>
      counts.filter(([other]) => other === item).map(([, times]) => `+ ${times} x${k}`),
    );
    return `r${item}: ${terms.join(" ")} >= ${count}`;
  });
  const limits = job.sticks.flatMap(({ count }, stick) => {
    const terms = columns.flatMap((column, k) => (column.stick === stick ? [`+ x${k}`] : []));
    return count === undefined || terms.length === 0 ? [] : [`l${stick}: ${terms.join(" ")} <= ${count}`];
  });
  const integers = whole ? `General\n ${columns.map((_, k) => `x${k}`).join(" ")}\n` : "";
  return `Minimize\n obj: ${cost.join(" ")}\nSubject To\n ${[...rows, ...limits].join("\n ")}\n${integers}End`;
}

/**
 * Fits a job of plain pieces and sticks, in integers.
 *
 * @param job - the job; lengths are integers
 * @param seconds - time limit of the search for whole numbers
 */
export function fitWithHighs(job: StockJob, seconds: number): OtherFit {
  const start = performance.now();
  const kerf = job.kerf ?? 0;
  const sizes = Float64Array.from(job.pieces, ({ length }) => length! + kerf);
  const demand = job.pieces.map(({ count }) => count ?? 1);
  const columns: Column[] = [];
  // Every length on every stick that holds it: a first solution.
  job.sticks.forEach(({ length }, stick) => {
    sizes.forEach((size, item) => {
      const times = Math.min(demand[item]!, Math.floor((length + kerf) / size));
      if (times > 0) columns.push({ stick, counts: [[item, times]] });
    });
  });
  let bound = 0;
  for (;;) {
    const solved = highs.solve(text(job, demand, columns, false));
    const duals = new Map(
      (solved.Rows as { readonly Name: string; readonly Dual: number }[]).map(({ Name, Dual }) => [Name, Dual]),
    );
    bound = solved.ObjectiveValue;
    let added = 0;
    job.sticks.forEach(({ length, cost }, stick) => {
      const steps = fillRoomByTable(
        {
          profits: sizes.map((_, item) => Math.max(0, Math.floor((duals.get(`r${item}`) ?? 0) * 2 ** 20))),
          sizes,
          most: Float64Array.from(demand),
          keys: new Int32Array(sizes.length).fill(-1),
          setups: new Float64Array(0),
          setupRate: 0,
          room: length + kerf,
          above: Math.ceil(((cost ?? length) - (duals.get(`l${stick}`) ?? 0) + 1e-5) * 2 ** 20),
        },
        makeBudget(Infinity),
      );
      let step = steps.next();
      while (step.done !== true) step = steps.next();
      const best = step.value?.found.at(-1);
      if (best === undefined) return;
      columns.push({ stick, counts: best });
      added++;
    });
    if (added === 0) break;
  }
  const solved = highs.solve(text(job, demand, columns, true), { time_limit: seconds });
  return { cost: solved.ObjectiveValue, bound, milliseconds: performance.now() - start };
}
