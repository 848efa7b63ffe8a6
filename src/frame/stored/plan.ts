import { inOrder, refuse } from "../../core/check.js";
import { checkVersion } from "../../core/schema-version.js";
import { list, orNull, record, type Fields, type Reader } from "../../core/stored.js";
import { panelPlan } from "../../panel/internal.js";
import { readStockJob } from "../../stock/internal.js";
import type { StockJob } from "../../stock/index.js";
import type { FramePlan } from "../plan-frame.js";
import { frameAssembly, frameChecks } from "./assembly.js";
import { filledBrief } from "./brief.js";
import { frameContents } from "./contents.js";
import { frameGeometry } from "./geometry.js";
import { frameHanging } from "./hanging.js";
import { hazards } from "./hazard.js";
import { frameMaterials, frameMovement } from "./materials.js";
import { sawPlan } from "./sawing.js";

/** The form of plan that this library makes and reads. */
const schemaVersion: Reader<1> = (value, path) => checkVersion(value, path ?? "", "plan");

const stockJob: Reader<StockJob> = (value, path) => readStockJob(value, path ?? "", inOrder);

/** How each part of a plan is read. Functions that take a part of a plan read that part alone. */
export const PLAN: Fields<FramePlan> = {
  schemaVersion,
  brief: filledBrief,
  geometry: frameGeometry,
  sawing: sawPlan,
  stockJobs: (value, path) => list(value, path, stockJob),
  contents: frameContents,
  panel: (value, path) => orNull(value, path, panelPlan),
  movement: (value, path) => orNull(value, path, frameMovement),
  checks: frameChecks,
  assembly: frameAssembly,
  materials: frameMaterials,
  hanging: (value, path) => orNull(value, path, frameHanging),
  hazards,
};

/** A whole plan, as `planFrame` made it or as it came back from JSON. */
export const framePlan: Reader<FramePlan> = (value, path) => {
  const plan = record(value, path, PLAN);
  const { brief, contents, materials } = plan;
  const at = path === undefined || path === "" ? "" : `${path}.`;
  const layers = brief.contents.length;
  if ((contents.stack?.layers.length ?? 0) !== layers) {
    refuse("conflict", `${at}contents.stack`, contents.stack, "a stack of as many layers as the brief has contents");
  }
  if (materials.parts.length !== layers + 1) {
    refuse("conflict", `${at}materials.parts`, materials.parts, "the molding and every layer of the contents");
  }
  materials.parts.forEach(({ layer }, index) => {
    const wanted = index === 0 ? null : index - 1;
    if (layer !== wanted) refuse("conflict", `${at}materials.parts[${index}].layer`, layer, String(wanted));
  });
  return plan;
};
