import type { SawSetting } from "../miter/index.js";
import type { OpenEnd } from "./regular-closure.js";

/**
 * The size of an angle for people: three decimals, which is finer than any saw is set.
 *
 * @param angle - degrees
 * @returns the text
 */
export function inDegrees(angle: number): string {
  return `${Number(Math.abs(angle).toFixed(3))}°`;
}

/**
 * Whether a correction is too small to be set or printed.
 *
 * @param correction - degrees
 * @returns true below half a thousandth
 */
export function isIdle(correction: number): boolean {
  return Math.abs(correction) < 0.0005;
}

function angleWords(name: string, from: number, change: number, more: string, less: string): string {
  if (isIdle(change)) return `${name}: leave it.`;
  // Signs say which way a cut leans; a person needs to know whether it leans more or less.
  const grows = from === 0 || from < 0 === change < 0;
  if (!grows && Math.abs(change) > Math.abs(from)) {
    return `${name}: ${inDegrees(change)} in all, through 0 and to the other hand.`;
  }
  return `${name}: ${inDegrees(change)} ${grows ? `more, ${more}` : `less, ${less}`}.`;
}

const WHY: Readonly<Record<OpenEnd, string>> = {
  outside: "Open outside: the inside angles of the corners are too large, so the ring does not come round.",
  inside: "Open inside: the inside angles of the corners are too small, so the ring comes round too soon.",
  nowhere: "No gap: the inside angles of the corners are right.",
};

/**
 * A correction in words, with its direction.
 *
 * @param open - which end of the last joint was open
 * @param cut - what the saw cut
 * @param correction - what to add to it
 * @returns what was wrong, and what to do to miter and bevel
 */
export function correctionWords(open: OpenEnd, cut: SawSetting, correction: SawSetting): string[] {
  return [
    WHY[open],
    angleWords("Miter", cut.miter, correction.miter, "further from a square cut", "nearer to a square cut"),
    angleWords("Bevel", cut.bevel, correction.bevel, "the blade leaning further over", "the blade more upright"),
  ];
}
