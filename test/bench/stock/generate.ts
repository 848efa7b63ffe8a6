/**
 * The classical classes of one-dimensional cutting and packing, drawn anew from their published descriptions with seeds of
 * our own, and jobs as a shop has them. The published files themselves are not carried here.
 */
import type { StockJob } from "miterwright/stock";

/** A job and what is known about it. */
export interface Instance {
  readonly name: string;
  readonly job: StockJob;
  /** The optimum, where the way it was made tells it. */
  readonly optimum?: number;
}

/** Uniform numbers from 0 to 1, the same for one seed on every machine (the mulberry32 generator, public domain). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Whole numbers from `low` to `high`, both included. */
export function wholeFrom(random: () => number): (low: number, high: number) => number {
  return (low, high) => low + Math.floor(random() * (high - low + 1));
}

/** A bin packing problem as a stock job: each stick costs 1. */
function packing(name: string, capacity: number, sizes: readonly number[], optimum?: number): Instance {
  const counts = new Map<number, number>();
  for (const size of sizes) counts.set(size, (counts.get(size) ?? 0) + 1);
  const pieces = [...counts].map(([length, count]) => ({ id: `p${length}`, length, count }));
  const job = { pieces, sticks: [{ id: "bin", length: capacity, cost: 1 }] };
  return optimum === undefined ? { name, job } : { name, job, optimum };
}

const several = <T>(count: number, make: (k: number) => T): T[] => Array.from({ length: count }, (_, k) => make(k));

/**
 * Uniform class: bins of 150, sizes 20 to 100.
 * E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2 (1996), 5-30.
 */
export function uniform(n: number, instances: number): Instance[] {
  return several(instances, (k) => {
    const whole = wholeFrom(randomFrom(1000 * n + k));
    return packing(
      `uniform ${n} #${k}`,
      150,
      several(n, () => whole(20, 100)),
    );
  });
}

/**
 * Triplets: bins of 1000 that three items each fill; the optimum is n / 3.
 * E. Falkenauer, as above.
 */
export function triplets(n: number, instances: number): Instance[] {
  return several(instances, (k) => {
    const whole = wholeFrom(randomFrom(2000 * n + k));
    const sizes = several(n / 3, () => {
      const first = whole(380, 490);
      const second = whole(250, Math.floor((1000 - first) / 2));
      return [first, second, 1000 - first - second];
    }).flat();
    return packing(`triplets ${n} #${k}`, 1000, sizes, n / 3);
  });
}

/**
 * First set: bins of 100, 120, 150, sizes from 1, 20 or 30 up to 100.
 * A. Scholl, R. Klein, C. Juergens, BISON: a fast hybrid procedure for exactly solving the one-dimensional bin packing
 * problem, Computers and Operations Research 24 (1997), 627-645.
 */
export function firstSet(n: number, instances: number): Instance[] {
  const kinds = [100, 120, 150].flatMap((capacity) => [1, 20, 30].map((low) => ({ capacity, low })));
  return kinds.flatMap(({ capacity, low }) =>
    several(instances, (k) => {
      const whole = wholeFrom(randomFrom(3000 * n + 100 * capacity + 10 * low + k));
      return packing(
        `first set ${n}, ${capacity}, ${low}.. #${k}`,
        capacity,
        several(n, () => whole(low, 100)),
      );
    }),
  );
}

/** Second set: bins of 1000, sizes of mean 1000/3, /5, /7, /9, up to 20, 50 or 90 % off it. Scholl, Klein and Juergens, as above. */
export function secondSet(n: number, instances: number): Instance[] {
  const kinds = [3, 5, 7, 9].flatMap((parts) => [20, 50, 90].map((spread) => ({ parts, spread })));
  return kinds.flatMap(({ parts, spread }) =>
    several(instances, (k) => {
      const whole = wholeFrom(randomFrom(4000 * n + 100 * parts + spread + 7919 * k));
      const mean = 1000 / parts;
      const low = Math.ceil((mean * (100 - spread)) / 100);
      const high = Math.floor((mean * (100 + spread)) / 100);
      return packing(
        `second set ${n}, /${parts}, ${spread} % #${k}`,
        1000,
        several(n, () => whole(low, high)),
      );
    }),
  );
}

/** Third set: bins of 100,000, 200 sizes from 20,000 to 35,000. Scholl, Klein and Juergens, as above. */
export function thirdSet(instances: number): Instance[] {
  return several(instances, (k) => {
    const whole = wholeFrom(randomFrom(5000 + k));
    return packing(
      `third set #${k}`,
      100_000,
      several(200, () => whole(20_000, 35_000)),
    );
  });
}

/**
 * Bins of 1000, sizes 150 to 200, of which almost six fill a bin.
 * P. Schwerin, G. Waescher, The bin-packing problem: a problem generator and some numerical experiments with FFD packing
 * and MTP, International Transactions in Operational Research 4 (1997), 377-389.
 */
export function almostSix(n: number, instances: number): Instance[] {
  return several(instances, (k) => {
    const whole = wholeFrom(randomFrom(6000 * n + k));
    return packing(
      `almost six ${n} #${k}`,
      1000,
      several(n, () => whole(150, 200)),
    );
  });
}

/**
 * Bins of 1000, 160 to 200 items of sizes 1 to 800, the range of Schoenfield's 28 hard instances. Those were picked from
 * very many; among instances drawn at random hard ones are rare.
 * J. E. Schoenfield, Fast, exact solution of open bin packing problems without linear programming, US Army Space and
 * Missile Defense Command, 2002.
 */
export function wideSizes(instances: number): Instance[] {
  return several(instances, (k) => {
    const whole = wholeFrom(randomFrom(7000 + k));
    const n = whole(160, 200);
    return packing(
      `wide sizes ${n} #${k}`,
      1000,
      several(n, () => whole(1, 800)),
    );
  });
}

/**
 * Sticks of 10,000, 20 to 60 lengths from 1 to 5000, three of each on average: the generator's parameters for jobs with few
 * large pieces (the class's own files hold 17 that were left unsolved).
 * T. Gau, G. Waescher, CUTGEN1: a problem generator for the standard one-dimensional cutting stock problem, European Journal
 * of Operational Research 84 (1995), 572-579.
 */
export function fewOfEach(instances: number): Instance[] {
  return several(instances, (k) => {
    const random = randomFrom(8000 + k);
    const whole = wholeFrom(random);
    const m = whole(20, 60);
    const lengths = several(m, () => whole(1, 5000));
    // The total demand is shared out in proportion to random weights.
    const weights = several(m, () => random());
    const sum = weights.reduce((a, b) => a + b, 0);
    const sizes = lengths.flatMap((length, j) =>
      several(Math.max(1, Math.round((3 * m * weights[j]!) / sum)), () => length),
    );
    return packing(`few of each ${sizes.length} #${k}`, 10_000, sizes);
  });
}

/** Sticks cut fully into random pieces: no plan uses fewer than the sticks that were cut. */
export function planted(sticks: number, instances: number): Instance[] {
  return several(instances, (k) => {
    const whole = wholeFrom(randomFrom(9000 * sticks + k));
    const length = 2400;
    const sizes = several(sticks, () => {
      const cuts = several(whole(2, 5), () => 50 * whole(1, 47));
      const ends = [...new Set([0, ...cuts, length])].sort((a, b) => a - b);
      return ends.slice(1).map((end, j) => end - ends[j]!);
    }).flat();
    return packing(`planted ${sticks} #${k}`, length, sizes, sticks);
  });
}

/** What the sticks of a trade job cost. */
export type StickCosts = "one length" | "by length" | "all by length" | "fewest" | "own costs";

/**
 * Jobs of the size that a frame shop or a joiner has: 8 to 30 lengths, 40 to 150 pieces, a 3 mm kerf; with several lengths
 * also some offcuts from the rack.
 */
export function trade(costs: StickCosts, instances: number): Instance[] {
  return several(instances, (k) => {
    const random = randomFrom(10_000 + 77 * k + (costs === "one length" ? 0 : 500_000));
    const whole = wholeFrom(random);
    const lengths = new Set<number>();
    const wanted = whole(8, 30);
    while (lengths.size < wanted) {
      const rough = whole(200, 2000);
      lengths.add(random() < 0.6 ? 10 * Math.round(rough / 10) : rough);
    }
    const pieces = [...lengths].map((length) => ({
      id: `p${length}`,
      length,
      count: whole(1, Math.ceil(150 / wanted)),
    }));
    const name = `${costs} #${k}`;
    if (costs === "one length") {
      const length = [2400, 3000][whole(0, 1)]!;
      return { name, job: { pieces, sticks: [{ id: "new", length, cost: 1 }], kerf: 3 } };
    }
    const fresh = [
      { id: "short", length: 2400, own: 780 },
      { id: "middle", length: 3000, own: 960 },
      { id: "long", length: 3600, own: 1150 },
    ].map(({ id, length, own }) => ({
      id,
      length,
      cost: { "by length": length, "all by length": length, fewest: 1, "own costs": own }[costs],
    }));
    // What lies in the rack is paid for, unless it counts by its length too; where lengths have their own costs it costs as much as firewood.
    const rack = several(whole(2, 4), (j) => {
      const length = whole(600, 1900);
      const cost = costs === "own costs" ? 10 * Math.floor(length / 100) : costs === "all by length" ? length : 0;
      return { id: `rack${j}`, length, count: whole(1, 2), cost };
    });
    return { name, job: { pieces, sticks: [...fresh, ...rack], kerf: 3 } };
  });
}
