import { SourceMap, type SourceMapPayload } from "node:module";
import ts from "typescript";
import type { Block } from "./find-blocks.js";
import { readLiteral, sameValue, writeLiteral } from "./literal.js";
import { findPrintedValues, type PrintedValue } from "./printed-values.js";

/** What came of running a block. */
export interface Run {
  /** Sentences about what is wrong, as `file:line: message`. */
  readonly faults: readonly string[];
  /** Values whose printed literal differs from what came out. */
  readonly corrections: readonly Correction[];
}

/** A printed value and what it should be. */
export interface Correction {
  readonly printed: PrintedValue;
  readonly actual: unknown;
}

/** Loads a module by the name a reader would write. */
export type Load = (specifier: string) => Promise<unknown>;

/** Name of the function that takes the values while a block runs. */
const TAKE = "__takeValue";
const BLOCK_NAME = "doc-block.js";

type Body = (
  require: (specifier: string) => unknown,
  exports: object,
  takeValue: (index: number, value: unknown) => void,
) => Promise<void>;
const AsyncFunction = (async () => {
  // Only its constructor is wanted, which has no name of its own.
}).constructor as new (...namesAndCode: string[]) => Body;

/** Wraps every expression whose value is printed, on its own line, so that lines stay what they were. */
function instrument(code: string, values: readonly PrintedValue[]): string {
  let result = code;
  for (const [index, { expression }] of [...values.entries()].reverse()) {
    const [start, end] = expression;
    result = `${result.slice(0, start)}${TAKE}(${index}, ${result.slice(start, end)})${result.slice(end)}`;
  }
  return result;
}

/** The line of the block, from 0, on which an error was thrown; the first where the stack does not say. */
function lineOfError(error: unknown, sourceMapText: string, linesBefore: number): number {
  const stack = error instanceof Error ? (error.stack ?? "") : "";
  const [, line, column] = new RegExp(`${BLOCK_NAME.replace(".", "\\.")}:(\\d+):(\\d+)`).exec(stack) ?? [];
  if (line === undefined || column === undefined) return 0;
  const map = new SourceMap(JSON.parse(sourceMapText) as SourceMapPayload);
  const entry = map.findEntry(Number(line) - 1 - linesBefore, Number(column) - 1);
  return "originalLine" in entry ? entry.originalLine : 0;
}

/** How many lines the engine puts before the body of a function that is made from text. */
const LINES_BEFORE = 2;

/**
 * Runs a block and compares the values it prints.
 *
 * @param block - the block
 * @param load - loads the modules it imports
 * @returns what is wrong, and the values to print instead
 */
export async function runBlock(block: Block, load: Load): Promise<Run> {
  const at = (line: number, message: string): string => `${block.file}:${block.line + line}: ${message}`;
  const { values, faults: misplaced } = findPrintedValues(block.code);
  const faults = misplaced.map(({ line, message }) => at(line, message));
  const corrections = new Map<number, Correction>();
  const reached = new Set<number>();

  const takeValue = (index: number, actual: unknown): void => {
    const printed = values[index]!;
    reached.add(index);
    try {
      if (sameValue(readLiteral(printed.text), actual)) return;
    } catch (error) {
      if (!(error instanceof SyntaxError)) throw error;
    }
    corrections.set(index, { printed, actual });
    let got: string;
    try {
      got = writeLiteral(actual);
    } catch (error) {
      got = (error as Error).message;
    }
    faults.push(at(printed.line, `prints ${printed.text}, but the value is ${got}`));
  };

  const { outputText, sourceMapText } = ts.transpileModule(instrument(block.code, values), {
    fileName: "block.ts",
    compilerOptions: {
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.CommonJS,
      moduleDetection: ts.ModuleDetectionKind.Force,
      sourceMap: true,
      removeComments: true,
    },
  });
  const modules = new Map<string, unknown>();
  try {
    for (const { fileName } of ts.preProcessFile(block.code).importedFiles) modules.set(fileName, await load(fileName));
    const body = new AsyncFunction("require", "exports", TAKE, `${outputText}\n//# sourceURL=${BLOCK_NAME}`);
    await body((specifier) => modules.get(specifier), {}, takeValue);
  } catch (error) {
    faults.push(at(lineOfError(error, sourceMapText!, LINES_BEFORE), `threw ${String(error)}`));
    return { faults, corrections: [...corrections.values()] };
  }
  for (const [index, { line }] of values.entries()) {
    if (!reached.has(index)) faults.push(at(line, "was never reached"));
  }
  return { faults, corrections: [...corrections.values()] };
}
