import { frameGeometry, planFrame, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { tableSaw } from "miterwright/saw";

/** How often a whole plan can be made, as when a slider is dragged. */
export interface FrameRate {
  /** What was measured. */
  readonly name: string;
  /** Calls in a second: the best of the trials, which a busy machine disturbs least. */
  readonly callsPerSecond: number;
}

const CALLS = 200;
const TRIALS = 15;

/** A splayed frame with all that a brief can hold. */
function briefOf(sides: number): ProfileBrief {
  return {
    sides,
    slope: 35,
    opening: { contains: { width: 340, height: 260, allowance: 2 } },
    clearance: 1.5,
    profile: molding({ width: 60, thickness: 22, rabbet: { width: 8, depth: 14 } }),
    contents: [{ name: "glass", thickness: 2 }],
    saw: tableSaw({}),
    kerf: 3.2,
    rough: { method: "square", allowance: 12 },
    sticks: [{ id: "stick", length: 2400 }],
  };
}

function callsPerSecond(call: () => number): number {
  const times = Array.from({ length: TRIALS }, () => {
    const start = performance.now();
    let sum = 0;
    for (let k = 0; k < CALLS; k++) sum += call();
    if (Number.isNaN(sum)) throw new Error("bug: a length is not a number");
    return performance.now() - start;
  });
  return (1000 * CALLS) / Math.min(...times);
}

/**
 * Times whole plans, and their geometry alone.
 *
 * @returns one row a kind of call
 */
export function benchFrame(): FrameRate[] {
  const brief = briefOf(9);
  const wide = briefOf(100);
  const calls: Record<string, () => number> = {
    "frameGeometry, 9 sides": () => frameGeometry(brief).sticks[0]!.longest.length,
    "planFrame, 9 sides": () => planFrame(brief).geometry.sticks[0]!.longest.length,
    "planFrame, 100 sides": () => planFrame(wide).geometry.sticks[0]!.longest.length,
  };
  return Object.entries(calls).map(([name, call]) => ({ name, callsPerSecond: callsPerSecond(call) }));
}
