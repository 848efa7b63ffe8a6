import { checkLength, checkObject, checkWord } from "../../core/check.js";
import type { RoughMethod } from "../brief/brief.js";

/**
 * Checks how pieces are parted from the stick.
 *
 * @param value - the method and its allowance
 * @returns the checked method
 */
export function checkRough(value: unknown): RoughMethod {
  const rough = checkObject(value, "rough");
  const method = checkWord(rough["method"], "rough.method", ["none", "square", "mitered"]);
  if (method === "none") return { method };
  return { method, allowance: checkLength(rough["allowance"], "rough.allowance") };
}
