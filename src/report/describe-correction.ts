import type { SettingCorrection } from "../closure/index.js";
import type { FrameCorrection } from "../frame/index.js";
import { correctionLines, type TellOptions } from "../words/index.js";
import { listOf, penOf, sectionOf, tellWith } from "./pen.js";
import type { Report } from "./report.js";

/**
 * Tells how a setting of the saw is corrected.
 *
 * @param correction - from `correctSetting` or `correctFromGap`
 * @param options - formatters and words; small angles are written finely
 * @returns the report
 * @throws {InputError} when the correction is none, or an option is not sound
 * @example
 * ```ts
 * import { correctSetting } from "miterwright/closure";
 * import { describeCorrection } from "miterwright/report";
 * import { formatters } from "miterwright/units";
 *
 * const correction = correctSetting({ sides: 8, width: 40, seenGap: 1.2, open: "outside" });
 * describeCorrection(correction, { formats: formatters({ unit: "mm" }) }).title; //=> "Correcting the setting"
 * ```
 */
export function describeCorrection(correction: SettingCorrection | FrameCorrection, options: TellOptions): Report {
  const pen = penOf(options);
  const lines = correctionLines(correction, tellWith(pen));
  return {
    title: pen.words.reports.titles.correction,
    sections: sectionOf("correction", pen, listOf("correction", lines)),
  };
}
