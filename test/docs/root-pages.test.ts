import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readProjectFile, ROOT } from "../house/project.js";

/** Where a page in the project's root folder leads to, other sites left out. */
function targetsOf(markdown: string): string[] {
  return [...markdown.matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, target]) => target!)
    .filter((target) => !/^[a-z]+:/.test(target));
}

/** A heading's anchor, as hosts of repositories make it. */
function anchorsOf(markdown: string): string[] {
  return [...markdown.matchAll(/^#+ (.+)$/gm)].map(([, words]) =>
    words!
      .toLowerCase()
      .replace(/[^\w\s-]/g, "")
      .replaceAll(" ", "-"),
  );
}

test.each(["README.md", "DEVELOPERS.md"])("every link of %s leads to a file, or to a heading that is there", (page) => {
  const targets = targetsOf(readProjectFile(page));
  const lost = targets.filter((target) => {
    const [file = "", anchor] = target.split("#");
    if (file !== "" && !existsSync(join(ROOT, file))) return true;
    return anchor !== undefined && !anchorsOf(readProjectFile(file === "" ? page : file)).includes(anchor);
  });
  expect(lost).toEqual([]);
});

test("links are seen", () => {
  expect(targetsOf("See [this](a.md), ![that](b.svg#c) and [one](https://example.org).")).toEqual(["a.md", "b.svg#c"]);
  expect(anchorsOf("# One\n\n## What it holds to, and why\n")).toEqual(["one", "what-it-holds-to-and-why"]);
  expect(targetsOf(readProjectFile("README.md"))).toContain("DEVELOPERS.md");
});

/** What the top level holds of ours. */
const OURS: readonly string[] = [
  "CHANGELOG.md",
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "docs",
  "examples",
  "package.json",
  "src",
  "test",
  "tsconfig.json",
  "tsup.config.ts",
];
/** What tools look for there, and nowhere else. */
const ASKED_FOR: readonly string[] = [
  ".changeset",
  ".ci",
  ".git",
  ".gitignore",
  ".npmrc",
  ".prettierignore",
  "eslint.config.js",
  "package-lock.json",
  "typedoc.json",
  "vitest.config.ts",
];
/** What is made, and not kept. */
const MADE: readonly string[] = ["coverage", "dist", "node_modules", "out", "site"];

test("the top level holds what is ours, what tools ask for, and nothing else", () => {
  const there = readdirSync(ROOT).filter((name) => !MADE.includes(name) && !name.endsWith(".tgz"));
  expect(there.filter((name) => !OURS.includes(name) && !ASKED_FOR.includes(name))).toEqual([]);
  expect(OURS.filter((name) => !there.includes(name))).toEqual([]);
});
