import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { linkFaults, readSite, SITE } from "../docs/site.js";

const pages = readSite();

test("every link of the built site leads somewhere, and nothing is loaded from elsewhere", () => {
  expect(pages.length).toBeGreaterThan(100);
  expect(linkFaults(pages, (path) => existsSync(join(SITE, path)))).toEqual([]);
});

test("every guide leads to the bench page", () => {
  const guides = pages.filter(({ path }) => path.startsWith("documents/"));
  expect(guides.length).toBeGreaterThan(8);
  expect(guides.filter(({ html }) => !html.includes('href="../bench/index.html"'))).toEqual([]);
});
