import { readStored } from "../../core/stored.js";
import type { Operation } from "../../frame/index.js";
import { operation as readOperation } from "../../frame/internal.js";
import type { ScaleSetting } from "../../saw/index.js";
import type { Formats } from "../../units/index.js";
import { englishSteps, type ScaleValues, type StepWords } from "../catalog/step-words.js";
import { checkTellOptions, type TellOptions, type Telling } from "../tell-options.js";
import { arrisLabel } from "./arris-label.js";
import { surfaceLabel } from "./surface-label.js";

/** An operation in words. */
export interface OperationText {
  /** What is done, and how many times. */
  readonly title: string;
  /** Sentences in the order in which they are followed. */
  readonly lines: readonly string[];
}

/** What writes the sentences. */
interface Pen extends Telling {
  readonly steps: StepWords;
}

function scaleValues({ toward, degrees, reading }: ScaleSetting, nearest: number, { angle }: Formats): ScaleValues {
  const [exact, graduation] = [angle(reading), angle(nearest)];
  return { toward, degrees: angle(degrees), reading: exact, graduation: exact === graduation ? null : graduation };
}

/** Where along the height of the stick the stop has to touch. */
function stopLine({ stop, placement }: Operation, { steps, words, formats: { length } }: Pen): string[] {
  if (stop === null) return [];
  const { arris, from, to } = stop;
  const isDown = from === 0 && to === 0;
  return [
    steps.stop({
      side: placement.kept,
      edge: arris === null ? null : arrisLabel(arris, { words }),
      height: isDown ? null : { from: length(from), to: length(to), isPoint: from === to },
    }),
  ];
}

/** Where a stop must never stand, and what to heed where one may. */
function stopRuleLine({ stopRule, stop }: Operation, { steps, formats: { length } }: Pen): string {
  const { side, never, touches, fromFence, comesFree, moveAway } = stopRule;
  return steps.stopRule({
    side,
    never,
    isUsed: touches !== null,
    isSet: stop !== null,
    moveAway,
    comesFree,
    fromFence: fromFence === null || fromFence === 0 ? null : length(fromFence),
  });
}

/** How high the blade of a table saw stands, or how deep one from above goes. */
function bladeLine({ bladeHeight, size }: Operation, { steps, formats: { length } }: Pen): string[] {
  if (size === null) return [];
  const high = bladeHeight === null ? null : length(bladeHeight);
  return [steps.blade({ bladeHeight: high, depth: length(size.depth), height: length(size.height) })];
}

function measureLine({ measure, kind }: Operation, { steps, words, formats: { length } }: Pen): string[] {
  if (measure === null) return [];
  const edge = arrisLabel(measure.arris, { words });
  return [steps.measure({ kind, length: length(measure.length), edge, hook: measure.hook })];
}

/**
 * Writes an operation as instructions for a person at the saw. They say which surface lies down, which edge is at the fence, and to which side the miter and
 * the blade go. They also say which part is kept, how high the blade stands, where a stop may stand, where the wood tears out and what length results. They
 * never use a sign.
 *
 * @param operation - one of a saw plan
 * @param options - formatters and words
 * @returns a title and sentences, as plain text
 * @throws {InputError} when the operation is none, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { operationText } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 400 }, profile: molding({ width: 40, thickness: 20 }) });
 * const text = operationText(plan.sawing.operations[1]!, { formats: formatters({ unit: "mm" }) });
 * text.lines[0]; //=> "Flip the stick end for end, still with its back on the table: now its sight edge is at the fence."
 * ```
 */
export function operationText(operation: Operation, options: TellOptions): OperationText {
  const { placement, move, kind, times, graduations } = readStored(operation, "operation", readOperation);
  const telling = checkTellOptions(options);
  const { words, formats } = telling;
  const steps = words?.steps ?? englishSteps;
  const pen: Pen = { ...telling, steps };
  const { down, atFence, cradled, kept, miter, bevel, tearOut } = placement;
  const label = (surface: typeof down): string => surfaceLabel(surface, { words });
  return {
    title: steps.titles[kind]({ times }),
    lines: [
      steps.lying({ move, down: label(down), cradled, atFence: label(atFence) }),
      steps.miter(scaleValues(miter, graduations.miter, formats)),
      steps.bevel(scaleValues(bevel, graduations.bevel, formats)),
      steps.keep({ side: kept }),
      ...bladeLine(operation, pen),
      ...stopLine(operation, pen),
      stopRuleLine(operation, pen),
      ...measureLine(operation, pen),
      steps.tearOut({ places: tearOut.map(({ surface, at, shows }) => ({ surface: label(surface), at, shows })) }),
    ],
  };
}
