import { atan2Deg, cosDeg, sinDeg } from "../../core/degrees.js";
import type { Operation } from "../sawing/operation.js";
import { raise, type HazardRule, type SawingFacts } from "./hazard-rule.js";

/** An edge sharper than this creeps under or behind a stop, in degrees; common practice, no printed source. */
const FEATHER: number = 60;
/** What rounding may take from an angle, in degrees. */
const ROUNDING: number = 1e-9;
/** What touches this near the table or the fence, as a share of the stick's height, is at it. */
const AT: number = 1e-9;

/** A thin edge of the finished end: its angle, and where it can creep past the stop. */
interface ThinEdge {
  readonly angle: number;
  readonly at: "table" | "fence";
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
    at: "table",
  };
  const atFence: ThinEdge = {
    angle: atan2Deg(Math.hypot(sinDeg(bevel), cosDeg(bevel) * cosDeg(miter)), cosDeg(bevel) * sinDeg(miter)),
    at: "fence",
  };
  const edges = [
    ...(stop.to <= near ? [onTable] : []),
    ...(stopRule.fromFence !== null && stopRule.fromFence <= near ? [atFence] : []),
  ];
  return edges.filter(({ angle }) => angle < FEATHER - ROUNDING);
}

/** The finished end meets the stop with an edge that is thin, and lies where it can creep past it. */
export const feather: HazardRule<SawingFacts> = ({ sawing }) => {
  const last = sawing.operations.at(-1);
  const edges = last === undefined ? [] : thinEdges(last);
  if (last === undefined || edges.length === 0) return [];
  const angle = Math.min(...edges.map((edge) => edge.angle));
  return raise("feather", "notice", {
    steps: [last.step],
    quantities: { angle: { angle, limit: FEATHER } },
    facts: { at: edges.length === 2 ? "table-and-fence" : edges[0]!.at },
  });
};
