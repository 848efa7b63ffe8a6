import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { inlineIcons } from "../../docs/pages/inline-icons.js";
import { linkNames } from "../../docs/pages/link-names.js";
import { listGuides } from "../../docs/pages/list-guides.js";
import { listFiles, ROOT } from "../house/project.js";

describe("names in a guide", () => {
  const link = (html: string): string => linkNames(html, (name) => (name === "planFrame" ? "p.html" : undefined));

  test("become links where they are the library's", () => {
    expect(link("<p>Use <code>planFrame</code>.</p>")).toBe('<p>Use <a href="p.html"><code>planFrame</code></a>.</p>');
  });

  test.each([
    "<p><code>other</code></p>",
    "<p><code>planFrame()</code></p>",
    '<p><a href="x.html">see <code>planFrame</code></a></p>',
    '<pre><code class="ts">planFrame</code></pre>',
    "<p>planFrame</p>",
  ])("stay as they are in %s", (html) => {
    expect(link(html)).toBe(html);
  });

  test("become links before, between and after other links", () => {
    const name = "<code>planFrame</code>";
    const other = '<a href="x">x</a>';
    const made = `<a href="p.html">${name}</a>`;
    expect(link(`${name}${other}${name}${other}${name}`)).toBe(`${made}${other}${made}${other}${made}`);
  });
});

describe("icons of a page", () => {
  const icons = '<svg><symbol viewBox="0 0 1 1" id="icon-a"><path/></symbol><symbol id="icon-b">$&</symbol></svg>';
  const use = (id: string): string => `<svg><use href="../assets/icons.svg#icon-${id}"></use></svg>`;
  const page = (body: string): string => `<body>${body}</body>`;

  test("are put into it, each once", () => {
    expect(inlineIcons(page(use("b") + use("b")), icons)).toBe(
      page(
        '<svg><use href="#icon-b"></use></svg>'.repeat(2) +
          '<svg class="held-icons" aria-hidden="true"><symbol id="icon-b">$&</symbol></svg>',
      ),
    );
  });

  test("must be there", () => {
    expect(() => inlineIcons(page(use("c")), icons)).toThrow("bug: a page uses the icon icon-c, which is not there");
  });

  test("leave a page without any alone", () => {
    expect(inlineIcons(page("<p>x</p>"), icons)).toBe(page("<p>x</p>"));
  });
});

test("all guides are listed, the words first and unknown ones last", () => {
  const folder = join(ROOT, "docs/guides");
  const listed = listGuides(folder);
  const files = listFiles("docs/guides", ".md").map((file) => join(ROOT, file));
  expect([...listed].sort()).toEqual(files);
  expect(listed[0]).toBe(join(folder, "words-and-conventions.md"));
  expect(listed.at(-1)).toBe(join(folder, "hazards.md"));
});
