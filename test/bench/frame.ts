import { frameGeometry, planFrame, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { tableSaw } from "miterwright/saw";
import type { Job } from "./measure.js";

/** A splayed frame with much of what a brief can hold, its lengths in millimeters times `unit`. */
function briefOf(sides: number, unit = 1): ProfileBrief {
  return {
    sides,
    slope: 35,
    opening: { contains: { width: 340 * unit, height: 260 * unit, allowance: 2 * unit } },
    clearance: 1.5 * unit,
    profile: molding({
      width: 60 * unit,
      thickness: 22 * unit,
      rabbet: { width: 8 * unit, depth: 14 * unit },
    }),
    contents: [{ name: "glass", thickness: 2 * unit }],
    saw: tableSaw({}),
    kerf: 3.2 * unit,
    rough: { method: "square", allowance: 12 * unit },
    sticks: [{ id: "stick", length: 2400 * unit }],
  };
}

/**
 * Whole plans, as they are made again and again while a slider is dragged, and their geometry alone.
 *
 * @returns the jobs by name
 */
export function frameJobs(): Record<string, Job> {
  const brief = briefOf(9);
  const inches: ProfileBrief = { ...briefOf(9, 1 / 25.4), unit: "in" };
  const wide = briefOf(100);
  return {
    "frameGeometry, 9 sides": () => frameGeometry(brief).pieces[0].longest.length,
    "planFrame, 9 sides": () => planFrame(brief).geometry.pieces[0].longest.length,
    "planFrame, 9 sides, inches": () => planFrame(inches).geometry.pieces[0].longest.length,
    "planFrame, 100 sides": () => planFrame(wide).geometry.pieces[0].longest.length,
  };
}
