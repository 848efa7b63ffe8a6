import {
  count,
  finite,
  finiteOrNull,
  flag,
  list,
  orNull,
  record,
  text,
  textOrNull,
  word,
  type Fields,
  type Reader,
} from "../../core/stored.js";
import { contact, hand, obstacles, saw, scale, surface } from "../../saw/internal.js";
import type { ShopChange, ShopCut, ShopGroup, ShopOrder, ShopRound, UncutFrame } from "../shop/shop-order-types.js";
import { kind, move } from "./operation.js";

const CHANGES: Readonly<Record<ShopChange, true>> = { saw: true, bevel: true, miter: true, lay: true };
const changes: Reader<readonly ShopChange[]> = (value, path) => list(value, path, (v, p) => word(v, p, CHANGES));

const CUT: Fields<ShopCut> = {
  name: text,
  step: count,
  kind,
  times: count,
  atFence: surface,
  kept: hand,
  move,
  length: finiteOrNull,
  arris: textOrNull,
  stop: (value, path) => orNull(value, path, contact),
  miterOff: finite,
  bevelOff: finite,
};
const GROUP: Fields<ShopGroup> = {
  saw: count,
  miter: scale,
  bevel: scale,
  down: surface,
  cradled: flag,
  changes,
  cuts: (value, path) => list(value, path, (v, p) => record(v, p, CUT)),
};
const ROUND: Fields<ShopRound> = {
  times: count,
  groups: (value, path) => list(value, path, (v, p) => record(v, p, GROUP)),
  again: changes,
};
const LEFT: Fields<UncutFrame> = { name: text, obstacles };
const OFTEN: Fields<ShopOrder["changes"]> = { bevel: count, miter: count, lay: count };
const SHOP_ORDER: Fields<ShopOrder> = {
  saws: (value, path) => list(value, path, saw),
  rounds: (value, path) => list(value, path, (v, p) => record(v, p, ROUND)),
  changes: (value, path) => record(value, path, OFTEN),
  left: (value, path) => list(value, path, (v, p) => record(v, p, LEFT)),
};

/** In which order the jobs of several frames are done. */
export const storedShopOrder: Reader<ShopOrder> = (value, path) => record(value, path, SHOP_ORDER);
