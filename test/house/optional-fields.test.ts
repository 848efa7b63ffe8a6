import { expect, test } from "vitest";
import { listFiles, readProjectFile } from "./project.js";

/** Interfaces that callers fill in: options, briefs and what goes into them. */
const INPUT = /(?:Options|Brief|Question|Layer|CostRate|Hanging|Moisture|SeenGap|StockStick|StockPiece|StockJob)$/;

/** The optional fields of an interface's text that can't be given as undefined. */
function bare(text: string): string[] {
  return [...text.matchAll(/^\s+readonly (\w+)\?: ([^;]*);/gm)]
    .filter(([, , type]) => !/\bundefined$/.test(type!.trim()))
    .map(([, name]) => name!);
}

test("every optional field of what callers fill in can be given as undefined, as forms give it", () => {
  const entries = listFiles("src", "index.ts").map(readProjectFile).join("\n");
  let seen = 0;
  const found = listFiles("src", ".ts").flatMap((file) => {
    const source = readProjectFile(file);
    return [...source.matchAll(/^export interface (\w+)[^{]*\{([\s\S]*?)^\}/gm)].flatMap(([, name, body]) => {
      if (!INPUT.test(name!) || !new RegExp(`\\b${name!}\\b`).test(entries)) return [];
      seen++;
      return bare(body!).map((field) => `${file}: ${name!}.${field}`);
    });
  });
  expect(seen).toBeGreaterThan(40);
  expect(found).toEqual([]);
});

test("a field that can't be is seen", () => {
  expect(bare("  readonly kerf?: number;\n  readonly lay?: Lay | undefined;\n  readonly slope: number;\n")).toEqual([
    "kerf",
  ]);
});
