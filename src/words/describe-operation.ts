import { checkObject, refuse } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { CutPlacement, ScaleSetting, TearOut } from "../saw/index.js";
import { arrisLabel } from "./arris-label.js";
import type { Operation } from "../frame/index.js";
import { operation as readOperation } from "../frame/internal.js";
import { surfaceLabel } from "./surface-label.js";

/** Formatters for the numbers in instructions. */
export interface DescribeOptions {
  /** Writes a length in the reader's unit. */
  readonly length: (value: number) => string;
  /** Writes an angle in degrees. */
  readonly angle: (degrees: number) => string;
  /** Writes a small length, such as a gap, for which the graduations of a rule may be too coarse; default `length`. */
  readonly small?: ((value: number) => string) | undefined;
  /** Writes a mass in kilograms; default three figures in kilograms. */
  readonly mass?: ((kilograms: number) => string) | undefined;
  /** Writes a force in newtons; default three figures in newtons. */
  readonly force?: ((newtons: number) => string) | undefined;
}

/** An operation in words. */
export interface OperationText {
  /** What is done, and how many times. */
  readonly title: string;
  /** Sentences in the order in which they are followed. */
  readonly lines: readonly string[];
}

/**
 * Checks the formatters of instructions.
 *
 * @param value - the options, unchecked
 * @returns the same options
 */
export function checkDescribeOptions(value: unknown): DescribeOptions {
  const { length, angle, small, mass, force } = checkObject(value);
  if (typeof length !== "function") refuse("type", "length", length, "a function that writes a length");
  if (typeof angle !== "function") refuse("type", "angle", angle, "a function that writes an angle");
  if (small !== undefined && typeof small !== "function")
    refuse("type", "small", small, "a function that writes a length");
  if (mass !== undefined && typeof mass !== "function") refuse("type", "mass", mass, "a function that writes a mass");
  if (force !== undefined && typeof force !== "function")
    refuse("type", "force", force, "a function that writes a force");
  return value as DescribeOptions;
}

function lying({ down, cradled }: CutPlacement): string {
  return `its ${surfaceLabel(down)} ${cradled ? "in the cradle" : "on the table"}`;
}

function settingText({ reading }: ScaleSetting, graduation: number, angle: DescribeOptions["angle"]): string {
  const [exact, best] = [angle(reading), angle(graduation)];
  return exact === best ? `scale at ${exact}` : `scale at ${exact}, best mark ${best}`;
}

function miterLine({ placement: { miter }, graduations }: Operation, angle: DescribeOptions["angle"]): string {
  const setting = settingText(miter, graduations.miter, angle);
  if (miter.toward === "none") return `Miter: square (${setting}).`;
  return `Miter ${angle(miter.degrees)} (${setting}): the line of cut runs to the ${miter.toward} as it goes away from you.`;
}

function bevelLine({ placement: { bevel }, graduations }: Operation, angle: DescribeOptions["angle"]): string {
  const setting = settingText(bevel, graduations.bevel, angle);
  if (bevel.toward === "none") return `Bevel: blade upright (${setting}).`;
  return `Bevel ${angle(bevel.degrees)} (${setting}): the top of the blade leans to the ${bevel.toward}.`;
}

function lyingLine({ move, placement }: Operation): string {
  const atFence = surfaceLabel(placement.atFence);
  if (move === "flip-end-for-end") {
    const what = placement.cradled ? "the stick end for end, and its cradle with it" : "the stick end for end";
    return `Flip ${what}, still with ${lying(placement)}: now its ${atFence} is at the fence.`;
  }
  if (move === "slide-past-the-blade") {
    return `Slide the stick past the blade, still with ${lying(placement)} and its ${atFence} at the fence.`;
  }
  return `Lay the stick with ${lying(placement)} and its ${atFence} at the fence.`;
}

/** Where along the height of the stick the stop has to touch. */
function stopLine(operation: Operation, { length }: DescribeOptions): string[] {
  const { stop, placement } = operation;
  if (stop === null) return [];
  const arris = stop.arris === null ? "its longest point" : `the ${arrisLabel(stop.arris)}`;
  const height =
    stop.from === 0 && stop.to === 0
      ? "down on the table"
      : stop.from === stop.to
        ? `${length(stop.from)} above the table`
        : `from ${length(stop.from)} to ${length(stop.to)} above the table`;
  return [`Stop to the ${placement.kept} of the blade: the finished end touches it with ${arris}, ${height}.`];
}

/** Where a stop must never stand, and what to heed where one may. */
function stopRuleLine({ stopRule, stop }: Operation, { length }: DescribeOptions): string {
  const { side, never, touches, fromFence, comesFree, moveAway } = stopRule;
  const none = `No stop to the ${never} of the blade`;
  if (touches === null) return "No stop on either side of the blade at this cut.";
  // Only where a line before this one sets the stop is there one to speak of.
  const isSet = stop !== null;
  if (moveAway)
    return isSet
      ? `${none}; move the one to the ${side} away before the cut, since the piece comes free.`
      : `${none}; one to the ${side} only sets the length: move it away before the cut.`;
  const at = fromFence === null || fromFence === 0 ? "" : ` The point meets it ${length(fromFence)} out from the fence`;
  if (!comesFree)
    return `${none}: what is there must come free.${at === "" ? "" : `${at}: press the stick to the fence.`}`;
  const one = isSet ? `The one to the ${side}` : `One to the ${side} that sets the length`;
  return `${none}. ${one} sits on the gauge's own fence and travels with the piece, which comes free: hold the piece itself against fence and stop until the blade is behind it.${at === "" ? "" : `${at}.`}`;
}

const BESIDE: Readonly<Record<TearOut["at"], string>> = {
  table: "table",
  cradle: "cradle",
  fence: "fence",
};

/** Where the teeth leave the wood, which is backed with scrap or scored there. */
function tearOutLine({ placement }: Operation): string {
  const places = placement.tearOut.map(
    ({ surface, at, shows }) => `${surfaceLabel(surface)} (${BESIDE[at]}${shows ? ", shows" : ""})`,
  );
  return `Tear-out: ${places.join(" and ")}.`;
}

/** How high the blade of a table saw stands, or how deep one from above goes. */
function bladeLine({ bladeHeight, size }: Operation, { length }: DescribeOptions): string[] {
  if (size === null) return [];
  const depth = bladeHeight === null ? `cuts ${length(size.depth)} deep` : `${length(bladeHeight)} above the table`;
  return [`Blade: ${depth}; the work stands ${length(size.height)} high.`];
}

function measureLine({ measure, kind }: Operation, { length }: DescribeOptions): string[] {
  if (measure === null) return [];
  if (kind === "crosscut") return [`Length of the blank: ${length(measure.length)}.`];
  const along = `along the ${arrisLabel(measure.arris)}`;
  if (kind === "first-end") return [`Mark ${length(measure.length)} ${along} and part the piece off there.`];
  const how = measure.hook
    ? "hook the tape over the long point"
    : "square a pencil line to the length and measure between the marks";
  return [`Length of the finished piece: ${length(measure.length)} ${along}, from end to end (${how}).`];
}

const TITLES: Readonly<Record<Operation["kind"], string>> = {
  crosscut: "Crosscut the blanks",
  "first-end": "Cut the first end",
  "second-end": "Cut the second end to length",
};

/**
 * Writes an operation as instructions for a person at the saw. They say which surface lies down, which edge is at the fence, and to which side the miter and
 * the blade go. They also say which part is kept, how high the blade stands, where a stop may stand, where the wood tears out and what length results. They
 * never use a sign.
 *
 * @param operation - one of a saw plan
 * @param options - how to write lengths and angles
 * @returns a title and sentences, as plain text
 * @throws {InputError} when the operation is none, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { describeOperation } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 * import { formatAngle, formatLength } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 400 }, profile: molding({ width: 40, thickness: 20 }) });
 * const text = describeOperation(plan.sawing.operations[1]!, {
 *   length: (value) => formatLength(value, "mm"),
 *   angle: (degrees) => formatAngle(degrees),
 * });
 * text.lines[0]; //=> "Flip the stick end for end, still with its back on the table: now its sight edge is at the fence."
 * ```
 */
export function describeOperation(operation: Operation, options: DescribeOptions): OperationText {
  const { placement } = readStored(operation, "operation", readOperation);
  checkDescribeOptions(options);
  return {
    title: `${TITLES[operation.kind]}, ${operation.times} pieces`,
    lines: [
      lyingLine(operation),
      miterLine(operation, options.angle),
      bevelLine(operation, options.angle),
      `Keep the part to the ${placement.kept} of the blade.`,
      ...bladeLine(operation, options),
      ...stopLine(operation, options),
      stopRuleLine(operation, options),
      ...measureLine(operation, options),
      tearOutLine(operation),
    ],
  };
}
