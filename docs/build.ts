/*
 * Builds the documentation site into site/: the API and the guides by TypeDoc, with a picture in every figure of the guides, and
 * the bench page. Warnings are errors. Run by `npm run docs`; options of TypeDoc may follow it.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import { Application, ArgumentsReader, PageEvent, TSConfigReader, TypeDocReader } from "typedoc";
import { placeFigures } from "./figures/place.js";
import { readerOf } from "./figures/reader.js";

const ROOT = fileURLToPath(new URL("../", import.meta.url));
/** Where typedoc.json looks for the script. */
const SCRIPT = join(ROOT, "out/docs/figures.js");
const BENCH = join(ROOT, "docs/bench/build.ts");
const BENCH_PAGE = "bench/index.html";

/** The guides in the order in which they are best read; others follow by name. */
const READING_ORDER: readonly string[] = [
  "words-and-conventions.md",
  "regular-polygons.md",
  "level-width.md",
  "sections-and-rabbets.md",
  "compound-miters.md",
  "corners-that-differ.md",
  "panels.md",
  "fitting-stock.md",
  "when-the-last-joint-gapes.md",
  "wood.md",
  "units.md",
  "accuracy-and-limits.md",
  "cautions.md",
];

/** The site's other pages, by how the navigation names them. */
const LINKS: Readonly<Record<string, string>> = existsSync(BENCH) ? { "Bench page": BENCH_PAGE } : {};

/** Whatever docs/bench/build.ts exports. */
interface BenchModule {
  readonly buildBenchPage: (folder: string) => Promise<void> | void;
}

/** Bundles the script that makes figures live. */
async function bundleScript(): Promise<void> {
  await build({
    entryPoints: [join(ROOT, "docs/figures/live.ts")],
    outfile: SCRIPT,
    bundle: true,
    format: "iife",
    target: "es2022",
    minify: true,
    legalComments: "none",
    logLevel: "warning",
  });
}

/** Makes the links of the navigation lead from a page to the site's root; TypeDoc writes them as they are. */
function linkFrom(page: string, html: string): string {
  return Object.values(LINKS).reduce((text, target) => {
    const path = relative(dirname(page), target).replaceAll("\\", "/");
    return text.replaceAll(`href="${target}"`, `href="${path}"`);
  }, html);
}

/** The guides' files in reading order. */
function listGuides(): string[] {
  const rank = (name: string): number => {
    const index = READING_ORDER.indexOf(name);
    return index < 0 ? READING_ORDER.length : index;
  };
  const names = readdirSync(join(ROOT, "docs/guides")).filter((name) => name.endsWith(".md"));
  return names.sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1)).map((name) => join(ROOT, "docs/guides", name));
}

/**
 * Moves the icons that a page uses into the page. Browsers refuse to take them from another file where the site is read from a
 * disk, and complain about every one.
 */
function inlineIcons(folder: string): void {
  const icons = readFileSync(join(folder, "assets/icons.svg"), "utf8");
  const symbols = new Map(
    [...icons.matchAll(/<symbol\b[^>]*\sid="(icon-[^"]+)"[^>]*>.*?<\/symbol>/gs)].map(([symbol, id]) => [id!, symbol]),
  );
  for (const name of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
    if (!name.endsWith(".html")) continue;
    const file = join(folder, name);
    const html = readFileSync(file, "utf8");
    const used = new Set<string>();
    const local = html.replace(/<use href="[^"#]*assets\/icons\.svg#(icon-[^"]+)"/g, (_, id: string) => {
      if (!symbols.has(id)) throw new Error(`bug: ${name} uses the icon ${id}, which assets/icons.svg does not have`);
      used.add(id);
      return `<use href="#${id}"`;
    });
    if (used.size === 0) continue;
    const held = [...used].map((id) => symbols.get(id)!).join("");
    writeFileSync(file, local.replace("</body>", `<svg style="display:none" aria-hidden="true">${held}</svg></body>`));
  }
}

async function buildSite(): Promise<boolean> {
  const app = await Application.bootstrapWithPlugins(
    { options: join(ROOT, "typedoc.json"), navigationLinks: LINKS, projectDocuments: listGuides() },
    [new TypeDocReader(), new TSConfigReader(), new ArgumentsReader(300)],
  );
  const isSound = (): boolean =>
    !app.logger.hasErrors() && !(app.options.getValue("treatWarningsAsErrors") && app.logger.hasWarnings());
  app.renderer.on(PageEvent.END, (page) => {
    if (page.contents === undefined) return;
    page.contents = linkFrom(page.url, placeFigures(page.contents, readerOf("mm")));
  });
  const project = await app.convert();
  if (project === undefined || !isSound()) return false;
  app.validate(project);
  if (!isSound()) return false;
  await app.generateOutputs(project);
  if (!isSound()) return false;
  inlineIcons(app.options.getValue("out"));
  if (existsSync(BENCH)) {
    const { buildBenchPage } = (await import(pathToFileURL(BENCH).href)) as BenchModule;
    await buildBenchPage(app.options.getValue("out"));
  }
  return true;
}

await bundleScript();
if (!(await buildSite())) process.exitCode = 1;
