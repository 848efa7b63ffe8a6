import { createHash } from "node:crypto";
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build as bundleWith, type Plugin } from "esbuild";
import { shopSheet } from "miterwright/sheet";
import { exampleJob } from "./example-job.js";
import type * as own from "./language.js";
import { fullSizeSection } from "./full-size-section.js";
import { planJob } from "./plan-job.js";
import { fillTemplate } from "./template.js";
import { WORKER_SCRIPT, WORKER_TEXT } from "./stock-messages.js";
import { penOf } from "./writers.js";

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

/** Puts a module in place of that of the page's language. */
function inLanguage(module: string): Plugin {
  return {
    name: "language",
    setup: (build) => {
      build.onResolve({ filter: /^\.\/language\.js$/ }, () => ({ path: module, sideEffects: false }));
    },
  };
}

/** Bundles a script of the page into one classic script, so that it also runs from a file. */
async function bundle(entry: string, language: string): Promise<string> {
  const { outputFiles } = await bundleWith({
    entryPoints: [here(entry)],
    bundle: true,
    minify: true,
    write: false,
    format: "iife",
    target: "es2022",
    charset: "utf8",
    logLevel: "warning",
    // The library by its public names, from its sources.
    tsconfig: here("tsconfig.json"),
    plugins: [inLanguage(language)],
  });
  return outputFiles[0]!.text;
}

/** The style of a document that the page prints, as a policy names it. */
function styleHash(document: string): string {
  const style = /<style>(.*?)<\/style>/s.exec(document)?.[1];
  if (style === undefined) throw new Error("bug: a printed document has no style");
  return `'sha256-${createHash("sha256").update(style).digest("base64")}'`;
}

/**
 * What the page may load and run: its own files, the worker that it makes of its own script, and nothing else. What it prints is opened from the page and is
 * under the same policy, so that the styles of those documents are named.
 */
function pagePolicy(): string {
  const state = exampleJob();
  const [plan, pen] = [planJob(state).plan!, penOf(state.values)];
  const printed = [shopSheet(plan, { formats: pen.formats }), fullSizeSection(plan, pen).page!];
  return [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' ${printed.map(styleHash).join(" ")}`,
    "img-src 'self'",
    "worker-src blob:",
    "base-uri 'none'",
    "form-action 'none'",
    "require-trusted-types-for 'script'",
    "trusted-types stock-worker",
  ].join("; ");
}

/**
 * Builds the bench page: five static files that work from any host and from a disk.
 *
 * @param outFolder - the site's folder; the page goes to `bench/` in it
 * @param language - path of the module that holds the page's texts, in place of `language.ts`
 */
export async function buildBenchPage(outFolder: string, language: string = here("language.ts")): Promise<void> {
  const { FORM, LANGUAGE } = (await import(pathToFileURL(language).href)) as typeof own;
  const folder = join(outFolder, "bench");
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "bench.js"), await bundle("page.ts", language));
  const worker = JSON.stringify(await bundle("stock-worker.ts", language));
  writeFileSync(join(folder, WORKER_SCRIPT), `globalThis.${WORKER_TEXT} = ${worker};\n`);
  const style = await bundleWith({
    entryPoints: [here("bench.css")],
    minify: true,
    write: false,
    logLevel: "warning",
  });
  writeFileSync(join(folder, "bench.css"), style.outputFiles[0]!.text);
  copyFileSync(here("../pages/icon.svg"), join(folder, "icon.svg"));
  writeFileSync(
    join(folder, "index.html"),
    fillTemplate(readFileSync(here("index.html"), "utf8"), pagePolicy(), FORM, LANGUAGE),
  );
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await buildBenchPage(process.argv[2] ?? "site");
}
