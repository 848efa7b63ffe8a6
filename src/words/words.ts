import { englishGlueStages, englishLastJoints, type GlueStageWords, type LastJointWords } from "./assembly-words.js";
import { englishChecks, type CheckWords } from "./check-words.js";
import { englishHanging, type HangingWords } from "./hanging-words.js";
import { englishMovement, type MovementWords } from "./movement-words.js";
import { englishCorrections, type CorrectionWords } from "./correction-words.js";
import { englishHazards } from "./english-hazards.js";
import type { HazardWords } from "./hazard-words.js";
import { englishLays, type LayWords } from "./lay-words.js";
import { englishObstacles, type ObstacleWords } from "./obstacle-words.js";
import { englishReasons, type ReasonWords } from "./reason-words.js";
import { englishRingChecks, type RingCheckWords } from "./ring-check-words.js";
import { englishSawFaults, englishSawMoves, type SawFaultWords, type SawMoveWords } from "./saw-fault-words.js";
import { englishStacks, type StackWords } from "./stack-words.js";

/**
 * Every text that a person reads of a plan, as one catalog. Values come formatted; counts come as numbers.
 *
 * The library's own catalog is {@link english}. One of your own, typed as this, puts everything into other words.
 */
export interface Words {
  /** What to measure. */
  readonly checks: CheckWords;
  /** What to measure on a ring by itself. */
  readonly ringChecks: RingCheckWords;
  /** How a frame hangs. */
  readonly hanging: HangingWords;
  /** What a year does to a frame and to what is in it. */
  readonly movement: MovementWords;
  /** What to heed. */
  readonly hazards: HazardWords;
  /** How the stick lies, and which wishes a lay does not meet. */
  readonly lays: LayWords;
  /** Why a saw cannot make a cut. */
  readonly obstacles: ObstacleWords;
  /** Why something cannot be made. */
  readonly reasons: ReasonWords;
  /** What is glued, stage by stage. */
  readonly glueStages: GlueStageWords;
  /** How the last joints of a frame are made. */
  readonly lastJoints: LastJointWords;
  /** How a setting of the saw is corrected. */
  readonly corrections: CorrectionWords;
  /** What every fault of a saw does to a frame. */
  readonly sawFaults: SawFaultWords;
  /** How the stick comes from the cut of one end to that of the other. */
  readonly sawMoves: SawMoveWords;
  /** How the contents fill the rabbet. */
  readonly stacks: StackWords;
}

/** Options of a describer whose texts hold no numbers that need a formatter. */
export interface WordsOptions {
  /** The words; default English. */
  readonly words?: Words | undefined;
}

/** The words in English, as the trade writes them. */
export const english: Words = {
  checks: englishChecks,
  ringChecks: englishRingChecks,
  hanging: englishHanging,
  movement: englishMovement,
  hazards: englishHazards,
  lays: englishLays,
  obstacles: englishObstacles,
  reasons: englishReasons,
  glueStages: englishGlueStages,
  lastJoints: englishLastJoints,
  corrections: englishCorrections,
  sawFaults: englishSawFaults,
  sawMoves: englishSawMoves,
  stacks: englishStacks,
};
