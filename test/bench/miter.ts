import { compoundMiterKernel, type CompoundMiter } from "../../src/miter/compound-kernel.js";
import { compoundMiter } from "../../src/miter/compound-miter.js";
import { joinCorner } from "../../src/miter/join-corner.js";
import { sawSetting } from "../../src/miter/saw-setting.js";
import type { Job } from "./measure.js";

/** Slope and number of sides of the k-th corner: every job runs through the same ones. */
const slopeOf = (k: number): number => 1 + ((k % 256) * 88) / 256;
const sidesOf = (k: number): number => 3 + ((k >> 8) % 40);

/** The four angles of a corner as a reader would write them in place. */
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

/**
 * Bare trigonometry for one corner: the unit of every ratio.
 *
 * @param k - which corner
 * @returns the sum of its angles
 */
export function bareCorner(k: number): number {
  return readAll(bare(180 / sidesOf(k), slopeOf(k)));
}

/**
 * The calls of `miter` that are timed.
 *
 * @returns the jobs by name
 */
export function miterJobs(): Record<string, Job> {
  return {
    compoundMiterKernel: (k) => readAll(compoundMiterKernel(180 / sidesOf(k), slopeOf(k))),
    "compoundMiter({ sides, slope })": (k) => readAll(compoundMiter({ sides: sidesOf(k), slope: slopeOf(k) })),
    "compoundMiter({ turn, slope })": (k) => readAll(compoundMiter({ turn: 360 / sidesOf(k), slope: slopeOf(k) })),
    "joinCorner, unequal boards": (k) =>
      joinCorner({
        turn: 360 / sidesOf(k),
        first: { slope: slopeOf(k), thickness: 18 },
        second: { slope: slopeOf(k) / 2, thickness: 12 },
      }).dihedral,
    "sawSetting(plane, ...)": (k) =>
      sawSetting({ along: 0.8, across: -0.6, through: 0.1 }, { slope: slopeOf(k), lay: "propped" }).bevel,
  };
}
