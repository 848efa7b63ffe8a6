import { checkInteger, checkObject, checkSlope } from "../core/check.js";
import { sideNumber } from "../core/side-number.js";
import { MAX_PIECES } from "./measured-piece.js";

/** Options of {@link glueUp}. */
export interface GlueUpOptions {
  /** Number of sides, an integer from 3 to 1000. */
  readonly sides: number;
  /** Slope in degrees, -90 to 90; default 0. */
  readonly slope?: number | undefined;
}

/** One glue-up: joints that are closed before the clamps come off. */
export interface GlueStage {
  /** Corners glued, each by the piece that starts there, from 0. */
  readonly corners: readonly number[];
  /** The sub-assemblies that it leaves, each by its pieces in order, from 0. */
  readonly assemblies: readonly (readonly number[])[];
  /** What to do, in a sentence, which numbers corners and pieces from 1. */
  readonly words: string;
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
    const what = stages.length === 0 ? "Glue the pieces in pairs" : "Glue what lies side by side";
    stages.push({ corners, assemblies, words: `${what}, at ${cornerList(corners)}.` });
  }
  return stages;
}

/** The most corners that a sentence names one by one. Of more, it names the first three and the last. */
const NAMED_CORNERS: number = 12;

function cornerList(corners: readonly number[]): string {
  const numbers = corners.map(sideNumber);
  if (numbers.length === 1) return `corner ${numbers[0]!}`;
  if (numbers.length > NAMED_CORNERS) {
    return `${numbers.length} corners: ${numbers.slice(0, 3).join(", ")} and so on to ${numbers.at(-1)!}`;
  }
  return `corners ${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)!}`;
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
  const words = even
    ? `Trim both halves straight and glue them together, at ${cornerList(corners)}.`
    : `Cut piece ${sideNumber(sides - 1)} to fit the gap between its neighbors and glue it in, at ${cornerList(corners)}.`;
  return {
    stages: [...pairings(rows, even ? [] : [sides - 1]), { corners, assemblies: [range(0, sides)], words }],
    last: even ? "trimmed-halves" : "closing-piece",
    bevelBlocks: {
      angle: Math.abs(slope),
      high: slope === 0 ? "neither" : slope > 0 ? "outer-edge" : "sight-edge",
    },
    cauls: { angle: 180 / sides },
  };
}
