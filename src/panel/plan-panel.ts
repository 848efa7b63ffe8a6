import { checkInteger, checkLengthOrZero, checkObject, checkWord, MAX_FRAME_SIDES, reject } from "../core/check.js";
import type { Box, Point, Pose } from "../core/geometry-types.js";
import { offsetPolygon, polygonCorners, polygonExtent, type PolygonLike } from "../polygon/index.js";
import { bestChain, chainSetting, sidesOnBlank } from "./cut-chain.js";
import type { LocatedPoint, PanelCorner, PanelPlan } from "./panel-plan.js";

/** Options of {@link planPanel}. */
export interface PlanPanelOptions {
  /** The opening that the panel goes into; only `sides`, 3 to 1000, and `apothem` are read. */
  readonly polygon: PolygonLike;
  /** Kept free at every side, 0 or more; default 0. */
  readonly clearance?: number | undefined;
  /** How the panel stands in its blank; default `"side-down"`. For n = 4k a corner-down panel has no side on its blank, so it is cut side-down. */
  readonly pose?: Pose | undefined;
  /** `both` ways round from the blank's sides (default), or `one` way only, which doubles what an error of the setting adds up to. */
  readonly chain?: "both" | "one" | undefined;
}

/** A corner this close to an edge of the blank, as a share of the blank's size, lies on it: it absorbs rounding. */
const ON_EDGE: number = 1e-9;

function locate(point: Point, blank: Box): LocatedPoint {
  const right = blank.width - point.x;
  const top = blank.height - point.y;
  return {
    point,
    fromSide: point.x <= right ? { edge: "left", distance: point.x } : { edge: "right", distance: right },
    fromBase: point.y <= top ? { edge: "bottom", distance: point.y } : { edge: "top", distance: top },
  };
}

function locateCorner(point: Point, blank: Box): PanelCorner {
  const { fromSide, fromBase } = locate(point, blank);
  const near = (blank.width + blank.height) * ON_EDGE;
  return { point, fromSide, fromBase, inside: fromSide.distance > near && fromBase.distance > near };
}

/**
 * Plans how a panel is cut from a squared blank with one setting of the gauge.
 *
 * With side k against the gauge, side k + j is cut at |360 j / n - 90| degrees from square. The blank is the panel's bounding box, so some sides exist already.
 * Among all j whose chain of cuts reaches every other side, the one with the smallest setting is taken (on a tie both chains are equally long). The best
 * setting of a side-down panel is 90 / n for odd n, 180 / n for n = 4k + 2, 360 / n for n = 4k, and the cuts are n - 1, n - 2 and n - 4.
 *
 * @param options - the opening, the clearance at every side, the pose and the way round
 * @returns the panel, its blank, the cuts in order, and where every corner lies
 * @throws {InputError} when an option is not sound, or the clearance leaves no panel
 * @example
 * ```ts
 * import { planPanel } from "miterwright/panel";
 *
 * const plan = planPanel({ polygon: { sides: 5, apothem: 100 }, clearance: 1 });
 * plan.setting; //=> 18
 * plan.cuts.map((cut) => [cut.side, cut.against]); //=> [[1, 0], [4, 0], [2, 1], [3, 4]]
 * plan.corners.filter((corner) => corner.inside).length; //=> 0
 * ```
 */
export function planPanel(options: PlanPanelOptions): PanelPlan {
  const given = checkObject(options);
  const clearance = checkLengthOrZero(given["clearance"] ?? 0, "clearance");
  const wanted = checkWord(given["pose"] ?? "side-down", "pose", ["side-down", "corner-down"]);
  const chainWay = checkWord(given["chain"] ?? "both", "chain", ["both", "one"]);
  const { polygon } = options;
  checkInteger(checkObject(polygon, "polygon")["sides"], "polygon.sides", 3, MAX_FRAME_SIDES);
  polygonExtent(polygon);
  if (!(polygon.apothem > clearance)) {
    reject(
      "impossible",
      "clearance",
      clearance,
      `Expected \`clearance\` to be less than the opening's apothem, ${Number(polygon.apothem.toPrecision(12))}, got ${clearance}`,
    );
  }
  const panel = offsetPolygon(polygon, -clearance);
  const { sides } = panel;
  const pose = sides % 4 === 0 ? "side-down" : wanted;
  const blank = polygonExtent(panel, pose);
  const bare = polygonCorners(panel, pose);
  const left = Math.min(...bare.map(({ x }) => x));
  const low = Math.min(...bare.map(({ y }) => y));
  const points = bare.map((corner) => ({ x: corner.x - left, y: corner.y - low }));
  const existing = sidesOnBlank(sides, pose);
  const { step: sidesOn, links } = bestChain(sides, existing, chainWay === "one");
  const setting = links.length === 0 ? 0 : chainSetting(sides, sidesOn);
  const middleOf = (side: number): Point => {
    const [a, b] = [points[side]!, points[(side + 1) % sides]!];
    return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  };
  return {
    panel,
    pose,
    blank,
    center: { x: -left, y: -low },
    existing,
    setting,
    sidesOn,
    cuts: links.map(({ side, against, toward, errorMultiple }, index) => ({
      step: index + 1,
      side,
      against,
      setting,
      swing: 4 * sidesOn > sides ? "closed" : "open",
      up: toward === "next" ? "front" : "back",
      errorMultiple,
      middle: locate(middleOf(side), blank),
    })),
    corners: points.map((point) => locateCorner(point, blank)),
  };
}
