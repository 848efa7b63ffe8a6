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
  FilledKey,
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
} from "./brief/brief.js";
export type {
  ExtremeLength,
  PlacedArris,
  RingCorner,
  RingGeometry,
  RingOutline,
  RingPiece,
} from "./ring-geometry-types.js";
export { frameGeometry, type FrameGeometry, type OverallSize } from "./frame-geometry.js";
export { sawPlan } from "./sawing/saw-plan.js";
export type { SawPlan, SawPlanOptions } from "./sawing/saw-plan-types.js";
export type { LayResult } from "./sawing/lay-result.js";
export type { LayWish } from "./sawing/lay-preference.js";
export type { MeasureAlong } from "./sawing/measure-along.js";
export type { Operation, OperationKind, StopRule } from "./sawing/operation.js";
export type { RoughPiece } from "./sawing/rough-length.js";
export type { TestCuts, TestPair, TestProof, TestRing } from "./sawing/test-cuts.js";
export { shopOrder } from "./shop/shop-order.js";
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
export { stockJob, type StockJobOptions } from "./materials/stock-job.js";
export { briefSchema } from "./brief/brief-schema.js";
export { parseBrief, tryParseBrief } from "./brief/parse-brief.js";
export type { PanelWork, ContentsReason, FrameContents } from "./contents/contents-plan.js";
export type { FrameCheck } from "./closing/frame-checks.js";
export type { FrameAssembly } from "./closing/frame-assembly.js";
export type { LastPiece, LastJoint, TrimmedHalves } from "../closure/internal.js";
export type { SawErrors, SawFault, SawFaultEffect, SawFaultOutcome } from "./closing/saw-errors.js";
export type { GraduationSetting, Graduations } from "./sawing/graduations.js";
export { correctFromGap, type FrameCorrection, type SeenGap } from "./closing/correct-from-gap.js";
export { panelForOpening, type OpeningPanel, type OpeningPanelOptions } from "./contents/panel-for-opening.js";
export type { ContentsStack, StackLayer, StackVerdict } from "./contents/contents-stack.js";
export type { FrameMaterials, MaterialPart } from "./materials/frame-materials.js";
export type { LayerKind } from "./materials/material-density.js";
export type { MoldingLumber } from "./materials/molding-volume.js";
export type { PartCost } from "./materials/part-cost.js";
export type { PartialSum } from "./materials/partial-sum.js";
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
export type { FrameMovement, MovementUnknown, SeasonMovement } from "./materials/frame-movement.js";
export type { LayerRoom } from "./contents/contents-room.js";
export { type NumberedHazard, numberHazards } from "./hazards/number-hazards.js";
export { parsePlan } from "./parse-plan.js";
export { planFrame, type FramePlan } from "./plan-frame.js";
