import { checkRange, checkWord, refuse, reject } from "../core/check.js";
import type { Pose } from "../core/geometry-types.js";

/**
 * How a polygon may stand while something upright is fitted round it or into it: in a pose, or however it fits best.
 *
 * Give `pose` (default `"side-down"`), or `rotation: "free"`, not both.
 */
export type Standing =
  | {
      /** The polygon stands so. Default `"side-down"`. */
      readonly pose?: Pose | undefined;
      /** Not given together with a pose. */
      readonly rotation?: undefined;
    }
  | {
      /** The polygon is rotated to where it fits best. */
      readonly rotation: "free";
      /** Not given together with a free rotation. */
      readonly pose?: undefined;
    };

const POSES: readonly Pose[] = ["side-down", "corner-down"];

/** How a polygon may stand, from a function's options; side-down when they do not say. */
export function checkStanding(options: Readonly<Record<string, unknown>>): Pose | "free" {
  const { pose, rotation } = options;
  if (rotation === undefined) return pose === undefined ? "side-down" : checkWord(pose, "pose", POSES);
  if (pose !== undefined) {
    return reject("conflict", "rotation", rotation, "Expected at most one of `pose`, `rotation`, got both");
  }
  return checkWord(rotation, "rotation", ["free"]);
}

/** A pose, or a rotation in degrees; side-down when there is none. */
export function checkPoseOrRotation(value: unknown): Pose | number {
  if (value === undefined) return "side-down";
  if (POSES.includes(value as Pose)) return value as Pose;
  const expected = `"side-down", "corner-down" or degrees from -360 to 360`;
  if (typeof value === "string") return refuse("unknown", "pose", value, expected);
  return checkRange(value, "pose", { min: -360, max: 360, what: expected });
}

/** The rotation that a pose is, counter-clockwise from standing on side 0. */
export function rotationOf(n: number, pose: Pose): number {
  return pose === "side-down" ? 0 : 180 / n;
}
