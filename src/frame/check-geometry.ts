import { readStored } from "../core/stored.js";
import type { FrameGeometry } from "./frame-geometry.js";
import { frameGeometry } from "./stored/geometry.js";

/**
 * Checks that a value of any origin, such as parsed JSON, is a frame's geometry: every field, and what the fields say of each other.
 *
 * @param value - the geometry
 * @param path - its name in error texts
 * @returns the same object, now with a type
 * @throws {InputError} when a field is missing or out of range
 */
export function checkGeometry(value: unknown, path = "geometry"): FrameGeometry {
  return readStored(value, path, frameGeometry);
}
