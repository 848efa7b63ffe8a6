/**
 * Every text that a person reads of a plan: instructions, hazards, movement, hanging, and the names of edges, surfaces and lays.
 *
 * @module
 */
export { arrisLabel } from "./arris-label.js";
export type { GlueStageValues, GlueStageWords, LastJointWords } from "./assembly-words.js";
export type { CheckValues, CheckWords } from "./check-words.js";
export type { AngleChangeValues, CorrectionWords, ReadingValues } from "./correction-words.js";
export { describeGlueUp, describeLastJoint } from "./describe-assembly.js";
export { describeCheck, type DescribeCheckOptions } from "./describe-check.js";
export { describeCorrection, type DescribeCorrectionOptions } from "./describe-correction.js";
export { describeHanging } from "./describe-hanging.js";
export { describeHazard, type HazardText } from "./describe-hazard.js";
export { describeLay } from "./describe-lay.js";
export { describeMovement, type MovingPlan } from "./describe-movement.js";
export { describeObstacle, type DescribeObstacleOptions } from "./describe-obstacle.js";
export { describeOperation, type DescribeOptions, type OperationText } from "./describe-operation.js";
export { describeReason } from "./describe-reason.js";
export { describeRingCheck } from "./describe-ring-check.js";
export { describeSawFault, describeSawMove } from "./describe-saw-errors.js";
export { describeStack } from "./describe-stack.js";
export { describeTestCuts } from "./describe-test-cuts.js";
export type { FixingValues, HangingWords, LoadValues, SeatValues, WireValues } from "./hanging-words.js";
export type { HazardValue, HazardValues, HazardWords } from "./hazard-words.js";
export { layLabel } from "./lay-label.js";
export type {
  LayerRoomValues,
  MovementWords,
  OpenJointsValues,
  OpenSeason,
  SightEdgeValues,
} from "./movement-words.js";
export type { Reason, ReasonWords } from "./reason-words.js";
export type { GivenUpValues, LayWords } from "./lay-words.js";
export type { ObstacleValues, ObstacleWords } from "./obstacle-words.js";
export type { RingCheckWords } from "./ring-check-words.js";
export type { SawFaultValues, SawFaultWords, SawMoveWords } from "./saw-fault-words.js";
export type { StackWords } from "./stack-words.js";
export { surfaceLabel } from "./surface-label.js";
export { english, type Words, type WordsOptions } from "./words.js";
