import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { filesBehind, findFaults, HOUSE, readSpecifiers, type FileImports, type House } from "./import-graph.js";
import { listEntries, listFiles, readProjectFile, ROOT } from "./project.js";

const sources = listFiles("src", ".ts").map((file) => readSpecifiers(file, readProjectFile(file)));
const folders = readdirSync(join(ROOT, "src"), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

describe("the imports of src", () => {
  test("are read", () => {
    const root = sources.find(({ file }) => file === "src/index.ts");
    expect(root?.specifiers).toContain("./errors/index.js");
  });

  test("keep to the house rules", () => {
    expect(findFaults(sources, HOUSE)).toEqual([]);
  });

  test("reach every module but precise from the root entry", () => {
    const root = sources.find(({ file }) => file === "src/index.ts")!;
    const modules = folders.filter((folder) => folder !== "core" && folder !== "precise");
    expect([...root.specifiers].sort()).toEqual(modules.map((module) => `./${module}/index.js`).sort());
  });
});

test("the verifier of stock plans shares nothing with the search but the first look at the job", () => {
  const behind = filesBehind(sources, "src/stock/verify/verify-fit.ts");
  expect([...behind]).toContain("src/stock/job/check-job.ts");
  expect([...behind]).toContain("src/stock/verify/check-places.ts");
  // The types of a plan, and what reads a long list in steps and sums it.
  const shared = ["src/stock/fit/stock-fit.ts", "src/stock/steps.ts", "src/stock/sums.ts"];
  const allowed = /^src\/(core|stock\/job|stock\/verify)\//;
  expect([...behind].filter((file) => !allowed.test(file)).sort()).toEqual(shared);
});

test("package.json exports every folder of src but core, and nothing else", () => {
  const modules = folders.filter((folder) => folder !== "core").map((folder) => `miterwright/${folder}`);
  expect(listEntries().sort()).toEqual(["miterwright", ...modules].sort());
});

describe("the checker", () => {
  const house: House = {
    floors: [["core"], ["left", "right"], ["attic"]],
    beside: { shed: ["left"] },
    packages: { shed: ["ladder"] },
  };
  const sound: Record<string, string> = {
    "src/index.ts": 'export * from "./left/index.js";',
    "src/core/a.ts": "",
    "src/core/b.ts": 'import { a } from "./a.js";',
    "src/left/index.ts": 'import type { a } from "../core/a.js";',
    "src/right/index.ts": "",
    "src/attic/index.ts": 'import { left } from "../left/index.js";',
    "src/shed/index.ts": 'import { left } from "../left/index.js";\nimport { Ladder } from "ladder";',
  };
  const faultsWith = (changed: Record<string, string>): string[] => {
    const files: FileImports[] = Object.entries({ ...sound, ...changed }).map(([file, text]) =>
      readSpecifiers(file, text),
    );
    return findFaults(files, house);
  };

  test("passes a sound house", () => {
    expect(faultsWith({})).toEqual([]);
  });

  test("reads every form of import, and none in comments or strings", () => {
    const text = `
      import a from "./a.js";
      import type { B } from "./b.js";
      export * from "./c.js";
      export type { D } from "./d.js";
      const e = await import("./e.js");
      type F = import("./f.js").F;
      // import g from "./g.js";
      const h = 'import h from "./h.js"';
    `;
    const letters = readSpecifiers("src/x.ts", text).specifiers.map((specifier) => specifier.at(2));
    expect(letters).toEqual(["a", "b", "c", "d", "e", "f"]);
  });

  test.each([
    [
      "an import that goes up",
      { "src/left/index.ts": 'import { attic } from "../attic/index.js";', "src/attic/index.ts": "" },
      "src/left/index.ts imports src/attic/index.ts: that goes up, from floor 1 to floor 2",
    ],
    [
      "an import from core up",
      { "src/core/a.ts": 'export type { Right } from "../right/index.js";' },
      "src/core/a.ts imports src/right/index.ts: that goes up, from floor 0 to floor 1",
    ],
    [
      "an import across a floor",
      { "src/left/index.ts": 'export * from "../right/index.js";' },
      "src/left/index.ts imports src/right/index.ts: left and right stand on one floor",
    ],
    [
      "a circle of files",
      { "src/core/a.ts": 'import { b } from "./b.js";' },
      "import circle: src/core/a.ts -> src/core/b.ts -> src/core/a.ts",
    ],
    [
      "a file that imports itself",
      { "src/core/a.ts": 'import { a } from "./a.js";' },
      "import circle: src/core/a.ts -> src/core/a.ts",
    ],
    [
      "a package in a module that may not have it",
      { "src/left/index.ts": 'import { Ladder } from "ladder";' },
      'src/left/index.ts imports "ladder": left may not import that package',
    ],
    [
      "a built-in of one engine",
      { "src/left/index.ts": 'import { readFileSync } from "node:fs";' },
      'src/left/index.ts imports "node:fs": left may not import that package',
    ],
    [
      "our own public name",
      { "src/attic/index.ts": 'import { left } from "miterwright/left";' },
      'src/attic/index.ts imports "miterwright/left": attic may not import that package',
    ],
    [
      "an import without the .js ending",
      { "src/core/b.ts": 'import { a } from "./a";' },
      'src/core/b.ts imports "./a": write the .js ending',
    ],
    [
      "an import of a file that is not there",
      { "src/core/b.ts": 'import { a } from "./z.js";' },
      'src/core/b.ts imports "./z.js": there is no src/core/z.ts',
    ],
    [
      "a folder outside the house",
      { "src/cellar/index.ts": 'import { a } from "../core/a.js";' },
      "src/cellar stands on no floor of the house",
    ],
    [
      "a module beside the house that reaches too far in",
      { "src/shed/index.ts": 'import { a } from "../core/a.js";' },
      "src/shed/index.ts imports src/core/a.ts: shed imports only left",
    ],
    [
      "an import of what stands beside the house",
      { "src/attic/index.ts": 'import { shed } from "../shed/index.js";' },
      "src/attic/index.ts imports src/shed/index.ts: nothing imports shed, which stands beside the house",
    ],
    [
      "an import past the doors of a module with rooms",
      {
        "src/left/internal.ts": "",
        "src/left/room/a.ts": "",
        "src/attic/index.ts": 'import { a } from "../left/room/a.js";\nimport { b } from "../left/internal.js";',
      },
      "src/attic/index.ts imports src/left/room/a.ts: other modules import only src/left/index.ts and src/left/internal.ts",
    ],
    [
      "a root entry that reaches past an entry",
      { "src/index.ts": 'export { a } from "./core/a.js";' },
      "src/index.ts imports src/core/a.ts: the root entry imports only entries",
    ],
    [
      "an import of the root entry",
      { "src/index.ts": "", "src/attic/index.ts": 'import { left } from "../index.js";' },
      "src/attic/index.ts imports src/index.ts: nothing imports the root entry",
    ],
  ])("fails on %s", (_, changed, fault) => {
    expect(faultsWith(changed as Record<string, string>)).toEqual([fault]);
  });
});
