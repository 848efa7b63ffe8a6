import {
  englishGlueStages,
  englishLastJoints,
  type GlueStageWords,
  type LastJointWords,
} from "./catalog/assembly-words.js";
import { englishChecks, type CheckWords } from "./catalog/check-words.js";
import { englishClosing, type ClosingWords } from "./catalog/closing-words.js";
import { englishContents, type ContentsWords } from "./catalog/contents-words.js";
import { englishCorrections, type CorrectionWords } from "./catalog/correction-words.js";
import { englishHazards } from "./catalog/english-hazards.js";
import { englishDrawings, type DrawingWords } from "./catalog/drawing-words.js";
import { englishFrame, type FrameWords } from "./catalog/frame-words.js";
import { englishHanging, type HangingWords } from "./catalog/hanging-words.js";
import type { HazardWords } from "./catalog/hazard-words.js";
import { englishLabels, type LabelWords } from "./catalog/label-words.js";
import { englishLays, type LayWords } from "./catalog/lay-words.js";
import { englishMaterials, type MaterialWords } from "./catalog/material-words.js";
import { englishMovement, type MovementWords } from "./catalog/movement-words.js";
import { englishObstacles, type ObstacleWords } from "./catalog/obstacle-words.js";
import { englishPanel, type PanelWords } from "./catalog/panel-words.js";
import { englishReasons, type ReasonWords } from "./catalog/reason-words.js";
import { englishReports, type ReportWords } from "./catalog/report-words.js";
import { englishRingChecks, type RingCheckWords } from "./catalog/ring-check-words.js";
import { englishSawFaults, englishSawMoves, type SawFaultWords, type SawMoveWords } from "./catalog/saw-fault-words.js";
import { englishSaws, type SawWords } from "./catalog/saw-words.js";
import { englishShop, type ShopWords } from "./catalog/shop-words.js";
import { englishStacks, type StackWords } from "./catalog/stack-words.js";
import { englishSteps, type StepWords } from "./catalog/step-words.js";
import { englishStock, type StockWords } from "./catalog/stock-words.js";
import { englishTables, type TableWords } from "./catalog/table-words.js";
import { englishTestCuts, type TestCutWords } from "./catalog/test-cut-words.js";

/**
 * Every text that a person reads of a plan, as one catalog. Values come formatted; counts come as numbers.
 *
 * The library's own catalog is {@link english}. One of your own, typed as this, puts everything into other words.
 */
export interface Words {
  /** What things are called. */
  readonly labels: LabelWords;
  /** What reports are headed with. */
  readonly reports: ReportWords;
  /** The frame at a glance and its lengths. */
  readonly frame: FrameWords;
  /** What goes into the frame. */
  readonly contents: ContentsWords;
  /** What the frame takes, weighs and costs. */
  readonly materials: MaterialWords;
  /** How sticks are cut up. */
  readonly stock: StockWords;
  /** The saw, and how the stick lies on it. */
  readonly saws: SawWords;
  /** What is done at the saw, step by step. */
  readonly steps: StepWords;
  /** How a setting is proved. */
  readonly testCuts: TestCutWords;
  /** How the panel is cut. */
  readonly panel: PanelWords;
  /** Checks, gluing, and how true the saw must be. */
  readonly closing: ClosingWords;
  /** In which order several frames are cut. */
  readonly shop: ShopWords;
  /** Tables of polygons and miters. */
  readonly tables: TableWords;
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
  /** What stands in drawings. */
  readonly drawings: DrawingWords;
}

/** The words in English, as the trade writes them. */
export const english: Words = {
  labels: englishLabels,
  reports: englishReports,
  frame: englishFrame,
  contents: englishContents,
  materials: englishMaterials,
  stock: englishStock,
  saws: englishSaws,
  steps: englishSteps,
  testCuts: englishTestCuts,
  panel: englishPanel,
  closing: englishClosing,
  shop: englishShop,
  tables: englishTables,
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
  drawings: englishDrawings,
};
