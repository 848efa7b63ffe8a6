/*
 * Builds the documentation site into site/: the API and the guides by TypeDoc, with a picture in every figure of the guides, and
 * the bench page. Warnings are errors. Run by `npm run docs`; options of TypeDoc may follow it.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import {
  Application,
  ArgumentsReader,
  type DeclarationReflection,
  PageEvent,
  type ProjectReflection,
  type Router,
  TSConfigReader,
  TypeDocReader,
} from "typedoc";
import { FIGURES } from "./figures/every-figure.js";
import { HEAVY_FIGURES } from "./figures/heavy.js";
import { placeFigures } from "./figures/place.js";
import { readerOf } from "./figures/reader.js";
import { findDocuments, type OtherPage } from "./pages/find-documents.js";
import { inlineIcons } from "./pages/inline-icons.js";
import { linkNames } from "./pages/link-names.js";
import { listGuides } from "./pages/list-guides.js";
import { stackTables } from "./pages/stack-tables.js";

const ROOT = fileURLToPath(new URL("../", import.meta.url));
/** Where typedoc.json looks for the script of every page. */
const SCRIPT = join(ROOT, "out/docs/figures.js");
/** The script of the heavy figures, from the site's root. */
const HEAVY_SCRIPT = "assets/heavy-figures.js";
const BENCH = join(ROOT, "docs/bench/build.ts");
const BENCH_PAGE = "bench/index.html";

/** The site's other pages, by how the navigation names them. */
const LINKS: Readonly<Record<string, string>> = existsSync(BENCH) ? { "Bench page": BENCH_PAGE } : {};
/** What the search knows of them. */
const OTHERS: readonly OtherPage[] = Object.entries(LINKS).map(([name, path]) => ({
  name,
  path,
  text: "Plan a frame in the browser: molding, rabbet, contents, saw, lay, cradle, sticks and how they are cut up, wood, dry fit, hazards, shop sheet to print.",
}));

/** Whatever docs/bench/build.ts exports. */
interface BenchModule {
  readonly buildBenchPage: (folder: string) => Promise<void> | void;
}

/** Bundles a script that makes figures live. */
async function bundleScript(entry: string, outfile: string): Promise<void> {
  await build({
    entryPoints: [join(ROOT, "docs/figures", entry)],
    outfile,
    bundle: true,
    format: "iife",
    target: "es2022",
    minify: true,
    legalComments: "none",
    logLevel: "warning",
  });
}

/** The way from one page to another, both by their paths from the site's root. */
function wayFrom(page: string, target: string): string {
  return relative(dirname(page), target).replaceAll("\\", "/");
}

/** Makes the links of the navigation lead from a page to the site's root; TypeDoc writes them as they are. */
function linkFromPage(page: string, html: string): string {
  return Object.values(LINKS).reduce(
    (text, target) => text.replaceAll(`href="${target}"`, `href="${wayFrom(page, target)}"`),
    html,
  );
}

/** Makes the front page's first mention of the bench page a link: in the README, which is read elsewhere too, it can lead nowhere. */
function linkBenchPage(html: string): string {
  const words = "bench page that plans a frame";
  if (!html.includes(words)) throw new Error(`bug: the README does not say "${words}"`);
  return html.replace(words, () => `<a href="${BENCH_PAGE}">bench page</a> that plans a frame`);
}

/** Adds the script of the heavy figures to a page that has one. */
function loadHeavyFigures(page: string, html: string): string {
  if (![...HEAVY_FIGURES.keys()].some((name) => html.includes(`data-figure="${name}"`))) return html;
  return html.replace("</head>", () => `<script defer src="${wayFrom(page, HEAVY_SCRIPT)}"></script></head>`);
}

/** Finds the page of a public name. */
function namesOf(project: ProjectReflection, router: Router): (name: string) => string | undefined {
  const exported = new Map<string, DeclarationReflection>();
  for (const module of project.children ?? []) {
    for (const child of module.children ?? []) exported.set(child.name, child);
  }
  return (name) => {
    const reflection = exported.get(name);
    return reflection !== undefined && router.hasUrl(reflection) ? router.getFullUrl(reflection) : undefined;
  };
}

/** Changes every page of the built site. */
function changePages(folder: string, change: (html: string) => string): void {
  for (const name of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
    if (!name.endsWith(".html")) continue;
    const file = join(folder, name);
    writeFileSync(file, change(readFileSync(file, "utf8")));
  }
}

async function buildSite(): Promise<boolean> {
  const app = await Application.bootstrapWithPlugins(
    {
      options: join(ROOT, "typedoc.json"),
      navigationLinks: LINKS,
      projectDocuments: listGuides(join(ROOT, "docs/guides")),
    },
    [new TypeDocReader(), new TSConfigReader(), new ArgumentsReader(300)],
  );
  const isSound = (): boolean =>
    !app.logger.hasErrors() && !(app.options.getValue("treatWarningsAsErrors") && app.logger.hasWarnings());
  app.renderer.on(PageEvent.END, (page) => {
    if (page.contents === undefined) return;
    page.contents = linkFromPage(page.url, page.contents);
    if (page.url === "index.html" && existsSync(BENCH)) page.contents = linkBenchPage(page.contents);
    if (!page.isReflectionEvent() || !page.model.isDocument()) return;
    const addressOf = namesOf(page.project, app.renderer.router!);
    page.contents = linkNames(
      stackTables(placeFigures(loadHeavyFigures(page.url, page.contents), FIGURES, readerOf("mm"))),
      (name) => {
        const target = addressOf(name);
        return target === undefined ? undefined : wayFrom(page.url, target);
      },
    );
  });
  const project = await app.convert();
  if (project === undefined || !isSound()) return false;
  findDocuments(app, project, OTHERS);
  app.validate(project);
  if (!isSound()) return false;
  await app.generateOutputs(project);
  if (!isSound()) return false;

  const folder = app.options.getValue("out");
  await bundleScript("live-heavy.ts", join(folder, HEAVY_SCRIPT));
  const icons = readFileSync(join(folder, "assets/icons.svg"), "utf8");
  changePages(folder, (html) => inlineIcons(html, icons));
  if (existsSync(BENCH)) {
    const { buildBenchPage } = (await import(pathToFileURL(BENCH).href)) as BenchModule;
    await buildBenchPage(folder);
  }
  return true;
}

await bundleScript("live-light.ts", SCRIPT);
if (!(await buildSite())) process.exitCode = 1;
