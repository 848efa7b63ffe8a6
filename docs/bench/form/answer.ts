import type { Choice } from "../fields.js";

/**
 * One way to answer a choice.
 *
 * @param value - its name in links and files
 * @param label - what the page calls it
 * @returns the choice
 */
export function answer(value: string, label: string): Choice {
  return { value, label };
}
