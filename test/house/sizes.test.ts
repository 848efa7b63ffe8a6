import { join } from "node:path";
import type { Plugin } from "esbuild";
import { describe, expect, test } from "vitest";
import { bundleProgram, measureImport } from "./measure-bundle.js";
import { listEntries } from "./project.js";
import { SIZE_LIMITS } from "./size-limits.js";

test("every entry has a ceiling", () => {
  const whole = SIZE_LIMITS.filter(({ name }) => name === undefined).map(({ entry }) => entry);
  expect(whole.sort()).toEqual(listEntries().sort());
});

test.each(SIZE_LIMITS.map((row) => ({ ...row, what: row.name ?? "*" })))(
  "$what from $entry costs $limit bytes at most",
  async ({ entry, name, limit, packages = [] }) => {
    const bundle = await measureImport(entry, name);
    expect(bundle.gzipped).toBeLessThanOrEqual(limit);
    expect(bundle.packages).toEqual(packages);
  },
);

describe("the measure", () => {
  test("sees other packages", async () => {
    const { packages } = await bundleProgram('export { Decimal } from "decimal.js";');
    expect(packages).toEqual(["decimal.js"]);
  });

  test("fails on an export that is not there", async () => {
    await expect(measureImport("miterwright", "noSuchThing")).rejects.toThrow('No matching export in "dist/index.js"');
  });
});

describe("nothing runs at import", () => {
  /** Makes the bundler find out by itself that a file does nothing, instead of taking package.json's word for it. */
  const doubt: Plugin = {
    name: "doubt",
    setup: (build) => {
      build.onResolve({ filter: /^\.\/.*\.js$/ }, ({ path, resolveDir }) => ({
        path: join(resolveDir, path),
        sideEffects: true,
      }));
    },
  };
  /** Reading `Math.PI` counts as work for this bundler, since a page could have exchanged it. Others know better. */
  const CONSTANT = /var (?:[\w$]+=(?:[\w$.*/+\-)]|(?<![\w$)])\()+[,;])+/g;
  const remainsOf = async (program: string): Promise<string> => {
    const { code } = await bundleProgram(program, { plugins: [doubt], packages: "external" });
    // An import of another package stays, as nothing is known of it.
    return code
      .replace(/import(?:\{[^}]*\}from)?"[^"]+";/g, "")
      .replace(CONSTANT, "")
      .trim();
  };

  test.each(listEntries())("of %s", async (entry) => {
    const file = entry === "miterwright" ? "index" : entry.replace("miterwright/", "");
    expect(await remainsOf(`import "./dist/${file}.js";`)).toBe("");
  });

  test.each([
    ["globalThis.seen = 1;", /^globalThis\.seen=1;$/],
    ["const seen = Math.sqrt(2);", /^var \w+=Math\.sqrt\(2\);$/],
    ["const unseen = (3 + 16 * Math.PI) / 2, too = 5;", /^$/],
    ["const unseen = /* @__PURE__ */ Math.sqrt(2);", /^$/],
  ])("or it would be seen: %s", async (line, remains) => {
    expect(await remainsOf(`import "./dist/errors.js"; ${line}`)).toMatch(remains);
  });
});
