import { isSpent, spend } from "../search/budget.js";
import type { Search } from "../search/search.js";
import type { Steps } from "../steps.js";
import { sumOf } from "../sums.js";
import { totalSize } from "./material-bound.js";

/** Numbers of sticks that a plan of some cost can have. */
export interface Combinations {
  /** The least cost that any combination has, in steps of the cost grid; Infinity if there is none. */
  readonly cost: number;
  /** The combinations of that cost: for each, how many sticks of each kind are used at least and at most. */
  readonly choices: readonly { readonly least: Float64Array; readonly most: Float64Array }[];
  /** Whether no combination was left out, or may cost less. */
  readonly complete: boolean;
}

/** Steps after which to give up: some hundredths of a second. */
const MOST_STEPS = 1e6;
/** What such a step takes, in entries of the simplex. */
const STEPS_OF_A_STEP = 4;
/** Steps between two looks at the budget. */
const STEPS_AT_A_TIME = 1024;
/** Most combinations of one cost. */
const MOST_CHOICES = 2000;

/**
 * Finds the cheapest combinations of sticks that are long enough in sum and cost from `from` to `most`. They are not
 * complete once the budget is spent.
 *
 * The cost of a plan is decided by how many sticks of each kind it uses, and there are far fewer of these sums than whole
 * numbers: of 2400, 3000 and 3600 only multiples of 600. With a credit the sum is what they cost at the very least: each
 * stick its cost less the credit for all its length, and the credit for the length of the pieces.
 */
export function* leastCombinations(search: Search, from: number, most: number): Steps<Combinations> {
  const { problem, budget } = search;
  const { kinds, credit, demand } = problem;
  const total = Number(totalSize(problem));
  const rooms = kinds.map((kind) => sumOf(kind.rooms));
  const costs = kinds.map(({ cost }, k) => cost - credit * rooms[k]!);
  // What earns is counted as if all of it were used.
  const earned = kinds.reduce((sum, { limit }, k) => (costs[k]! < 0 ? sum + costs[k]! * limit : sum), 0);
  const offset = credit * total + earned;
  // Kinds that cost nothing or earn may all be used, whatever the others are; the last one's number follows from the others'.
  const order = kinds.map((_, k) => k).filter((k) => costs[k]! > 0);
  // The one with the most choices comes last.
  const rank = (k: number): number => Math.min(kinds[k]!.limit, total / rooms[k]!);
  order.sort((a, b) => rank(a) - rank(b) || a - b);
  const last = order.length - 1;
  const sound = last >= 0 && Math.max(credit * total, total, -earned) < 2 ** 52;
  if (!sound) return { cost: from, choices: [], complete: false };
  // What covering a unit of length by the kinds from each on costs at least, lowered by more than its rounding.
  const rates: number[] = [];
  for (let k = last; k >= 0; k--) {
    rates[k] = Math.min(rates[k + 1] ?? Infinity, (costs[order[k]!]! / rooms[order[k]!]!) * (1 - 1e-12));
  }
  const counts = Float64Array.from(kinds, ({ limit }, k) => (costs[k]! > 0 ? 0 : limit));
  let best = most - offset;
  let choices: Combinations["choices"][number][] = [];
  let steps = 0;
  let crowded = NaN;
  /** Takes the last kind's number, which follows from the others', if that makes a plan that costs no more than the best. */
  const finish = (cost: number, need: number, sticks: number): void => {
    const kind = order[last]!;
    const [own, room] = [costs[kind]!, rooms[kind]!];
    let count = Math.max(0, Math.ceil(need / room), Math.ceil((from - offset - cost) / own));
    // A quotient that was rounded down to a whole number is one short.
    if (count * room < need) count++;
    const sum = cost + count * own;
    if (count > Math.min(kinds[kind]!.limit, sticks) || sum > best) return;
    if (sum < best) [best, choices] = [sum, []];
    counts[kind] = count;
    if (choices.length === MOST_CHOICES) crowded = sum;
    else choices.push({ most: counts.slice(), least: counts.map((some, k) => (costs[k]! > 0 ? some : 0)) });
  };
  const free = rooms.reduce((sum, room, k) => (costs[k]! > 0 ? sum : sum + room * kinds[k]!.limit), 0);
  // What the kinds before each leave: what they cost, what is needed still, and how many sticks may come. One place is
  // turned to its next number after another, the last ones fastest.
  const paid = new Float64Array(order.length);
  const needs = new Float64Array(order.length);
  const sticks = new Float64Array(order.length);
  [needs[0], sticks[0]] = [total - free, sumOf(demand)];
  if (last > 0) counts[order[0]!] = -1;
  else finish(0, needs[0], sticks[0]);
  for (let place = 0; last > 0 && place >= 0;) {
    steps++;
    if (steps % STEPS_AT_A_TIME === 0 && spend(budget, STEPS_OF_A_STEP * STEPS_AT_A_TIME)) {
      yield;
      if (isSpent(budget)) steps = Infinity;
    }
    if (steps > MOST_STEPS) break;
    const kind = order[place]!;
    const count = ++counts[kind]!;
    const cost = paid[place]! + count * costs[kind]!;
    if (count > Math.min(kinds[kind]!.limit, sticks[place]!) || cost > best) {
      place--;
      continue;
    }
    const need = needs[place]! - count * rooms[kind]!;
    const over = cost + need * rates[place + 1]! - best;
    if (over > 0) {
      // The kinds that follow are dearer for their length: it takes some more of this one, but that many at least.
      const saved = rooms[kind]! * rates[place + 1]! - costs[kind]!;
      if (saved > 0) counts[kind] = count + Math.max(0, Math.floor((over / saved) * (1 - 1e-9)) - 1);
      else place--;
      continue;
    }
    if (place + 1 === last) finish(cost, need, sticks[place]! - count);
    else {
      place++;
      [paid[place], needs[place], sticks[place]] = [cost, need, sticks[place - 1]! - count];
      counts[order[place]!] = -1;
    }
  }
  // Few long sticks come first: they are easier to fill than many short ones.
  choices.sort((a, b) => sumOf(a.least) - sumOf(b.least));
  const complete = steps <= MOST_STEPS && crowded !== best;
  return { cost: choices.length > 0 ? best + offset : Infinity, choices, complete };
}
