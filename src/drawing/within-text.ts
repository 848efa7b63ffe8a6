import type { FrameCheck } from "../frame/index.js";

/** What stands where nothing is to be written. */
export const NOTHING: string = "–";

/**
 * What to say of a check's tolerance on paper.
 *
 * @param check - its kind and its tolerance
 * @param words - the formatters
 * @returns the tolerance; "a hair" for one that the formatter rounds away, which is not to be measured but felt
 */
export function withinText(
  check: Pick<FrameCheck, "kind" | "tolerance">,
  words: Readonly<Record<FrameCheck["kind"], (value: number) => string>>,
): string {
  const { kind, tolerance } = check;
  if (tolerance === null) return NOTHING;
  const text = words[kind](tolerance);
  return text === words[kind](0) ? "a hair" : `±\u00a0${text.replaceAll(" ", "\u00a0")}`;
}
