import { checkObject, refuse } from "../core/check.js";
import type { CutPlacement, ScaleSetting } from "../saw/index.js";
import { markLabel } from "./mark-label.js";
import type { Operation } from "./operation.js";

/** Formatters for the numbers in instructions. */
export interface DescribeOptions {
  /** Writes a length in the reader's unit. */
  readonly length: (value: number) => string;
  /** Writes an angle in degrees. */
  readonly angle: (degrees: number) => string;
}

/** An operation in words. */
export interface OperationText {
  /** What is done, and how many times. */
  readonly title: string;
  /** Sentences in the order in which they are followed. */
  readonly lines: readonly string[];
}

function lying({ down, cradled }: CutPlacement): string {
  return `its ${down} ${cradled ? "in the cradle" : "on the table"}`;
}

function settingText(setting: ScaleSetting, angle: DescribeOptions["angle"]): string {
  if (setting.miss < 1e-9) return `scale at ${angle(setting.reading)}`;
  return `scale at ${angle(setting.reading)}, nearest mark ${angle(setting.nearest)}`;
}

function miterLine({ miter }: CutPlacement, angle: DescribeOptions["angle"]): string {
  if (miter.leans === "none") return `Miter: square (${settingText(miter, angle)}).`;
  return `Miter ${angle(miter.degrees)} (${settingText(miter, angle)}): the line of cut runs to the ${miter.leans} as it goes away from you.`;
}

function bevelLine({ bevel }: CutPlacement, angle: DescribeOptions["angle"]): string {
  if (bevel.leans === "none") return `Bevel: blade upright (${settingText(bevel, angle)}).`;
  return `Bevel ${angle(bevel.degrees)} (${settingText(bevel, angle)}): the top of the blade leans to the ${bevel.leans}.`;
}

function lyingLine({ move, placement }: Operation): string {
  const { atFence } = placement;
  if (move === "flip end for end") {
    return `Flip the stick end for end, still with ${lying(placement)}: now its ${atFence} is at the fence.`;
  }
  if (move === "slide past the blade") {
    return `Slide the stick past the blade, still with ${lying(placement)} and its ${atFence} at the fence.`;
  }
  return `Lay the stick with ${lying(placement)} and its ${atFence} at the fence.`;
}

/** Where along the height of the stick the stop has to touch. */
function stopLine(operation: Operation, { length }: DescribeOptions): string[] {
  const { stop, placement } = operation;
  if (stop === null) return [];
  const arris = stop.arris === null ? "its longest point" : `the ${markLabel(stop.arris)}`;
  const height =
    stop.from === 0 && stop.to === 0
      ? "down on the table"
      : stop.from === stop.to
        ? `${length(stop.from)} above the table`
        : `from ${length(stop.from)} to ${length(stop.to)} above the table`;
  return [`Stop to the ${placement.kept} of the blade: the finished end touches it with ${arris}, ${height}.`];
}

function measureLine({ measure, kind }: Operation, { length }: DescribeOptions): string[] {
  if (measure === null) return [];
  if (kind === "crosscut") return [`Length of the rough piece: ${length(measure.length)}.`];
  const along = `along the ${markLabel(measure.mark)}`;
  if (kind === "first-end") return [`Mark ${length(measure.length)} ${along} and part the piece off there.`];
  const how = measure.hook
    ? "hook the tape over the long point"
    : "square a pencil line to the length and measure between the marks";
  return [`Length of the finished piece: ${length(measure.length)} ${along}, from end to end (${how}).`];
}

const TITLES: Readonly<Record<Operation["kind"], string>> = {
  crosscut: "Crosscut the rough pieces",
  "first-end": "Cut the first end",
  "second-end": "Cut the second end to length",
};

/**
 * Writes an operation as instructions for a person at the saw: which surface lies down, which edge is at the fence, to which side the miter and the
 * blade go, which part is kept, where the stop touches and what length results. Never a sign.
 *
 * @param operation - one of a cutting plan
 * @param options - how to write lengths and angles
 * @returns a title and sentences, as plain text
 * @throws {InputError} when the operation is none, or a formatter is missing
 * @example
 * ```ts
 * import { describeOperation, planFrame } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 * import { formatAngle, formatLength } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 400 }, profile: molding({ width: 40, thickness: 20 }) });
 * const text = describeOperation(plan.cutting.operations[1]!, {
 *   length: (value) => formatLength(value, "mm"),
 *   angle: (degrees) => formatAngle(degrees),
 * });
 * text.lines[0]; //=> "Flip the stick end for end, still with its back on the table: now its sight edge is at the fence."
 * ```
 */
export function describeOperation(operation: Operation, options: DescribeOptions): OperationText {
  const placement = checkObject(
    checkObject(operation, "operation")["placement"],
    "operation.placement",
  ) as unknown as CutPlacement;
  checkObject(placement.miter, "operation.placement.miter");
  checkObject(placement.bevel, "operation.placement.bevel");
  const { length, angle } = checkObject(options);
  if (typeof length !== "function") refuse("type", "length", length, "a function that writes a length");
  if (typeof angle !== "function") refuse("type", "angle", angle, "a function that writes an angle");
  return {
    title: `${TITLES[operation.kind]}, ${operation.times} times`,
    lines: [
      lyingLine(operation),
      miterLine(placement, options.angle),
      bevelLine(placement, options.angle),
      `Keep the part to the ${placement.kept} of the blade.`,
      ...stopLine(operation, options),
      ...measureLine(operation, options),
    ],
  };
}
