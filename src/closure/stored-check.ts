import { finite, record, word, type Fields, type Reader } from "../core/stored.js";
import type { RingCheck } from "./ring-checks.js";

const CODES: Readonly<Record<RingCheck["code"], true>> = {
  "piece-length": true,
  "corner-angle": true,
  "last-joint": true,
  "side-to-side": true,
  "corner-to-side": true,
  "corner-to-corner": true,
  flatness: true,
  slope: true,
};
const CHECK: Fields<RingCheck> = {
  code: (value, path) => word(value, path, CODES),
  when: (value, path) => word(value, path, { pieces: true, dry: true, glued: true }),
  kind: (value, path) => word(value, path, { length: true, angle: true }),
  value: finite,
  tolerance: finite,
};
/** One thing to measure on a ring. */
export const ringCheck: Reader<RingCheck> = (value, path) => record(value, path, CHECK);
