import {
  balanceNotKnown,
  capacity,
  depthNotKnown,
  dust,
  fasteners,
  flipError,
  offcutUnderBevel,
  pieceUnderBevel,
  reach,
  ripFence,
  ripFenceOfNoLay,
  tips,
} from "./cut-hazards.js";
import { feather } from "./feather.js";
import { artOnGlass, glassHandling, largePane, paneOnArris } from "./glass-hazards.js";
import {
  flatWire,
  heavy,
  hookShows,
  leaningSeat,
  longScrews,
  massNotKnown,
  narrowSeat,
  noSeat,
} from "./hanging-hazards.js";
import type { HazardRule, SawingFacts } from "./hazard-rule.js";
import { layerRoom, seasonGap } from "./movement-hazards.js";
import { narrowRip, gaugeWork } from "./panel-hazards.js";
import { endGrain, longStick, shortPiece, shortRest, shortStick, thrownOffcut, trappedPiece } from "./piece-hazards.js";
import {
  missedLip,
  narrowLip,
  nothingLeft,
  seatingImpossible,
  seatingNotKnown,
  stackDepth,
} from "./seating-hazards.js";

/** The rules of sawing, in the order in which their hazards are told. */
export const SAWING_RULES: readonly HazardRule<SawingFacts>[] = [
  capacity,
  shortPiece,
  trappedPiece,
  ripFence,
  offcutUnderBevel,
  pieceUnderBevel,
  depthNotKnown,
  thrownOffcut,
  balanceNotKnown,
  tips,
  fasteners,
  feather,
  flipError,
  endGrain,
  ripFenceOfNoLay,
  reach,
  dust,
];

/** All rules, in the order in which a plan tells their hazards; `numberHazards` then puts the gravest first. */
// Joined by a call that a bundler can drop; it keeps a list that is spread into another.
export const HAZARD_RULES: readonly HazardRule[] = /* @__PURE__ */ ([missedLip] as HazardRule[]).concat(SAWING_RULES, [
  gaugeWork,
  narrowRip,
  nothingLeft,
  seatingImpossible,
  narrowLip,
  stackDepth,
  seatingNotKnown,
  longStick,
  shortRest,
  shortStick,
  heavy,
  glassHandling,
  paneOnArris,
  largePane,
  artOnGlass,
  noSeat,
  longScrews,
  narrowSeat,
  leaningSeat,
  flatWire,
  hookShows,
  massNotKnown,
  seasonGap,
  layerRoom,
]);
