import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { installPackage } from "../../house/installed-package.js";
import { requireFreshBuild, ROOT } from "../../house/project.js";
import { listNotebooks, outputFaults, readNotebook, withOutputs, type Cell, type Notebook } from "../read-notebook.js";
import { requireJupyter, runInKernel } from "./run-kernel.js";

/** `NOTEBOOK_OUTPUTS=write npm run test:notebooks` stores what comes out, for a person to look at before it is committed. */
const isWriting = process.env["NOTEBOOK_OUTPUTS"] === "write";

const notebooks = listNotebooks();
// Below the root, so that the package is found there by its name.
mkdirSync(join(ROOT, "out"), { recursive: true });
const temporary = mkdtempSync(join(ROOT, "out/notebooks-"));

beforeAll(async () => {
  requireFreshBuild();
  await requireJupyter();
});

afterAll(() => {
  rmSync(temporary, { recursive: true });
});

/** Runs a notebook, which must not fail. */
async function run(path: string): Promise<Notebook> {
  const came = await runInKernel(path);
  if ("failure" in came) throw new Error(came.failure);
  return came.notebook;
}

describe.each(notebooks)("%s", (path) => {
  test("runs in Deno's kernel, shows what it should, and is stored with what it shows", async () => {
    const stored = readNotebook(path);
    const came = await run(join(ROOT, path));
    expect(outputFaults(came)).toEqual([]);
    const fresh = withOutputs(stored, came);
    if (isWriting) writeFileSync(join(ROOT, path), `${JSON.stringify(fresh, null, 1)}\n`);
    else expect(stored.cells).toEqual(fresh.cells);
  });
});

test("every notebook runs beside the installed package, as it does for a teacher", async () => {
  const installed = await installPackage();
  try {
    for (const path of notebooks) {
      copyFileSync(join(ROOT, path), join(installed.folder, basename(path)));
      const came = await run(join(installed.folder, basename(path)));
      expect(withOutputs(readNotebook(path), came).cells).toEqual(readNotebook(path).cells);
    }
  } finally {
    installed.remove();
  }
});

describe("a notebook fails", () => {
  const metadata = { kernelspec: { display_name: "Deno", language: "typescript", name: "deno" } };
  const failureOf = async (...sources: readonly string[]): Promise<string> => {
    const cells = sources.map((source, index): Cell => ({
      cell_type: "code",
      id: `cell-${index}`,
      source,
      outputs: [],
      execution_count: null,
    }));
    const path = join(temporary, "broken.ipynb");
    const text = JSON.stringify({
      cells: cells.map((cell) => ({ ...cell, metadata: {} })),
      metadata,
      nbformat: 4,
      nbformat_minor: 5,
    });
    writeFileSync(path, text);
    const came = await runInKernel(path);
    return "failure" in came ? came.failure : "it did not";
  };

  test.each([
    ["where a cell throws", 'throw new Error("the tide is out");', "Error: the tide is out"],
    [
      "where a claim does not hold",
      'const holds = (claim: string, does: boolean) => { if (!does) throw new Error(`does not hold: ${claim}`); };\nholds("1 = 2", Number("1") === 2);',
      "does not hold: 1 = 2",
    ],
    ["where a cell does not parse", "const = 5;", "executing the following cell:\n------------------\nconst = 5;"],
    [
      "where the package lacks what is imported",
      'import { drawTide } from "miterwright/drawing";\ndrawTide();',
      "drawTide",
    ],
    [
      "where the library refuses",
      'import { regularPolygon } from "miterwright/polygon";\nregularPolygon({ sides: 2, side: 10 });',
      "Expected `sides` to be an integer from 3 to 1000000, got 2 (number)",
    ],
  ])("%s", async (_, source, said) => {
    expect(await failureOf("1 + 1", source)).toContain(said);
  });

  test("not where nothing is wrong", async () => {
    expect(
      await failureOf(
        'import { regularPolygon } from "miterwright/polygon";\nregularPolygon({ sides: 6, side: 10 }).side;',
      ),
    ).toBe("it did not");
  });
});

test("where Jupyter is missing, it is said what to install", async () => {
  await expect(requireJupyter(temporary)).rejects.toThrow(
    "The notebooks are run by Jupyter's nbconvert, which is not there. Install it first: `apt-get install jupyter-nbconvert` on Debian; .ci/run does.",
  );
});
