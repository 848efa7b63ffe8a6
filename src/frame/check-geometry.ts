import { checkArray, checkInteger, checkLength, checkNumber, checkObject, checkSlope } from "../core/check.js";
import { checkProfile } from "../profile/index.js";
import type { FrameGeometry } from "./frame-geometry.js";

function checkCut(value: unknown, path: string): void {
  const plane = checkObject(checkObject(value, path)["plane"], `${path}.plane`);
  for (const key of ["along", "across", "through"]) {
    checkNumber(plane[key], `${path}.plane.${key}`, -1, 1, "a part of a unit vector (-1 to 1)");
  }
}

/** A line along the stick: how far out it runs decides the width of the joint. */
function checkLine(value: unknown, path: string): Readonly<Record<string, unknown>> {
  const line = checkObject(value, path);
  checkNumber(line["out"], `${path}.out`, -Number.MAX_VALUE, Number.MAX_VALUE, "a finite distance");
  return line;
}

/**
 * Checks that a value of any origin, such as parsed JSON, is a frame's geometry: the fields from which sticks are cut.
 *
 * @param value - the geometry
 * @param path - its name in error texts
 * @returns the same object, now with a type
 * @throws {InputError} when a field that is read is missing or out of range
 */
export function checkGeometry(value: unknown, path = "geometry"): FrameGeometry {
  const geometry = checkObject(value, path);
  checkInteger(geometry["sides"], `${path}.sides`, 3, 1000);
  checkSlope(geometry["slope"], `${path}.slope`);
  const stick = checkObject(checkArray(geometry["sticks"], `${path}.sticks`)[0], `${path}.sticks[0]`);
  checkInteger(stick["count"], `${path}.sticks[0].count`, 3, 1000);
  const longest = checkLine(stick["longest"], `${path}.sticks[0].longest`);
  checkLength(longest["length"], `${path}.sticks[0].longest.length`);
  checkLine(stick["shortest"], `${path}.sticks[0].shortest`);
  checkCut(stick["start"], `${path}.sticks[0].start`);
  checkCut(stick["end"], `${path}.sticks[0].end`);
  checkObject(checkArray(geometry["corners"], `${path}.corners`)[0], `${path}.corners[0]`);
  if (geometry["profile"] !== null) checkProfile(geometry["profile"], `${path}.profile`);
  return value as FrameGeometry;
}
