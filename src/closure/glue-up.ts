import { checkInteger, checkObject, checkSlope } from "../core/check.js";
import { MAX_PIECES } from "./measured-piece.js";

/** Options of {@link glueUp}. */
export interface GlueUpOptions {
  /** Number of sides, an integer from 3 to 1000. */
  readonly sides: number;
  /** Slope in degrees, -90 to 90; default 0. */
  readonly slope?: number | undefined;
}

/**
 * What is glued: loose pieces in pairs, what lies side by side, the two halves of a ring once they are trimmed straight, or the piece that is cut to fit between its
 * neighbors. That piece is the one that starts at the last of the stage's corners.
 */
export type GlueStep = "pairs" | "neighbors" | "trimmed-halves" | "closing-piece";

/** One glue-up: joints that are closed before the clamps come off. */
export interface GlueStage {
  /** What is glued. */
  readonly step: GlueStep;
  /** Corners glued, each by the piece that starts there, from 0. */
  readonly corners: readonly number[];
  /** The sub-assemblies that it leaves, each by its pieces in order, from 0. */
  readonly assemblies: readonly (readonly number[])[];
}

/** In which order a ring is glued, and what supports it meanwhile. */
export interface GlueUp {
  /** The stages in order. */
  readonly stages: readonly GlueStage[];
  /** How the last joints are made: two halves trimmed straight, or a closing piece cut to fit. */
  readonly last: "trimmed-halves" | "closing-piece";
  /** What holds every piece at its slope. */
  readonly bevelBlocks: {
    /** Angle of the block under the piece, in degrees, 0 to 90; 0 needs none. */
    readonly angle: number;
    /** Which edge of the piece is the higher on it. */
    readonly high: "outer-edge" | "sight-edge" | "neither";
  };
  /** What takes the clamps: wedges fixed to the outside of the pieces. */
  readonly cauls: {
    /** Angle at a caul's point that makes the clamps pull square to a joint, in degrees: 180 / n. */
    readonly angle: number;
  };
}

function range(from: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => from + index);
}

/** Joins neighbors two by two until every row is one piece: the fewest glue-ups that each joint goes through. */
function pairings(rows: readonly (readonly number[])[], loose: readonly number[]): GlueStage[] {
  const stages: GlueStage[] = [];
  let groups = rows.map((row) => row.map((piece) => [piece]));
  while (groups.some((row) => row.length > 1)) {
    const corners: number[] = [];
    groups = groups.map((row) => {
      const joined: number[][] = [];
      for (let index = 0; index < row.length; index += 2) {
        const next = row[index + 1];
        if (next !== undefined) corners.push(next[0]!);
        joined.push([...row[index]!, ...(next ?? [])]);
      }
      return joined;
    });
    const assemblies = [...groups.flat(), ...loose.map((piece) => [piece])];
    stages.push({ step: stages.length === 0 ? "pairs" : "neighbors", corners, assemblies });
  }
  return stages;
}

/**
 * In which order a ring is glued, so that the last joint can still be made to fit.
 *
 * Neighbors are joined two by two. An even number of sides ends in two halves, which are trimmed straight (`halfRings`) before the last two joints; an
 * odd one in a chain that lacks one piece, which is cut to fit (`closingPiece`). Common practice, no printed source.
 *
 * @param options - sides and slope
 * @returns the stages, how the last joints are made, the bevel blocks and the cauls; corner k is where piece k starts, both from 0
 * @throws {InputError} when a value is missing or out of range
 * @example
 * ```ts
 * import { glueUp } from "miterwright/closure";
 *
 * const { stages, last } = glueUp({ sides: 8, slope: 30 });
 * stages.map((stage) => stage.step); //=> ["pairs", "neighbors", "trimmed-halves"]
 * stages.map((stage) => stage.corners); //=> [[1, 3, 5, 7], [2, 6], [0, 4]]
 * last; //=> "trimmed-halves"
 * ```
 */
export function glueUp(options: GlueUpOptions): GlueUp {
  const given = checkObject(options);
  const sides = checkInteger(given["sides"], "sides", 3, MAX_PIECES);
  const slope = checkSlope(given["slope"] ?? 0);
  const even = sides % 2 === 0;
  const half = sides / 2;
  const rows = even ? [range(0, half), range(half, half)] : [range(0, sides - 1)];
  const corners = even ? [0, half] : [0, sides - 1];
  const last = even ? "trimmed-halves" : "closing-piece";
  return {
    stages: [...pairings(rows, even ? [] : [sides - 1]), { step: last, corners, assemblies: [range(0, sides)] }],
    last,
    bevelBlocks: {
      angle: Math.abs(slope),
      high: slope === 0 ? "neither" : slope > 0 ? "outer-edge" : "sight-edge",
    },
    cauls: { angle: 180 / sides },
  };
}
