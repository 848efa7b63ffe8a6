import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import { fillTemplate } from "./template.js";

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

/** Bundles a script of the page into one classic script, so that it also runs from a file. */
async function bundle(entry: string, define: Readonly<Record<string, string>>): Promise<string> {
  const { outputFiles } = await build({
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
    define,
  });
  return outputFiles[0]!.text;
}

/**
 * Builds the bench page: four static files that work from any host and from a disk.
 *
 * @param outFolder - the site's folder; the page goes to `bench/` in it
 */
export async function buildBenchPage(outFolder: string): Promise<void> {
  const folder = join(outFolder, "bench");
  mkdirSync(folder, { recursive: true });
  const worker = await bundle("stock-worker.ts", {});
  const script = await bundle("page.ts", { STOCK_WORKER: JSON.stringify(worker) });
  writeFileSync(join(folder, "bench.js"), script);
  const style = await build({
    entryPoints: [here("bench.css")],
    minify: true,
    write: false,
    logLevel: "warning",
  });
  writeFileSync(join(folder, "bench.css"), style.outputFiles[0]!.text);
  copyFileSync(here("../pages/icon.svg"), join(folder, "icon.svg"));
  writeFileSync(join(folder, "index.html"), fillTemplate(readFileSync(here("index.html"), "utf8")));
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await buildBenchPage(process.argv[2] ?? "site");
}
