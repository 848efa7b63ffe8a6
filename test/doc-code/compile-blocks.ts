import { join } from "node:path";
import ts from "typescript";
import { compileInMemory, errorsOf } from "../house/compile-in-memory.js";
import type { Block } from "./find-blocks.js";

const OPTIONS: ts.CompilerOptions = {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  // Readers run these in a browser or a notebook as well as in Node.
  lib: ["lib.es2022.d.ts", "lib.dom.d.ts", "lib.dom.iterable.d.ts"],
  types: [],
  strict: true,
  noEmit: true,
  skipLibCheck: true,
  // A block without imports must not share its names with the other blocks.
  moduleDetection: ts.ModuleDetectionKind.Force,
};

/**
 * Type-checks blocks against the public names of the package, all in one program.
 *
 * @param blocks - the blocks
 * @param root - the project's root; `miterwright/polygon` is its `src/polygon/index.ts`
 * @returns for each block its errors, as `file:line: message`
 */
export function compileBlocks(blocks: readonly Block[], root: string): string[][] {
  const options: ts.CompilerOptions = {
    ...OPTIONS,
    paths: { miterwright: [join(root, "src/index.ts")], "miterwright/*": [join(root, "src/*/index.ts")] },
  };
  // The blocks sit in the root folder, so that packages are found from there; nothing is written.
  const names = blocks.map((_, index) => join(root, `doc-block-${index}.ts`));
  const program = compileInMemory(names, new Map(names.map((name, index) => [name, blocks[index]!.code])), options);
  return names.map((name, index) => {
    const { file, line: start } = blocks[index]!;
    return errorsOf(program, name).map(({ line, message }) => `${file}:${start + line}: ${message}`);
  });
}
