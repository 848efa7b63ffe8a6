import { checkObject } from "../../core/check.js";
import { readStored } from "../../core/stored.js";
import { isIdle } from "../../closure/internal.js";
import type { SettingCorrection } from "../../closure/index.js";
import type { FrameCorrection } from "../../frame/index.js";
import { frameCorrection, settingCorrection } from "../../frame/internal.js";
import { formatAngle, type Formats } from "../../units/index.js";
import { checkFormats, finely } from "../../units/internal.js";
import { englishCorrections, type CorrectionWords } from "../catalog/correction-words.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

/** Options of {@link correctionLines}. */
export interface CorrectionLinesOptions extends WordsOptions {
  /** Writes the angles, as `formatters` makes it; default to a thousandth of a degree, which is finer than any saw is set. */
  readonly formats?: Formats | undefined;
}

/** A thousandth of a degree. */
function byThousandths(degrees: number): string {
  return formatAngle(degrees, { digits: 3 });
}

/** What the scales then show, and the slope at which the frame then closes. */
function onTheSaw(correction: FrameCorrection, words: CorrectionWords, angle: (degrees: number) => string): string[] {
  const { changes, shown, otherHand, first, slope, slopeOff } = correction;
  const readings = (["miter", "bevel"] as const)
    .filter((name) => changes[name] !== "leave")
    .map((name) =>
      words.reading[name]({
        to: angle(first[name].reading),
        from: angle(shown[name]),
        otherHand: otherHand[name],
      }),
    );
  return isIdle(slopeOff) ? readings : [...readings, words.slope({ slope: angle(slope) })];
}

/**
 * Says how a setting of the saw is corrected.
 *
 * @param correction - from `correctSetting` or `correctFromGap`
 * @param options - formatters and words
 * @returns a sentence for what was wrong and one for each angle; of `correctFromGap` also what the scales then show, and the slope where it is not the planned one
 * @throws {InputError} when the correction is none, or a formatter is missing
 * @example
 * ```ts
 * import { correctSetting } from "miterwright/closure";
 * import { correctionLines } from "miterwright/words";
 *
 * correctionLines(correctSetting({ sides: 8, width: 40, seenGap: 1.2, open: "outside" }));
 * //=> [
 * //     "Open outside: the inside angles of the corners are too large, so the ring does not come round.",
 * //     "Miter: 0.099° more, further from a square cut.",
 * //     "Bevel: leave it.",
 * //   ]
 * ```
 */
export function correctionLines(
  correction: SettingCorrection | FrameCorrection,
  options: CorrectionLinesOptions = {},
): readonly string[] {
  const onSaw = "shown" in checkObject(correction, "correction");
  const read = readStored<SettingCorrection | FrameCorrection>(
    correction,
    "correction",
    onSaw ? frameCorrection : settingCorrection,
  );
  const words = checkWords(options);
  const angle = options.formats === undefined ? byThousandths : finely(checkFormats(options.formats)).angle;
  const corrections = words?.corrections ?? englishCorrections;
  const { gap, miter, bevel } = corrections;
  return [
    gap[read.angle === 0 ? "nowhere" : read.angle > 0 ? "outside" : "inside"](),
    miter[read.changes.miter]({ by: angle(Math.abs(read.correction.miter)) }),
    bevel[read.changes.bevel]({ by: angle(Math.abs(read.correction.bevel)) }),
    ...("shown" in read ? onTheSaw(read, corrections, angle) : []),
  ];
}
