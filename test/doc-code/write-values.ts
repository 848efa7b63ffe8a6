import type { Block } from "./find-blocks.js";
import { writeLiteral } from "./literal.js";
import type { Correction } from "./run-block.js";

/** The widest line that is written; the same as the formatter's. */
const WIDTH = 120;

/**
 * A block's code with its printed values put right.
 *
 * @param block - the block
 * @param corrections - the values that were wrong
 * @returns the new code; a value too long for its line goes on over comment lines, one member each
 */
export function correctCode(block: Block, corrections: readonly Correction[]): string {
  let { code } = block;
  for (const { printed, actual } of [...corrections].sort((a, b) => b.printed.comment[0] - a.printed.comment[0])) {
    const [start, end] = printed.comment;
    const lineStart = code.lastIndexOf("\n", start - 1) + 1;
    let comment = `//=> ${writeLiteral(actual)}`;
    if (block.prefix.length + (start - lineStart) + comment.length > WIDTH) {
      const indent = /^\s*/.exec(code.slice(lineStart))![0];
      comment = `//=> ${writeLiteral(actual, true).replaceAll("\n", `\n${indent}//   `)}`;
    }
    code = `${code.slice(0, start)}${comment}${code.slice(end)}`;
  }
  return code;
}

/**
 * A file's text with the code of some of its blocks exchanged.
 *
 * @param text - the file's text
 * @param changes - blocks of that file and the code each is to hold
 * @returns the new text
 */
export function replaceBlocks(
  text: string,
  changes: readonly { readonly block: Block; readonly code: string }[],
): string {
  const lines = text.split("\n");
  for (const { block, code } of [...changes].sort((a, b) => b.block.line - a.block.line)) {
    const written = code.split("\n").map((line) => `${block.prefix}${line}`.trimEnd());
    lines.splice(block.line - 1, block.code.split("\n").length, ...written);
  }
  return lines.join("\n");
}
