import { describe, expect, test } from "vitest";
import { ROOT } from "../house/project.js";
import { compileBlocks } from "./compile-blocks.js";
import type { Block } from "./find-blocks.js";
import { runBlock } from "./run-block.js";
import { correctCode, replaceBlocks } from "./write-values.js";

const block = (...lines: string[]): Block => ({
  file: "docs/sample.md",
  line: 10,
  prefix: "",
  code: lines.join("\n"),
  noRun: false,
});
const load = (name: string): Promise<unknown> => import(/* @vite-ignore */ name);
const faultsOf = async (...lines: string[]): Promise<readonly string[]> =>
  (await runBlock(block(...lines), load)).faults;

const IMPORT = 'import { isInputError, InputError } from "miterwright/errors";';

describe("a sound block", () => {
  const sound = block(
    IMPORT,
    "",
    "interface Thing { readonly size: number }",
    "const thing: Thing = { size: 0.1 + 0.2 };",
    "thing.size; //=> 0.3",
    "await Promise.resolve({",
    "  thing,",
    "}); //=> { thing: { size: 0.3 } }",
    "[1, 2, 3].map((n) => n * n);",
    "//=> [",
    "//     1, 4,",
    "//     9,",
    "//   ]",
    '"a; //=> b"; //=> "a; //=> b"',
    "try {",
    '  throw new InputError({ code: "range", path: "size", value: 1, message: "No" });',
    "} catch (error) {",
    "  isInputError(error); //=> true",
    "}",
  );

  test("compiles", () => {
    expect(compileBlocks([sound], ROOT)).toEqual([[]]);
  });

  test("runs", async () => {
    expect(await runBlock(sound, load)).toEqual({ faults: [], corrections: [] });
  });
});

test("what does not compile is told by file and line", () => {
  const errors = compileBlocks(
    [
      block("const a = 1;", "", "export const b: string = a;"),
      block('import { noSuchThing } from "miterwright/errors";', "noSuchThing;"),
      block('import { anything } from "miterwright/no-such-module";', "anything;"),
      block("isInputError(1); //=> false"),
      block("1 +;"),
      // Names of one block are unknown to the next.
      block("a;"),
      block("process.exit(1);"),
    ],
    ROOT,
  );
  expect(errors).toEqual([
    ["docs/sample.md:12: Type 'number' is not assignable to type 'string'."],
    ["docs/sample.md:10: Module '\"miterwright/errors\"' has no exported member 'noSuchThing'."],
    [expect.stringContaining("docs/sample.md:10: Cannot find module 'miterwright/no-such-module'")],
    ["docs/sample.md:10: Cannot find name 'isInputError'."],
    ["docs/sample.md:10: Expression expected."],
    ["docs/sample.md:10: Cannot find name 'a'."],
    [expect.stringContaining("docs/sample.md:10: Cannot find name 'process'.")],
  ]);
});

describe("what does not come true is told by file and line", () => {
  test.each([
    [["1 + 1; //=> 3"], "docs/sample.md:10: prints 3, but the value is 2"],
    [["", '"a" + "b"; //=> "a b"'], 'docs/sample.md:11: prints "a b", but the value is "ab"'],
    [["1 / 3; //=> 0.33333333333"], "docs/sample.md:10: prints 0.33333333333, but the value is 0.333333333333"],
    [["({ a: 1, b: 2 }); //=> { a: 1 }"], "docs/sample.md:10: prints { a: 1 }, but the value is { a: 1, b: 2 }"],
    [["[1];", "//=> [2]"], "docs/sample.md:11: prints [2], but the value is [1]"],
    [["0 / 0; //=> NaN"], "docs/sample.md:10: prints NaN, but the value is a value that has no literal (NaN)"],
    [["1 + 1; //=> 1 + 1"], "docs/sample.md:10: prints 1 + 1, but the value is 2"],
    [["[1, 2]; //=> [1,"], "docs/sample.md:10: prints [1,, but the value is [1, 2]"],
    [["const a = 1; //=> 1"], "docs/sample.md:10: the value stands behind no expression statement"],
    [["1;", "", "//=> 1"], "docs/sample.md:12: the value stands behind no expression statement"],
    [["1; // => 1"], 'docs/sample.md:10: write "//=> " before the value'],
    [["1; //=>1"], 'docs/sample.md:10: write "//=> " before the value'],
    [["if (1 > 2) {", "  1; //=> 1", "}"], "docs/sample.md:11: was never reached"],
    [['const a = "x";', "", "throw new Error(a);"], "docs/sample.md:12: threw Error: x"],
    [
      ["interface A { b: number }", "", "1;", "const f = (): never => { throw new Error(); };", "f();"],
      "docs/sample.md:13: threw Error",
    ],
  ])("%j", async (lines, fault) => {
    expect(await faultsOf(...lines)).toEqual([fault]);
  });

  test("a value that is right once and wrong once", async () => {
    expect(await faultsOf("for (const n of [1, 2]) {", "  n; //=> 1", "}")).toEqual([
      "docs/sample.md:11: prints 1, but the value is 2",
    ]);
  });

  test("a module that is not there", async () => {
    const [fault] = await faultsOf('import { a } from "miterwright/no-such-module";', "a;");
    expect(fault).toMatch(/^docs\/sample\.md:10: threw Error: .*miterwright\/no-such-module/s);
  });
});

describe("writing values", () => {
  const corrected = async (sample: Block): Promise<string> =>
    correctCode(sample, (await runBlock(sample, load)).corrections);

  test("puts wrong ones right and leaves the others", async () => {
    const sample = block(
      "1 / 3; //=> 0",
      'const a = ["x"];',
      'a[0]; //=> "x"',
      "a.length; //=> {",
      "// }",
      "a; //=> []",
    );
    expect(await corrected(sample)).toBe(
      ["1 / 3; //=> 0.333333333333", 'const a = ["x"];', 'a[0]; //=> "x"', "a.length; //=> 1", 'a; //=> ["x"]'].join(
        "\n",
      ),
    );
  });

  test("goes on over comment lines where a value is long, and reads them back", async () => {
    const sample = { ...block('({ a: "x".repeat(70), b: ["y".repeat(40)] }); //=> 0'), prefix: " * " };
    const code = await corrected(sample);
    expect(code.split("\n")).toEqual([
      '({ a: "x".repeat(70), b: ["y".repeat(40)] }); //=> {',
      `//     a: "${"x".repeat(70)}",`,
      `//     b: ["${"y".repeat(40)}"],`,
      "//   }",
    ]);
    expect(await runBlock({ ...sample, code }, load)).toEqual({ faults: [], corrections: [] });
  });

  test("replaces blocks of a file from the last to the first", () => {
    const text = ["/**", " * ```ts", " * a;", " * ```", " * ```ts", " * b;", " * ```", " */"].join("\n");
    const one = { file: "src/a.ts", prefix: " * ", noRun: false };
    const changes = [
      { block: { ...one, line: 3, code: "a;" }, code: "a;\n\nA;" },
      { block: { ...one, line: 6, code: "b;" }, code: "B;" },
    ];
    expect(replaceBlocks(text, changes).split("\n")).toEqual([
      "/**",
      " * ```ts",
      " * a;",
      " *",
      " * A;",
      " * ```",
      " * ```ts",
      " * B;",
      " * ```",
      " */",
    ]);
  });
});
