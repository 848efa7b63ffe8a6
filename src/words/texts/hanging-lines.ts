import { checkObject } from "../../core/check.js";
import { sideNumber } from "../../core/side-number.js";
import { orNull, readStored } from "../../core/stored.js";
import { frameHanging } from "../../frame/internal.js";
import { reasonText } from "./reason-text.js";
import type { FramePlan, HungFrame } from "../../frame/index.js";
import { englishHanging, type HangingWords } from "../catalog/hanging-words.js";
import type { Formats } from "../../units/index.js";
import { checkTellOptions, type TellOptions } from "../tell-options.js";

function fixingText({ by, fixings, below, apart }: HungFrame, { length }: Formats, words: HangingWords): string {
  const [one, other] = fixings;
  return words.fixings({
    by,
    sides: [sideNumber(one.side), sideNumber(other.side)],
    below: length(below),
    apart: length(apart),
    fromCorner: length(one.fromCorner),
  });
}

function seatTexts({ seat }: HungFrame, { length, angle }: Formats, words: HangingWords): string[] {
  if (seat === null) return [];
  const { width, leanAngle, opens, standoff, wood, deepest, screwDepth } = seat;
  return [
    words.seat({
      width: length(width),
      opens,
      lean: angle(Math.abs(leanAngle)),
      standoff: length(standoff),
      wood: length(wood),
      deepest: length(deepest),
      screwDepth: screwDepth === null ? null : length(screwDepth),
    }),
  ];
}

function wireTexts({ wire }: HungFrame, { length, angle }: Formats, words: HangingWords): string[] {
  if (wire === null) return [];
  const { belowTop } = wire;
  return [
    words.wire({
      length: length(wire.length),
      angle: angle(wire.angle),
      shows: belowTop < 0,
      fromTop: length(Math.abs(belowTop)),
    }),
  ];
}

function loadText({ by, load }: HungFrame, { mass: write, force, percent }: Formats, words: HangingWords): string {
  const { mass, complete, weight, share, pull, factor, strength } = load;
  if (mass === null || weight === null || pull === null || strength === null) {
    return words.unknownLoad({ by, share: percent(100 * share) });
  }
  return words.load({
    by,
    complete,
    mass: write(mass),
    weight: force(weight),
    pull: force(pull),
    factor,
    strength: force(strength),
  });
}

/**
 * How a frame hangs, in sentences: where its hangers go, what they lie on, the wire and the load.
 *
 * @param plan - from `planFrame`; no more of it is read than `hanging`
 * @param options - formatters and words
 * @returns the sentences; the reason alone where it cannot hang, none where it is not to
 * @throws {InputError} when the plan is none, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { hangingLines } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({
 *   sides: 6,
 *   opening: { acrossFlats: 400 },
 *   profile: molding({ width: 50, thickness: 20 }),
 *   species: "black cherry",
 *   hanging: { by: "two-hooks" },
 * });
 * const formats = formatters({ unit: "mm" });
 * hangingLines(plan, { formats })[1]; //=> "The hangers lie flat to the wall on a surface 50 mm wide. Behind it is 20 mm of wood: screws 17 mm deep at the most."
 * ```
 */
export function hangingLines(plan: Pick<FramePlan, "hanging">, options: TellOptions): string[] {
  const hanging = readStored(checkObject(plan, "plan")["hanging"], "plan.hanging", (value, path) =>
    orNull(value, path, frameHanging),
  );
  const { formats, words } = checkTellOptions(options);
  const own = words?.hanging ?? englishHanging;
  if (hanging === null) return [];
  if (!hanging.possible) return [reasonText(hanging.reason, { words })];
  return [
    fixingText(hanging, formats, own),
    ...seatTexts(hanging, formats, own),
    ...wireTexts(hanging, formats, own),
    loadText(hanging, formats, own),
  ];
}
