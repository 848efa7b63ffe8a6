import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { listFiles, readProjectFile, ROOT } from "../house/project.js";
import { compileBlocks } from "./compile-blocks.js";
import { findBlocks, type Block } from "./find-blocks.js";
import { runBlock } from "./run-block.js";
import { correctCode, replaceBlocks } from "./write-values.js";

/**
 * `DOC_VALUES=write npx vitest run test/doc-code` prints into src and docs the values that come out, for a person to
 * read through before they are committed.
 */
const isWriting = process.env["DOC_VALUES"] === "write";

/** Blocks whose fence says `no-run`. They are compiled all the same; raise the number only for what cannot run in Node. */
const NO_RUN_BLOCKS = 0;

const pages = ["README.md", "DEVELOPERS.md"].filter((file) => existsSync(join(ROOT, file)));
const found = [...listFiles("src", ".ts"), ...listFiles("docs", ".md"), ...pages].map((file) =>
  findBlocks(file, readProjectFile(file)),
);
const blocks = found.flatMap((file) => file.blocks);
const compiled = compileBlocks(blocks, ROOT);
const changes: { readonly block: Block; readonly code: string }[] = [];

afterAll(() => {
  for (const file of new Set(changes.map(({ block }) => block.file))) {
    const ofFile = changes.filter(({ block }) => block.file === file);
    writeFileSync(join(ROOT, file), replaceBlocks(readProjectFile(file), ofFile));
  }
});

test("no code in docs escapes the tests", () => {
  expect(found.flatMap((file) => file.faults)).toEqual([]);
  expect(blocks.filter(({ noRun }) => noRun)).toHaveLength(NO_RUN_BLOCKS);
});

test.each(blocks.map((block, index) => ({ at: `${block.file}:${block.line}`, block, errors: compiled[index]! })))(
  "$at compiles, runs and prints true values",
  async ({ block, errors }) => {
    expect(errors).toEqual([]);
    if (block.noRun) return;
    const { faults, corrections } = await runBlock(block, (name) => import(/* @vite-ignore */ name));
    if (isWriting && corrections.length > 0) changes.push({ block, code: correctCode(block, corrections) });
    expect(isWriting && corrections.length === faults.length ? [] : faults).toEqual([]);
  },
);
