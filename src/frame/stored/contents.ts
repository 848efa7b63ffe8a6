import {
  box,
  count,
  type Fields,
  finite,
  finiteOrNull,
  flag,
  list,
  orNull,
  point,
  type Reader,
  record,
  text,
  word,
} from "../../core/stored.js";
import { regularPolygon } from "../../polygon/internal.js";
import type { SideRoom } from "../../wood/index.js";
import type { ContentsReason, FrameContents, PanelWork } from "../contents/contents-plan.js";
import type { LayerRoom } from "../contents/contents-room.js";
import type { ContentsStack, StackLayer, StackVerdict } from "../contents/contents-stack.js";
import type { LayerKind } from "../materials/material-density.js";
import { rabbetSeating } from "./geometry.js";

const KINDS: Readonly<Record<LayerKind, true>> = { glass: true, acrylic: true, sheet: true, wood: true };
const STACK_LAYER: Fields<StackLayer> = {
  name: text,
  thickness: finite,
  kind: (value, path) => orNull(value, path, (v, p) => word(v, p, KINDS)),
  behind: finite,
  up: finiteOrNull,
  tolerance: finiteOrNull,
};
const VERDICTS: Readonly<Record<StackVerdict, true>> = { roomy: true, tight: true, short: true, proud: true };
const STACK: Fields<ContentsStack> = {
  layers: (value, path) => list(value, path, (layer, at) => record(layer, at, STACK_LAYER)),
  thickness: finite,
  tolerance: finite,
  left: finiteOrNull,
  leftAtLeast: finiteOrNull,
  spare: finiteOrNull,
  verdict: (value, path) => orNull(value, path, (v, p) => word(v, p, VERDICTS)),
};

const SIDE: Fields<SideRoom> = { side: count, room: finite, retreat: finite };
const ROOM: Fields<LayerRoom> = {
  layer: count,
  name: text,
  with: (value, path) => word(value, path, { moisture: true, temperature: true }),
  made: finite,
  least: finite,
  most: finite,
  needed: finite,
  enough: flag,
  retreat: finite,
  lapLeft: finiteOrNull,
  sides: (value, path) => list(value, path, (side, at) => record(side, at, SIDE)),
};

const WORK: Readonly<Record<PanelWork, true>> = { sawn: true, glass: true, none: true };
const REASONS: Readonly<Record<ContentsReason, true>> = {
  "past-mouth": true,
  "falls-through": true,
  "too-steep": true,
  "no-contents-left": true,
};
const CONTENTS: Fields<FrameContents> = {
  possible: (value, path) => orNull(value, path, flag),
  reason: (value, path) => orNull(value, path, (v, p) => word(v, p, REASONS)),
  work: (value, path) => word(value, path, WORK),
  panes: flag,
  seating: (value, path) => orNull(value, path, rabbetSeating),
  panel: (value, path) => orNull(value, path, regularPolygon),
  box: (value, path) => orNull(value, path, box),
  stack: (value, path) => orNull(value, path, (v, p) => record(v, p, STACK)),
  visible: regularPolygon,
  hidden: finite,
  lap: finite,
  contained: (value, path) => orNull(value, path, box),
  sheet: (value, path) => orNull(value, path, box),
  center: (value, path) => orNull(value, path, point),
  trimmedArea: finiteOrNull,
  room: (value, path) => list(value, path, (one, at) => record(one, at, ROOM)),
};

/** What goes into a frame. */
export const frameContents: Reader<FrameContents> = (value, path) => record(value, path, CONTENTS);
