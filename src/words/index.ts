/**
 * Every text that a person reads of a plan: instructions, hazards, movement, hanging, and the names of edges, surfaces and lays.
 *
 * @module
 */
export type { TellOptions, WordsOptions } from "./tell-options.js";
export { arrisLabel } from "./texts/arris-label.js";
export { glueUpLines, lastJointText } from "./texts/assembly-text.js";
export { correctionLines, type CorrectionLinesOptions } from "./texts/correction-lines.js";
export { frameCheckText, type FrameCheckTextOptions } from "./texts/frame-check-text.js";
export { hangingLines } from "./texts/hanging-lines.js";
export { hazardText, type HazardText } from "./texts/hazard-text.js";
export { layLabel } from "./texts/lay-label.js";
export { layLines } from "./texts/lay-lines.js";
export { movementLines, type MovingPlan } from "./texts/movement-lines.js";
export { obstacleText, type ObstacleTextOptions } from "./texts/obstacle-text.js";
export { operationText, type OperationText } from "./texts/operation-text.js";
export { reasonText } from "./texts/reason-text.js";
export { ringCheckText } from "./texts/ring-check-text.js";
export { sawFaultText, sawMoveText } from "./texts/saw-error-text.js";
export { stackText } from "./texts/stack-text.js";
export { surfaceLabel } from "./texts/surface-label.js";
export { testCutsText } from "./texts/test-cuts-text.js";
export { english, type Words } from "./words.js";
export type { GlueStageValues, GlueStageWords, LastJointWords } from "./catalog/assembly-words.js";
export type { CheckValues, CheckWords } from "./catalog/check-words.js";
export type { ClosingWords, FaultEffectValues } from "./catalog/closing-words.js";
export type { ContentsWords, StackValues } from "./catalog/contents-words.js";
export type { AngleChangeValues, CorrectionWords, ReadingValues } from "./catalog/correction-words.js";
export type { DrawingWords } from "./catalog/drawing-words.js";
export type { AboveWords } from "./catalog/drawings/above-words.js";
export type { CradleDrawingWords } from "./catalog/drawings/cradle-words.js";
export type { CutDrawingWords } from "./catalog/drawings/cut-words.js";
export type { MeasuredLabel } from "./catalog/drawings/measured-label.js";
export type { PanelCutDrawingWords } from "./catalog/drawings/panel-cut-words.js";
export type { PanelDrawingWords } from "./catalog/drawings/panel-words.js";
export type { EndValues, PieceDrawingWords } from "./catalog/drawings/piece-words.js";
export type { SectionDrawingWords } from "./catalog/drawings/section-words.js";
export type { FrameWords } from "./catalog/frame-words.js";
export type { FixingValues, HangingWords, LoadValues, SeatValues, WireValues } from "./catalog/hanging-words.js";
export type { HazardValue, HazardValues, HazardWords } from "./catalog/hazard-words.js";
export type { LabelWords } from "./catalog/label-words.js";
export type { GivenUpValues, LayWords } from "./catalog/lay-words.js";
export type { LumberValues, MaterialWords, MoldingValues } from "./catalog/material-words.js";
export type {
  LayerRoomValues,
  MovementWords,
  OpenJointsValues,
  OpenSeason,
  SightEdgeValues,
} from "./catalog/movement-words.js";
export type { ObstacleValues, ObstacleWords } from "./catalog/obstacle-words.js";
export type { BlankEdge, PanelWords } from "./catalog/panel-words.js";
export type { Reason, ReasonWords } from "./catalog/reason-words.js";
export type { ReportWords, SectionName } from "./catalog/report-words.js";
export type { RingCheckWords } from "./catalog/ring-check-words.js";
export type { SawFaultValues, SawFaultWords, SawMoveWords } from "./catalog/saw-fault-words.js";
export type { CradleValues, SawValues, SawWords } from "./catalog/saw-words.js";
export type { ShopCutValues, ShopWords } from "./catalog/shop-words.js";
export type { StackWords } from "./catalog/stack-words.js";
export type {
  LyingValues,
  MeasureValues,
  ScaleValues,
  StepWords,
  StopRuleValues,
  StopValues,
  TearOutValues,
} from "./catalog/step-words.js";
export type { LayoutValues, StockWords } from "./catalog/stock-words.js";
export type { TableWords } from "./catalog/table-words.js";
export type { TestCutValues, TestCutWords } from "./catalog/test-cut-words.js";
