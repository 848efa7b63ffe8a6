import { describe, expect, test } from "vitest";
import { findForeignGlobals } from "./language-only.js";

describe("src uses nothing but the language", () => {
  test("and compiles without the types of node or of a browser", () => {
    expect(findForeignGlobals()).toEqual([]);
  });

  test("and a file that reaches for more is found out", () => {
    const faults = findForeignGlobals({
      "src/invented-uses.ts": [
        "export const a: unknown = process.env;",
        "export const b: unknown = Buffer.from([]);",
        "export const c: unknown = setTimeout(() => 0, 1);",
        "export const d: unknown = document.body;",
        "export const e: unknown = console;",
        "export const f: unknown = Math.PI;",
      ].join("\n"),
      "src/invented-declares.ts": [
        "declare const process: { env: unknown };",
        "declare const brand: unique symbol;",
        "export const env: unknown = process.env;",
        "export interface Branded { [brand]: true }",
      ].join("\n"),
    });
    const invented = faults.filter((fault) => fault.startsWith("src/invented-"));
    expect(invented.map((fault) => fault.split(": ")[0])).toEqual([
      "src/invented-uses.ts:1",
      "src/invented-uses.ts:2",
      "src/invented-uses.ts:3",
      "src/invented-uses.ts:4",
      "src/invented-uses.ts:5",
      "src/invented-declares.ts:1",
    ]);
    expect(invented.at(-1)).toBe(
      "src/invented-declares.ts:1: an ambient value hides a global: declare const process: { env: unknown };",
    );
  });

  test("and a host's timer can be described by its shape", () => {
    const faults = findForeignGlobals({
      "src/invented-timer.ts": [
        "type Timer = { readonly setTimeout?: (run: () => void, ms: number) => unknown };",
        "export const later: unknown = (globalThis as Timer).setTimeout;",
      ].join("\n"),
    });
    expect(faults.filter((fault) => fault.startsWith("src/invented-"))).toEqual([]);
  });
});
