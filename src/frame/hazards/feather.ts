import { atan2Deg, cosDeg, sinDeg } from "../../core/degrees.js";
import type { Operation } from "../operation.js";
import { raise, type SawingRule } from "./sawing-rule.js";

/** An edge sharper than this creeps under or behind a stop, in degrees; common practice, no printed source. */
const FEATHER: number = 60;
/** What rounding may take from an angle, in degrees. */
const ROUNDING: number = 1e-9;
/** What touches this near the table or the fence, as a share of the stick's height, is at it. */
const AT: number = 1e-9;

/** A thin edge of the finished end, in words, and its angle. */
interface ThinEdge {
  readonly angle: number;
  readonly where: string;
  readonly instead: string;
}

/**
 * The edges that can creep: one that lies on the table gets under a stop, one that stands at the fence gets behind it. Anywhere else the edge meets the stop's face.
 *
 * For a miter m and a bevel b the finished end meets the table at 90 - b, and the fence at acos(cos b sin m).
 */
function thinEdges({ stop, stopRule, size, placement }: Operation): ThinEdge[] {
  if (stop === null || size === null) return [];
  const near = AT * size.height;
  const [miter, bevel] = [Math.abs(placement.miter.degrees), Math.abs(placement.bevel.degrees)];
  const onTable: ThinEdge = {
    angle: 90 - bevel,
    where: "on the table, where it creeps under the stop",
    instead: "a square face that reaches the table",
  };
  const atFence: ThinEdge = {
    angle: atan2Deg(Math.hypot(sinDeg(bevel), cosDeg(bevel) * cosDeg(miter)), cosDeg(bevel) * sinDeg(miter)),
    where: "at the fence, where it creeps behind the stop",
    instead: "a square face that is tight to the fence",
  };
  const edges = [
    ...(stop.to <= near ? [onTable] : []),
    ...(stopRule.fromFence !== null && stopRule.fromFence <= near ? [atFence] : []),
  ];
  return edges.filter(({ angle }) => angle < FEATHER - ROUNDING);
}

/** The finished end meets the stop with an edge that is thin, and lies where it can creep past it. */
export const feather: SawingRule = ({ plan, lastStep }) => {
  const last = plan.operations.at(-1);
  const edges = last === undefined ? [] : thinEdges(last);
  if (edges.length === 0) return null;
  const [where, instead] = (["where", "instead"] as const).map((key) => edges.map((edge) => edge[key]).join(" and "));
  const sentence = `The finished end meets the stop with a thin edge ${where!}: give the stop ${instead!}, and push gently.`;
  const angle = Math.min(...edges.map((edge) => edge.angle));
  return raise("feather", "notice", [lastStep], sentence, { angle: { angle, limit: FEATHER } });
};
