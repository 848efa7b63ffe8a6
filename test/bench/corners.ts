import { frameJobs } from "./frame.js";
import { leastTimes, type Job } from "./measure.js";
import { bareCorner, miterJobs } from "./miter.js";
import type { Row } from "./row.js";

/**
 * Times single corners, frames and whole plans against bare trigonometry for one corner, all in one run.
 *
 * @param budget - milliseconds of processor time in all
 * @returns a row a call
 */
export function benchCorners(budget: number): Row[] {
  const jobs: Record<string, Job> = { ...miterJobs(), ...frameJobs() };
  const { bare, ...least } = leastTimes({ bare: bareCorner, ...jobs }, budget);
  return Object.entries(least).map(([name, time]) => ({
    name,
    meaning: "times as long as bare trigonometry",
    value: time / bare!,
  }));
}
