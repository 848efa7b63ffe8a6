import { readdirSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { readProjectFile, ROOT } from "../house/project.js";
import type { OpenBrowser } from "./open-browser.js";

/**
 * Builds a page of `examples` as its first lines say, and makes it ready to be opened.
 *
 * @param browser - what will open it
 * @param name - its folder, which its files are named after
 * @returns its address
 */
export async function serveExample(browser: OpenBrowser, name: string): Promise<string> {
  const folder = `examples/${name}`;
  const { outputFiles } = await build({
    entryPoints: [join(ROOT, folder, `${name}.ts`)],
    bundle: true,
    minify: true,
    write: false,
    logLevel: "warning",
  });
  browser.serve(`${name}.js`, outputFiles[0]!.text);
  for (const file of readdirSync(join(ROOT, folder))) {
    if (file.endsWith(".css")) browser.serve(file, readProjectFile(`${folder}/${file}`));
  }
  return browser.serve(`${name}.html`, readProjectFile(`${folder}/index.html`));
}
