import { format } from "prettier";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { compileBlocks } from "../doc-code/compile-blocks.js";
import { runBlock } from "../doc-code/run-block.js";
import { ROOT } from "../house/project.js";
import {
  codeCells,
  joinText,
  listNotebooks,
  outputFaults,
  readNotebook,
  shownBy,
  type Cell,
  type Notebook,
} from "./read-notebook.js";

/** What `npm test` can tell of the notebooks without Deno or Jupyter. `npm run test:notebooks` runs them in their kernel. */
const notebooks = listNotebooks().map((path) => ({ path, notebook: readNotebook(path) }));

/** A notebook's cells as one program, which is what they are to each other. */
const programs = notebooks.map(({ path, notebook }) => ({
  file: path,
  line: 1,
  prefix: "",
  code: codeCells(notebook)
    .map(({ source }) => joinText(source))
    .join("\n;\n"),
  noRun: false,
}));

beforeEach(() => {
  // The cells report every claim that holds.
  vi.spyOn(console, "log").mockReturnValue();
  return () => {
    vi.restoreAllMocks();
  };
});

test("there are notebooks", () => {
  expect(notebooks.map(({ path }) => path)).toEqual([
    "examples/notebooks/compound-miter-from-planes.ipynb",
    "examples/notebooks/polygons-and-their-measures.ipynb",
  ]);
});

describe.each(notebooks)("$path", ({ path, notebook }) => {
  test("is of the stated format, for Deno's kernel, with an id for every cell", () => {
    expect([notebook.nbformat, notebook.nbformat_minor]).toEqual([4, 5]);
    expect(notebook.metadata["kernelspec"]).toEqual({ display_name: "Deno", language: "typescript", name: "deno" });
    const ids = notebook.cells.map(({ id }) => id);
    expect(ids.filter((id) => !/^[a-z][a-z0-9-]{0,63}$/.test(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("compiles against the package's public names, and every claim in it holds", async () => {
    const program = programs.find(({ file }) => file === path)!;
    expect(compileBlocks([program], ROOT)).toEqual([[]]);
    const { faults } = await runBlock(program, (name) => import(/* @vite-ignore */ name));
    expect(faults).toEqual([]);
  });

  test("has its cells formatted, in lines that a notebook's page has room for", async () => {
    for (const { id, source } of codeCells(notebook)) {
      const text = joinText(source);
      const formatted = await format(text, { parser: "typescript", printWidth: 100 });
      expect(text, id).toBe(formatted.trimEnd());
      expect(
        text.split("\n").filter((line) => line.length > 116),
        id,
      ).toEqual([]);
    }
  });

  test("is stored with outputs that read well: pictures, tables, no errors, no colors of a terminal", () => {
    expect(outputFaults(notebook)).toEqual([]);
    expect(JSON.stringify(notebook)).not.toContain("\\u001b");
    const shown = codeCells(notebook).map(shownBy);
    for (const verb of ["draw", "tabulate"]) expect(shown.filter((other) => other === verb).length).toBeGreaterThan(1);
  });

  test("claims something, and asks before it answers", () => {
    const prose = notebook.cells
      .filter(({ cell_type }) => cell_type === "markdown")
      .map(({ source }) => joinText(source));
    expect(
      prose.filter((text) => /\*\*(?:Questions?|Prediction|Predict\b[^*]*)[.:]?\*\*/.test(text)).length,
    ).toBeGreaterThanOrEqual(7);
    expect(programs.find(({ file }) => file === path)!.code.match(/^holds\(/gm)!.length).toBeGreaterThanOrEqual(15);
  });
});

describe("what is wrong with outputs", () => {
  const cell = (source: string, outputs: Cell["outputs"] = [], count = 1): Cell => ({
    cell_type: "code",
    id: "a",
    source,
    outputs,
    execution_count: count,
  });
  const faultsOf = (...cells: readonly Cell[]): string[] =>
    outputFaults({ cells, metadata: {}, nbformat: 4, nbformat_minor: 5 } satisfies Notebook);
  const result = (...kinds: readonly string[]): Cell["outputs"] => [
    { output_type: "execute_result", data: Object.fromEntries(kinds.map((kind) => [kind, "x"])) },
  ];

  test.each([
    ["draw(1);", [], ["a shows no image/svg+xml", "a shows no text/plain"]],
    ["const b = 1;\ndrawPlanView(\n  b,\n);", result("image/svg+xml", "text/plain"), []],
    ["tabulateLays(\n  b,\n  {\n  c },\n);\n", result("text/html", "text/plain"), ["a shows no text/markdown"]],
    ["draw(1);\nconst b = 2;", [], []],
    ["1;", [{ output_type: "error" }], ["a ended in an error"]],
  ] as const)("of %j", (source, outputs, faults) => {
    expect(faultsOf(cell(source, outputs))).toEqual(faults);
  });

  test("of cells that were not run one after another", () => {
    expect(faultsOf(cell("1;"), cell("2;"))).toEqual(["a was not run in its turn"]);
  });
});
