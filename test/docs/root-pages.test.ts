import { existsSync } from "node:fs";
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
