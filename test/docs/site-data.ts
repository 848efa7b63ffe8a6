import { readFileSync } from "node:fs";
import { join } from "node:path";
import { inflateSync } from "node:zlib";
import { SITE } from "./site.js";

/** An entry of the site's navigation. */
export interface NavigationEntry {
  readonly text: string;
  /** Its page; missing where it only holds others. */
  readonly path?: string;
  readonly children?: readonly NavigationEntry[];
}

/** What the site's search can find. */
export interface SearchRow {
  readonly name: string;
  /** Its page, and maybe an anchor on it. */
  readonly url: string;
}

/** Data that the site loads as a script: JSON, deflated, in base 64. */
function readPacked(name: string): unknown {
  const [, packed] = /= "([^"]+)"/.exec(readFileSync(join(SITE, "assets", name), "utf8"))!;
  return JSON.parse(inflateSync(Buffer.from(packed!, "base64")).toString("utf8"));
}

/** The site's navigation, which a script writes at the side of every page. */
export function readNavigation(): readonly NavigationEntry[] {
  return readPacked("navigation.js") as NavigationEntry[];
}

/** All that the site's search knows. */
export function readSearchRows(): readonly SearchRow[] {
  return (readPacked("search.js") as { rows: SearchRow[] }).rows;
}
