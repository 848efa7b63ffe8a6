import { readStored } from "../core/stored.js";
import type { FrameGeometry } from "./frame-geometry.js";
import { frameGeometry } from "./stored/geometry.js";

/**
 * Checks that a value of any origin, such as parsed JSON, is a frame's geometry: every field, and what the fields say of each other.
 */
export function checkGeometry(value: unknown, path = "geometry"): FrameGeometry {
  return readStored(value, path, frameGeometry);
}
