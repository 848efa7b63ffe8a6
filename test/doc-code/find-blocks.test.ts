import { expect, test } from "vitest";
import { findBlocks } from "./find-blocks.js";

test("blocks are found in doc comments", () => {
  const text = [
    "/**",
    " * Doubles.",
    " *",
    " * @example",
    " * ```ts",
    " * double(2); //=> 4",
    " *",
    " * double(3);",
    " * ```",
    " */",
    "export const a = 1;",
    "  /**",
    "   * ```ts no-run",
    "   * while (true);",
    "   * ```",
    "   * ```json",
    "   * {}",
    "   * ```",
    "   */",
  ].join("\n");
  expect(findBlocks("src/a.ts", text)).toEqual({
    blocks: [
      { file: "src/a.ts", line: 6, prefix: " * ", code: "double(2); //=> 4\n\ndouble(3);", noRun: false },
      { file: "src/a.ts", line: 14, prefix: "   * ", code: "while (true);", noRun: true },
    ],
    faults: [],
  });
});

test("blocks are found in pages, also within a list", () => {
  const text = ["# Title", "", "```ts", "a;", "```", "", "1. One", "", "   ```ts", "   b;", "", "   c;", "   ```"];
  expect(findBlocks("docs/a.md", text.join("\n"))).toEqual({
    blocks: [
      { file: "docs/a.md", line: 4, prefix: "", code: "a;", noRun: false },
      { file: "docs/a.md", line: 10, prefix: "   ", code: "b;\n\nc;", noRun: false },
    ],
    faults: [],
  });
});

test("a block that quotes a fence ends at its own", () => {
  const text = ["````md", "```ts", "a;", "```", "````", "```ts", "b;", "```"].join("\n");
  expect(findBlocks("docs/a.md", text).blocks.map(({ code }) => code)).toEqual(["b;"]);
});

test.each([
  ["docs/a.md", "```typescript\na;\n```", "docs/a.md:1: write ```ts or ```ts no-run instead of ```typescript"],
  ["docs/a.md", "```js\na;\n```", "docs/a.md:1: write ```ts or ```ts no-run instead of ```js"],
  ["docs/a.md", "\n```ts norun\na;\n```", "docs/a.md:2: write ```ts or ```ts no-run instead of ```ts norun"],
  ["docs/a.md", "```ts\na;\n", "docs/a.md:1: a fence that is not closed"],
  ["src/a.ts", "/**\n * ```ts\n * a;\n */", "src/a.ts:2: a fence that is not closed"],
  ["src/a.ts", "/**\n * @example\n * a;\n */", "src/a.ts:2: an @example without a ```ts block"],
  ["src/a.ts", "/**\n * @example\n * @see b\n */", "src/a.ts:2: an @example without a ```ts block"],
])("code that would escape is a fault: %s %j", (file, text, fault) => {
  expect(findBlocks(file, text).faults).toEqual([fault]);
});
