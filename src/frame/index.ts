/**
 * Whole frames: their geometry, how their pieces are cut, and the plan from a brief.
 *
 * @module
 */
export type {
  BriefBase,
  Contained,
  ContentsLayer,
  Cost,
  CostRate,
  CostUnit,
  DirectCut,
  FilledBrief,
  FrameBrief,
  FrameMoisture,
  Hanging,
  LayerMaterial,
  MeasuredBrief,
  MeasuredArris,
  MeasuredMolding,
  Opening,
  OpeningValues,
  ProfileBrief,
  RoughCut,
  RoughMethod,
  SolidWoodLayer,
} from "./brief.js";
export type {
  ExtremeLength,
  PlacedArris,
  RingCorner,
  RingGeometry,
  RingOutline,
  RingPiece,
} from "./ring-geometry-types.js";
export { frameGeometry, type FrameGeometry, type OverallSize } from "./frame-geometry.js";
export { sawPlan } from "./saw-plan.js";
export type { SawPlan, SawPlanOptions } from "./saw-plan-types.js";
export type { LayResult } from "./lay-result.js";
export type { LayWish } from "./lay-preference.js";
export type { MeasureAlong } from "./measure-along.js";
export type { OperationKind } from "./operation-kind.js";
export type { Operation } from "./operation.js";
export type { RoughPiece } from "./rough-length.js";
export type { StopRule } from "./stop-rule.js";
export type { TestCuts, TestPair, TestProof, TestRing } from "./test-cuts.js";
export { shopOrder } from "./shop-order.js";
export type {
  ShopChange,
  ShopCut,
  ShopFrame,
  ShopGroup,
  ShopOrder,
  ShopOrderOptions,
  ShopRound,
  UncutFrame,
} from "./shop/shop-order-types.js";
export { stockJob, type StockJobOptions } from "./stock-job.js";
export { briefSchema } from "./brief-schema.js";
export { parseBrief, tryParseBrief } from "./parse-brief.js";
export type { PanelWork } from "./panel-work.js";
export type { ContentsReason, FrameContents } from "./contents-plan.js";
export type { FrameCheck } from "./frame-checks.js";
export type { FrameAssembly } from "./frame-assembly.js";
export type { LastPiece, LastJoint, TrimmedHalves } from "./last-joint.js";
export type { SawErrors, SawFault, SawFaultEffect, SawFaultOutcome } from "./saw-errors.js";
export type { GraduationSetting, Graduations } from "./graduations.js";
export { correctFromGap, type FrameCorrection, type SeenGap } from "./correct-from-gap.js";
export { panelForOpening, type OpeningPanel, type OpeningPanelOptions } from "./panel-for-opening.js";
export type { ContentsStack, StackLayer, StackVerdict } from "./contents-stack.js";
export type { FrameMaterials, MaterialPart } from "./frame-materials.js";
export type { LayerKind } from "./material-density.js";
export type { MoldingLumber } from "./molding-volume.js";
export type { PartCost } from "./part-cost.js";
export type { PartialSum } from "./partial-sum.js";
export type { Fixing, FixingPair } from "./hanging/fixing-points.js";
export type {
  FrameHanging,
  HangerSeat,
  HangingLoad,
  HangingReason,
  HangingWire,
  HungFrame,
  UnhungFrame,
} from "./hanging/frame-hanging.js";
export type { FrameMovement, MovementUnknown, SeasonMovement } from "./frame-movement.js";
export type { LayerRoom } from "./contents-room.js";
export { type NumberedHazard, numberHazards } from "./number-hazards.js";
export { parsePlan } from "./parse-plan.js";
export { planFrame, type FramePlan } from "./plan-frame.js";
