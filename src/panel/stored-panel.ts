import { MAX_FRAME_SIDES, checkInteger, checkRange, refuse } from "../core/check.js";
import { count, finite, flag, list, point, record, word, type Fields, type Path, type Reader } from "../core/stored.js";
import type { Box, Pose } from "../core/geometry-types.js";
import { regularPolygon } from "../polygon/internal.js";
import type { EdgeDistance, LocatedPoint, PanelCorner, PanelCut, PanelPlan } from "./panel-plan.js";

const POSES: Readonly<Record<Pose, true>> = { "side-down": true, "corner-down": true };
/** How a polygon stands. */
export const pose: Reader<Pose> = (value, path) => word(value, path, POSES);

/** A blank can be larger than a length may be, by what its panel is wider than its apothem. */
const size: Reader<number> = (value, path) =>
  checkRange(value, path ?? "", { min: Number.MIN_VALUE, max: 1e107, what: "a positive length (up to 1e107)" });
const BLANK: Fields<Box> = { width: size, height: size };

const FROM_SIDE: Fields<EdgeDistance<"left" | "right">> = {
  edge: (value, path) => word(value, path, { left: true, right: true }),
  distance: finite,
};
const FROM_BASE: Fields<EdgeDistance<"bottom" | "top">> = {
  edge: (value, path) => word(value, path, { bottom: true, top: true }),
  distance: finite,
};
const fromSide: Reader<EdgeDistance<"left" | "right">> = (value, path) => record(value, path, FROM_SIDE);
const fromBase: Reader<EdgeDistance<"bottom" | "top">> = (value, path) => record(value, path, FROM_BASE);
const LOCATED: Fields<LocatedPoint> = { point, fromSide, fromBase };
const CORNER: Fields<PanelCorner> = { point, fromSide, fromBase, inside: flag };
const CUT: Fields<PanelCut> = {
  step: count,
  side: count,
  against: count,
  setting: finite,
  swing: (value, path) => word(value, path, { closed: true, open: true }),
  up: (value, path) => word(value, path, { front: true, back: true }),
  errorMultiple: count,
  middle: (value, path) => record(value, path, LOCATED),
};
const PANEL: Fields<PanelPlan> = {
  panel: regularPolygon,
  pose,
  blank: (value, path) => record(value, path, BLANK),
  center: point,
  existing: (value, path) => list(value, path, count),
  setting: finite,
  sidesOn: finite,
  cuts: (value, path) => list(value, path, (cut, at) => record(cut, at, CUT)),
  corners: (value, path) => list(value, path, (corner, at) => record(corner, at, CORNER)),
};

/** A place among the sides. */
function side(value: number, path: Path, sides: number): void {
  checkInteger(value, path ?? "", 0, sides - 1);
}

/** A panel's plan, whose parts agree on the number of sides. */
export const panelPlan: Reader<PanelPlan> = (value, path) => {
  const plan = record(value, path, PANEL);
  const at = path ?? "";
  const sides = checkInteger(plan.panel.sides, `${at}.panel.sides`, 3, MAX_FRAME_SIDES);
  if (plan.corners.length !== sides) {
    refuse("range", `${at}.corners`, plan.corners, "an array of as many corners as the panel has sides");
  }
  if (plan.existing.length + plan.cuts.length !== sides) {
    refuse("range", `${at}.cuts`, plan.cuts, "an array of as many cuts as the blank lacks sides");
  }
  plan.existing.forEach((one, index) => {
    side(one, `${at}.existing[${index}]`, sides);
  });
  plan.cuts.forEach((cut, index) => {
    side(cut.side, `${at}.cuts[${index}].side`, sides);
    side(cut.against, `${at}.cuts[${index}].against`, sides);
    if (cut.step !== index + 1) refuse("range", `${at}.cuts[${index}].step`, cut.step, `${index + 1}`);
  });
  return plan;
};
