/**
 * Errors that the library throws, and the few types that all its modules share.
 *
 * @module
 */
export {
  InputError,
  type Expected,
  type ExpectedKind,
  type InputErrorCode,
  type InputErrorFacts,
} from "../core/input-error.js";
export { ParseError, type ParseErrorFacts, type ParseFault } from "../core/parse-error.js";
export type { Box, Filled, LengthUnit, OneOf, Point, Pose } from "../core/geometry-types.js";
export type {
  Hazard,
  HazardCode,
  HazardFacts,
  HazardFence,
  HazardNames,
  HazardSignal,
  QuantityKind,
} from "../core/hazard.js";
export { isInputError } from "./is-input-error.js";
export type { InputIssue, InputOutcome } from "../core/input-issue.js";
export type { StandardIssue, StandardResult, StandardSchema } from "../core/standard-schema.js";
