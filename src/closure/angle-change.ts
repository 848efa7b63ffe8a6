/**
 * What a correction does to the size of an angle of the saw. Signs say which way a cut leans; a person needs to know whether it leans more or less.
 * `through-zero`: it goes through 0 and to the other hand.
 */
export type AngleChange = "leave" | "more" | "less" | "through-zero";

/** Half a thousandth of a degree: what is less can't be set on any saw. */
const LEAST_CHANGE: number = 0.0005;

/** Whether a change of an angle is too small to be set. */
export function isIdle(change: number): boolean {
  return Math.abs(change) < LEAST_CHANGE;
}

/** What a correction does to the size of an angle. */
export function angleChange(from: number, change: number): AngleChange {
  if (isIdle(change)) return "leave";
  if (from === 0 || from < 0 === change < 0) return "more";
  return Math.abs(change) > Math.abs(from) ? "through-zero" : "less";
}
