import { refuse } from "../../core/check.js";
import type { Hazard, HazardCode, HazardSignal, QuantityKind } from "../../core/hazard.js";
import { finite, list, named, record, text, word, type Fields, type Reader } from "../../core/stored.js";

const KINDS: Readonly<Record<QuantityKind, true>> = {
  length: true,
  angle: true,
  mass: true,
  force: true,
  percent: true,
};
const SIGNALS: Readonly<Record<HazardSignal, true>> = { danger: true, warning: true, caution: true, notice: true };
const CODES: Readonly<Record<HazardCode, true>> = {
  "short-piece": true,
  "short-rest": true,
  "trapped-piece": true,
  "rip-fence": true,
  "piece-under-bevel": true,
  "offcut-under-bevel": true,
  "depth-not-known": true,
  "thrown-offcut": true,
  tip: true,
  "balance-not-known": true,
  fasteners: true,
  feather: true,
  "flip-error": true,
  capacity: true,
  "long-stick": true,
  "short-stick": true,
  "deep-panel": true,
  "short-panel-edge": true,
  "narrow-rip": true,
  dust: true,
  reach: true,
  "end-grain": true,
  "missed-lip": true,
  "lip-not-known": true,
  "unfilled-opening": true,
  "no-contents-left": true,
  "seating-impossible": true,
  "seating-not-known": true,
  "narrow-lip": true,
  "shallow-rabbet": true,
  "glass-tolerance": true,
  "glass-handling": true,
  "pane-on-arris": true,
  "large-pane": true,
  "art-on-glass": true,
  heavy: true,
  "long-screws": true,
  "narrow-hanger-seat": true,
  "leaning-hanger-seat": true,
  "no-hanger-seat": true,
  "flat-wire": true,
  "hook-shows": true,
  "mass-not-known": true,
  "season-gap": true,
  "panel-room": true,
  "panel-lap": true,
};
/** The code of a hazard. */
export const hazardCode: Reader<HazardCode> = (value, path) => word(value, path, CODES);

const HAZARD: Fields<Hazard> = {
  code: hazardCode,
  signal: (value, path) => word(value, path, SIGNALS),
  sentence: text,
  numbers: (value, path) => named(value, path, finite),
  kinds: (value, path) => named(value, path, (v, p) => word(v, p, KINDS)),
  source: text,
};
/** A hazard, each of whose numbers has its kind. */
export const hazard: Reader<Hazard> = (value, path) => {
  const read = record(value, path, HAZARD);
  for (const name of Object.keys(read.numbers)) {
    if (!Object.hasOwn(read.kinds, name)) {
      refuse("missing", `${path ?? ""}.kinds.${name}`, undefined, "the kind of the number of that name");
    }
  }
  return read;
};
/** Hazards. */
export const hazards: Reader<readonly Hazard[]> = (value, path) => list(value, path, hazard);
