import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { beforeAll, describe, expect, test } from "vitest";
import { definitionsOf } from "./find-definition.js";
import { answers } from "./consumer.js";
import { installPackage, type InstalledPackage, type Outcome } from "./installed-package.js";
import { listEntries, readProjectFile, ROOT } from "./project.js";

let installed: InstalledPackage;
beforeAll(async () => {
  installed = await installPackage();
  return installed.remove;
});

const entries = listEntries();

/**
 * Loads every entry and calls every function without arguments; what is thrown must be the one InputError of all
 * entries. Prints what it found.
 */
const PROBE = `
const found = {};
const modules = {};
for (const entry of ${JSON.stringify(entries)}) modules[entry] = await load(entry);
const { InputError } = modules["miterwright/errors"];
for (const [entry, exported] of Object.entries(modules)) {
  found[entry] = { names: Object.keys(exported).filter((name) => name !== "default").sort(), refusals: 0, strangers: [] };
  for (const [name, value] of Object.entries(exported)) {
    if (name === "InputError" && value !== InputError) found[entry].strangers.push(name);
    if (typeof value !== "function" || /^class /.test(value)) continue;
    try {
      await value();
    } catch (error) {
      if (error instanceof InputError) found[entry].refusals += 1;
      else if (/^(Input|Parse)Error$/.test(error.name)) found[entry].strangers.push(name + " threw another " + error.name);
    }
  }
}
console.log(JSON.stringify(found));
`;
type Found = Record<string, { readonly names: string[]; readonly refusals: number; readonly strangers: string[] }>;

async function probe(kind: "mjs" | "cjs"): Promise<Found> {
  installed.write(
    `probe.${kind}`,
    kind === "mjs"
      ? `const load = (entry) => import(entry);${PROBE}`
      : `const load = require; void (async () => {${PROBE}})();`,
  );
  const { code, output } = await installed.run("node", `probe.${kind}`);
  expect({ code, output }).toEqual({ code: 0, output: expect.stringMatching(/^\{.*\}\n$/) as unknown });
  return JSON.parse(output) as Found;
}

describe("the packed package", () => {
  test("holds the build with its maps, the sources that they lead to, the papers, the guides with their pictures, the examples and nothing else", () => {
    const known =
      /^(?:dist\/[\w-]+\.(?:js|cjs|d\.ts|d\.cts)(?:\.map)?|dist\/brief\.schema\.json|src\/(?:[\w-]+\/)*[\w-]+\.ts|docs\/guides\/[\w-]+\.md|docs\/pictures\/[\w-]+\.svg|examples\/(?:[\w-]+\/)?[\w-]+\.(?:ts|mjs|html|csv|css|json|ipynb))$/;
    const papers = ["CHANGELOG.md", "DEVELOPERS.md", "LICENSE", "README.md", "package.json"];
    expect(installed.packedFiles.filter((file) => !known.test(file) && !papers.includes(file))).toEqual([]);
    expect(installed.packedFiles).toEqual(expect.arrayContaining([...papers, "docs/guides/wood.md"]));
  });

  test("holds whatever its README links to or names", () => {
    const readme = readProjectFile("README.md");
    const links = [...readme.matchAll(/\]\((?!https?:)([^)#]+)/g)].map(([, path]) => path!);
    expect(links).toContain("docs/pictures/plan.svg");
    expect(links.filter((path) => !installed.packedFiles.includes(path))).toEqual([]);
    expect(links.filter((path) => path.startsWith("docs/guides/")).length).toBeGreaterThan(10);
    expect(readme).toContain("`examples`");
    expect(installed.packedFiles.some((path) => path.startsWith("examples/"))).toBe(true);
  });

  test.each(["mjs", "cjs"] as const)("loads every entry, with one InputError for all (%s)", async (kind) => {
    const found = await probe(kind);
    expect(Object.keys(found)).toEqual(entries);
    expect(Object.values(found).flatMap(({ strangers }) => strangers)).toEqual([]);
    expect(found["miterwright/errors"]?.names).toEqual(["InputError", "ParseError", "isInputError"]);
    for (const entry of ["miterwright", "miterwright/polygon", "miterwright/miter"])
      expect(found[entry]?.refusals, entry).toBeGreaterThan(0);
  });

  test.each(["mjs", "cjs"] as const)("names its errors as they are called (%s)", async (kind) => {
    const program = `const { InputError, ParseError, parseLength, regularPolygon } = MITERWRIGHT;
      const thrown = [() => regularPolygon({ sides: 2.5, side: 10 }), () => parseLength("?", "mm")].map((work) => { try { work(); } catch (error) { return [error.name, error.constructor.name, String(error).split(":")[0]]; } });
      console.log(JSON.stringify([InputError.name, ParseError.name, ...thrown]));`;
    const load =
      kind === "mjs" ? 'import * as MITERWRIGHT from "miterwright";' : 'const MITERWRIGHT = require("miterwright");';
    installed.write(`names.${kind}`, `${load}${program}`);
    const { output } = await installed.run("node", `names.${kind}`);
    expect(JSON.parse(output)).toEqual([
      "InputError",
      "ParseError",
      ["InputError", "InputError", "InputError"],
      ["ParseError", "ParseError", "ParseError"],
    ]);
  });

  test("has maps that lead to the sources in it, and name no place of the machine that built it", () => {
    const inside = (path: string): string =>
      readFileSync(join(installed.folder, "node_modules/miterwright", path), "utf8");
    const built = installed.packedFiles.filter((path) => /^dist\/.*\.(?:c?js|d\.c?ts)$/.test(path));
    for (const path of built) {
      const name = path.replace("dist/", "");
      expect(inside(path).trimEnd().endsWith(`//# sourceMappingURL=${name}.map`), path).toBe(true);
      const { version, file, sources } = JSON.parse(inside(`${path}.map`)) as {
        version: number;
        file: string;
        sources: string[];
      };
      expect([version, file]).toEqual([3, name]);
      const missing = sources.filter(
        (source) => !installed.packedFiles.includes(source.startsWith("../") ? source.slice(3) : `dist/${source}`),
      );
      expect(missing, path).toEqual([]);
    }
    expect(built.length).toBeGreaterThan(60);
  });

  test.each(["mjs", "cjs"] as const)(
    "throws from places of its sources, where source maps are on (%s)",
    async (kind) => {
      const load =
        kind === "mjs"
          ? 'import { regularPolygon } from "miterwright";'
          : 'const { regularPolygon } = require("miterwright");';
      installed.write(
        `trace.${kind}`,
        `${load} try { regularPolygon({ sides: 2.5, side: 10 }); } catch (error) { console.log(error.stack); }`,
      );
      const { output } = await installed.run("node", "--enable-source-maps", `trace.${kind}`);
      const [, file, line] = /at (?:\S+ )?\(?\S*(src\/polygon\/regular-polygon\.ts):(\d+)/.exec(output)!;
      expect(readProjectFile(file!).split("\n")[Number(line) - 1]).toMatch(/check|refuse|reject|regularPolygon/);
    },
  );

  test("has declarations from which an editor finds where a name is declared in its sources", () => {
    const base = join(installed.folder, "node_modules/miterwright");
    installed.write(
      "editor.ts",
      'import { compoundMiter, formatLength, InputError, planFrame, regularPolygon, shopSheet, type FramePlan } from "miterwright";\nexport const used = [compoundMiter, formatLength, InputError, planFrame, regularPolygon, shopSheet];\nexport const read = (plan: FramePlan): unknown => plan.geometry.overall.polygon.acrossFlats;\n',
    );
    const names = [
      "compoundMiter",
      "formatLength",
      "InputError",
      "planFrame",
      "regularPolygon",
      "shopSheet",
      "geometry",
      "overall",
      "acrossFlats",
    ];
    const found = definitionsOf(join(installed.folder, "editor.ts"), names);
    expect(
      Object.fromEntries(
        Object.entries(found).map(([name, { file, text }]) => [name, [file.replace(`${base}/`, ""), text]]),
      ),
    ).toEqual({
      compoundMiter: ["src/miter/compound-miter.ts", "compoundMiter"],
      formatLength: ["src/units/format-length.ts", "formatLength"],
      InputError: ["src/core/input-error.ts", "InputError"],
      planFrame: ["src/frame/plan-frame.ts", "planFrame"],
      regularPolygon: ["src/polygon/regular-polygon.ts", "regularPolygon"],
      shopSheet: ["src/sheet/shop-sheet.ts", "shopSheet"],
      geometry: ["src/frame/plan-frame.ts", "geometry"],
      overall: ["src/frame/frame-geometry.ts", "overall"],
      acrossFlats: ["src/polygon/measures.ts", "acrossFlats"],
    });
  });

  test("names the same things in both formats, and all of them but the precise ones at its root", async () => {
    const [esm, cjs] = [await probe("mjs"), await probe("cjs")];
    const names = (found: Found): string[][] => Object.values(found).map((entry) => entry.names);
    expect(names(cjs)).toEqual(names(esm));
    const modules = entries.filter((entry) => entry !== "miterwright" && entry !== "miterwright/precise");
    expect(esm["miterwright"]?.names).toEqual([...new Set(modules.flatMap((entry) => esm[entry]!.names))].sort());
  });

  test("passes publint, suggestions included", async () => {
    const bytes = readFileSync(installed.tarball);
    const tarball = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);
    const { messages, pkg } = await publint({ strict: true, pack: { tarball } });
    expect(pkg["name"]).toBe("miterwright");
    expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
  });

  test("resolves to the right types from everywhere", async () => {
    const attw = join(ROOT, "node_modules/@arethetypeswrong/cli/dist/index.js");
    // Looking for types elsewhere would need the network, and there are none.
    const flags = ["--profile", "node16", "--no-definitely-typed", "--no-emoji", "--no-color", "--format", "ascii"];
    const { code, output } = await installed.run("node", attw, installed.tarball, ...flags);
    expect(code, output).toBe(0);
    for (const entry of entries) expect(output).toContain(`"${entry}"`);
  });
});

describe("a program that uses the package", () => {
  const compilers = ["typescript-5.5", "typescript-5.9", "typescript", "typescript-7"];
  const settings = {
    target: "ES2022",
    lib: ["ES2022"],
    types: [],
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    skipLibCheck: false,
    rootDir: ".",
  };
  const projects = {
    node16: { files: ["consumer.mts", "consumer.cts"], module: "Node16", moduleResolution: "Node16" },
    bundler: { files: ["consumer.ts"], module: "ESNext", moduleResolution: "Bundler" },
  };
  const compile = async (compiler: string, project: keyof typeof projects): Promise<Outcome & { outDir: string }> => {
    const { files, ...resolution } = projects[project];
    const outDir = `out-${compiler}-${project}`;
    const compilerOptions = { ...settings, ...resolution, outDir };
    installed.write(`${outDir}.json`, JSON.stringify({ compilerOptions, files }));
    const tsc = join(ROOT, "node_modules", compiler, "bin/tsc");
    return { ...(await installed.run("node", tsc, "-p", `${outDir}.json`)), outDir };
  };
  const writeConsumer = (text: string): void => {
    for (const ending of ["mts", "cts", "ts"]) installed.write(`consumer.${ending}`, text);
  };

  test.each(compilers)("compiles under %s, and answers as the sources do", async (compiler) => {
    writeConsumer(readProjectFile("test/house/consumer.ts"));
    const [node16, bundler] = await Promise.all([compile(compiler, "node16"), compile(compiler, "bundler")]);
    expect([node16.output, node16.code, bundler.output, bundler.code]).toEqual(["", 0, "", 0]);
    const print = "console.log(JSON.stringify(answers))";
    installed.write("ask.mjs", `import { answers } from "./${node16.outDir}/consumer.mjs"; ${print};`);
    installed.write("ask.cjs", `const { answers } = require("./${node16.outDir}/consumer.cjs"); ${print};`);
    for (const program of ["ask.mjs", "ask.cjs"]) {
      const { output } = await installed.run("node", program);
      expect(output).toBe(`${JSON.stringify(answers)}\n`);
    }
  });

  test("compiles the examples of the package, copied out of it as they are", async () => {
    cpSync(join(installed.folder, "node_modules/miterwright/examples"), join(installed.folder, "examples"), {
      recursive: true,
    });
    // What an example needs beside the package, a user installs.
    for (const name of ["@types", "csv-parse"]) {
      const link = join(installed.folder, "node_modules", name);
      if (!existsSync(link)) symlinkSync(join(ROOT, "node_modules", name), link);
    }
    const { output, code } = await installed.run(
      "node",
      join(ROOT, "node_modules/typescript/bin/tsc"),
      "-p",
      "examples",
    );
    expect([output, code]).toEqual(["", 0]);
  });

  test("fails to compile where it is wrong, so that compiling proves something", async () => {
    writeConsumer('import { noSuchThing } from "miterwright";\nnoSuchThing();\n');
    for (const project of ["node16", "bundler"] as const) {
      const { code, output } = await compile("typescript", project);
      expect(code).not.toBe(0);
      expect(output).toContain("has no exported member 'noSuchThing'");
    }
  });
});

test("a fresh clone, which has no build, is built before it is packed", async () => {
  const clone = mkdtempSync(join(tmpdir(), "miterwright-clone-"));
  const manifest = JSON.parse(readProjectFile("package.json")) as { scripts: Record<string, string> };
  // The real build takes long, and the other tests are about what it makes.
  const build = `node -e "fs.mkdirSync('dist'); fs.writeFileSync('dist/index.js', '')"`;
  writeFileSync(join(clone, "package.json"), JSON.stringify({ ...manifest, scripts: { ...manifest.scripts, build } }));
  mkdirSync(join(clone, "src"));
  writeFileSync(join(clone, "src/index.ts"), "export {};\n");
  try {
    const { code, output } = await installed.run("npm", "pack", "--dry-run", "--json", clone);
    expect(code, output).toBe(0);
    expect(output).toContain('"dist/index.js"');
    expect(output).toContain('"src/index.ts"');
  } finally {
    rmSync(clone, { recursive: true });
  }
});
