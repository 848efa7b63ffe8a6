import { refuse } from "./refuse.js";

/** One of a list of words. */
export function checkWord<W extends string>(value: unknown, path: string, words: readonly W[]): W {
  if (words.includes(value as W)) return value as W;
  const clause = `one of ${words.map((word) => `"${word}"`).join(", ")}`;
  const code = typeof value === "string" ? "unknown" : "type";
  return refuse(code, path, value, { clause, kind: "one-of", words: [...words] });
}

/** A string that is not empty. */
export function checkText(value: unknown, path: string): string {
  if (typeof value === "string" && value !== "") return value;
  const expected = { clause: "a string that is not empty", kind: "text" } as const;
  return refuse(value === "" ? "range" : "type", path, value, expected);
}
