import type { GlueStep } from "../../closure/index.js";
import type { LastJoint } from "../../frame/index.js";

/** What the words for a stage of gluing may tell of. */
export interface GlueStageValues {
  /** The corners that are glued, from 1. */
  readonly corners: readonly number[];
  /** Number of the piece that starts at the last of these corners, from 1: the one that closes the ring, where one does. */
  readonly piece: number;
}

/** What to glue, for every kind of stage. */
export type GlueStageWords = { readonly [S in GlueStep]: (values: GlueStageValues) => string };

/** How the last joints of a frame are made. */
export type LastJointWords = { readonly [M in LastJoint["made"]]: () => string };

/** The most corners that a sentence names one by one. Of more, it names the first three and the last. */
const NAMED_CORNERS: number = 12;

/** Corners within a sentence. */
function cornersText(corners: readonly number[]): string {
  if (corners.length === 1) return `corner ${corners[0]!}`;
  if (corners.length > NAMED_CORNERS) {
    return `${corners.length} corners: ${corners.slice(0, 3).join(", ")} and so on to ${corners.at(-1)!}`;
  }
  return `corners ${corners.slice(0, -1).join(", ")} and ${corners.at(-1)!}`;
}

/** In English. */
export const englishGlueStages: GlueStageWords = {
  pairs: ({ corners }) => `Glue the pieces in pairs, at ${cornersText(corners)}.`,
  neighbors: ({ corners }) => `Glue what lies side by side, at ${cornersText(corners)}.`,
  "trimmed-halves": ({ corners }) => `Trim both halves straight and glue them together, at ${cornersText(corners)}.`,
  "closing-piece": ({ corners, piece }) =>
    `Cut piece ${piece} to fit the gap between its neighbors and glue it in, at ${cornersText(corners)}.`,
};

/** In English. */
export const englishLastJoints: LastJointWords = {
  "trimmed-halves": () =>
    "Lay each half against a straightedge; where its ends do not touch all along, plane or saw both in one line, as little as that takes.",
  "closing-piece": () =>
    "An odd number of sides has no straight halves: leave the last piece long and cut it to fit between its neighbors, its length and the angle of either end.",
};
