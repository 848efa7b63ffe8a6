/** The checks of input, which most files use: of numbers, of objects and their fields, and of words. */
export {
  checkArea,
  checkDegrees,
  checkDistance,
  checkFinite,
  checkInside,
  checkInteger,
  checkLength,
  checkLengthOrZero,
  checkNumber,
  checkRange,
  checkSides,
  checkSlope,
  LENGTH,
  LENGTH_OR_ZERO,
  MAX_FRAME_SIDES,
  MAX_LENGTH,
  MIN_LENGTH,
  type NumberRange,
} from "./check-number.js";
export { checkArray, checkFields, checkObject, checkOneOf, inOrder, type RunChecks } from "./check-object.js";
export { checkText, checkWord } from "./check-word.js";
export { describeValue, isRecord, refuse, reject } from "./refuse.js";
