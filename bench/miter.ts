import { pathToFileURL } from "node:url";
import { compoundMiterKernel, type CompoundMiter } from "../src/miter/compound-kernel.js";
import { compoundMiter } from "../src/miter/compound-miter.js";
import { joinCorner } from "../src/miter/join-corner.js";
import { sawSetting } from "../src/miter/saw-setting.js";

/** How many times as long as bare trigonometry a call takes. */
export interface MiterRatio {
  /** What was measured. */
  readonly name: string;
  /** Its time over that of the same angles written out with `Math`, in one run. */
  readonly ratio: number;
}

const SLOPES: readonly number[] = Array.from({ length: 256 }, (_, i) => 1 + (i * 88) / 256);
const ROUNDS = 400;
const TRIALS = 15;

/** The same four angles as a reader would write them in place. */
function bare(half: number, slope: number): CompoundMiter {
  const h = (half * Math.PI) / 180;
  const s = (slope * Math.PI) / 180;
  const plan = Math.cos(s) * Math.sin(h);
  const a = Math.sin(s) * Math.sin(h);
  const b = Math.sqrt(Math.cos(h) ** 2 + plan * plan);
  return {
    miter: (Math.atan2(plan, Math.cos(h)) * 180) / Math.PI,
    bevel: (Math.atan2(a, b) * 180) / Math.PI,
    dihedral: (2 * Math.atan2(b, a) * 180) / Math.PI,
    planMiter: half,
  };
}

/** Reads every angle, as the compiler drops the work behind one that nobody reads. */
function readAll(angles: CompoundMiter): number {
  return angles.miter + angles.bevel + angles.dihedral + angles.planMiter;
}

/** What keeps the compiler from dropping the work. */
let sink = 0;

/** Milliseconds of one trial: every slope and a range of sides. */
function time(call: (sides: number, slope: number) => number): number {
  const start = performance.now();
  for (let round = 0; round < ROUNDS; round++) {
    const sides = 3 + (round % 40);
    for (const slope of SLOPES) sink += call(sides, slope);
  }
  return performance.now() - start;
}

/**
 * Times the calls of `miter` against bare trigonometry.
 *
 * The trials of all calls are interleaved and the least time of each is taken, so that a busy machine disturbs the ratios little.
 *
 * @returns one row a call
 */
export function benchMiter(): MiterRatio[] {
  const calls: Record<string, (sides: number, slope: number) => number> = {
    "bare trigonometry": (sides, slope) => readAll(bare(180 / sides, slope)),
    compoundMiterKernel: (sides, slope) => readAll(compoundMiterKernel(180 / sides, slope)),
    "compoundMiter({ sides, slope })": (sides, slope) => readAll(compoundMiter({ sides, slope })),
    "compoundMiter({ turn, slope })": (sides, slope) => readAll(compoundMiter({ turn: 360 / sides, slope })),
    "joinCorner, unequal boards": (sides, slope) =>
      joinCorner({
        turn: 360 / sides,
        first: { slope, thickness: 18 },
        second: { slope: slope / 2, thickness: 12 },
      }).dihedral,
    "sawSetting(plane, ...)": (_sides, slope) =>
      sawSetting({ along: 0.8, across: -0.6, through: 0.1 }, { slope, lay: "propped" }).bevel,
  };
  const least = Object.fromEntries(Object.keys(calls).map((name) => [name, Infinity]));
  for (let trial = 0; trial < TRIALS; trial++) {
    for (const [name, call] of Object.entries(calls)) least[name] = Math.min(least[name]!, time(call));
  }
  if (Number.isNaN(sink)) throw new Error("bug: an angle is not a number");
  return Object.entries(least).map(([name, ms]) => ({ name, ratio: ms / least["bare trigonometry"]! }));
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  console.table(benchMiter().map(({ name, ratio }) => ({ name, ratio: Number(ratio.toFixed(2)) })));
}
