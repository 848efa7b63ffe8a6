/**
 * Jobs that no shop has, against the clock: how far beyond its time limit a fit ends, and what memory it takes.
 */
import { verifyFit, fitStock, type StockJob } from "miterwright/stock";
import { randomFrom, wholeFrom } from "./generate.js";

const whole = wholeFrom(randomFrom(77));
const several = <T>(count: number, make: (k: number) => T): T[] => Array.from({ length: count }, (_, k) => make(k));

const JOBS: readonly { readonly name: string; readonly make: () => StockJob }[] = [
  {
    name: "a million pieces of 30 lengths",
    make: () => ({
      pieces: several(30, (k) => ({ id: `p${k}`, length: whole(200, 2000), count: 33_333 })),
      sticks: [{ id: "s", length: 2400 }],
      kerf: 3,
    }),
  },
  {
    name: "10,000 kinds of sticks, 600 lengths",
    make: () => ({
      pieces: several(600, (k) => ({ id: `p${k}`, length: 200 + 3 * k, count: 5 })),
      sticks: several(10_000, (k) => ({ id: `s${k}`, length: whole(2000, 4000), cost: whole(2000, 4000) })),
      kerf: 3,
    }),
  },
  {
    name: "10,000 offcuts of one each, 600 lengths",
    make: () => ({
      pieces: several(600, (k) => ({ id: `p${k}`, length: 200 + 3 * k, count: 5 })),
      sticks: several(10_000, (k) => ({ id: `s${k}`, length: whole(300, 4000), count: 1 })),
      kerf: 3,
    }),
  },
  {
    name: "a million pieces of a name each, 30 lengths",
    make: () => ({
      pieces: several(1_000_000, (k) => ({ id: `p${k}`, length: 200 + ((k * 7919) % 30) * 60 })),
      sticks: [{ id: "s", length: 2400 }],
      kerf: 3,
    }),
  },
];

/** Milliseconds that each may search. */
const LIMIT = 2000;

const table: Record<string, Record<string, string | number>> = {};
for (const { name, make } of JOBS) {
  const job = make();
  const start = performance.now();
  // The limit runs from here too, but only the search looks at the clock: what comes before and after is shown by itself.
  let first = 0;
  let last = 0;
  const fit = fitStock(job, {
    timeLimit: LIMIT,
    onProgress: () => {
      last = performance.now();
      first ||= last;
    },
  });
  const end = performance.now();
  const check = verifyFit(job, fit);
  if (!check.ok) throw new Error(`${name}: ${check.faults[0]!.message}`);
  table[name] = {
    status: fit.status,
    stopped: fit.stopped ?? "-",
    "gap %": (100 * fit.relativeGap).toFixed(3),
    "reading ms": Math.round(first - start),
    "writing ms": Math.round(end - last),
    "all ms": Math.round(end - start),
    "peak MB": Math.round(process.resourceUsage().maxRSS / 1024),
  };
}
console.table(table);
