import { refuse } from "../../core/check.js";
import type { Pose } from "../../core/geometry-types.js";
import type {
  Hazard,
  HazardCode,
  HazardFacts,
  HazardFence,
  HazardNames,
  HazardSignal,
  QuantityKind,
} from "../../core/hazard.js";
import {
  finite,
  list,
  maybe,
  named,
  record,
  text,
  word,
  type Fields,
  type Path,
  type Reader,
} from "../../core/stored.js";
import { obstacleCode } from "../../saw/internal.js";

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

const fence: Reader<HazardFence> = (value, path) => word(value, path, { saw: true, gauge: true });
const pose: Reader<Pose> = (value, path) => word(value, path, { "side-down": true, "corner-down": true });
/** How the facts of each code are read that has some. */
const FACTS: { readonly [C in keyof HazardFacts]: Fields<HazardFacts[C]> } = {
  "trapped-piece": { fence, hold: (value, path) => word(value, path, { "by-hand": true, "held-down": true }) },
  "piece-under-bevel": { fence },
  "thrown-offcut": { offcut: (value, path) => word(value, path, { wedge: true, "blank-end": true }) },
  "balance-not-known": { fence },
  tip: { fence },
  feather: { at: (value, path) => word(value, path, { table: true, fence: true, "table-and-fence": true }) },
  capacity: {
    lay: (value, path) => word(value, path, { "none-works": true, "asked-for": true, "asked-for-others-work": true }),
    obstacles: (value, path) => list(value, path, obstacleCode),
  },
  "missed-lip": { pose },
  "lip-not-known": { pose },
  "unfilled-opening": { pose },
  "seating-impossible": {
    reason: (value, path) => word(value, path, { "past-mouth": true, "falls-through": true, "too-steep": true }),
  },
  "shallow-rabbet": { verdict: (value, path) => word(value, path, { short: true, proud: true }) },
  "pane-on-arris": { bearsOn: (value, path) => word(value, path, { "sight-edge": true, corner: true }) },
  "long-screws": { points: (value, path) => word(value, path, { "near-face": true, through: true }) },
  "panel-room": { lack: (value, path) => word(value, path, { slight: true, large: true }) },
};
/** How the names of each code are read that has some. */
const NAMES: { readonly [C in keyof HazardNames]: Fields<HazardNames[C]> } = {
  "art-on-glass": { layer: text },
  "panel-room": { layer: text },
  "panel-lap": { layer: text },
};

/** Reads what a code has of a table by code; of a code that it does not list, nothing. */
function readOf(table: Readonly<Record<string, Fields<object>>>, code: HazardCode, value: unknown, path: Path): void {
  if (Object.hasOwn(table, code)) record(value, path, table[code]!);
}

const fact: Reader<string | readonly string[]> = (value, path) =>
  Array.isArray(value) ? list(value, path, text) : text(value, path);
const HAZARD: Fields<Hazard> = {
  code: hazardCode,
  signal: (value, path) => word(value, path, SIGNALS),
  numbers: (value, path) => named(value, path, finite),
  kinds: (value, path) => named(value, path, (v, p) => word(v, p, KINDS)),
  names: (value, path) => maybe(value, path, (v, p) => named(v, p, text)),
  facts: (value, path) => maybe(value, path, (v, p) => named(v, p, fact)),
  source: text,
};
/** A hazard, each of whose numbers has its kind, with the names and facts of its code. */
export const hazard: Reader<Hazard> = (value, path) => {
  const read = record(value, path, HAZARD);
  for (const name of Object.keys(read.numbers)) {
    if (!Object.hasOwn(read.kinds, name)) {
      refuse("missing", `${path ?? ""}.kinds.${name}`, undefined, "the kind of the number of that name");
    }
  }
  readOf(NAMES, read.code, read.names, path === undefined ? path : `${path}.names`);
  readOf(FACTS, read.code, read.facts, path === undefined ? path : `${path}.facts`);
  return read;
};
/** Hazards. */
export const hazards: Reader<readonly Hazard[]> = (value, path) => list(value, path, hazard);
