import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { ROOT } from "../house/project.js";

/** The built documentation site. */
export const SITE: string = join(ROOT, "site");

/** A page of the site, by its path from the site's root, with its text. */
export interface SitePage {
  readonly path: string;
  readonly html: string;
}

/** Every page of the site; throws where it was not built. */
export function readSite(): SitePage[] {
  if (!existsSync(join(SITE, "index.html"))) throw new Error("site/ is missing. Run `npm run docs` first.");
  return readdirSync(SITE, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".html"))
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({ path: relative(SITE, file).split(sep).join("/"), html: readFileSync(file, "utf8") }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** A link that leads nowhere, or a part of a page that comes from elsewhere. */
export interface LinkFault {
  readonly page: string;
  readonly target: string;
  readonly why: string;
}

function unescape(text: string): string {
  return text.replace(/&(amp|quot|lt|gt|#39|#x27);/g, (_, name: string) => {
    return { amp: "&", quot: '"', lt: "<", gt: ">" }[name] ?? "'";
  });
}

/** What a page links to (`a`), and what it loads. */
function targetsOf(html: string): { readonly element: string; readonly target: string }[] {
  // Scripts and code may hold texts that look like tags.
  const markup = html.replace(/<script\b[^>]*>[\s\S]*?<\/script>/g, (script) => script.replace(/>[\s\S]*</, "><"));
  return [...markup.matchAll(/<([a-z]+)\b[^>]*?\s(?:href|src)="([^"]*)"/g)].map(([, element, target]) => ({
    element: element!,
    target: unescape(target!),
  }));
}

/**
 * Finds links of pages that lead to no file or no anchor, and what pages load from elsewhere.
 *
 * @param pages - all pages of the site
 * @param exists - whether the site has a file that is not a page, by its path from the root
 * @returns the faults
 */
export function linkFaults(pages: readonly SitePage[], exists: (path: string) => boolean): LinkFault[] {
  const anchors = new Map(
    pages.map(({ path, html }) => [
      path,
      new Set([...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => unescape(id!))),
    ]),
  );
  return pages.flatMap(({ path, html }) =>
    targetsOf(html).flatMap(({ element, target }): LinkFault[] => {
      const fault = (why: string): LinkFault[] => [{ page: path, target, why }];
      if (/^(?:data|mailto):/.test(target)) return [];
      if (/^(?:[a-z]+:|\/\/)/i.test(target)) return element === "a" ? [] : fault("is loaded from elsewhere");
      const [file = "", anchor] = target.split("#");
      const place =
        file === ""
          ? path
          : relative("/", resolve("/", dirname(path), decodeURI(file)))
              .split(sep)
              .join("/");
      const known = anchors.get(place);
      if (known === undefined && !exists(place)) return fault("is no file");
      if (anchor === undefined || anchor === "" || known === undefined) return [];
      return known.has(decodeURIComponent(anchor)) ? [] : fault("is no anchor");
    }),
  );
}
